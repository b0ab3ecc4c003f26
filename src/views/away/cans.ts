import { joinWords, litres, sayCount, sayQuantity } from "../../base/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { bedName } from "../events/titles.ts";
import type { AwayWaterNeed } from "./away-need.ts";

/** A common watering can [litres]. Source: common practice; two gallons, or ten litres. */
const CAN_L = { us: 7.6, metric: 10 } as const;

/** Days from one watering to the next: bags and pots, and beds. Source: common practice for summer; beds twice a week, deep. */
const BAGS_EVERY_DAYS = 2;
const BEDS_EVERY_DAYS = 3;
const WEEK = 7;

/**
 * Lines on water for somebody with a can: how often, where and how many cans; what drip lines do; when none is needed.
 * Empty where nothing is dry.
 */
export function waterLines(needs: readonly AwayWaterNeed[], plan: Plan): readonly string[] {
  if (needs.length === 0) return [];
  const bags = new Set(plan.beds.filter(({ kind }) => kind === "bags").map(({ key }) => key));
  const byHand = needs.filter(({ runs }) => runs === null);
  const often = byHand.filter(({ bed }) => bags.has(bed ?? ""));
  const rest = byHand.filter(({ bed }) => !bags.has(bed ?? ""));
  return [
    ...cansLine("Every other day", often, { plan, everyDays: BAGS_EVERY_DAYS }),
    ...cansLine("Every third day", rest, { plan, everyDays: BEDS_EVERY_DAYS }),
    ...dripLine(needs, plan),
    ...(byHand.length > 0 ? [canLine(plan)] : []),
    "No water on a day after heavy rain.",
  ];
}

function canLine({ measures }: Plan): string {
  const can = sayQuantity(litres(CAN_L[measures]), measures);
  return `A can is ${can}; carry it half full. Pour slowly on the soil, not the leaves, evening or early morning.`;
}

type WateringInterval = { readonly plan: Plan; readonly everyDays: number };

/**
 * `Every third day, water: Root bed 5 cans; Salad bed and Leaf bed 3 cans each.`, in the order of the first of each lot;
 * beds whose need is not known are watered until the soil is wet.
 */
function cansLine(
  when: string,
  needs: readonly AwayWaterNeed[],
  { plan, everyDays }: WateringInterval,
): readonly string[] {
  if (needs.length === 0) return [];
  const lots = new Map<string, string[]>();
  for (const { bed, litresAWeek } of needs) {
    const name = bedName(plan, bed) || "what stands in no bed";
    const much =
      litresAWeek === null ? WET : cans((litresAWeek * everyDays) / WEEK / CAN_L[plan.measures]);
    lots.set(much, [...(lots.get(much) ?? []), name]);
  }
  const parts = [...lots].map(([much, names]) => {
    const each = names.length > 1 && much !== WET ? " each" : "";
    return `${joinWords(names)} ${much}${each}`;
  });
  return [`${when}, water: ${parts.join("; ")}.`];
}

/** For beds whose need is not known. */
const WET = "till it is wet a finger deep";

/** Whole cans, half a one at the least. */
function cans(count: number): string {
  if (count < 0.75) return "half a can";
  return sayCount(Math.round(count), "can");
}

function dripLine(needs: readonly AwayWaterNeed[], plan: Plan): readonly string[] {
  const parts = needs.flatMap(({ bed, runs }) => {
    if (!runs) return [];
    const often = runs.times === 1 ? "once a week" : `${runs.times} times a week`;
    return [`${bedName(plan, bed)} ${runs.minutes} min, ${often}`];
  });
  return parts.length === 0 ? [] : [`Drip hose, open its tap, then shut it: ${parts.join("; ")}.`];
}

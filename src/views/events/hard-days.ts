import { degreesC, isoOf, joinFirst, joinWords, sayQuantity } from "../../base/index.ts";
import type { HardDay } from "../../engine/index.ts";
import { type Plan, planOn } from "../../garden/model/index.ts";
import { EVENING_BEFORE, type Event } from "./event.ts";
import { eventFor } from "./event-for.ts";

/** Names that a sentence takes before the rest are counted. Source: house rule. */
const NAMES = 6;

/** A warning on each hot or stormy day ahead, all day, rung the evening before. In day order. */
export function hardDayEvents(
  plans: readonly Plan[],
  hardDays: readonly HardDay[],
): readonly Event[] {
  return hardDays.map((hard) => {
    const plan = planOn(plans, hard.day);
    const { title, lines } = hard.kind === "heat" ? heatWords(plan, hard) : galeWords(plan, hard);
    const text = lines.join("\n");
    return {
      ...eventFor([], {
        key: `${plan.year}/garden/${hard.kind}/${isoOf(hard.day)}`,
        set: "both",
        kind: "warning",
        ...{ title, text, readerText: text },
        when: { kind: "all day", day: hard.day },
        day: hard.day,
        busy: false,
        remindMinutesBefore: EVENING_BEFORE,
      }),
      categories: [hard.kind],
    };
  });
}

type HardDayWords = { readonly title: string; readonly lines: readonly string[] };

function heatWords(plan: Plan, hard: Extract<HardDay, { kind: "heat" }>): HardDayWords {
  const high = sayQuantity(degreesC(hard.highC), plan.measures);
  const shade = hard.suffering.length > 0;
  return {
    title: `${high} today: ${shade ? "water early and shade" : "air under glass"}`,
    lines: [
      ...(shade
        ? [
            `Water at the roots early in the morning, and shade ${joinFirst(hard.suffering, NAMES)} from noon; pick what is ready first.`,
          ]
        : []),
      ...(hard.houses.length > 0
        ? [`Open ${joinWords(hard.houses)} wide by nine, and wet the floor.`]
        : []),
      "Plant and move nothing today. Drink water yourself, and leave the digging for the evening.",
      `The forecast says ${high}.`,
    ],
  };
}

/** Metres a second as a household says them, to the nearest five. */
function sayGust(mps: number, { measures }: Plan): string {
  const [value, unit] = measures === "us" ? [mps * 2.237, "mph"] : [mps * 3.6, "km/h"];
  return `${Math.round(value / 5) * 5} ${unit}`;
}

function galeWords(plan: Plan, hard: Extract<HardDay, { kind: "gale" }>): HardDayWords {
  const gust = sayGust(hard.gustMps, plan);
  return {
    title: `Gusts to ${gust}: make covers fast`,
    lines: [
      ...(hard.covered.length > 0
        ? [`Weigh down or bury the edges of what lies over ${joinFirst(hard.covered, NAMES)}.`]
        : []),
      ...(hard.hardening.length > 0
        ? [`Keep ${joinFirst(hard.hardening, NAMES)} in: a day lost is no matter.`]
        : []),
      "Tie in what is tall.",
      `The forecast says gusts to ${gust}.`,
    ],
  };
}

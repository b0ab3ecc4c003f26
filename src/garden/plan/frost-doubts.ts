import { type Day, MONTHS, type Problem, partsOf, sayDay } from "../../base/index.ts";
import type { FrostDates, Plan } from "../model/plan.ts";
import { diagnostic } from "./codes.ts";
import { type Tree, valueUnder } from "./tree.ts";

/**
 * Mean daily lows [°C] that a usual frost date may have.
 * Source: house rule: on a usual frost date the mean low lies a few degrees above freezing, as its spread over the
 * years is some four degrees; beyond that range one of the two figures belongs to another place.
 */
const LOW_ON_FROST_DATE_C = { least: -6, most: 10 } as const;

/**
 * A month's mean low [°C] below which no place is without frost. Source: house rule: half of its nights at least are
 * then colder.
 */
const LOW_WITHOUT_FROST_C = -5;

/**
 * `frost-unlike-weather` where the plan's frost dates and its monthly means cannot be of one place, positioned at the
 * date where the plan has one. `tree`: the plan in key form.
 */
export function frostDoubts({ site }: Pick<Plan, "site">, tree: Tree): readonly Problem[] {
  const { normals, lastFrost, firstFrost } = site;
  if (normals === null) return [];
  if (lastFrost === null && firstFrost === null) return noFrostDoubt(normals.lowC, tree);
  const dates = [
    ["last frost", lastFrost],
    ["first frost", firstFrost],
  ] as const;
  return dates.flatMap(([key, frost]) => unlikeWeather(key, frost, { lows: normals.lowC, tree }));
}

function noFrostDoubt(lows: readonly number[], tree: Tree): readonly Problem[] {
  const coldest = Math.min(...lows);
  if (coldest >= LOW_WITHOUT_FROST_C) return [];
  const place = valueUnder(tree, "place");
  const at = (valueUnder(place, "last frost") ?? valueUnder(place, "weather") ?? tree).at;
  const is = `The weather's mean low of ${MONTHS[lows.indexOf(coldest)]} is ${Math.round(coldest)} °C, and there is no frost`;
  return [
    diagnostic(
      "frost-unlike-weather",
      at,
      is,
      "Check that the dates and the weather are of this place",
    ),
  ];
}

function unlikeWeather(
  key: string,
  frost: FrostDates | null,
  { lows, tree }: { readonly lows: readonly number[]; readonly tree: Tree },
): readonly Problem[] {
  if (frost === null) return [];
  const low = lowOn(frost.usual, lows);
  if (low >= LOW_ON_FROST_DATE_C.least && low <= LOW_ON_FROST_DATE_C.most) return [];
  const place = valueUnder(tree, "place");
  const at = (valueUnder(place, key) ?? valueUnder(place, "weather") ?? tree).at;
  return [
    diagnostic(
      "frost-unlike-weather",
      at,
      `The weather's mean low on ${sayDay(frost.usual)} is ${Math.round(low)} °C, ${low > 0 ? "warm" : "cold"} for the ${key}`,
      "Check that the date and the weather are of this place",
    ),
  ];
}

/** Mean low [°C] of a day, interpolated linearly between the middles of the months. */
function lowOn(day: Day, lows: readonly number[]): number {
  const { month, date } = partsOf(day);
  const share = (date - 15) / 30;
  const here = lows[month - 1] ?? 0;
  const next = lows[(month - 1 + (share < 0 ? 11 : 1)) % 12] ?? here;
  return here + (next - here) * Math.abs(share);
}

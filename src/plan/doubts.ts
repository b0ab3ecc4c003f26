import { cropOf, isTender } from "../crops/crops.ts";
import type { Crop } from "../crops/facts.ts";
import { type Day, latest, partsOf, plus, sayDay } from "../days/day.ts";
import type { Problem } from "../problems/problem.ts";
import { isRaised } from "./begin.ts";
import { tell } from "./codes.ts";
import type { FrostDates, Plan, Planting } from "./plan.ts";
import { roomDoubts } from "./room.ts";
import { seasonOf } from "./season.ts";
import { type Tree, under } from "./tree.ts";

/**
 * What is doubtful in a plan without problems: `bed-too-full`, `greenhouse-too-full`, `frost-unlike-weather`,
 * `will-not-ripen`. Two crops sharing a bed are good practice and no doubt.
 */
export function doubtsOf(plan: Plan, tree: Tree): readonly Problem[] {
  const ripening = plan.plantings.flatMap((planting) => ripeningDoubt(planting, plan));
  return [...frostDoubts(plan, tree), ...roomDoubts(plan, tree), ...ripening];
}

/**
 * Mean daily lows [°C] that a usual frost date may have.
 * Source: house rule: on a usual frost date the mean low lies a few degrees above freezing, as its spread over the
 * years is some four degrees; three such spreads either way and one of the two figures is of another place.
 */
const LOW_ON_FROST_DATE_C = { least: -6, most: 10 } as const;

function frostDoubts({ site }: Plan, tree: Tree): readonly Problem[] {
  const { normals, lastFrost, firstFrost } = site;
  if (normals === null) return [];
  const dates = [
    ["last frost", lastFrost],
    ["first frost", firstFrost],
  ] as const;
  return dates.flatMap(([key, frost]) => unlikeWeather(key, frost, { lows: normals.lowC, tree }));
}

function unlikeWeather(
  key: string,
  frost: FrostDates | null,
  { lows, tree }: { readonly lows: readonly number[]; readonly tree: Tree },
): readonly Problem[] {
  if (frost === null) return [];
  const low = lowOn(frost.usual, lows);
  if (low >= LOW_ON_FROST_DATE_C.least && low <= LOW_ON_FROST_DATE_C.most) return [];
  const place = under(tree, "place");
  const at = under(place, key)?.at ?? tree.at;
  return [
    tell(
      "frost-unlike-weather",
      at,
      `The weather's mean low on ${sayDay(frost.usual)} is ${Math.round(low)} °C, ${low > 0 ? "warm" : "cold"} for the ${key}`,
      "Check that the date and the weather are of this place",
    ),
  ];
}

/** Mean low [°C] of a day, straight between the middles of the months. */
function lowOn(day: Day, lows: readonly number[]): number {
  const { month, date } = partsOf(day);
  const share = (date - 15) / 30;
  const here = lows[month - 1] ?? 0;
  const next = lows[(month - 1 + (share < 0 ? 11 : 1)) % 12] ?? here;
  return here + (next - here) * Math.abs(share);
}

/** How long after the usual first frost a crop that stands frost may still be brought in [days]. Source: house rule: four weeks of light frosts. */
const HARDY_GRACE_DAYS = 28;

function ripeningDoubt(planting: Planting, plan: Plan): readonly Problem[] {
  const crop = cropOf(planting.crop);
  const { lastFrost, firstFrost } = plan.site;
  if (!crop || crop.overwinter || !lastFrost || !firstFrost || planting.inSince !== null) return [];
  const start = clockStarts(planting, crop, lastFrost.usual);
  const season = seasonOf(plan);
  if (start === null || start < season.from || start > season.to) return [];
  const days = planting.days ?? crop.harvest.days.value[0];
  const end = plus(firstFrost.usual, isTender(crop) ? 0 : HARDY_GRACE_DAYS);
  const ripe = plus(start, days);
  if (ripe <= end) return [];
  return [
    tell(
      "will-not-ripen",
      planting.at,
      `${planting.written} needs ${days} days from ${sayDay(start)} and would be ready about ${sayDay(ripe)}, after ${sayDay(end)}`,
      "Choose a quicker variety, or plants that are raised indoors or bought",
    ),
  ];
}

/** The day from which its days to harvest count at the earliest, or null where the facts do not say. */
function clockStarts(planting: Planting, crop: Crop, lastFrost: Day): Day | null {
  const raised = isRaised(planting.start);
  const weeks = raised
    ? crop.settingOut?.weeksFromLastFrost.value
    : crop.outdoors?.weeksFromLastFrost?.value;
  if (weeks === undefined) return null;
  const out = plus(lastFrost, weeks * 7);
  const given = raised
    ? planting.fixed.out
    : (planting.fixed.start ?? planting.within?.from ?? null);
  const start = given ?? (planting.notBefore === null ? out : latest(out, planting.notBefore));
  const indoors = raised && crop.harvest.from === "sowing" ? crop.indoors : null;
  return indoors ? plus(start, -7 * indoors.weeksToSettingOut.value[1]) : start;
}

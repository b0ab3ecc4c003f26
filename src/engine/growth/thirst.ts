import {
  type Day,
  type DaySpan,
  dayOrThrow,
  earliest,
  latest,
  partsOf,
  plus,
} from "../../base/index.ts";
import { type Family, isTender } from "../../crops/index.ts";
import { type Bed, isRaised, type Site, seasonOf } from "../../garden/model/index.ts";
import type { Climate } from "../climate/climate.ts";
import { referenceEvaporationMm } from "../climate/evaporation.ts";
import { frostsAt } from "../climate/frosts-at.ts";
import { type Anchors, anchorKey } from "./anchors.ts";
import { isReached } from "./milestones.ts";
import { ripeMilestone } from "./ripe.ts";
import { anchorOf, type SowingContext } from "./sowing-context.ts";
import { upMilestone } from "./up.ts";

/** The water a crop uses for each millimetre that short grass uses: young, full grown, and at its end. */
type Coefficients = { readonly young: number; readonly full: number; readonly late: number };

/** Source: Allen and others, FAO 56, 1998, Table 12, small vegetables; from memory, unchecked. */
const SMALL: Coefficients = { young: 0.7, full: 1.05, late: 0.95 };

/** Families with other factors. Source: Allen and others, FAO 56, 1998, Table 12; from memory, unchecked. */
const FAMILIES: Partial<Record<Family, Coefficients>> = {
  "nightshade family": { young: 0.6, full: 1.15, late: 0.8 },
  "gourd family": { young: 0.6, full: 1, late: 0.8 },
  "pea family": { young: 0.6, full: 1.15, late: 0.95 },
  "grass family": { young: 0.6, full: 1.15, late: 0.95 },
};

/** Parts of the time to the first harvest at which it stops being young, is full grown, and begins to go. Source: Allen and others, FAO 56, 1998, Table 11; from memory, unchecked. */
const STAGES = { young: 0.2, full: 0.5, going: 0.85 } as const;

/** Days to harvest where they are not known. Source: house rule. */
const USUAL_DAYS = 90;

/** The days in which a sowing uses water where it grows, both inclusive, and its first harvest. */
export type DrinkingPeriod = DaySpan & { readonly ripe: Day };

/**
 * From the day a sowing is up or set out to its last harvest, at the latest the usual first frost where it stands, within
 * its plan's season; `anchors` give its end where it is known; null where it is never in its place in the season. What
 * stands for years begins some weeks before its harvest.
 * Source: house rule.
 */
export function drinkingPeriodOf(context: SowingContext, anchors: Anchors): DrinkingPeriod | null {
  const { plan } = context;
  const out = outSince(context);
  if (out === null) return null;
  const season = seasonOf(plan);
  const ripeness = ripeMilestone(context);
  const ripe = isReached(ripeness) ? ripeness.usual : plus(out, USUAL_DAYS);
  const to = earliest(lastDay(context, ripe, anchors), frostDay(context) ?? season.to, season.to);
  const grows = context.crop.perennial ? plus(ripe, -GROWS_DAYS) : out;
  const from = latest(out, grows, season.from);
  return from <= to ? { from, to, ripe } : null;
}

/** Days before its harvest from which what stands for years has leaves or shoots that use water. Source: house rule, two weeks. */
const GROWS_DAYS = 14;

/** The first frost where it stands: under glass nothing that stands the winter ends with it. */
function frostDay({ plan, bed, climate, crop }: SowingContext): Day | null {
  if (climate.underGlass && !isTender(crop)) return null;
  return frostsAt(plan.site, bed).firstFrost?.usual ?? null;
}

function outSince(context: SowingContext): Day | null {
  const { start } = context.planting;
  if (isRaised(start)) return anchorOf(context, "set out")?.day ?? null;
  const up = upMilestone(context);
  return isReached(up) ? up.usual : null;
}

/**
 * Its end as seen or scheduled, else after the days that its kind bears or keeps. A crop that bears until frost ends
 * with it, whenever the last harvest is.
 */
function lastDay(context: SowingContext, ripe: Day, anchors: Anchors): Day {
  const { kind, bearsDays, holdsDays } = context.crop.harvest;
  const end = anchors.get(anchorKey(context.planting.key, context.sowing, "end"));
  const tillFrost = kind === "again and again" && bearsDays === null;
  if (end && (end.from === "diary" || !tillFrost)) return end.day;
  return tillFrost ? seasonOf(context.plan).to : plus(ripe, bearsDays?.value[1] ?? holdsDays.value);
}

/**
 * Of the water that soil between young plants loses, the part that a mulch saves. Source: Allen and others, FAO 56, 1998,
 * chapter 10, from memory, unchecked: about half under a mulch that covers all of it.
 */
const MULCH_SAVES = 0.5;

/** Of a young crop's use, the part that is lost from the soil; full grown it shades it. Source: house rule: most of it is bare. */
const FROM_SOIL = { young: 0.7, full: 0.2 } as const;

function coefficientsOf({ crop, planting }: SowingContext): Coefficients {
  const bare = FAMILIES[crop.family] ?? SMALL;
  if (planting.mulch === null) return bare;
  const [young, full] = [1 - MULCH_SAVES * FROM_SOIL.young, 1 - MULCH_SAVES * FROM_SOIL.full];
  return { young: bare.young * young, full: bare.full * full, late: bare.late * full };
}

/**
 * The water a sowing uses on a day for each millimetre that short grass uses; 0 on a day it is not in its place. Crops that
 * bear repeatedly do not use less after their first harvest.
 * Source: Allen and others, FAO 56, 1998, eq. 66, with Tables 11 and 12 from memory.
 */
export function coefficientOn(context: SowingContext, drinking: DrinkingPeriod, day: Day): number {
  if (day < drinking.from || day > drinking.to) return 0;
  const { young, full, late } = coefficientsOf(context);
  const part = (day - drinking.from) / Math.max(1, drinking.ripe - drinking.from);
  const goes = context.crop.harvest.kind === "once" && part > STAGES.going;
  if (goes) return between(full, late, (part - STAGES.going) / (1 - STAGES.going));
  return between(young, full, (part - STAGES.young) / (STAGES.full - STAGES.young));
}

/**
 * How much wider than a bag its full-grown plants spread, as areas. Source: house rule: three potato plants in a bag of 16
 * inches shade a circle of about 28.
 */
const BAG_SPREAD = 3;

/** How many times the ground of its bed a sowing's leaves shade: more than once in bags alone, as they grow. */
export function spreadOn({ bed }: SowingContext, drinking: DrinkingPeriod, day: Day): number {
  if (!bed?.bags) return 1;
  const part = (day - drinking.from) / Math.max(1, drinking.ripe - drinking.from);
  return between(1, BAG_SPREAD, (part - STAGES.young) / (STAGES.full - STAGES.young));
}

function between(from: number, to: number, share: number): number {
  return from + (to - from) * Math.min(1, Math.max(0, share));
}

/** The water that short grass uses and the rain of a day [mm]. */
export type DailyWater = { readonly grassMm: number; readonly rainMm: number };

/** The part of what grass uses outdoors that it uses under glass. Source: house rule; a fifth of the light is lost, and there is no wind. */
const UNDER_GLASS = 0.8;

/** A day's water as a bed has it: no rain gets under glass, and less is used there. */
export function waterAt(bed: Bed | null, { grassMm, rainMm }: DailyWater): DailyWater {
  if (bed?.kind !== "greenhouse") return { grassMm, rainMm };
  return { grassMm: grassMm * UNDER_GLASS, rainMm: 0 };
}

/**
 * The water that short grass uses and the rain of a day in a usual year [mm]; null where the plan has no latitude or no
 * monthly means. Rain is nothing where the plan does not give it.
 * Source: Allen and others, FAO 56, 1998, as in climate/evaporation.ts; rain spread evenly over its month, house rule.
 */
export function usualWaterOf(
  { latitude, normals }: Site,
  climate: Climate,
): ((day: Day) => DailyWater) | null {
  if (latitude === null || normals === null) return null;
  return (day) => ({
    grassMm: referenceEvaporationMm({ ...climate.air(day), day, latitude }),
    rainMm: (normals.rainMm?.[partsOf(day).month - 1] ?? 0) / daysInMonth(day),
  });
}

function daysInMonth(day: Day): number {
  const { year, month } = partsOf(day);
  const next = month === 12 ? dayOrThrow(year + 1, 1, 1) : dayOrThrow(year, month + 1, 1);
  return next - dayOrThrow(year, month, 1);
}

import { type Day, earliest, latest, plus } from "../../base/index.ts";
import {
  cropFor,
  isTender,
  type Outdoors,
  type Overwinter,
  type SettingOut,
} from "../../crops/index.ts";
import { type FrostDates, seasonOf } from "../../garden/model/index.ts";
import { killingFrost, lastFrostAt } from "../climate/frost.ts";
import { frostsAt } from "../climate/frosts-at.ts";
import { anchorKey, LAST_SOWING_NUMBER } from "./anchors.ts";
import { autumnAfter } from "./autumn.ts";
import { coolSeasonStart, firstCoolDay, firstMildNight } from "./cool-season.ts";
import {
  type DateDecision,
  type DateTest,
  decideAcrossSeasons,
  decideDate,
} from "./date-decision.ts";
import { refusalOf, withinLimits } from "./limits.ts";
import { memoizeByPlanting } from "./memo.ts";
import { middle } from "./milestones.ts";
import type { SowingContext } from "./sowing-context.ts";
import { firstStop, stopDay } from "./stopping.ts";
import { forWinterFrom } from "./through-winter.ts";
import { lightTests } from "./under-glass.ts";
import { upFrom } from "./up.ts";
import { firstWarmSoil } from "./warm-soil.ts";

/** The last day on which a sowing of that planting is still in its place; null where no end is known. */
function lastEnd(context: SowingContext, planting: string): Day | null {
  const ends: Day[] = [];
  for (let sowing = 1; sowing <= LAST_SOWING_NUMBER; sowing++) {
    const end = context.anchors.get(anchorKey(planting, sowing, "end"));
    if (end) ends.push(end.day);
  }
  return ends.length === 0 ? null : latest(...ends);
}

/** The conditions for a start beside weather: `not before`, that its place is free, and that it is meant for the winter. */
function ownTests(context: SowingContext): readonly DateTest[] {
  const { notBefore, after } = context.planting;
  const end = after === null ? null : lastEnd(context, after);
  const tests: DateTest[] = [];
  if (notBefore !== null) tests.push({ basis: "given", day: notBefore });
  if (end !== null)
    tests.push({ basis: "place free", day: plus(end, 1 + daysToRot(context, after)) });
  const forWinter = notBefore === null ? forWinterFrom(context) : null;
  if (forWinter !== null) tests.push({ basis: "first frost", day: forWinter });
  return tests;
}

/** Days that a place rests after what was grown to be dug in, before the next crop; else none. */
function daysToRot({ plan }: SowingContext, before: string | null): number {
  const planting = plan.plantings.find(({ key }) => key === before);
  const days = planting && cropFor(planting)?.digInDays;
  return days ? middle(days.value) : 0;
}

/**
 * The decision of the tests; waiting that would stop at the first stop day may go on if the season can spare it, and not
 * for soil that no usual year makes warm enough [degrees C].
 */
function decideWithStop(
  context: SowingContext,
  tests: readonly DateTest[],
  { first, soilMinC }: { readonly first: Day; readonly soilMinC: number | null },
): DateDecision {
  const decision = decideDate(tests, first);
  return !decision.stopped || isNeverWarm(context, soilMinC)
    ? decision
    : decideDate(tests, stopDay(context, first));
}

/** Whether the soil is at its warmth [degrees C] on no day of a usual year, so that waiting for it is in vain. */
function isNeverWarm(context: SowingContext, soilMinC: number | null): boolean {
  return soilMinC !== null && firstWarmSoil(context, soilMinC, 0) === null;
}

const outs = memoizeByPlanting<string, DateDecision | null>();
const starts = memoizeByPlanting<string, DateDecision>();

/** What its days depend on beside the plan: when its predecessor's place is free. */
const testDaysKey = (own: readonly DateTest[]) => own.map(({ day }) => day).join();

/**
 * When raised plants go out: the frost day at the risk for raised plants, covers do not count; then warm enough soil;
 * then the gardener's conditions. Waiting stops at the stop day.
 */
export function settingOutDay(context: SowingContext): DateDecision | null {
  const own = ownTests(context);
  return outs(context, testDaysKey(own), () => decideSettingOut(context, own));
}

function decideSettingOut(context: SowingContext, own: readonly DateTest[]): DateDecision | null {
  const { crop, planting } = context;
  if (planting.fixed.out !== null)
    return decideDate([{ basis: "given", day: planting.fixed.out }], null);
  const facts = crop.settingOut;
  if (!facts) return null;
  const cool = coolSeasonStart(context, (day) => refusalOf(context, day) === null);
  if (cool !== null) return decideDate([...own, { basis: "heat", day: cool }], null);
  const frost = settingOutFrost(context, facts);
  const stop = firstStop(context, frost, own);
  const soilMinC = facts.soilMinC?.value ?? null;
  return decideAcrossSeasons(context, (warmerK) =>
    decideWithStop(context, [...own, ...settingOutTests(context, facts, { frost, warmerK })], {
      first: stop,
      soilMinC,
    }),
  );
}

/**
 * The frost day of raised plants: at their own risk for tender crops, the usual one for the rest; null without frost.
 */
function settingOutFrost({ crop, plan, bed }: SowingContext, facts: SettingOut): Day | null {
  const dates = frostsAt(plan.site, bed).lastFrost;
  if (!dates) return null;
  const day = isTender(crop) ? lastFrostAt(dates, plan.risk.raised) : dates.usual;
  return plus(day, facts.weeksFromLastFrost.value * 7);
}

/**
 * The last day to set out what lives through the winter young, its least weeks before the usual killing frost, so that it
 * roots; no sooner than the usual last frost. Null for another crop and without frost.
 */
function rootingDay(context: SowingContext): Day | null {
  const weeks = context.crop.winter?.sownWeeksBefore?.value;
  const dates = frostsAt(context.plan.site, context.bed).lastFrost;
  const autumn = weeks && dates && autumnAfter(context, dates.usual);
  return autumn && weeks && dates ? latest(dates.usual, plus(autumn.killing, -7 * weeks[0])) : null;
}

function settingOutTests(
  context: SowingContext,
  { soilMinC, weeksFromLastFrost: weeks }: SettingOut,
  { frost, warmerK }: { readonly frost: Day | null; readonly warmerK: number },
): readonly DateTest[] {
  const { from, to } = seasonOf(context.plan);
  const tests: DateTest[] = [...lightTests(context)];
  const rooting = rootingDay(context);
  if (frost !== null && rooting !== null && rooting < frost)
    tests.push({ basis: "first frost", day: rooting });
  else if (frost !== null)
    tests.push({ basis: "last frost", day: frost, frost: plus(frost, -7 * weeks.value) });
  if (frost === null && !context.climate.underGlass && isTender(context.crop))
    tests.push({ basis: "cold", day: firstMildNight(context) });
  if (soilMinC)
    tests.push({ basis: "soil", day: firstWarmSoil(context, soilMinC.value, warmerK) ?? to });
  else tests.push(...thawTests(context, { frost, warmerK }));
  return tests.length > 0 ? tests : [{ basis: "time of year", day: from }];
}

/** Soil that can be planted [°C]: thawed and drained. Source: house rule; a little below what the hardiest seed needs. */
const WORKABLE_SOIL_C = 2.5;

/**
 * Where the ground is still frozen on a hardy plant's frost day, it waits for soil that can be worked; else no test. By the
 * usual year: one mild week thaws the top alone.
 */
function thawTests(
  context: SowingContext,
  { frost, warmerK }: { readonly frost: Day | null; readonly warmerK: number },
): readonly DateTest[] {
  if (frost === null || context.climate.underGlass) return [];
  const usual = { ...context, climate: context.climate.usual() };
  const workable = firstWarmSoil(usual, WORKABLE_SOIL_C, warmerK);
  return workable !== null && workable > frost ? [{ basis: "soil", day: workable }] : [];
}

/**
 * When seed or tuber goes into the ground: soil on the day it goes in, frost on the day it comes up, and where that
 * day would bring it into heat, long days or cold that makes it bolt, the next day that does not.
 */
export function plantingOutDay(context: SowingContext, facts: Outdoors): DateDecision {
  const own = ownTests(context);
  return starts(context, testDaysKey(own), () => decideStart(context, facts, own));
}

function decideStart(
  context: SowingContext,
  facts: Outdoors,
  wished: readonly DateTest[],
): DateDecision {
  const { planting } = context;
  if (planting.fixed.start !== null)
    return decideDate([{ basis: "given", day: planting.fixed.start }], null);
  const named: readonly DateTest[] = planting.within
    ? [{ basis: "given", day: planting.within.from }]
    : [];
  const own = [...wished, ...named];
  const cool = coolSeasonStart(context, (day) => refusalOf(context, day) === null);
  if (cool !== null) return decideDate([...own, { basis: "heat", day: cool }], null);
  const decision = decideAcrossSeasons(context, (warmerK) =>
    decideOutdoors(context, facts, { own, warmerK }),
  );
  return planting.start === "seed outdoors"
    ? withinLimits(
        context,
        decision,
        () => decideOutdoors(context, facts, { own: [], warmerK: 0 }).day,
      )
    : decision;
}

type OutdoorConditions = { readonly own: readonly DateTest[]; readonly warmerK: number };

function decideOutdoors(
  context: SowingContext,
  facts: Outdoors,
  { own, warmerK }: OutdoorConditions,
): DateDecision {
  const { crop, plan, bed } = context;
  const soilMinC = facts.soilMinC.value;
  const warm = firstWarmSoil(context, soilMinC, warmerK) ?? seasonOf(plan).to;
  const dates = frostsAt(plan.site, bed).lastFrost;
  const nights: readonly DateTest[] =
    dates || context.climate.underGlass || !isTender(crop)
      ? []
      : [{ basis: "cold", day: firstMildNight(context) }];
  const conditions: readonly DateTest[] = [
    ...lightTests(context),
    { basis: "soil", day: warm },
    ...nights,
  ];
  if (!dates || !facts.weeksFromLastFrost)
    return decideWithStop(context, [...own, ...conditions], {
      first: firstStop(context, null, own),
      soilMinC,
    });
  const safe = lastFrostAt(dates, plan.risk.seed);
  const from = isNeverWarm(context, soilMinC) ? safe : warm;
  const weeks = facts.weeksFromLastFrost.value;
  const frost = isTender(crop)
    ? firstUpAfter(context, { from, warmerK }, plus(safe, 7 * Math.max(0, weeks)))
    : plus(safe, 7 * weeks);
  const first = firstStop(context, latest(frost, safe), own);
  return decideWithStop(
    context,
    [...own, ...conditions, { basis: "last frost", day: frost, frost: safe }],
    { first, soilMinC },
  );
}

/**
 * The first day from `from` on which tender seed may be sown so that it is up no sooner than the safe day: the frost
 * day, or for warm-loving crops their weeks after it.
 */
function firstUpAfter(
  context: SowingContext,
  { from, warmerK }: { readonly from: Day; readonly warmerK: number },
  safe: Day,
): Day {
  const { comesUp } = context.crop;
  if (comesUp.kind === "days") return latest(from, plus(safe, -comesUp.days.value[0]));
  for (let day = from; day < safe; day = plus(day, 1)) {
    const up = upFrom(context, day, warmerK);
    if (up !== null && up >= safe) return day;
  }
  return latest(from, safe);
}

/**
 * When cloves go in for the winter: after the killing frost, or on the first cool days where winter is mild; by its middle
 * at the latest, inside the gardener's own span; null for another crop.
 */
export function autumnPlantingDay(context: SowingContext): DateDecision | null {
  const { crop, planting, plan } = context;
  if (planting.fixed.start !== null)
    return decideDate([{ basis: "given", day: planting.fixed.start }], null);
  const dates = plan.site.firstFrost;
  const own = ownTests(context);
  const { within } = planting;
  if (!crop.overwinter) return null;
  const cool = firstCoolDay(context);
  const frost = dates && afterKillingFrost(context, dates, crop.overwinter);
  const isCool = cool !== null && (frost === null || cool < frost);
  const best = isCool ? cool : frost;
  if (best === null)
    return within ? decideDate([{ basis: "given", day: within.from }, ...own], null) : null;
  const basis = isCool ? "cold" : "first frost";
  if (!within) return decideDate([{ basis, day: best }, ...own], null);
  const inside = earliest(latest(best, within.from), within.to);
  const by = inside === best ? basis : "given";
  return decideDate([{ basis: by, day: inside }, ...own], null, [basis, "given"]);
}

/** One to two weeks after the killing frost; where winter is a few weeks, before it is over, or cloves would be in the ground for a year. */
function afterKillingFrost(
  { plan }: SowingContext,
  dates: FrostDates,
  { plantDaysAfterKillingFrost }: Overwinter,
): Day {
  const [least, most] = plantDaysAfterKillingFrost.value;
  const after = plus(killingFrost(dates, plan.site.killingFrost), (least + most) / 2);
  return earliest(after, seasonOf(plan).to);
}

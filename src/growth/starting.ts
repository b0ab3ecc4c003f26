import type { Climate } from "../climate/climate.ts";
import { killingFrost, lastFrostAt } from "../climate/frost.ts";
import { isTender } from "../crops/crops.ts";
import type { Outdoors } from "../crops/facts.ts";
import { type Day, earliest, latest, plus } from "../days/day.ts";
import { seasonOf } from "../plan/season.ts";
import { allGrounds, anchorKey, type Ground } from "./anchors.ts";
import { upOn } from "./emergence.ts";
import type { Growing } from "./growing.ts";

/** A day reckoned, with each test it had to pass and the day that test alone would give. */
export type Reckoned = {
  readonly day: Day;
  readonly grounds: readonly Ground[];
  readonly tests: readonly Test[];
  /** The day after which a hold ends, and whether it ended there instead of in the right soil. */
  readonly stop: Day | null;
  readonly stopped: boolean;
};

/** One test: what it looked at and the first day that passes it. */
export type Test = { readonly ground: Ground; readonly day: Day };

/**
 * A hold for cold soil ends so many days after the frost date, and the text turns to hoops.
 * Source: house rule; three weeks is what a short season can spare.
 */
export const STOP_DAYS = 21;

function decide(tests: readonly Test[], stop: Day | null, more: readonly Ground[] = []): Reckoned {
  const day = latest(...tests.map((test) => test.day));
  const stopped = stop !== null && day > stop;
  const grounds = allGrounds(
    tests.map((test) => test.ground),
    more,
  );
  return { day: stopped ? stop : day, grounds, tests, stop, stopped };
}

/** First warm days by climate, then bed and soil. A memo, nothing more. */
const warmDays = new WeakMap<Climate, Map<string, Day | null>>();

/** The first day of the season from which the soil is warm enough [°C], or null where it never is. */
function firstWarmSoil(growing: Growing, soilMinC: number): Day | null {
  const days = warmDays.get(growing.climate) ?? new Map<string, Day | null>();
  warmDays.set(growing.climate, days);
  const key = `${growing.bed?.key ?? ""}|${soilMinC}`;
  const known = days.get(key);
  if (known !== undefined) return known;
  const day = lookForWarmSoil(growing, soilMinC);
  days.set(key, day);
  return day;
}

function lookForWarmSoil(growing: Growing, soilMinC: number): Day | null {
  const { from, to } = seasonOf(growing.plan);
  for (let day = from; day <= to; day = plus(day, 1))
    if (growing.climate.soilC(day, growing.bed) >= soilMinC) return day;
  return null;
}

/** The last day on which a sowing of that planting still has its place; null where none is known to end. */
function lastEnd(growing: Growing, planting: string): Day | null {
  const ends: Day[] = [];
  for (let sowing = 1; sowing <= MOST_SOWINGS; sowing++) {
    const end = growing.anchors.get(anchorKey(planting, sowing, "end"));
    if (end) ends.push(end.day);
  }
  return ends.length === 0 ? null : latest(...ends);
}

/** What the gardener said that holds a start back: `not before`, and the place being free. */
function ownTests(growing: Growing): readonly Test[] {
  const { notBefore, after } = growing.planting;
  const end = after === null ? null : lastEnd(growing, after);
  const tests: Test[] = [];
  if (notBefore !== null) tests.push({ ground: "given", day: notBefore });
  if (end !== null) tests.push({ ground: "place free", day: plus(end, 1) });
  return tests;
}

/** Sowings of one planting in a season, at the most. Source: house rule. */
export const MOST_SOWINGS = 12;

/** Days into a season without frost from which a hold for cold soil is counted. Source: house rule. */
const NO_FROST_DAYS = 90;

/** The later of a stop day and what the gardener herself asked for: her word ends no hold early. */
function stopAfter(growing: Growing, frost: Day | null, own: readonly Test[]): Day {
  const from = frost ?? plus(seasonOf(growing.plan).from, NO_FROST_DAYS);
  return latest(plus(from, STOP_DAYS), ...own.map((test) => test.day));
}

/**
 * When raised plants go out: the frost day at the risk for raised plants, no credit for a cover; then soil
 * warm enough; then what the gardener asked for. Holds end at the stop day.
 */
export function settingOutDay(growing: Growing): Reckoned | null {
  const { crop, planting, plan } = growing;
  if (planting.fixed.out !== null)
    return decide([{ ground: "given", day: planting.fixed.out }], null);
  const facts = crop.settingOut;
  if (!facts) return null;
  const own = ownTests(growing);
  const tests: Test[] = [...own];
  const dates = plan.site.lastFrost;
  const tender = isTender(crop);
  const frost = dates
    ? plus(
        tender ? lastFrostAt(dates, plan.risk.raised) : dates.usual,
        facts.weeksFromLastFrost.value * 7,
      )
    : null;
  if (frost !== null) tests.push({ ground: "last frost", day: frost });
  if (facts.soilMinC) {
    const warm = firstWarmSoil(growing, facts.soilMinC.value);
    tests.push({ ground: "soil", day: warm ?? seasonOf(plan).to });
  }
  if (tests.length === 0) tests.push({ ground: "time of year", day: seasonOf(plan).from });
  return decide(tests, stopAfter(growing, frost, own));
}

/** When seed or tuber goes into the ground: soil on the day it goes in, frost on the day it comes up. */
export function plantingOutDay(growing: Growing, facts: Outdoors): Reckoned {
  const { crop, planting, plan } = growing;
  if (planting.fixed.start !== null)
    return decide([{ ground: "given", day: planting.fixed.start }], null);
  const named: readonly Test[] = planting.within
    ? [{ ground: "given", day: planting.within.from }]
    : [];
  const own = [...ownTests(growing), ...named];
  const tests: Test[] = [...own];
  const warm = firstWarmSoil(growing, facts.soilMinC.value) ?? seasonOf(plan).to;
  tests.push({ ground: "soil", day: warm });
  const dates = plan.site.lastFrost;
  if (!dates || !facts.weeksFromLastFrost) return decide(tests, stopAfter(growing, null, own));
  const safe = lastFrostAt(dates, plan.risk.seed);
  const frost = isTender(crop)
    ? firstUpAfter(growing, warm, safe)
    : plus(safe, facts.weeksFromLastFrost.value * 7);
  tests.push({ ground: "last frost", day: frost });
  return decide(tests, stopAfter(growing, latest(frost, safe), own));
}

/** The first day on or after `from` that tender seed may be sown so as to be up no sooner than the safe day. */
function firstUpAfter(growing: Growing, from: Day, safe: Day): Day {
  const { comesUp } = growing.crop;
  if (comesUp.kind === "days") return latest(from, plus(safe, -comesUp.days.value[0]));
  for (let day = from; day < safe; day = plus(day, 1)) {
    const up = upOn(comesUp.row, day, (at) => growing.climate.soilC(at, growing.bed));
    if (up !== null && up >= safe) return day;
  }
  return latest(from, safe);
}

/** When cloves go in for the winter, inside what the gardener asked for; null in a place without frost or without such a crop. */
export function autumnPlantingDay(growing: Growing): Reckoned | null {
  const { crop, planting, plan } = growing;
  if (planting.fixed.start !== null)
    return decide([{ ground: "given", day: planting.fixed.start }], null);
  const dates = plan.site.firstFrost;
  const own = ownTests(growing);
  const { within } = planting;
  if (!crop.overwinter || !dates)
    return within ? decide([{ ground: "given", day: within.from }, ...own], null) : null;
  const [least, most] = crop.overwinter.plantDaysAfterKillingFrost.value;
  const frost = plus(killingFrost(dates), (least + most) / 2);
  if (!within) return decide([{ ground: "first frost", day: frost }, ...own], null);
  const inside = earliest(latest(frost, within.from), within.to);
  const ground = inside === frost ? "first frost" : "given";
  return decide([{ ground, day: inside }, ...own], null, ["first frost", "given"]);
}

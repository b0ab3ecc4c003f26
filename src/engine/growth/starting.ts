import { type Day, earliest, latest, plus } from "../../base/days/day.ts";
import { isTender } from "../../crops/crops.ts";
import type { Outdoors, SettingOut } from "../../crops/facts.ts";
import { seasonOf } from "../../garden/model/season.ts";
import { MOST_SOWINGS } from "../../garden/plan/doubts.ts";
import { killingFrost, lastFrostAt } from "../climate/frost.ts";
import { anchorKey } from "./anchors.ts";
import type { Growing } from "./growing.ts";
import { withinLimits } from "./limits.ts";
import { plantingMemo } from "./memo.ts";
import { decide, type Reckoned, type Test, throughSeasons } from "./reckoned.ts";
import { firstStop, stopDay } from "./stopping.ts";
import { upFrom } from "./up.ts";
import { firstWarmSoil } from "./warm-soil.ts";

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

/** The tests decided; a hold that would end at the first stop is looked at again, whether the season can spare more. */
function held(growing: Growing, tests: readonly Test[], first: Day): Reckoned {
  const reckoned = decide(tests, first);
  return reckoned.stopped ? decide(tests, stopDay(growing, first)) : reckoned;
}

const outs = plantingMemo<string, Reckoned | null>();
const starts = plantingMemo<string, Reckoned>();

/** What of a planting's own wishes its days hang on beside the plan: when the place it follows is free. */
const wishes = (own: readonly Test[]) => own.map(({ day }) => day).join();

/**
 * When raised plants go out: the frost day at the risk for raised plants, no credit for a cover; then soil
 * warm enough; then what the gardener asked for. Holds end at the stop day.
 */
export function settingOutDay(growing: Growing): Reckoned | null {
  const own = ownTests(growing);
  return outs(growing, wishes(own), () => reckonOut(growing, own));
}

function reckonOut(growing: Growing, own: readonly Test[]): Reckoned | null {
  const { crop, planting } = growing;
  if (planting.fixed.out !== null)
    return decide([{ ground: "given", day: planting.fixed.out }], null);
  const facts = crop.settingOut;
  if (!facts) return null;
  const frost = settingOutFrost(growing, facts);
  const stop = firstStop(growing, frost, own);
  return throughSeasons(growing, (warmerK) =>
    held(growing, [...own, ...settingOutTests(growing, facts, { frost, warmerK })], stop),
  );
}

/** The frost day of raised plants: at their own risk for what frost kills, the usual one for the rest; null without frost. */
function settingOutFrost({ crop, plan }: Growing, facts: SettingOut): Day | null {
  const dates = plan.site.lastFrost;
  if (!dates) return null;
  const day = isTender(crop) ? lastFrostAt(dates, plan.risk.raised) : dates.usual;
  return plus(day, facts.weeksFromLastFrost.value * 7);
}

function settingOutTests(
  growing: Growing,
  { soilMinC, weeksFromLastFrost: weeks }: SettingOut,
  { frost, warmerK }: { readonly frost: Day | null; readonly warmerK: number },
): readonly Test[] {
  const { from, to } = seasonOf(growing.plan);
  const tests: Test[] = [];
  if (frost !== null)
    tests.push({ ground: "last frost", day: frost, frost: plus(frost, -7 * weeks.value) });
  if (soilMinC)
    tests.push({ ground: "soil", day: firstWarmSoil(growing, soilMinC.value, warmerK) ?? to });
  return tests.length > 0 ? tests : [{ ground: "time of year", day: from }];
}

/**
 * When seed or tuber goes into the ground: soil on the day it goes in, frost on the day it comes up, and where that
 * day would bring it into heat, long days or cold that makes it bolt, the next day that does not.
 */
export function plantingOutDay(growing: Growing, facts: Outdoors): Reckoned {
  const own = ownTests(growing);
  return starts(growing, wishes(own), () => reckonStart(growing, facts, own));
}

function reckonStart(growing: Growing, facts: Outdoors, wished: readonly Test[]): Reckoned {
  const { planting } = growing;
  if (planting.fixed.start !== null)
    return decide([{ ground: "given", day: planting.fixed.start }], null);
  const named: readonly Test[] = planting.within
    ? [{ ground: "given", day: planting.within.from }]
    : [];
  const own = [...wished, ...named];
  const reckoned = throughSeasons(growing, (warmerK) =>
    decideOutdoors(growing, facts, { own, warmerK }),
  );
  return planting.start === "seed outdoors"
    ? withinLimits(
        growing,
        reckoned,
        () => decideOutdoors(growing, facts, { own: [], warmerK: 0 }).day,
      )
    : reckoned;
}

type Outside = { readonly own: readonly Test[]; readonly warmerK: number };

function decideOutdoors(growing: Growing, facts: Outdoors, { own, warmerK }: Outside): Reckoned {
  const { crop, plan } = growing;
  const warm = firstWarmSoil(growing, facts.soilMinC.value, warmerK) ?? seasonOf(plan).to;
  const soil: Test = { ground: "soil", day: warm };
  const dates = plan.site.lastFrost;
  if (!dates || !facts.weeksFromLastFrost)
    return held(growing, [...own, soil], firstStop(growing, null, own));
  const safe = lastFrostAt(dates, plan.risk.seed);
  const weeks = facts.weeksFromLastFrost.value;
  const frost = isTender(crop)
    ? firstUpAfter(growing, { from: warm, warmerK }, plus(safe, 7 * Math.max(0, weeks)))
    : plus(safe, 7 * weeks);
  const stop = firstStop(growing, latest(frost, safe), own);
  return held(growing, [...own, soil, { ground: "last frost", day: frost, frost: safe }], stop);
}

/** The first day on or after `from` that tender seed may be sown so as to be up no sooner than the safe day: the frost day, or for what wants no cold at all its weeks after that. */
function firstUpAfter(
  growing: Growing,
  { from, warmerK }: { readonly from: Day; readonly warmerK: number },
  safe: Day,
): Day {
  const { comesUp } = growing.crop;
  if (comesUp.kind === "days") return latest(from, plus(safe, -comesUp.days.value[0]));
  for (let day = from; day < safe; day = plus(day, 1)) {
    const up = upFrom(growing, day, warmerK);
    if (up !== null && up >= safe) return day;
  }
  return latest(from, safe);
}

/**
 * When cloves go in for the winter, by its middle at the latest, inside what the gardener asked for; null in a place
 * without frost or without such a crop.
 */
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
  const after = plus(killingFrost(dates, plan.site.killingFrost), (least + most) / 2);
  // Where winter is a few weeks, that would be past its last frost, and the cloves would stand a whole year.
  const frost = earliest(after, seasonOf(plan).to);
  if (!within) return decide([{ ground: "first frost", day: frost }, ...own], null);
  const inside = earliest(latest(frost, within.from), within.to);
  const ground = inside === frost ? "first frost" : "given";
  return decide([{ ground, day: inside }, ...own], null, ["first frost", "given"]);
}

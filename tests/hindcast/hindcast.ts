import { type Day, plus } from "../../src/base/days/day.ts";
import { climateOf, type ObservedWeather } from "../../src/engine/climate/climate.ts";
import { type Anchor, type AnchorAct, anchorKey } from "../../src/engine/growth/anchors.ts";
import { packetDaysToUp } from "../../src/engine/growth/clock.ts";
import type { DateDecision } from "../../src/engine/growth/date-decision.ts";
import { isReached, type Milestone } from "../../src/engine/growth/milestones.ts";
import { ripeMilestone } from "../../src/engine/growth/ripe.ts";
import type { SowingContext } from "../../src/engine/growth/sowing-context.ts";
import { plantingOutDay, settingOutDay } from "../../src/engine/growth/starting.ts";
import { upMilestone } from "../../src/engine/growth/up.ts";
import type { Plan } from "../../src/garden/model/plan.ts";
import { planOf } from "../gardens.ts";
import { must, ours } from "../sources/ours.ts";
import { CROPS, lineOf, packetOf } from "./crops.ts";
import { type Known, knownBefore, observedIn, STATIONS, type Station, YEARS } from "./station.ts";

/** The stages that are held against weather, in the order they are reached. */
export const STAGES = ["sowing", "setting out", "up", "first harvest"] as const;

/** One of them. */
export type Stage = (typeof STAGES)[number];

/** A stage of a crop in a year of a station: what was told before the year, and what its own weather brought. */
export type Case = {
  readonly station: string;
  readonly year: number;
  readonly crop: string;
  readonly stage: Stage;
  readonly early: Day;
  readonly usual: Day;
  readonly late: Day;
  /** The day by the year's own temperatures; null where they never bring it. */
  readonly came: Day | null;
  /** The day by a fixed number of days, as printed charts give it. */
  readonly charted: Day;
  /** Frost dates or a given day alone decide, whatever the weather: no spread, and the same day came. */
  readonly settled: boolean;
};

/** The plan of a station's gardener for a year that she knows nothing of yet. */
export function planBefore(station: Station, year: number, known: Known): Plan {
  const text = [
    `garden: Hindcast\nyear: ${year}\nmeasures: metric\nplace:\n`,
    `  clock: ${station.clock}\n  latitude: ${station.latitude}\n`,
    `  last frost: ${known.lastFrost}\n  first frost: ${known.firstFrost}\n`,
    "beds:\n  Bed:\n    is: 6 x 1.2 m\n    crops:\n",
    ...CROPS.map((key) => `      - ${lineOf(key)}\n`),
  ].join("");
  const plan = planOf(text);
  return { ...plan, site: { ...plan.site, normals: known.normals } };
}

/** Every case there is. */
export function hindcast(): readonly Case[] {
  return STATIONS.flatMap((station) => YEARS.flatMap((year) => casesOf(station, year)));
}

/** The cases of one year of a station; `observed` stands for what the year was like, where it is given. */
export function casesOf(
  station: Station,
  year: number,
  observed: ObservedWeather = observedIn(station, year),
): readonly Case[] {
  const plan = planBefore(station, year, knownBefore(station, year));
  return plan.plantings.flatMap(({ crop }) =>
    chainOf(plan, crop, observed).map((each) => ({ station: station.name, year, crop, ...each })),
  );
}

type Link = Omit<Case, "station" | "year" | "crop">;

/** A crop's stages, each counted from the day that was foreseen for it to go in. */
function chainOf(plan: Plan, crop: string, observed: ObservedWeather): readonly Link[] {
  const [before, after] = [growingIn(plan, crop, new Map()), growingIn(plan, crop, observed)];
  const start = goingIn(before);
  const [foreseen, own] = [startedOn(before, start), startedOn(after, start)];
  const comesUp = isSown(before) && before.crop.comesUp.kind === "table";
  const upByChart = plus(start.day, packetDaysToUp(before));
  const ripeByChart = plus(start.day, packetOf(before.crop));
  return [
    ...(isSown(before) ? [started("sowing", before, after)] : []),
    ...(before.crop.settingOut ? [started("setting out", raised(before), raised(after))] : []),
    ...(comesUp ? [compared("up", [upMilestone(foreseen), upMilestone(own)], upByChart)] : []),
    compared("first harvest", [ripeMilestone(foreseen), ripeMilestone(own)], ripeByChart),
  ];
}

/** The same planting raised indoors, where its kind can be. */
const raised = (growing: SowingContext): SowingContext => ({
  ...growing,
  planting: { ...growing.planting, start: "seed indoors" },
});

/** The day it goes in, foreseen and as it came: each by the same tests. */
function started(
  stage: "sowing" | "setting out",
  before: SowingContext,
  after: SowingContext,
): Link {
  const foreseen = goingIn(before);
  const came = goingIn(after).day;
  return linkOf(stage, { ...foreseen, usual: foreseen.day, came, charted: inByChart(before) });
}

function growingIn(plan: Plan, key: string, observed: ObservedWeather): SowingContext {
  return {
    ...{ plan, planting: must(plan.plantings.find(({ crop }) => crop === key)), crop: ours(key) },
    ...{ bed: must(plan.beds[0]), climate: climateOf(plan, [], observed) },
    ...{ sowing: 1, anchors: new Map(), observations: [], around: () => true },
  };
}

const isSown = ({ planting }: SowingContext) => planting.start !== "seed indoors";

const goingIn = (growing: SowingContext): DateDecision =>
  must(
    isSown(growing) ? plantingOutDay(growing, must(growing.crop.outdoors)) : settingOutDay(growing),
  );

/** So many weeks from the usual last frost, as planting charts have it. */
function inByChart(growing: SowingContext): Day {
  const { outdoors, settingOut } = growing.crop;
  const facts = isSown(growing) ? outdoors : settingOut;
  const { usual } = must(growing.plan.site.lastFrost);
  return plus(usual, must(facts?.weeksFromLastFrost).value * 7);
}

function startedOn(growing: SowingContext, { day, basis }: DateDecision): SowingContext {
  const act: AnchorAct = isSown(growing) ? "start" : "set out";
  const anchor: Anchor = { day, from: "placed", basis: basis, task: null };
  return { ...growing, anchors: new Map([[anchorKey(growing.planting.key, 1, act), anchor]]) };
}

type Days = Pick<Case, "early" | "usual" | "late" | "came" | "charted">;

function linkOf(stage: Stage, { early, usual, late, came, charted }: Days): Link {
  const settled = early === late && came === usual;
  return { stage, early, usual, late, came, charted, settled };
}

/** A stage foreseen and as it came. Throws where none was foreseen: every crop here ripens at both stations. */
function compared(
  stage: Stage,
  [foreseen, own]: readonly [Milestone, Milestone],
  charted: Day,
): Link {
  if (!isReached(foreseen)) throw new Error(foreseen.none);
  return linkOf(stage, { ...foreseen, came: isReached(own) ? own.usual : null, charted });
}

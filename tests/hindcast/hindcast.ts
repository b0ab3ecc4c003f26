import { type Day, plus } from "../../src/base/days/day.ts";
import { climateOf, type ObservedWeather } from "../../src/engine/climate/climate.ts";
import { type Anchor, type AnchorAct, anchorKey } from "../../src/engine/growth/anchors.ts";
import { packetDaysToUp } from "../../src/engine/growth/clock.ts";
import type { DateDecision } from "../../src/engine/growth/date-decision.ts";
import { isReached, type Milestone } from "../../src/engine/growth/milestones.ts";
import { ripeInSeasons, ripeMilestone } from "../../src/engine/growth/ripe.ts";
import type { SowingContext } from "../../src/engine/growth/sowing-context.ts";
import { plantingOutDay, settingOutDay } from "../../src/engine/growth/starting.ts";
import { upMilestone } from "../../src/engine/growth/up.ts";
import type { Plan } from "../../src/garden/model/plan.ts";
import { seasonOf } from "../../src/garden/model/season.ts";
import { planOf } from "../gardens.ts";
import { CLIMATES, planAt, type Told, temperatureLines } from "../sources/climates.ts";
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

/** The plan of a station's gardener for a year that she knows nothing of yet, as far as she tells what she knows. */
export function planBefore(
  station: Station,
  year: number,
  known: Known,
  told: Told = "means",
): Plan {
  const text = [
    `garden: Hindcast\nyear: ${year}\nmeasures: metric\nplace:\n`,
    `  clock: ${station.clock}\n  latitude: ${station.latitude}\n`,
    `  last frost: ${known.lastFrost}\n  first frost: ${known.firstFrost}\n`,
    told === "two numbers" ? temperatureLines(known.normals) : "",
    CROP_LINES,
  ].join("");
  const plan = planOf(text);
  return told === "means" ? { ...plan, site: { ...plan.site, normals: known.normals } } : plan;
}

/** Every crop of the hindcast in one bed. */
const CROP_LINES = [
  "beds:\n  Bed:\n    is: 6 x 1.2 m\n    crops:\n",
  ...CROPS.map((key) => `      - ${lineOf(key)}\n`),
].join("");

/** Every case of the eight station years, told so much. */
export function hindcast(told: Told = "means"): readonly Case[] {
  return STATIONS.flatMap((station) => YEARS.flatMap((year) => casesOf(station, year, { told })));
}

/** The published stations with frost on usual dates, whose own means stand for the year that came. */
export const PUBLISHED = CLIMATES.filter(({ frosts }) => frosts !== null && frosts[0] !== "none");

/** Every case of the published stations, told so much: by their plan, and by their own monthly means. */
export function hindcastPublished(told: Exclude<Told, "means">): readonly Case[] {
  return PUBLISHED.flatMap((station) => {
    const [before, after] = [
      planAt(station, told, CROP_LINES),
      planAt(station, "means", CROP_LINES),
    ];
    return before.plantings.flatMap(({ crop }) =>
      chainOf(growingIn(before, crop, NOTHING), growingIn(after, crop, NOTHING)).map((each) => ({
        ...{ station: station.name, year: before.year, crop, ...each },
      })),
    );
  });
}

const NOTHING: ObservedWeather = new Map();

/** The cases of one year of a station; `observed` stands for what the year was like, where it is given. */
export function casesOf(
  station: Station,
  year: number,
  { told = "means", observed = observedIn(station, year) }: CaseInput = {},
): readonly Case[] {
  const known = knownBefore(station, year);
  const before = planBefore(station, year, known, told);
  const after = planBefore(station, year, known);
  return before.plantings.flatMap(({ crop }) =>
    chainOf(growingIn(before, crop, NOTHING), growingIn(after, crop, observed)).map((each) => ({
      ...{ station: station.name, year, crop, ...each },
    })),
  );
}

type CaseInput = { readonly told?: Told; readonly observed?: ObservedWeather };

type Link = Omit<Case, "station" | "year" | "crop">;

/** A crop's stages, each counted from the day that was foreseen for it to go in. */
function chainOf(before: SowingContext, after: SowingContext): readonly Link[] {
  const start = goingIn(before);
  const [foreseen, own] = [startedOn(before, start), startedOn(after, start)];
  const comesUp = isSown(before) && before.crop.comesUp.kind === "table";
  const upByChart = plus(start.day, packetDaysToUp(before));
  const ripeByChart = plus(start.day, packetOf(before.crop));
  return [
    ...(isSown(before) ? [started("sowing", before, after)] : []),
    ...(before.crop.settingOut ? [started("setting out", raised(before), raised(after))] : []),
    ...(comesUp ? compared("up", [upMilestone(foreseen), upMilestone(own)], upByChart) : []),
    ...compared("first harvest", [ripeOrMaybe(foreseen), ripeMilestone(own)], ripeByChart),
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
    ...{ sowing: 1, anchors: new Map(), observations: [], around: () => true, soFar: null },
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

/** Where only a warm season or the warm side of a rough curve brings it, it is told as from then on, till the season ends. */
function ripeOrMaybe(context: SowingContext): Milestone {
  const ripe = ripeMilestone(context);
  if (isReached(ripe)) return ripe;
  const seasons = ripeInSeasons(context);
  const { to } = seasonOf(context.plan);
  const early = "none" in seasons ? null : seasons.warm;
  return early === null ? ripe : { early, usual: to, late: to, basis: ["warmth"], seen: false };
}

/** A stage foreseen and as it came; no case where it was foreseen never to come, and never came. */
function compared(
  stage: Stage,
  [foreseen, own]: readonly [Milestone, Milestone],
  charted: Day,
): readonly Link[] {
  const came = isReached(own) ? own.usual : null;
  if (isReached(foreseen)) return [linkOf(stage, { ...foreseen, came, charted })];
  if (came === null) return [];
  const never = { early: plus(came, NEVER_DAYS), usual: plus(came, NEVER_DAYS) };
  return [linkOf(stage, { ...never, late: plus(came, NEVER_DAYS), came, charted })];
}

/** How far off a stage counts as that was foreseen never to come and came [days]. */
const NEVER_DAYS = 60;

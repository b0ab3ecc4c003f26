import { type Day, latest } from "../../base/index.ts";
import { cropFor } from "../../crops/index.ts";
import { bedOf, isRaised, type Planting } from "../../garden/model/index.ts";
import { type Anchor, type AnchorAct, type Anchors, anchorKey } from "../growth/anchors.ts";
import { isReached, type Milestone } from "../growth/milestones.ts";
import { observationsAbout } from "../growth/own-observations.ts";
import { comparePacket } from "../growth/packet.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { upMilestone } from "../growth/up.ts";
import type { WholeGarden } from "../practices/practice.ts";
import { objectOf } from "../practices/task.ts";
import { rowCm, spacingCm } from "../rules/spacing.ts";
import type { ScheduledTask } from "../schedule/scheduled-task.ts";
import { coverSpansOf } from "./cover-spans.ts";
import { fullAndEnd } from "./ends.ts";
import { hardeningSteps } from "./hardening-steps.ts";
import type { ActDay, PlantingRecord, SowingRecord, Spacing } from "./planting-record.ts";

/** A plan's season after it was scheduled: the acts of all years, and the tasks of a planting by its key. */
export type ScheduledSeason = Pick<WholeGarden, "plan" | "climate" | "observations"> & {
  readonly anchors: Anchors;
  readonly tasksOf: (planting: string) => readonly ScheduledTask[];
};

/** What becomes of each planting of a season's plan, in the plan's order. */
export function plantingRecordsOf(season: ScheduledSeason): readonly PlantingRecord[] {
  return season.plan.plantings.map((planting) => plantingRecordOf(planting, season));
}

function plantingRecordOf(planting: Planting, season: ScheduledSeason): PlantingRecord {
  const context = firstContext(planting, season);
  const tasks = season.tasksOf(planting.key);
  const numbers = context ? sowingNumbersIn(tasks, planting) : [];
  const sowings = numbers.flatMap((sowing) =>
    context ? sowingRecordOf({ ...context, sowing }, tasks) : [],
  );
  const packet = context && sowings.length > 0 ? comparePacket(context) : null;
  const hardening = hardeningSteps(tasks);
  const covers = context ? coverSpansOf(context, tasks) : [];
  const name = context ? objectOf(context) : (planting.name ?? planting.written);
  const spacing = context ? spacingOf(context) : null;
  const { key, bed } = planting;
  return { planting: key, name, spacing, bed, sowings, covers, hardening, packet };
}

function spacingOf({ planting, crop }: SowingContext): Spacing | null {
  const apartCm = spacingCm(crop, planting);
  return apartCm === 0 ? null : { apartCm, rowCm: rowCm(crop, apartCm) };
}

/** The first sowing of a planting; null for a crop that the facts do not have. */
function firstContext(planting: Planting, season: ScheduledSeason): SowingContext | null {
  const { plan, climate, anchors, observations } = season;
  const crop = cropFor(planting);
  if (!crop) return null;
  const bed = bedOf(plan, planting);
  return {
    plan,
    planting,
    crop,
    bed,
    sowing: 1,
    climate: climate.at(bed),
    anchors,
    observations: observationsAbout(observations, planting.key),
    around: () => true,
    soFar: null,
  };
}

/** Numbers of a planting's sowings, rising; none where it is never sown or planted. */
function sowingNumbersIn(
  tasks: readonly ScheduledTask[],
  { key, inSince }: Planting,
): readonly number[] {
  const numbers = new Set(inSince === null ? [] : [1]);
  for (const { task } of tasks)
    if (task.sets?.planting === key && task.sets.act !== "end") numbers.add(task.sets.sowing);
  return [...numbers].sort((a, b) => a - b);
}

/** The record of one sowing; none where the day it goes in is not known. */
function sowingRecordOf(
  context: SowingContext,
  tasks: readonly ScheduledTask[],
): readonly SowingRecord[] {
  const acts = actsOf(context);
  const [start, out] = [acts.start?.day ?? null, acts["set out"]?.day ?? null];
  const starts = start ?? out;
  if (starts === null) return [];
  const emerges = upMilestone(context);
  const up = upDay(context, starts, emerges);
  const moved = start !== null && out !== null && out > start ? out : null;
  const inPlace = latest(up, moved ?? up);
  const rest = fullAndEnd(context, tasks, { inPlace, end: acts.end?.day ?? null });
  const emergence = emergenceOf(context, emerges);
  const placed = moved ?? (isNeverSetOut(context) ? null : starts);
  return [{ sowing: context.sowing, starts, out: moved, placed, up, ...rest, acts, emergence }];
}

/** Whether a sowing that has no day to go out is one of seedlings, and not of what has long stood there. */
const isNeverSetOut = ({ planting }: SowingContext) =>
  planting.start === "seed indoors" && planting.inSince === null;

const ACTS: readonly AnchorAct[] = ["start", "set out", "end", "up", "flower", "first ripe"];

function actsOf({ planting, sowing, anchors }: SowingContext): SowingRecord["acts"] {
  const acts: Partial<Record<AnchorAct, ActDay>> = {};
  for (const act of ACTS) {
    const anchor: Anchor | undefined = anchors.get(anchorKey(planting.key, sowing, act));
    if (anchor) acts[act] = { day: anchor.day, from: anchor.from };
  }
  return acts;
}

/** When it is up; bought plants are up at once. */
function upDay({ planting }: SowingContext, starts: Day, up: Milestone): Day {
  return planting.start === "plants" || !isReached(up) ? starts : latest(starts, up.usual);
}

function emergenceOf({ planting }: SowingContext, up: Milestone): SowingRecord["emergence"] {
  if (isRaised(planting.start) || !isReached(up) || up.seen) return null;
  return { day: up.usual, late: up.late };
}

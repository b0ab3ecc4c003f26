import { type Day, earliest } from "../../base/index.ts";
import {
  type Life,
  type PlantingInYear,
  picksOf,
  plantingsIn,
  type SowingRecord,
  type TaskOutline,
  tasksBySubject,
  type YearCourse,
} from "../../engine/index.ts";

/** A year as it went: what stands where and when, and its tasks. */
export type ReviewedYear = YearCourse & { readonly scheduled: readonly TaskOutline[] };

/** A year as it went, and as it was planned before its diary. */
export type ComparedYear = { readonly year: ReviewedYear; readonly planned: YearCourse };

/**
 * The day of a stage: `written` in the diary or the plan, `supposed` where it should be over but nobody wrote it, `ahead`
 * where it is still to come. `planned` and `usual` are the same stage's days by the plan alone and in a usual year here,
 * null where there is none.
 */
export type StageRecord = {
  readonly day: Day;
  readonly known: "written" | "supposed" | "ahead";
  readonly planned: Day | null;
  readonly usual: Day | null;
};

/** The stages of one sowing in their order; null: it does not have that stage, or does not reach it. */
export type SowingHistory = {
  readonly sowing: number;
  readonly begun: StageRecord;
  readonly up: StageRecord | null;
  readonly out: StageRecord | null;
  readonly picked: StageRecord | null;
};

/** A planting with its sowings; none where the season has no day for it, or the crop is not known. */
export type PlantingHistory = Pick<PlantingInYear, "planting" | "crop" | "plan" | "packet"> & {
  readonly sowings: readonly SowingHistory[];
};

/** Every planting of every year with its sowings' stages as of a day, in the order of the plans. */
export function plantingHistoriesOf(
  { year, planned }: ComparedYear,
  today: Day,
): readonly PlantingHistory[] {
  const plannedLives = new Map(
    plantingsIn(planned).map(({ planting, lives }) => [planting.key, lives]),
  );
  const tasks = tasksBySubject(year.scheduled);
  return plantingsIn(year).map(({ planting, crop, plan, packet, lives }) => {
    const before = plannedLives.get(planting.key) ?? [];
    const sowings = lives.map((record) =>
      sowingHistoryOf({
        bought: planting.start === "plants",
        record,
        planned: before.find(({ sowing }) => sowing === record.sowing) ?? null,
        tasks: tasks.get(planting.key) ?? [],
        today,
      }),
    );
    return { planting, crop, plan, packet, sowings };
  });
}

/** A sowing, the same sowing as planned, and the tasks of its planting. */
type SowingHistoryInput = {
  readonly bought: boolean;
  readonly record: SowingRecord;
  readonly planned: Life | null;
  readonly tasks: readonly TaskOutline[];
  readonly today: Day;
};

type Act = keyof SowingRecord["acts"];

function sowingHistoryOf(input: SowingHistoryInput): SowingHistory {
  const { record, planned, bought } = input;
  const stage = (act: Act, day: Day, before: Day | null) => stageOf(input, act, { day, before });
  const begins = record.acts.start ? "start" : "set out";
  return {
    sowing: record.sowing,
    begun: stage(begins, record.starts, planned?.starts ?? null),
    up: bought ? null : stage("up", record.up, planned?.up ?? null),
    out: record.out === null ? null : stage("set out", record.out, planned?.out ?? null),
    picked: record.ready ? pickedOf(input, planned?.ready ? planned.full : null) : null,
  };
}

type ComparedDays = { readonly day: Day; readonly before: Day | null };

function stageOf(
  { record, tasks, today }: SowingHistoryInput,
  act: Act,
  { day, before }: ComparedDays,
): StageRecord {
  const known = record.acts[act];
  const from = known?.from ?? "placed";
  const sets = tasks.find(
    ({ task }) => task.sets?.sowing === record.sowing && task.sets.act === act,
  );
  return {
    day: known && from !== "placed" ? known.day : day,
    known: from !== "placed" ? "written" : day > today ? "ahead" : "supposed",
    planned: from === "given" ? null : before,
    usual: sets?.usual ?? null,
  };
}

/** The first harvest written down, else the first ripe one seen, else what was calculated. */
function pickedOf(input: SowingHistoryInput, planned: Day | null): StageRecord {
  const { record, tasks } = input;
  const picks = [...picksOf(tasks, record.sowing)].sort((a, b) => a.day - b.day);
  const done = picks.flatMap((pick) => (pick.done ? [pick.done.day] : []));
  const stage = stageOf(input, "first ripe", { day: record.full, before: planned });
  const usual = picks[0]?.usual ?? null;
  if (done.length === 0) return { ...stage, usual };
  return { ...stage, day: earliest(...done), known: "written", usual };
}

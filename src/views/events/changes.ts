import { type Day, sayDay } from "../../base/index.ts";
import { planOfTask, type ScheduledTask } from "../../engine/index.ts";
import type { Observation, ParsedDiaryLine } from "../../garden/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { changeText, goneText } from "./change-text.ts";
import { titleOf } from "./titles.ts";

/** A garden scheduled twice, the diary lines in between, and the first day that is compared. */
export type ScheduleComparison = {
  readonly before: readonly ScheduledTask[];
  readonly now: readonly ScheduledTask[];
  readonly diaryLines: readonly ParsedDiaryLine[];
  readonly since: Day;
};

/** What happened to one task (`id`), in words, and the diary lines that caused it. */
export type Change = {
  readonly id: string;
  readonly text: string;
  readonly why: readonly string[];
};

/**
 * Tasks that were done, moved or are new, in day order, then those that are gone. `plans` are all the garden's years.
 */
export function changesOf(
  { before, now, diaryLines, since }: ScheduleComparison,
  plans: readonly Plan[],
): readonly Change[] {
  const was = new Map(before.map((scheduled) => [scheduled.task.id, scheduled]));
  const is = new Map(now.map((scheduled) => [scheduled.task.id, scheduled]));
  const title = (scheduled: ScheduledTask) =>
    titleOf([scheduled], planOfTask(scheduled.task.id, plans));
  const why = (scheduled: ScheduledTask) => {
    const then = was.get(scheduled.task.id)?.task.window.due;
    const own = then !== scheduled.task.window.due || !is.has(scheduled.task.id);
    const lines = own ? reasons(scheduled, is, diaryLines) : [];
    return lines.length > 0 ? lines : ["to fit the jobs beside it"];
  };
  const byDay = now
    .filter((scheduled) => scheduled.day >= since)
    .sort((a, b) => a.day - b.day || (a.task.id < b.task.id ? -1 : 1));
  const gone = before
    .filter(({ task, day }) => !is.has(task.id) && day >= since)
    .sort((a, b) => a.day - b.day);
  const change = (scheduled: ScheduledTask, what: string, behind = why(scheduled)): Change => ({
    id: scheduled.task.id,
    text: `${title(scheduled)}: ${what}`,
    why: behind,
  });
  return [
    ...byDay.flatMap((scheduled): readonly Change[] => {
      const then = was.get(scheduled.task.id);
      const what = changeText(then, scheduled);
      if (what === null) return [];
      return [
        scheduled.done && !then?.done ? change(scheduled, what, []) : change(scheduled, what),
      ];
    }),
    ...gone.map((scheduled) => change(scheduled, goneText(scheduled))),
  ];
}

/**
 * The diary lines that a task's due day depends on: those of its planting and of what it was calculated from, else the
 * measurements in its bed.
 */
function reasons(
  scheduled: ScheduledTask,
  is: ReadonlyMap<string, ScheduledTask>,
  diaryLines: readonly ParsedDiaryLine[],
): readonly string[] {
  const about = subjectsBehind(scheduled, is);
  const own = diaryLines.filter(({ observations }) =>
    observations.some(
      (observation) => "planting" in observation && about.has(observation.planting),
    ),
  );
  const lines =
    own.length > 0
      ? own
      : diaryLines.filter(({ observations }) =>
          observations.some((observation) => isMeasuredFor(scheduled, observation)),
        );
  return lines.map(({ line }) => `${sayDay(line.day)}: ${line.text}`);
}

/**
 * Whether a measurement may have moved a task: rain moves watering alone, a temperature what is calculated from soil or
 * warmth; each in its bed, and only what is due after it.
 */
function isMeasuredFor({ task }: ScheduledTask, observation: Observation): boolean {
  if (observation.kind !== "measured" || observation.day > task.window.latest) return false;
  if (observation.what === "rain") return task.practice === "water";
  const warmed = task.basis.some((source) => source === "soil" || source === "warmth");
  return warmed && (observation.bed === null || observation.bed === task.bed);
}

/** Keys of the planting of a task and of all tasks it was calculated from. */
function subjectsBehind(
  scheduled: ScheduledTask,
  is: ReadonlyMap<string, ScheduledTask>,
): ReadonlySet<string> {
  const keys = new Set<string>();
  const look = ({ task }: ScheduledTask) => {
    keys.add(task.subject.key);
    for (const id of task.hangsOn) {
      const behind = is.get(id);
      if (behind && !keys.has(behind.task.subject.key)) look(behind);
    }
  };
  look(scheduled);
  return keys;
}

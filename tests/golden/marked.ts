import { type Day, isoOf } from "../../src/base/index.ts";
import { planOfTask, type ScheduledTask, type Year } from "../../src/engine/index.ts";
import { wholeGarden } from "../../src/garden/model/index.ts";
import { voiceOf } from "../../src/views/events/sentences.ts";
import { textOf } from "../../src/views/events/texts.ts";
import { titleOf } from "../../src/views/events/titles.ts";

/**
 * What a reviewer thought of a task as a gardener of that place would: `right`, `doubtful` or `wrong`, the last two
 * with the reason. `new` is what nobody has read yet.
 */
export type Mark = "right" | "doubtful" | "wrong" | "new";

/** A task written out: its mark, days, id, and the lines a calendar shows of it, the title first. */
export type MarkedTask = {
  readonly mark: Mark;
  /** Why it is doubtful or wrong; empty for the rest. */
  readonly reason: string;
  /** Day and first and last good day, `2027-05-08 (2027-05-01 to 2027-05-20)`. */
  readonly days: string;
  readonly id: string;
  readonly lines: readonly string[];
};

/** A year's tasks as they are written out, in day order, none of them marked yet. */
export function writtenTasks(year: Year): readonly MarkedTask[] {
  const voice = voiceOf(wholeGarden(year.plans), "household");
  return [...year.scheduled]
    .sort((a, b) => a.day - b.day || (a.task.id < b.task.id ? -1 : 1))
    .map((scheduled) => ({
      mark: "new" as const,
      reason: "",
      days: daysOf(scheduled),
      id: scheduled.task.id,
      lines: [
        titleOf([scheduled], planOfTask(scheduled.task.id, year.plans)),
        ...textOf(scheduled, voice).split("\n"),
      ],
    }));
}

function daysOf({ day, window }: ScheduledTask): string {
  const iso = (of: Day) => isoOf(of);
  return `${iso(day)} (${iso(window.earliest)} to ${iso(window.latest)})`;
}

/** Tasks as a text: a block each, the mark first; read back by `parseMarked`. */
export function formatMarked(tasks: readonly MarkedTask[]): string {
  return tasks
    .map(({ mark, reason, days, id, lines }) =>
      [
        `${reason === "" ? mark : `${mark}: ${reason}`}`,
        `${days} ${id}`,
        ...lines.map((line) => `  ${line}`),
        "",
      ].join("\n"),
    )
    .join("\n");
}

/** The tasks of such a text; throws on a block that is not of that form. */
export function parseMarked(text: string): readonly MarkedTask[] {
  return text
    .split("\n\n")
    .filter((block) => block.trim() !== "")
    .map((block) => {
      const [head = "", days = "", ...lines] = block.trimEnd().split("\n");
      const marked = /^(?<mark>right|doubtful|wrong|new)(?:: (?<reason>.+))?$/.exec(head)?.groups;
      const dated = /^(?<days>.+\)) (?<id>\S+)$/.exec(days)?.groups;
      if (!marked || !dated) throw new Error(`not a marked task:\n${block}`);
      return {
        mark: marked.mark as Mark,
        reason: marked.reason ?? "",
        days: dated.days ?? "",
        id: dated.id ?? "",
        lines: lines.map((line) => line.slice(2)),
      };
    });
}

/** The marks of before on what has neither other days nor other words since; everything else is to be read anew. */
export function keepMarks(
  tasks: readonly MarkedTask[],
  before: readonly MarkedTask[],
): readonly MarkedTask[] {
  const known = new Map(before.map((task) => [sameness(task), task]));
  return tasks.map((task) => {
    const old = known.get(sameness(task));
    return old ? { ...task, mark: old.mark, reason: old.reason } : task;
  });
}

const sameness = ({ days, id, lines }: MarkedTask) => JSON.stringify([days, id, lines]);

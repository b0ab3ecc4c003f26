import { type Day, sayDay } from "../../base/days/day.ts";
import type { Placed } from "../../engine/schedule/placed.ts";
import { planOfTask } from "../../engine/schedule/year-of.ts";
import type { UnderstoodLine } from "../../garden/diary/understand.ts";
import type { Plan } from "../../garden/model/plan.ts";
import { titleOf } from "./titles.ts";

/** A garden placed twice, the lines said in between, and the first day that is looked at. */
export type Twice = {
  readonly before: readonly Placed[];
  readonly now: readonly Placed[];
  readonly said: readonly UnderstoodLine[];
  readonly since: Day;
};

/** What became of one task (`id`), in words, and the lines of the diary behind it. */
export type Change = {
  readonly id: string;
  readonly said: string;
  readonly why: readonly string[];
};

/** What was done, moved or came new, in day order, then what fell away. `plans` are all the garden's years. */
export function changesOf(
  { before, now, said, since }: Twice,
  plans: readonly Plan[],
): readonly Change[] {
  const was = new Map(before.map((placed) => [placed.task.id, placed]));
  const is = new Map(now.map((placed) => [placed.task.id, placed]));
  const title = (placed: Placed) => titleOf([placed], planOfTask(placed.task.id, plans));
  const why = (placed: Placed) => {
    const then = was.get(placed.task.id)?.task.window.due;
    const own = then !== placed.task.window.due || !is.has(placed.task.id);
    const lines = own ? reasons(placed, is, said) : [];
    return lines.length > 0 ? lines : ["to fit the jobs beside it"];
  };
  const byDay = now
    .filter((placed) => placed.day >= since)
    .sort((a, b) => a.day - b.day || (a.task.id < b.task.id ? -1 : 1));
  const gone = before
    .filter(({ task, day }) => !is.has(task.id) && day >= since)
    .sort((a, b) => a.day - b.day);
  const change = (placed: Placed, what: string, behind = why(placed)): Change => ({
    id: placed.task.id,
    said: `${title(placed)}: ${what}`,
    why: behind,
  });
  return [
    ...byDay.flatMap((placed): readonly Change[] => {
      const then = was.get(placed.task.id);
      const day = sayDay(placed.day);
      if (placed.done && !then?.done) return [change(placed, `done ${day}`, [])];
      if (!then) return [change(placed, `new, ${day}`)];
      return then.day === placed.day ? [] : [change(placed, moved(then.day, placed.day))];
    }),
    ...gone.map((placed) => change(placed, `no longer, was ${sayDay(placed.day)}`)),
  ];
}

function moved(was: Day, is: Day): string {
  const days = Math.abs(is - was);
  const by = `${days} ${days === 1 ? "day" : "days"} ${is > was ? "later" : "sooner"}`;
  return `${sayDay(is)}, was ${sayDay(was)} (${by})`;
}

/** The diary's lines that a task's due day hangs on: those of its planting and of what it was reckoned from, else what was measured in its bed. */
function reasons(
  placed: Placed,
  is: ReadonlyMap<string, Placed>,
  said: readonly UnderstoodLine[],
): readonly string[] {
  const about = subjectsBehind(placed, is);
  const own = said.filter(({ facts }) =>
    facts.some((fact) => "planting" in fact && about.has(fact.planting)),
  );
  const { bed, grounds } = placed.task;
  const warmed = grounds.some((ground) => ground === "soil" || ground === "warmth");
  const measured = said.filter(({ facts }) =>
    facts.some((fact) => fact.kind === "measured" && (fact.bed === null || fact.bed === bed)),
  );
  const lines = own.length > 0 ? own : warmed || placed.task.practice === "water" ? measured : [];
  return lines.map(({ line }) => `${sayDay(line.day)}: ${line.text}`);
}

/** Keys of the planting of a task and of all tasks it was reckoned from. */
function subjectsBehind(placed: Placed, is: ReadonlyMap<string, Placed>): ReadonlySet<string> {
  const keys = new Set<string>();
  const look = ({ task }: Placed) => {
    keys.add(task.subject.key);
    for (const id of task.hangsOn) {
      const behind = is.get(id);
      if (behind && !keys.has(behind.task.subject.key)) look(behind);
    }
  };
  look(placed);
  return keys;
}

import { type Day, joinWords, sayMinute } from "../../base/index.ts";
import type { ScheduledTask } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { sayPart, voiceOf } from "../events/sentences.ts";
import { sentencesOf } from "./brief.ts";

/** One day of carrying out and bringing in: `10:00 to 11:00`, or from when where they stay out; who; what is that day's own. */
export type SheetRung = {
  readonly day: Day;
  readonly hours: string;
  readonly who: readonly string[];
  readonly how: string;
  readonly done: boolean;
};

/** Plants that are carried out and in day by day, in one place of the sheet; days rising, not empty. */
export type SheetLadder = {
  readonly title: string;
  readonly how: string;
  readonly rungs: readonly SheetRung[];
};

/**
 * The ladders of some days, one for all plants that go out and in on the same days at the same hours, in the order of
 * their first days.
 */
export function laddersOf(scheduled: readonly ScheduledTask[], plan: Plan): readonly SheetLadder[] {
  const alike = new Map<
    string,
    { readonly objects: Set<string>; readonly ladder: UntitledLadder }
  >();
  for (const rungs of bySubject(scheduled)) {
    const ladder = ladderOf(rungs, plan);
    const key = JSON.stringify(ladder);
    const known = alike.get(key) ?? { objects: new Set<string>(), ladder };
    for (const { task } of rungs) known.objects.add(task.title.object);
    alike.set(key, known);
  }
  return [...alike.values()]
    .map(({ objects, ladder }) => ({ title: `Harden off ${joinWords([...objects])}`, ...ladder }))
    .sort((a, b) => (a.rungs[0]?.day ?? 0) - (b.rungs[0]?.day ?? 0));
}

type UntitledLadder = Omit<SheetLadder, "title">;

function bySubject(scheduled: readonly ScheduledTask[]): Iterable<readonly ScheduledTask[]> {
  const subjects = new Map<string, ScheduledTask[]>();
  for (const each of scheduled) {
    const { key } = each.task.subject;
    subjects.set(key, [...(subjects.get(key) ?? []), each]);
  }
  return subjects.values();
}

function byDay(scheduled: readonly ScheduledTask[]): ReadonlyMap<Day, readonly ScheduledTask[]> {
  const days = new Map<Day, ScheduledTask[]>();
  for (const each of [...scheduled].sort((a, b) => a.day - b.day))
    days.set(each.day, [...(days.get(each.day) ?? []), each]);
  return days;
}

function ladderOf(scheduled: readonly ScheduledTask[], plan: Plan): UntitledLadder {
  const voice = voiceOf(plan, "household");
  const days = [...byDay(scheduled).values()];
  const ways = days.map((rungs) => {
    const lead = rungs.find(isOut) ?? rungs[0];
    return lead ? sentencesOf(sayPart(lead.task.say, "how", voice)) : [];
  });
  const often = ways.flat().filter((way) => countOf(way, ways) * 2 > days.length);
  const shared = [...new Set(often)].filter(() => days.length > 1);
  return {
    how: shared.join(" "),
    rungs: days.map((rungs, i) =>
      rungOf(
        rungs,
        (ways[i] ?? []).filter((way) => !shared.includes(way)),
      ),
    ),
  };
}

const isOut = ({ task }: ScheduledTask) => task.timed?.part === "out";

const countOf = (way: string, ways: readonly (readonly string[])[]) =>
  ways.filter((its) => its.includes(way)).length;

function rungOf(scheduled: readonly ScheduledTask[], own: readonly string[]): SheetRung {
  const out = scheduled.find(isOut) ?? null;
  const back = scheduled.find((each) => !isOut(each)) ?? null;
  const hours = [out, back].flatMap((each) => (each?.at ? [sayMinute(each.at.from)] : []));
  return {
    day: scheduled[0]?.day ?? (0 as Day),
    hours: hours.length === 1 && out ? `from ${hours[0]}` : hours.join(" to "),
    who: [...new Set(scheduled.flatMap(({ people }) => people))].sort(),
    how: own.join(" "),
    done: scheduled.every(({ done }) => done !== null),
  };
}

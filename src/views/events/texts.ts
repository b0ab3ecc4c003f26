import { capital, joinWords, plus, sayDay, sayWeekday } from "../../base/index.ts";
import type { ScheduledTask } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { sayEach, sayPart, type Voice } from "./sentences.ts";
import { bedName } from "./titles.ts";

/** A task's text is never longer than this, its link not counted; a session's twice that. */
export const LONGEST_TEXT = 450;
/** The longest text of a session. */
export const LONGEST_SESSION = 900;

/** Days that a season must differ from a usual one before the text says so. Source: house rule. */
const WORTH_SAYING_DAYS = 3;

/** How far this season is from a usual one, as a clause with its full stop; empty where the difference is small. */
export function seasonText({ task, window, usual, done }: ScheduledTask): string {
  if (usual === null || done || task.certainty === "fixed") return "";
  const days = window.due - usual;
  if (Math.abs(days) < WORTH_SAYING_DAYS) return "";
  return `${Math.abs(days)} days ${days > 0 ? "later" : "earlier"} than usual.`;
}

/** When the same job of the year before was done, as a sentence; empty where nobody wrote it down, and of what is done. */
export function lastYearText({ lastYear, done }: ScheduledTask): string {
  return lastYear === null || done ? "" : `Last year: ${sayDay(lastYear)}.`;
}

/** Days from which a day is told with its year, since without it might be the one before. Source: house rule. */
const A_YEAR_DAYS = 330;

/** The last good day, or that there is none to spare; empty where it would say nothing. */
export function lastDayText({ task, day, window, done }: ScheduledTask): string {
  if (done || task.rhythm === "warning" || task.rhythm === "timed") return "";
  if (window.latest > plus(day, A_YEAR_DAYS)) return `Fine till ${sayDay(window.latest, true)}.`;
  if (window.latest > day) return `Fine till ${sayWeekday(window.latest)}.`;
  return task.harm === "tonight" ? "Don't leave it a day longer." : "";
}

/** `Done 9 May, Oda.`, without the person for readers; empty of what is not done. */
export function doneText({ done }: ScheduledTask, voice: Voice): string {
  if (!done) return "";
  const by = done.by !== null && voice.audience === "household" ? `, ${voice.nameOf(done.by)}` : "";
  return `Done ${sayDay(done.day)}${by}.`;
}

/** `Right when: …`, the plant's or the soil's own sign; empty where there is none, and of what is done. */
export function signText({ task, done }: ScheduledTask, voice: Voice): string {
  if (done) return "";
  const mark = sayPart(task.say, "sign", voice);
  return mark === "" ? "" : `Right when: ${mark.charAt(0).toLowerCase()}${mark.slice(1)}`;
}

const spaced = (...parts: readonly string[]) => parts.filter((part) => part !== "").join(" ");

/**
 * A task's own text, a line each: done; how; right when; why now and how the season stands; the last good day;
 * a caution. What is done needs no sign and no reason any more. Lines are dropped from the end of that list, the caution last, until it is short enough.
 */
export function textOf(scheduled: ScheduledTask, voice: Voice): string {
  const say = scheduled.note ? [...scheduled.task.say, scheduled.note] : scheduled.task.say;
  const lines = [
    doneText(scheduled, voice),
    sayPart(say, "how", voice),
    signText(scheduled, voice),
    scheduled.done
      ? ""
      : spaced(sayPart(say, "why", voice), seasonText(scheduled), lastYearText(scheduled)),
    lastDayText(scheduled),
    sayPart(say, "caution", voice),
  ].filter((line) => line !== "");
  return shorten(lines, LONGEST_TEXT);
}

/** Lines joined, whole lines dropped from the third on until they fit. */
export function shorten(lines: readonly string[], longest: number): string {
  const text = lines.join("\n");
  if (text.length <= longest) return text;
  if (lines.length < 3) return clipped(withoutStub(lines, longest), longest);
  return shorten([...lines.slice(0, 2), ...lines.slice(3)], longest);
}

/** The least characters in which the beginning of a line is useful. Source: house rule. */
const WORTH_BEGINNING = 40;

/** Lines joined, without a last one of which only the first words would fit. */
function withoutStub(lines: readonly string[], longest: number): string {
  const whole = lines.join("\n");
  const first = lines.slice(0, -1).join("\n");
  const room = longest - first.length - 1;
  return lines.length > 1 && whole.length > longest && room < WORTH_BEGINNING ? first : whole;
}

function clipped(text: string, longest: number): string {
  if (text.length <= longest) return text;
  const cut = text.slice(0, longest - 1);
  const space = cut.lastIndexOf(" ");
  return `${cut.slice(0, space > longest / 2 ? space : longest - 1)}…`;
}

/** Lines in order while they fit into the characters with what stands between them; then `And 3 more.` */
export function asManyAsFit(
  lines: readonly string[],
  longest: number,
  between = "\n",
): readonly string[] {
  let kept = lines.reduce((sum, { length }) => sum + length + between.length, 0);
  if (kept - between.length <= longest) return lines;
  const more = (count: number) => `And ${count} more.`;
  let count = lines.length;
  do {
    count -= 1;
    kept -= (lines[count] ?? "").length + between.length;
  } while (count > 0 && kept + more(lines.length - count).length > longest);
  return [...lines.slice(0, count), more(lines.length - count)];
}

/** `Beets, Root bed`, or the object alone. */
function placeOf(scheduled: ScheduledTask, plan: Plan): string {
  const { object } = scheduled.task.title;
  const bed = scheduled.task.title.where === "bed" ? bedName(plan, scheduled.task.bed) : "";
  const name = bed === "" ? object : `${object}, ${bed}`;
  return capital(name);
}

/**
 * What the lines of similar tasks need: each one's own sentences on how, and whether each has its own last good day.
 */
type TaskLineOptions = {
  readonly plan: Plan;
  readonly voice: Voice;
  readonly own: ReadonlyMap<ScheduledTask, readonly string[]>;
  readonly lastDay: boolean;
};

/**
 * One line for one of several similar tasks: which, how, and until when; of how, the sentences that fit, the first
 * always.
 */
function lineOf(
  scheduled: ScheduledTask,
  { plan, voice, own, lastDay }: TaskLineOptions,
  longest: number,
): string {
  const ways = own.get(scheduled) ?? [];
  const line = (count: number) => {
    const last = lastDay ? lastDayText(scheduled) : "";
    const before = lastYearText(scheduled);
    const details = spaced(doneText(scheduled, voice), ...ways.slice(0, count), last, before);
    return details === ""
      ? `${placeOf(scheduled, plan)}.`
      : `${placeOf(scheduled, plan)}: ${details}`;
  };
  let count = ways.length;
  while (count > 1 && line(count).length > longest) count -= 1;
  return line(count);
}

/** Similar tasks done in the same way: which they are, then how, the sign and the earliest last good day once. */
function sameForAll(
  first: ScheduledTask,
  all: readonly ScheduledTask[],
  plan: Plan,
  voice: Voice,
): string {
  const lines = [
    `${[...new Set(all.map((each) => placeOf(each, plan)))].join("; ")}.`,
    doneText(first, voice),
    sayPart(first.task.say, "how", voice),
    signText(first, voice),
    lastDayText(soonest(all)),
    sayPart(first.task.say, "caution", voice),
  ].filter((line) => line !== "");
  return shorten(lines, LONGEST_TEXT);
}

/** Those without a line: by name where that fits, else their number. */
function restLine(rest: readonly ScheduledTask[], { plan }: TaskLineOptions, room: number): string {
  const named = `And ${joinWords([...new Set(rest.map((each) => placeOf(each, plan)))])}.`;
  return named.length <= room ? named : `And ${rest.length} more.`;
}

/** A line for each of several while they fit, an even share of room for each; then how many more. */
function linesInTurn(
  all: readonly ScheduledTask[],
  options: TaskLineOptions,
  longest: number,
): readonly string[] {
  const share = Math.floor(longest / all.length) - 1;
  const lines: string[] = [];
  for (const [i, each] of all.entries()) {
    const rest = all.length - i;
    const room = longest - lines.join("\n").length - (rest > 1 ? 24 : 0) - 1;
    const line = lineOf(each, options, share);
    if (line.length > room && i > 0) return [...lines, restLine(all.slice(i), options, room)];
    lines.push(clipped(line, Math.max(room, 60)));
  }
  return lines;
}

/** The one of several whose last good day comes first. Not empty. */
const soonest = (all: readonly ScheduledTask[]) =>
  all.reduce((a, b) => (b.window.latest < a.window.latest ? b : a));

/** The last good day, where it is the same for all and none of them is done; empty where it is not. */
function oneLastDay(all: readonly ScheduledTask[]): string {
  const [day = "", ...others] = new Set(all.map(lastDayText));
  return others.length === 0 ? day : "";
}

/**
 * The text of similar tasks of one event: for one its own; else a line each, in full where it fits and otherwise an
 * even share and the soonest last good day, and how many more where not all fit; then once what they have in common.
 */
export function textOfAll(all: readonly ScheduledTask[], plan: Plan, voice: Voice): string {
  const first = all[0];
  if (all.length === 1 && first) return textOf(first, voice);
  const ofEach = (each: ScheduledTask) =>
    `${sayPart(each.task.say, "how", voice)}${doneText(each, voice)}`;
  const same = new Set(all.map(ofEach)).size === 1;
  if (same && first) return sameForAll(first, all, plan, voice);
  const ways = all.map((each) => [each, sayEach(each.task.say, "how", voice)] as const);
  const shared = (ways[0]?.[1] ?? []).filter((way) => ways.every(([, its]) => its.includes(way)));
  const own = new Map(
    ways.map(([each, its]) => [each, its.filter((way) => !shared.includes(way))]),
  );
  const day = oneLastDay(all);
  const whole = linesAndEnd(all, { plan, voice, own, lastDay: day === "" }, [...shared, day]);
  if (whole !== null) return whole;
  const end = spaced(...shared, lastDayText(soonest(all)));
  const room = LONGEST_TEXT - (end === "" ? 0 : end.length + 1);
  return [...linesInTurn(all, { plan, voice, own, lastDay: false }, room), end]
    .filter((line) => line !== "")
    .join("\n");
}

/** A full line for each and below it what they have in common; null where that is too long. */
function linesAndEnd(
  all: readonly ScheduledTask[],
  options: TaskLineOptions,
  alike: readonly string[],
): string | null {
  const lines = [...all.map((each) => lineOf(each, options, LONGEST_TEXT)), spaced(...alike)];
  const text = lines.filter((line) => line !== "").join("\n");
  return text.length <= LONGEST_TEXT ? text : null;
}

import { type Minute, nearest, type Problem, WEEKDAYS, type Weekday } from "../../base/index.ts";
import type { Hours } from "../model/plan.ts";
import { diagnostic } from "./codes.ts";
import { splitWords, type Words } from "./tree.ts";

const ALL: readonly Weekday[] = [1, 2, 3, 4, 5, 6, 7];
const WORDS: Readonly<Record<string, readonly Weekday[]>> = {
  weekdays: [1, 2, 3, 4, 5],
  "every weekday": [1, 2, 3, 4, 5],
  weekends: [6, 7],
  weekend: [6, 7],
  "the weekend": [6, 7],
  "every day": ALL,
  everyday: ALL,
  daily: ALL,
  always: ALL,
};

const NEAR = [...WEEKDAYS, ...Object.keys(WORDS), ...WEEKDAYS.map((name) => name.slice(0, 3))];
const HOW = "Write days and hours such as Wed 18-19 and Sat 9-12, or every day but Tue";

/** `from` is inclusive, `to` exclusive [minutes of the day]. */
type Times = { readonly from: Minute; readonly to: Minute };
type HoursPiece = {
  readonly days: readonly Weekday[];
  readonly group: boolean;
  readonly times: Times | null;
};

/**
 * The hours that words give, in weekday order, then by hour: `Wed 18-19 and Sat 9-12`, `weekdays from 17:30 and
 * weekends`, `every day but Tue`, `Mon-Fri 6-8pm`, `Sat 9-12 and 14-16`. Days without hours have those of the named day
 * after them (`Mon and Wed 18-19`), else `allDay`. Problem: `hours-unclear` at the part that is not understood; the
 * others are still read.
 */
export function readHours(words: Words, allDay: Times, problems: Problem[]): readonly Hours[] {
  const pieces = splitWords(words, / *(?:, *and |,|;| and | & ) */);
  const read: HoursPiece[] = [];
  for (const piece of joinExceptions(pieces)) {
    const found = readPiece(piece.text, read.at(-1)?.days ?? null);
    if (found === null) {
      problems.push(unclearHours(piece));
      return [];
    }
    read.push(found);
  }
  return inWeekOrder(read, allDay);
}

/** In `every day but Tue and Wed` the days left out go on after `and` while only day names follow. */
function joinExceptions(pieces: readonly Words[]): readonly Words[] {
  const done: Words[] = [];
  for (const piece of pieces) {
    const last = done.at(-1);
    const goesOn =
      last && /\b(?:but|except)\b/i.test(last.text) && weekdayNamed(piece.text) !== null;
    if (goesOn) done[done.length - 1] = { ...last, text: `${last.text} & ${piece.text}` };
    else done.push(piece);
  }
  return done;
}

function unclearHours(piece: Words): Problem {
  const word = /^[^\d\s]+/.exec(piece.text)?.[0] ?? "";
  const near = word === "" ? null : nearest(word, NEAR);
  const advice = near && near.toLowerCase() !== word.toLowerCase() ? `Did you mean ${near}` : HOW;
  const is = `${piece.text.slice(0, 60) || "Nothing"} is not understood as days and hours`;
  return diagnostic("hours-unclear", piece.at, is, advice);
}

function readPiece(text: string, before: readonly Weekday[] | null): HoursPiece | null {
  const at = text.search(/(?:\bfrom |\bafter |\buntil |\btill |\bto (?=\d)|\bbefore |\d)/i);
  const named = (at < 0 ? text : text.slice(0, at)).trim().replace(/\s+at$/, "");
  const times = at < 0 ? null : readTimes(text.slice(at));
  if (at >= 0 && times === null) return null;
  if (named === "") return before && times ? { days: before, group: false, times } : null;
  const days = readWeekdays(named);
  return days && { days, group: weekdayNamed(named) === null, times };
}

function readWeekdays(text: string): readonly Weekday[] | null {
  const small = text.toLowerCase().trim();
  const but = /^(.*?),? +(?:but|except)(?: for)?(?: on)? +(.+)$/.exec(small);
  if (but) {
    const all = readWeekdays(but[1] ?? "");
    const out = (but[2] ?? "").split(/ & |, ?/).map(weekdayNamed);
    return all && !out.includes(null) ? all.filter((day) => !out.includes(day)) : null;
  }
  const range = /^([a-z]+)\.? ?(?:-|–| to ) ?([a-z]+)\.?$/.exec(small);
  if (range) return between(weekdayNamed(range[1] ?? ""), weekdayNamed(range[2] ?? ""));
  const known = Object.hasOwn(WORDS, small) ? WORDS[small] : undefined;
  const day = weekdayNamed(small.replace(/^every /, ""));
  return known ?? (day === null ? null : [day]);
}

function between(first: Weekday | null, last: Weekday | null): readonly Weekday[] | null {
  if (first === null || last === null) return null;
  return first <= last
    ? ALL.filter((day) => day >= first && day <= last)
    : ALL.filter((day) => day >= first || day <= last);
}

/** The weekday a name or its beginning means (`Wed`, `Saturdays`), or null; three letters at least. */
export function weekdayNamed(text: string): Weekday | null {
  const small = text.trim().toLowerCase().replace(/\.$/, "").replace(/days$/, "day");
  if (small.length < 3) return null;
  const index = WEEKDAYS.findIndex((name) => name.toLowerCase().startsWith(small));
  return index < 0 ? null : ((index + 1) as Weekday);
}

const TIME = String.raw`(\d{1,2})(?:[:.h](\d{2}))? ?(am|pm)?`;

function readTimes(text: string): Times | null {
  const both = new RegExp(`^(?:from )?${TIME} ?(?:-|–|to|until|till) ?${TIME}$`, "i").exec(text);
  if (both) {
    const to = minuteOfTime(both[4], both[5], both[6]);
    const from = minuteOfTime(both[1], both[2], both[3] ?? afternoon(both[1], both[4], both[6]));
    return from !== null && to !== null && from < to ? { from, to } : null;
  }
  const open = new RegExp(`^(?:from|after) ${TIME}(?: on)?$`, "i").exec(text);
  const start = open ? minuteOfTime(open[1], open[2], open[3]) : null;
  if (start !== null && start < 1440) return { from: start, to: 1440 };
  const shut = new RegExp(`^(?:until|till|to|before) ${TIME}$`, "i").exec(text);
  const end = shut ? minuteOfTime(shut[1], shut[2], shut[3]) : null;
  return end !== null && end > 0 ? { from: 0, to: end } : null;
}

/** `6-8pm` is six in the evening, `9-1pm` nine in the morning. */
function afternoon(from?: string, to?: string, half?: string): string | undefined {
  return half && Number(from) % 12 < Number(to) % 12
    ? half
    : half?.toLowerCase() === "pm"
      ? "am"
      : half;
}

/**
 * A time of the day [minutes], in 24 hours or with am and pm: `9`, `9:30`, `17:30`, `6pm`; null where it is no time.
 */
export function minuteOfTime(hour?: string, minutes?: string, half?: string): Minute | null {
  const h = Number(hour);
  const m = Number(minutes ?? 0);
  const late = half?.toLowerCase();
  if (late && (h < 1 || h > 12)) return null;
  const on24 = late ? (h % 12) + (late === "pm" ? 12 : 0) : h;
  const total = on24 * 60 + m;
  return m < 60 && total <= 1440 ? total : null;
}

function inWeekOrder(pieces: readonly HoursPiece[], allDay: Times): readonly Hours[] {
  const hours = pieces.flatMap((piece, index) => {
    const times = piece.times ?? timesAfter(pieces, index) ?? allDay;
    return piece.days.map((day) => ({ weekday: day, ...times }));
  });
  return hours.sort((a, b) => a.weekday - b.weekday || a.from - b.from);
}

function timesAfter(pieces: readonly HoursPiece[], index: number): Times | null {
  if (pieces[index]?.group) return null;
  const next = pieces.slice(index + 1).find((piece) => piece.group || piece.times !== null);
  return next && !next.group ? next.times : null;
}

import type { Quantity } from "../../base/quantities/quantity.ts";
import { quantityFrom } from "../../base/quantities/read.ts";
import type { Bed, DiaryLine, Plan } from "../model/plan.ts";
import { slug } from "../plan/names.ts";
import { type Deed, practiceFor, WAYS } from "./acts.ts";
import { factOfAnswer } from "./answers.ts";
import { deniedIn, endedIn, movedIn, type PutOff, putOffIn, undoneIn } from "./denials.ts";
import type { Fact } from "./fact.ts";
import { isDeed, settle } from "./settle.ts";
import { overwinters, type Subject, sayPlanting, subjectOf } from "./subjects.ts";

/**
 * What the lines of a garden's diary say, in their order; one line can say several things. `plans` are all its
 * years. What is not understood, or fits two plantings or none, is a note of that day with the reason where it
 * nearly fitted; nothing is dropped and nothing is an error.
 */
export function understand(lines: readonly DiaryLine[], plans: readonly Plan[]): readonly Fact[] {
  return lines.flatMap((line) => understandLine(line, plans));
}

/** Each line of a garden's diaries, in the order of the plans, and what it says by itself. */
export function lineByLine(plans: readonly Plan[]): readonly UnderstoodLine[] {
  return plans
    .flatMap(({ diary }) => diary)
    .map((line) => ({ line, facts: understandLine(line, plans) }));
}

/** A line of the diary and the facts in it. */
export type UnderstoodLine = { readonly line: DiaryLine; readonly facts: readonly Fact[] };

/** What holds of the diaries of a garden's years: what a later line takes back or puts right is left out. In day order. */
export function understood(plans: readonly Plan[]): readonly Fact[] {
  const lines = plans.flatMap((plan) => plan.diary);
  return settle(understand(lines, plans), plans).facts;
}

type Said = { readonly line: DiaryLine; readonly text: string; readonly by: string | null };

/** Longer lines [letters] are prose, not told deeds. Source: house rule. */
const MOST_LETTERS = 300;

function understandLine(line: DiaryLine, plans: readonly Plan[]): readonly Fact[] {
  if (line.answers) return [factOfAnswer(line)];
  if (line.text.length > MOST_LETTERS) return [note(line, null)];
  const said = whoSaid(line, plans);
  const whole = factsIn(said, said.text, plans);
  if (whole?.every(({ kind }) => kind !== "note")) return whole;
  const clauses = said.text.split(/[,;.] +(?:and +)?| and /);
  const each = clauses.map((clause) => factsIn(said, clause.trim(), plans));
  const all = each.flatMap((facts) => facts ?? []);
  const plain = clauses.length > 1 && each.every((facts) => facts !== null);
  if (plain && all.every(({ kind }) => kind !== "note")) return all;
  return whole ?? [note(line, null)];
}

function note({ day, text }: DiaryLine, why: string | null): Fact {
  return { kind: "note", day, text, why };
}

/** The line without who did it: `Oda: …`, `… by Oda`, `Oda thinned …`, `I …`. */
function whoSaid(line: DiaryLine, plans: readonly Plan[]): Said {
  const text = line.text
    .trim()
    .toLowerCase()
    .replace(/[.!]+$/, "")
    .replace(/\s+/g, " ");
  const people = plans.flatMap((plan) => plan.people);
  for (const { key, name } of people) {
    const small = name.toLowerCase();
    const before = [`${small}: `, `${small} has `, `${small} `].find((lead) =>
      text.startsWith(lead),
    );
    if (before) return { line, text: text.slice(before.length).trim(), by: key };
    const behind = [` by ${small}`, ` (${small})`, `, ${small}`].find((end) => text.endsWith(end));
    if (behind) return { line, text: text.slice(0, -behind.length).trim(), by: key };
  }
  return { line, text: text.replace(/^(?:i|we|i have|we have|i've|we've) (?=\S)/, ""), by: null };
}

const NOT_SO =
  /\b(?:not|no|never|nothing|none|yet|cannot|\w+n't|will|shall|should|must|tomorrow|if|need|needs|plan|want|nearly|almost|half)\b/;

/** The facts of one clause; null where it has none. A note in it says why it nearly had one. */
function factsIn(said: Said, text: string, plans: readonly Plan[]): readonly Fact[] | null {
  const measured = measuredIn(said.line, text, plans);
  if (measured) return [measured];
  return (
    undone(said, text, plans) ??
    denied(said, text, plans) ??
    ended(said, text, plans) ??
    deedsIn(said, text, plans)
  );
}

/** What is taken back, `undo: carrots up`. */
function undone(said: Said, text: string, plans: readonly Plan[]): readonly Fact[] | null {
  const what = undoneIn(text);
  if (what === null) return null;
  const facts = factsIn(said, what, plans) ?? [];
  const undo = facts.flatMap((fact): readonly Fact[] =>
    isDeed(fact) ? [{ kind: "undone", day: said.line.day, what: fact, text: said.line.text }] : [],
  );
  return undo.length > 0 ? undo : [note(said.line, `there is nothing to undo in ${what}`)];
}

/** What is not up, not ripe or not done yet, and jobs put off or left out; null where the line denies nothing that it names. */
function denied(said: Said, text: string, plans: readonly Plan[]): readonly Fact[] | null {
  const off = putOffIn(text);
  if (off) return [putOff(said, off, plans)];
  const deed = deniedIn(text);
  const facts = deed === null || NOT_SO.test(deed) ? null : deedsIn(said, deed, plans);
  const not = facts?.flatMap((fact) => notYet(fact)) ?? [];
  return not.length > 0 ? not : null;
}

function notYet(fact: Fact): readonly Fact[] {
  if (fact.kind === "seen") {
    const { day, planting, stage, sowing } = fact;
    return [{ kind: "not yet", day, planting, of: { stage }, sowing }];
  }
  if (fact.kind !== "done") return [];
  const { day, planting, practice, step } = fact;
  return [{ kind: "not yet", day, planting, of: { practice, step }, sowing: null }];
}

function putOff(said: Said, off: PutOff, plans: readonly Plan[]): Fact {
  const { day, text } = said.line;
  const subject = subjectOf(off.subject.replace(/^the /, ""), day, null, plans);
  if ("why" in subject) return note(said.line, subject.why);
  const { key: planting } = subject.planting;
  const { practice } = off;
  return off.left
    ? { kind: "left", day, planting, practice, text }
    : { kind: "not yet", day, planting, of: { practice, step: null }, sowing: subject.sowing };
}

/** What failed, was lost, or was moved to another bed; null where the line tells of no such thing. */
function ended(said: Said, text: string, plans: readonly Plan[]): readonly Fact[] | null {
  const { day, text: written } = said.line;
  const moved = movedIn(text);
  const told = moved ?? endedIn(text);
  // What failed is told by what did not come; the rest is not so where the line says not.
  const failed = told !== null && "kind" in told && told.kind === "failed";
  if (told === null || (!failed && NOT_SO.test(text))) return null;
  const subject = subjectOf(told.subject.replace(/^(?:the|all the) /, ""), day, null, plans);
  if ("why" in subject)
    return moved || subject.why.includes(" fits ") ? [note(said.line, subject.why)] : null;
  const { planting, sowing } = subject;
  if ("kind" in told)
    return [{ kind: told.kind, day, planting: planting.key, sowing, text: written }];
  const bed = bedNamed(told.bed, plans);
  if (bed === null) return [note(said.line, `no bed is called ${told.bed}`)];
  return [{ kind: "moved", day, planting: planting.key, bed: bed.key, text: written }];
}

/** What was done or seen; null where the clause says nothing of the kind. A note in it says why it nearly did. */
function deedsIn(said: Said, text: string, plans: readonly Plan[]): readonly Fact[] | null {
  if (NOT_SO.test(text)) return null;
  let nearly: readonly Fact[] | null = null;
  for (const { pattern, deed, needless } of WAYS) {
    const hit = pattern.exec(text);
    if (!hit) continue;
    const name = hit.groups?.subject ?? hit.groups?.again;
    const facts = needless
      ? withoutName(said, deed, plans)
      : named(said, { deed, name: name ?? "" }, plans);
    if (facts.every(({ kind }) => kind !== "note")) return facts;
    nearly ??= facts;
  }
  return nearly;
}

/** `board off`, where one planting alone has a board. */
function withoutName(said: Said, deed: Deed, plans: readonly Plan[]): readonly Fact[] {
  const boarded = plans
    .flatMap(({ plantings }) => plantings)
    .filter(({ under }) => under.includes("board"));
  const [only, second] = boarded;
  if (!only || second) {
    const fits = boarded.map(sayPlanting).join(" and ");
    return [note(said.line, only ? `it fits ${fits}` : "no planting is under a board")];
  }
  return [factOf(said, deed, { planting: only, sowing: null })];
}

type Naming = { readonly deed: Deed; readonly name: string };

function named(said: Said, { deed, name }: Naming, plans: readonly Plan[]): readonly Fact[] {
  const act = deed.kind === "done" ? deed.act : null;
  const find = (text: string) => subjectOf(text, said.line.day, act, plans);
  const whole = find(name);
  if ("planting" in whole) return [factOf(said, deed, whole)];
  const several = name.split(/, *(?:and )?| and | & /);
  if (several.length < 2) return [note(said.line, whole.why)];
  const each = several.map((one) => find(one.trim()));
  const wrong = each.find((subject) => "why" in subject);
  if (wrong && "why" in wrong) return [note(said.line, wrong.why)];
  return each.map((subject) => factOf(said, deed, subject));
}

function factOf({ line, by }: Said, deed: Deed, subject: Subject): Fact {
  if ("why" in subject) return note(line, subject.why);
  const { planting, sowing } = subject;
  const { day } = line;
  if (deed.kind === "seen")
    return { kind: "seen", day, planting: planting.key, stage: deed.stage, sowing };
  const again = deed.act === "sow" && sowing !== null && sowing > 1 && planting.repeat !== null;
  const step = again ? String(sowing) : deed.step;
  const work = practiceFor(again ? "sow again" : deed.act, step, planting, overwinters(planting));
  if (work === null)
    return note(line, `${sayPlanting(planting)} is begun from ${planting.start} in the plan`);
  return { kind: "done", day, planting: planting.key, ...work, by };
}

const TEMPERATURE = "(?<value>-?\\d+(?:[.,]\\d+)?) ?(?<unit>°? ?[fc])";
const SOIL = new RegExp(
  `^(?:(?<first>.+?) )?soil(?: temperature| temp)?(?:,? (?:in|of|at) (?:the )?(?<bed>.+?))?,?(?: is| was| at|:)? ${TEMPERATURE}$`,
);
const LOW = new RegExp(
  `^(?:a |the )?(?:night'?s? )?(?:low|lowest|min|minimum)(?: of| was| is| last night| tonight|:)* ${TEMPERATURE}(?: last night)?$|^(?<value2>-?\\d+(?:[.,]\\d+)?) ?(?<unit2>°? ?[fc]) last night$`,
);

const LENGTH = '(?<value>[\\d.,/½¼¾ ]+?) ?(?<unit>mm|cm|in|inch|inches|ft|feet|")';
const RAIN = new RegExp(
  `^(?:(?:rain|rained|rainfall)(?: of| was)?:? ${LENGTH}|${LENGTH.replaceAll("?<value>", "?<value2>").replaceAll("?<unit>", "?<unit2>")} (?:of )?rain)(?: today| last night| yesterday)?$`,
);
const HEIGHT = new RegExp(
  `^(?<subject>.+?) (?:is |are |stand |stands |now )*${LENGTH}(?: tall| high)$`,
);

function rainIn(line: DiaryLine, text: string): Fact | null {
  const rain = RAIN.exec(text)?.groups;
  const value = rain && quantityFrom(`${rain.value ?? rain.value2} ${rain.unit ?? rain.unit2}`);
  return value ? { kind: "measured", day: line.day, what: "rain", bed: null, value } : null;
}

function heightIn(line: DiaryLine, text: string, plans: readonly Plan[]): Fact | null {
  const height = HEIGHT.exec(text)?.groups;
  const value = height && quantityFrom(`${height.value} ${height.unit}`);
  if (!value) return null;
  const subject = subjectOf((height.subject ?? "").replace(/^the /, ""), line.day, null, plans);
  if ("why" in subject) return note(line, subject.why);
  const { key: planting } = subject.planting;
  return { kind: "measured", day: line.day, what: "height", bed: null, planting, value };
}

function measuredIn(line: DiaryLine, text: string, plans: readonly Plan[]): Fact | null {
  const length = rainIn(line, text) ?? heightIn(line, text, plans);
  if (length) return length;
  const low = LOW.exec(text)?.groups;
  const night = low && degrees(low.value ?? low.value2, low.unit ?? low.unit2);
  if (night) return { kind: "measured", day: line.day, what: "low", bed: null, value: night };
  const soil = SOIL.exec(text)?.groups;
  const value = soil && degrees(soil.value, soil.unit);
  if (!soil || !value) return null;
  const where = soil.bed ?? soil.first?.replace(/^the /, "") ?? null;
  if (where === null) return { kind: "measured", day: line.day, what: "soil", bed: null, value };
  const bed = bedNamed(where, plans);
  if (bed === null) return note(line, `no bed is called ${where}`);
  return { kind: "measured", day: line.day, what: "soil", bed: bed.key, value };
}

function degrees(value = "", unit = ""): Quantity | null {
  return quantityFrom(`${value} °${unit.replace(/[° ]/g, "").toUpperCase()}`);
}

/** The bed of that name in the newest plan that has it; `south` is the South bed. */
function bedNamed(name: string, plans: readonly Plan[]): Bed | null {
  const key = slug(name);
  const beds = [...plans].sort((a, b) => b.year - a.year).flatMap((plan) => plan.beds);
  return (
    beds.find((bed) => [slug(bed.name), bed.key].includes(key)) ??
    beds.find((bed) => [slug(bed.name), bed.key].includes(`${key}-bed`)) ??
    null
  );
}

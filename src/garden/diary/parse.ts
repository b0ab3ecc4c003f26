import type { Quantity } from "../../base/quantities/quantity.ts";
import { quantityFrom } from "../../base/quantities/read.ts";
import { slug } from "../../base/text/slug.ts";
import { joinWords } from "../../base/text/words.ts";
import type { Bed, DiaryLine, Plan } from "../model/plan.ts";
import { DIARY_PHRASES, type PhraseMeaning, practiceFor } from "./acts.ts";
import { observationOfAnswer } from "./answers.ts";
import {
  deniedIn,
  endedIn,
  movedIn,
  type Postponement,
  postponementIn,
  undoneIn,
} from "./denials.ts";
import type { Observation } from "./observation.ts";
import { isActObservation, resolveConflicts } from "./resolve-conflicts.ts";
import { type DiarySubject, overwinters, sayPlanting, subjectOf } from "./subjects.ts";

/**
 * What the lines of a garden's diary say, in their order; one line can say several things. `plans` are all its
 * years. What is not understood, or fits two plantings or none, is a note of that day with the reason where it
 * nearly fitted; nothing is dropped and nothing is an error.
 */
export function parseDiary(
  lines: readonly DiaryLine[],
  plans: readonly Plan[],
): readonly Observation[] {
  return lines.flatMap((line) => parseDiaryLine(line, plans));
}

/** Each line of a garden's diaries, in the order of the plans, and what it says by itself. */
export function parseDiaryLines(plans: readonly Plan[]): readonly ParsedDiaryLine[] {
  return plans
    .flatMap(({ diary }) => diary)
    .map((line) => ({ line, observations: parseDiaryLine(line, plans) }));
}

/** A line of the diary and the facts in it. */
export type ParsedDiaryLine = {
  readonly line: DiaryLine;
  readonly observations: readonly Observation[];
};

/** What holds of the diaries of a garden's years: what a later line takes back or puts right is left out. In day order. */
export function observationsIn(plans: readonly Plan[]): readonly Observation[] {
  const lines = plans.flatMap((plan) => plan.diary);
  return resolveConflicts(parseDiary(lines, plans), plans).observations;
}

type AttributedLine = {
  readonly line: DiaryLine;
  readonly text: string;
  readonly by: string | null;
};

/** Longer lines [letters] are prose, not told deeds. Source: house rule. */
const MAX_LINE_LETTERS = 300;

function parseDiaryLine(line: DiaryLine, plans: readonly Plan[]): readonly Observation[] {
  if (line.answers) return [observationOfAnswer(line)];
  if (line.text.length > MAX_LINE_LETTERS) return [note(line, null)];
  const attributed = attributeLine(line, plans);
  const whole = observationsInClause(attributed, attributed.text, plans);
  if (whole?.every(({ kind }) => kind !== "note")) return whole;
  const clauses = attributed.text.split(/[,;.] +(?:and +)?| and /);
  const each = clauses.map((clause) => observationsInClause(attributed, clause.trim(), plans));
  const all = each.flatMap((observations) => observations ?? []);
  const plain = clauses.length > 1 && each.every((observations) => observations !== null);
  if (plain && all.every(({ kind }) => kind !== "note")) return all;
  return whole ?? [note(line, null)];
}

function note({ day, text }: DiaryLine, why: string | null): Observation {
  return { kind: "note", day, text, why };
}

/** The line without who did it: `Oda: …`, `… by Oda`, `Oda thinned …`, `I …`. */
function attributeLine(line: DiaryLine, plans: readonly Plan[]): AttributedLine {
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
function observationsInClause(
  attributed: AttributedLine,
  text: string,
  plans: readonly Plan[],
): readonly Observation[] | null {
  const measured = measurementIn(attributed.line, text, plans);
  if (measured) return [measured];
  return (
    parseUndo(attributed, text, plans) ??
    parseDenial(attributed, text, plans) ??
    parseEnding(attributed, text, plans) ??
    actObservationsIn(attributed, text, plans)
  );
}

/** What is taken back, `undo: carrots up`. */
function parseUndo(
  attributed: AttributedLine,
  text: string,
  plans: readonly Plan[],
): readonly Observation[] | null {
  const what = undoneIn(text);
  if (what === null) return null;
  const observations = observationsInClause(attributed, what, plans) ?? [];
  const undo = observations.flatMap((observation): readonly Observation[] =>
    isActObservation(observation)
      ? [
          {
            kind: "undone",
            day: attributed.line.day,
            what: observation,
            text: attributed.line.text,
          },
        ]
      : [],
  );
  return undo.length > 0 ? undo : [note(attributed.line, `there is nothing to undo in ${what}`)];
}

/** What is not up, not ripe or not done yet, and jobs put off or left out; null where the line denies nothing that it names. */
function parseDenial(
  attributed: AttributedLine,
  text: string,
  plans: readonly Plan[],
): readonly Observation[] | null {
  const postponement = postponementIn(text);
  if (postponement) return [observePostponement(attributed, postponement, plans)];
  const meaning = deniedIn(text);
  const observations =
    meaning === null || NOT_SO.test(meaning) ? null : actObservationsIn(attributed, meaning, plans);
  const not = observations?.flatMap((observation) => asNotYet(observation)) ?? [];
  return not.length > 0 ? not : null;
}

function asNotYet(observation: Observation): readonly Observation[] {
  if (observation.kind === "seen") {
    const { day, planting, stage, sowing } = observation;
    return [{ kind: "not yet", day, planting, of: { stage }, sowing }];
  }
  if (observation.kind !== "done") return [];
  const { day, planting, practice, step } = observation;
  return [{ kind: "not yet", day, planting, of: { practice, step }, sowing: null }];
}

function observePostponement(
  attributed: AttributedLine,
  postponement: Postponement,
  plans: readonly Plan[],
): Observation {
  const { day, text } = attributed.line;
  const subject = subjectOf(postponement.subject.replace(/^the /, ""), day, null, plans);
  if ("why" in subject) return note(attributed.line, subject.why);
  const { key: planting } = subject.planting;
  const { practice } = postponement;
  return postponement.leftOut
    ? { kind: "left", day, planting, practice, text }
    : { kind: "not yet", day, planting, of: { practice, step: null }, sowing: subject.sowing };
}

/** What failed, was lost, or was moved to another bed; null where the line tells of no such thing. */
function parseEnding(
  attributed: AttributedLine,
  text: string,
  plans: readonly Plan[],
): readonly Observation[] | null {
  const { day, text: written } = attributed.line;
  const moved = movedIn(text);
  const ending = moved ?? endedIn(text);
  // What failed is told by what did not come; the rest is not so where the line says not.
  const failed = ending !== null && "kind" in ending && ending.kind === "failed";
  if (ending === null || (!failed && NOT_SO.test(text))) return null;
  const subject = subjectOf(ending.subject.replace(/^(?:the|all the) /, ""), day, null, plans);
  if ("why" in subject)
    return moved || subject.why.includes(" fits ") ? [note(attributed.line, subject.why)] : null;
  const { planting, sowing } = subject;
  if ("kind" in ending)
    return [{ kind: ending.kind, day, planting: planting.key, sowing, text: written }];
  const bed = bedNamed(ending.bed, plans);
  if (bed === null) return [note(attributed.line, `no bed is called ${ending.bed}`)];
  return [{ kind: "moved", day, planting: planting.key, bed: bed.key, text: written }];
}

/** What was done or seen; null where the clause says nothing of the kind. A note in it says why it nearly did. */
function actObservationsIn(
  attributed: AttributedLine,
  text: string,
  plans: readonly Plan[],
): readonly Observation[] | null {
  if (NOT_SO.test(text)) return null;
  let nearly: readonly Observation[] | null = null;
  for (const { pattern, meaning, nameOptional } of DIARY_PHRASES) {
    const hit = pattern.exec(text);
    if (!hit) continue;
    const name = hit.groups?.subject ?? hit.groups?.again;
    const observations = nameOptional
      ? observeUnnamed(attributed, meaning, plans)
      : observeNamed(attributed, { meaning, name: name ?? "" }, plans);
    if (observations.every(({ kind }) => kind !== "note")) return observations;
    nearly ??= observations;
  }
  return nearly;
}

/** `board off`, where one planting alone has a board. */
function observeUnnamed(
  attributed: AttributedLine,
  meaning: PhraseMeaning,
  plans: readonly Plan[],
): readonly Observation[] {
  const boarded = plans
    .flatMap(({ plantings }) => plantings)
    .filter(({ under }) => under.includes("board"));
  const [only, second] = boarded;
  if (!only || second) {
    const fits = joinWords(boarded.map(sayPlanting));
    return [note(attributed.line, only ? `it fits ${fits}` : "no planting is under a board")];
  }
  return [observationOf(attributed, meaning, { planting: only, sowing: null })];
}

type NamedPhrase = { readonly meaning: PhraseMeaning; readonly name: string };

function observeNamed(
  attributed: AttributedLine,
  { meaning, name }: NamedPhrase,
  plans: readonly Plan[],
): readonly Observation[] {
  const act = meaning.kind === "done" ? meaning.act : null;
  const find = (text: string) => subjectOf(text, attributed.line.day, act, plans);
  const whole = find(name);
  if ("planting" in whole) return [observationOf(attributed, meaning, whole)];
  const several = name.split(/, *(?:and )?| and | & /);
  if (several.length < 2) return [note(attributed.line, whole.why)];
  const each = several.map((one) => find(one.trim()));
  const wrong = each.find((subject) => "why" in subject);
  if (wrong && "why" in wrong) return [note(attributed.line, wrong.why)];
  return each.map((subject) => observationOf(attributed, meaning, subject));
}

function observationOf(
  { line, by }: AttributedLine,
  meaning: PhraseMeaning,
  subject: DiarySubject,
): Observation {
  if ("why" in subject) return note(line, subject.why);
  const { planting, sowing } = subject;
  const { day } = line;
  if (meaning.kind === "seen")
    return { kind: "seen", day, planting: planting.key, stage: meaning.stage, sowing };
  const again = meaning.act === "sow" && sowing !== null && sowing > 1 && planting.repeat !== null;
  const step = again ? String(sowing) : meaning.step;
  const work = practiceFor(
    again ? "sow again" : meaning.act,
    step,
    planting,
    overwinters(planting),
  );
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

function rainIn(line: DiaryLine, text: string): Observation | null {
  const rain = RAIN.exec(text)?.groups;
  const value = rain && quantityFrom(`${rain.value ?? rain.value2} ${rain.unit ?? rain.unit2}`);
  return value ? { kind: "measured", day: line.day, what: "rain", bed: null, value } : null;
}

function heightIn(line: DiaryLine, text: string, plans: readonly Plan[]): Observation | null {
  const height = HEIGHT.exec(text)?.groups;
  const value = height && quantityFrom(`${height.value} ${height.unit}`);
  if (!value) return null;
  const subject = subjectOf((height.subject ?? "").replace(/^the /, ""), line.day, null, plans);
  if ("why" in subject) return note(line, subject.why);
  const { key: planting } = subject.planting;
  return { kind: "measured", day: line.day, what: "height", bed: null, planting, value };
}

function measurementIn(line: DiaryLine, text: string, plans: readonly Plan[]): Observation | null {
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

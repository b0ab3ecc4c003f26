import { slug } from "../plan/names.ts";
import type { Bed, DiaryLine, Plan } from "../plan/plan.ts";
import type { Quantity } from "../quantities/quantity.ts";
import { quantityFrom } from "../quantities/read.ts";
import { type Deed, practiceFor, WAYS } from "./acts.ts";
import type { Fact } from "./fact.ts";
import { overwinters, type Subject, sayPlanting, subjectOf } from "./subjects.ts";

/**
 * What the lines of a garden's diary say, in their order; one line can say several things. `plans` are all its
 * years. What is not understood, or fits two plantings or none, is a note of that day with the reason where it
 * nearly fitted; nothing is dropped and nothing is an error.
 */
export function understand(lines: readonly DiaryLine[], plans: readonly Plan[]): readonly Fact[] {
  return lines.flatMap((line) => understandLine(line, plans));
}

/** What the diaries of a garden's years say, in the order of the plans. */
export function understood(plans: readonly Plan[]): readonly Fact[] {
  return understand(
    plans.flatMap((plan) => plan.diary),
    plans,
  );
}

type Said = { readonly line: DiaryLine; readonly text: string; readonly by: string | null };

/** Longer lines [letters] are prose, not told deeds. Source: house rule. */
const MOST_LETTERS = 300;

function understandLine(line: DiaryLine, plans: readonly Plan[]): readonly Fact[] {
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

function measuredIn(line: DiaryLine, text: string, plans: readonly Plan[]): Fact | null {
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

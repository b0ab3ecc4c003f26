import {
  type DaySpan,
  type Measures,
  partsOf,
  sayDay,
  sayMinute,
  sayQuantity,
  sayWeekday,
} from "../../base/index.ts";
import type { Sentence, SentencePart, TextPiece } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";

/** Who reads: the household sees all; a reader's link gets nothing of people, absences, hours or places. */
export type Audience = "household" | "reader";

/** What is needed to put sentences into words. */
export type Voice = {
  readonly measures: Measures;
  readonly audience: Audience;
  readonly nameOf: (person: string) => string;
};

/** Voices by plan, cached. */
const voiceCache = new WeakMap<Plan, Partial<Record<Audience, Voice>>>();

/** The voice of a plan's household, or of those who only read along; one for each plan. */
export function voiceOf(plan: Plan, audience: Audience): Voice {
  const known = voiceCache.get(plan) ?? {};
  const voice = known[audience] ?? newVoice(plan, audience);
  known[audience] = voice;
  voiceCache.set(plan, known);
  return voice;
}

function newVoice(plan: Plan, audience: Audience): Voice {
  const names = new Map(plan.people.map((person) => [person.key, person.name]));
  return { measures: plan.measures, audience, nameOf: (key) => names.get(key) ?? key };
}

function sayPiece(piece: TextPiece, voice: Voice): string {
  if (typeof piece === "string") return piece;
  if ("quantity" in piece) {
    const from = sayQuantity(piece.quantity, voice.measures);
    if (!piece.upTo) return from;
    return between(from, sayQuantity(piece.upTo, voice.measures));
  }
  if ("day" in piece) return piece.weekday ? sayWeekday(piece.day) : sayDay(piece.day);
  if ("at" in piece) return sayMinute(piece.at);
  return voice.nameOf(piece.person);
}

/** `6 to 8 in`; millimetres throughout where it begins with them, else both units where they differ, one length where both read alike. */
function between(from: string, to: string): string {
  if (from === to) return from;
  const [value, unit] = from.split(" ");
  const wide = unit === "mm" ? /^(?<cm>[\d.]+) cm$/.exec(to)?.groups : undefined;
  if (wide?.cm) return `${value} to ${Number(wide.cm) * 10} mm`;
  return to.endsWith(` ${unit}`) ? `${value} to ${to}` : `${from} to ${to}`;
}

/** `19 to 23 June`, `30 July to 3 Aug`, or the one day; both inclusive. */
export function sayDays({ from, to }: DaySpan): string {
  if (from === to) return sayDay(from);
  const sameMonth = partsOf(from).month === partsOf(to).month && to - from < 31;
  return `${sameMonth ? partsOf(from).date : sayDay(from)} to ${sayDay(to)}`;
}

/** Pieces put into words. */
export function sayPieces(pieces: readonly TextPiece[], voice: Voice): string {
  let wording = "";
  for (const piece of pieces) wording += sayPiece(piece, voice);
  return wording.trim();
}

type PartTexts = Record<SentencePart, string>;

/** Sentences in words, cached by voice, because titles, texts and sessions need the same ones. */
const partTextCache = new WeakMap<Voice, Map<readonly Sentence[], PartTexts>>();

/** The sentences of one part that this audience may read, joined by spaces; empty where there are none. */
export function sayPart(sentences: readonly Sentence[], part: SentencePart, voice: Voice): string {
  const known = partTextCache.get(voice) ?? newPartTextCache(voice);
  const there = known.get(sentences);
  if (there) return there[part];
  const wording = sayAll(sentences, voice);
  known.set(sentences, wording);
  return wording[part];
}

function newPartTextCache(voice: Voice): Map<readonly Sentence[], PartTexts> {
  const known = new Map<readonly Sentence[], PartTexts>();
  partTextCache.set(voice, known);
  return known;
}

const mayRead = (sentence: Sentence, voice: Voice) =>
  sentence.for === "all" || voice.audience === "household";

function sayAll(sentences: readonly Sentence[], voice: Voice): PartTexts {
  const wording: PartTexts = { how: "", sign: "", why: "", caution: "" };
  for (const sentence of sentences) {
    if (!mayRead(sentence, voice)) continue;
    const text = sayPieces(sentence.pieces, voice);
    wording[sentence.part] =
      wording[sentence.part] === "" ? text : `${wording[sentence.part]} ${text}`;
  }
  return wording;
}

/** The same one by one, in their order. */
export function sayEach(
  sentences: readonly Sentence[],
  part: SentencePart,
  voice: Voice,
): readonly string[] {
  return sentences
    .filter((sentence) => sentence.part === part && mayRead(sentence, voice))
    .map(({ pieces }) => sayPieces(pieces, voice));
}

import { cropFor } from "../../crops/index.ts";
import type { Planting } from "../model/plan.ts";
import type { Deed, PlantingCondition, PracticeWords, Vocabulary } from "../model/vocabulary.ts";
import { type DiaryContext, inEach, type LineBy, note, observed } from "./clause.ts";
import type { Observation } from "./observation.ts";
import {
  bedNamed,
  mayStand,
  overwinters,
  planInSeason,
  sayPlanting,
  subjectOf,
} from "./subjects.ts";

/** A deed and the practice that it is of. */
type PracticeDeed = { readonly practice: PracticeWords; readonly deed: Deed };

/** What a clause can mean by one reading of the name in it; `name` is null where it names nothing. */
type Reading = { readonly name: string | null; readonly deeds: readonly PracticeDeed[] };

/**
 * The work that a clause says was done, read by the words of the garden's practices; null where it says nothing of the
 * kind. Where every reading names what is not there, a note says so of the one with the shortest name.
 */
export function deedsIn(
  line: LineBy,
  clause: string,
  context: DiaryContext,
): readonly Observation[] | null {
  let nearly: { readonly length: number; readonly notes: readonly Observation[] } | null = null;
  for (const reading of readingsOf(clause, context.vocabulary)) {
    const observations = observe(line, reading, context);
    if (observed(observations)) return observations;
    const length = reading.name?.length ?? 0;
    if (nearly === null || length < nearly.length) nearly = { length, notes: observations };
  }
  return nearly?.notes ?? null;
}

/** Deeds whose words fit, put together by the name that they leave, in the vocabulary's order. */
function readingsOf(clause: string, vocabulary: Vocabulary): readonly Reading[] {
  const byName = new Map<string | null, PracticeDeed[]>();
  for (const practice of vocabulary)
    for (const deed of practice.deeds)
      for (const name of namesIn(clause, deed))
        byName.set(name, [...(byName.get(name) ?? []), { practice, deed }]);
  return [...byName].map(([name, deeds]) => ({ name, deeds }));
}

function namesIn(clause: string, { patterns }: Deed): ReadonlySet<string | null> {
  const hits = patterns.map((pattern) => pattern.exec(clause)).filter((hit) => hit !== null);
  return new Set(hits.map(({ groups }) => groups?.subject ?? null));
}

function observe(
  line: LineBy,
  { name, deeds }: Reading,
  context: DiaryContext,
): readonly Observation[] {
  if (name === null) return [observeUnnamed(line, deeds, context)];
  const all = observeAll(line, { name, deeds }, context);
  return all ?? inEach(name, (one) => observeNamed(line, { name: one, deeds }, context));
}

const ALL_BEDS =
  /^(?:everything|everywhere|right|the lot|(?:all |all of )?(?:the |my |our )?(?:whole |entire )?(?:garden|plot|allotment|place|beds))$/;
const ALL_IN = /^(?:everything|the lot|all|all the crops|all the plants) in (?:the )?(?<bed>.+)$/;

/** What gardeners call the crops of a family. */
const FAMILIES: Readonly<Record<string, string>> = {
  brassicas: "cabbage family",
  alliums: "onion family",
};

/** What is done to every bed, or to every planting of one bed or one family; null where the name means no such whole. */
function observeAll(
  line: LineBy,
  { name, deeds }: { readonly name: string; readonly deeds: readonly PracticeDeed[] },
  context: DiaryContext,
): readonly Observation[] | null {
  const plan = planInSeason(line.line.day, context.plans);
  const ofBed = deeds.find(({ deed }) => deed.about === "bed");
  if (plan && ofBed && ALL_BEDS.test(name))
    return plan.beds.map(({ key }) => doneTo(line, `${plan.year}/bed/${key}`, ofBed));
  const bed = plan && bedNamed(ALL_IN.exec(name)?.groups?.bed ?? "", [plan]);
  const bare = name.replace(/^(?:all )?(?:the |my |our )?/, "");
  const family = Object.hasOwn(FAMILIES, bare) ? FAMILIES[bare] : undefined;
  if (!plan || (!bed && family === undefined)) return null;
  const isMeant = (planting: Planting) =>
    bed ? planting.bed === bed.key : cropFor(planting)?.family === family;
  return plan.plantings
    .filter((planting) => isMeant(planting) && mayStand(planting, line.line.day))
    .map((planting) => observeNamed(line, { name: sayPlanting(planting), deeds }, context))
    .filter(({ kind }) => kind === "done");
}

/** A planting of that name, else a bed. */
function observeNamed(
  line: LineBy,
  { name, deeds }: { readonly name: string; readonly deeds: readonly PracticeDeed[] },
  context: DiaryContext,
): Observation {
  const { day } = line.line;
  const ofPlantings = deeds.filter(({ deed }) => deed.about === "planting");
  const canBe = (planting: Planting) =>
    ofPlantings.some(
      ({ practice, deed }) =>
        canBeSaidOf(planting, deed.of) &&
        isInTime(deed.of, line, context) &&
        (isAhead(practice) || mayStand(planting, day)),
    );
  const found = subjectOf(name, { day, canBe }, context.plans);
  if (ofPlantings.length > 0 && "planting" in found)
    return observePlanting(
      line,
      found,
      ofPlantings.filter(({ deed }) => isInTime(deed.of, line, context)),
    );
  const ofBed = deeds.find(({ deed }) => deed.about === "bed");
  const plan = planInSeason(day, context.plans);
  const bed = ofBed && plan ? bedNamed(name.replace(/^the /, ""), [plan]) : null;
  if (ofBed && plan && bed) return doneTo(line, `${plan.year}/bed/${bed.key}`, ofBed);
  return note(
    line.line,
    "why" in found && ofPlantings.length > 0 ? found.why : `no bed is called ${name}`,
  );
}

type FoundPlanting = { readonly planting: Planting; readonly sowing: number | null };

function observePlanting(
  line: LineBy,
  found: FoundPlanting,
  deeds: readonly PracticeDeed[],
): Observation {
  const suited = deeds.find((each) => suits(found, each));
  if (!suited) return note(line.line, unsuited(found.planting, deeds));
  const later = suited.deed.of.laterSowing === true;
  return doneTo(line, found.planting.key, suited, later ? String(found.sowing) : suited.deed.step);
}

/** What names nothing: the garden's own work, or where one planting or bed alone can be meant, that one. */
function observeUnnamed(
  line: LineBy,
  [first, ...rest]: readonly PracticeDeed[],
  { plans }: DiaryContext,
): Observation {
  const plan = planInSeason(line.line.day, plans);
  if (!first || !plan) return note(line.line, null);
  const garden = [first, ...rest].find(({ deed }) => deed.about === "garden");
  if (garden) return doneTo(line, `${plan.year}/garden`, garden);
  const { about, of } = first.deed;
  const [only, ...others] =
    about === "bed"
      ? plan.beds.map(({ key, name }) => ({ key: `${plan.year}/bed/${key}`, name }))
      : plans
          .flatMap(({ plantings }) => plantings)
          .filter((planting) => canBeSaidOf(planting, of))
          .map((planting) => ({ key: planting.key, name: sayPlanting(planting) }));
  if (!only)
    return note(
      line.line,
      about === "bed" ? "the plan has no beds" : `no planting is under a ${of.under}`,
    );
  return others.length === 0
    ? doneTo(line, only.key, first)
    : note(line.line, `it fits ${[only, ...others].map(({ name }) => name).join(" and ")}`);
}

function doneTo(
  { line: { day }, by }: LineBy,
  subject: string,
  { practice, deed }: PracticeDeed,
  step: string | null = deed.step,
): Observation {
  return { kind: "done", day, planting: subject, practice: practice.name, step, by };
}

/** Whether a practice is done before a planting is in its place. */
const isAhead = ({ name, begins }: PracticeWords) =>
  begins !== null || name === "set out" || name === "things to have" || name === "pot on";

/** Days before the usual last frost from which raised plants may be out. Source: house rule; the hardy go a month before it. */
const OUT_BEFORE_FROST_DAYS = 30;

/** Words of a shelter, or of a cold hour: what is in there is not planted. */
const SHELTERED =
  /\b(?:night|tonight|overnight|frost|cold|porch|house|kitchen|shed|garage|indoors|inside|storm)\b/;

/** Words of plants that are out for a while and come in again. */
const FOR_HOURS =
  /\b(?:for (?:the|a|an|two|three|a few|a couple of) (?:day|hours?|afternoon|morning|bit|while|couple of hours)|hours?|by day|during the day|in the daytime|in day|back in|in at night|in again|in for the night|porch|patio|deck|cold ?frame|to harden|hardening|all day and)\b/;

/** Whether raised plants that are in can be in the ground on that day, and not as seed in a tray or for the night. */
function isInTime(
  { whenOut, forHours }: PlantingCondition,
  { line }: LineBy,
  { plans }: DiaryContext,
): boolean {
  if (forHours !== undefined && forHours !== FOR_HOURS.test(line.text.toLowerCase())) return false;
  if (whenOut !== true) return true;
  const lastFrost = planInSeason(line.day, plans)?.site.lastFrost;
  if (!lastFrost || SHELTERED.test(line.text.toLowerCase())) return false;
  return line.day >= lastFrost.usual - OUT_BEFORE_FROST_DAYS;
}

/** Whether a name can mean that planting at all: what is in since another year is not sown, and a board needs a board. */
function canBeSaidOf({ inSince, under }: Planting, of: PlantingCondition): boolean {
  if (of.isNew && inSince !== null) return false;
  return of.under === undefined || under.some((cover) => cover === of.under);
}

function suits({ planting, sowing }: FoundPlanting, { practice, deed }: PracticeDeed): boolean {
  const { begun, repeated, laterSowing } = deed.of;
  const isLater = planting.repeat !== null && sowing !== null && sowing > 1;
  if (!canBeSaidOf(planting, deed.of)) return false;
  if (begun && !begun.includes(planting.start)) return false;
  if (deed.of.overwinters !== undefined && deed.of.overwinters !== overwinters(planting))
    return false;
  if (repeated && planting.repeat === null) return false;
  if (laterSowing) return isLater;
  return practice.begins !== "once" || !isLater;
}

/** Why none of the deeds can be said of a planting. */
function unsuited(planting: Planting, deeds: readonly PracticeDeed[]): string {
  const name = sayPlanting(planting);
  const asks = (what: keyof PlantingCondition) => deeds.some(({ deed }) => what in deed.of);
  if (asks("begun")) return `${name} is begun from ${planting.start} in the plan`;
  if (asks("repeated")) return `${name} is sown once in the plan`;
  return `${name} does not stand the winter`;
}

type Done = Extract<Observation, { readonly kind: "done" }>;

/** Whether work put a crop into soil, for the first time or as another sowing; null where it did not. */
export function beginsOf(
  { practice, step }: Pick<Done, "practice" | "step">,
  vocabulary: Vocabulary,
): PracticeWords["begins"] {
  const isStart = step === null || step === "plant" || /^\d+$/.test(step);
  return isStart ? (vocabulary.find(({ name }) => name === practice)?.begins ?? null) : null;
}

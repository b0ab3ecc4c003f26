import { cropFor } from "../../crops/index.ts";
import type { Planting } from "../model/plan.ts";
import type { AttributedLine } from "./attribute.ts";
import { countsFirst } from "./bare-names.ts";
import { boughtIn, boughtPlantsIn } from "./bought.ts";
import { type DiaryContext, note, observed } from "./clause.ts";
import { deedsIn } from "./deeds.ts";
import {
  deniedIn,
  missedIn,
  type Postponement,
  postponementIn,
  tooSmallIn,
  undoneIn,
} from "./denials.ts";
import { endedIn, isOmitted, mayBeFruit, movedIn } from "./losses.ts";
import { measurementIn } from "./measurements.ts";
import type { Observation } from "./observation.ts";
import { partly } from "./partly.ts";
import { asDone, putOffIn } from "./put-off.ts";
import { readOnce } from "./read-once.ts";
import { isActObservation } from "./resolve-conflicts.ts";
import { stagesIn } from "./seen.ts";
import { withoutShare } from "./share.ts";
import { sownAgainIn } from "./sown-again.ts";
import { bedNamed, sayPlanting, subjectOf } from "./subjects.ts";
import { dayAhead, withOwnDay } from "./when.ts";
import { wordingsOf } from "./wordings.ts";

/** Words of what is not so, or not yet, or not ours. */
const NOT_SO =
  /\b(?:not|no|never|nothing|none|yet|cannot|\w+n't|will|shall|should|must|would|could|might|may be|tomorrow|if|need|needs|plan|planning|want|hope|hoping|hopefully|all being well|with luck|going to|gonna|about to|due|thinking|nearly|almost|half|forgot|tried|maybe|perhaps|neighbou?rs?|next door|soon|next week|time to|ready for)\b/;

/**
 * The facts of one clause, on the day that it names, else on its line's; null where it has none. A note in it says why it
 * nearly had one. It is read whole first, then without its last phrases.
 */
export function observationsInClause(
  attributed: AttributedLine,
  clause: string,
  context: DiaryContext,
): readonly Observation[] | null {
  return readOnce(attributed, { clause, context }, () =>
    observationsIn(attributed, clause, context),
  );
}

function observationsIn(
  attributed: AttributedLine,
  clause: string,
  context: DiaryContext,
): readonly Observation[] | null {
  const { text, day } = withOwnDay(clause, attributed.line.day);
  const dated = { ...attributed, line: { ...attributed.line, day } };
  const whole = withoutShare(text);
  const facts = readIn(dated, whole ?? text, context);
  const isLoss = facts?.some(({ kind }) => kind === "lost" || kind === "failed");
  if (
    (whole === null && !(isLoss && countsFirst(text, context.plans))) ||
    !facts ||
    !observed(facts)
  )
    return facts;
  return facts.map((each) => partly(each, dated.line, context));
}

function readIn(
  attributed: AttributedLine,
  text: string,
  context: DiaryContext,
): readonly Observation[] | null {
  let nearly: readonly Observation[] | null = null;
  for (const wording of wordingsOf(text, context.plans)) {
    const facts = factsIn(attributed, wording, context);
    if (facts && observed(facts)) return facts;
    nearly ??= facts;
  }
  return nearly;
}

function factsIn(
  attributed: AttributedLine,
  text: string,
  context: DiaryContext,
): readonly Observation[] | null {
  const measured = measurementIn(attributed.line, text, context.plans);
  if (measured) return [measured];
  return (
    parseUndo(attributed, text, context) ??
    parsePutOff(attributed, text, context) ??
    parseDenial(attributed, text, context) ??
    parseEnding(attributed, text, context) ??
    parseBought(attributed, text, context) ??
    actObservationsIn(attributed, text, context)
  );
}

/** What is taken back, `undo: carrots up`. */
function parseUndo(
  attributed: AttributedLine,
  text: string,
  context: DiaryContext,
): readonly Observation[] | null {
  const what = undoneIn(text);
  if (what === null) return null;
  const { day, text: written } = attributed.line;
  const undo = (observationsInClause(attributed, what, context) ?? []).flatMap(
    (observation): readonly Observation[] =>
      isActObservation(observation)
        ? [{ kind: "undone", day, what: observation, text: written }]
        : [],
  );
  return undo.length > 0 ? undo : [note(attributed.line, `there is nothing to undo in ${what}`)];
}

/** Words of a date, which can lie behind; `it dries` and `the snow is gone` are days nobody knows. */
const NAMES_A_DAY = /\d|\b(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)/;

/** Why it waits, behind until when. */
const AND_WHY = /,? (?:because|since|as|due to|if|when|with) .*$/;

/** A sowing, planting or setting out that waits; null where no planting is named that can be begun so. */
function parsePutOff(
  attributed: AttributedLine,
  text: string,
  context: DiaryContext,
): readonly Observation[] | null {
  const putOff = putOffIn(text);
  if (putOff === null) return null;
  const { line } = attributed;
  const until =
    putOff.until === null ? null : dayAhead(putOff.until.replace(AND_WHY, ""), line.day);
  for (const way of asDone(putOff)) {
    const waiting = deedsIn(attributed, way, context)?.flatMap((each) => asNotYet(each)) ?? [];
    if (waiting.length === 0) continue;
    if (putOff.until !== null && until === null && NAMES_A_DAY.test(putOff.until))
      return [note(line, `${putOff.until} is no day ahead`)];
    return waiting.map((each) => (until === null ? each : { ...each, until }));
  }
  return null;
}

/** What is not up, not ripe or not done yet, and jobs put off or left out; null where the line denies nothing that it names. */
function parseDenial(
  attributed: AttributedLine,
  text: string,
  context: DiaryContext,
): readonly Observation[] | null {
  const postponement = postponementIn(text, context.vocabulary);
  if (postponement) return [observePostponement(attributed, postponement, context)];
  const missed = missedIn(text) ?? tooSmallIn(text);
  const found =
    missed === null ? null : subjectOf(missed, { day: attributed.line.day }, context.plans);
  if (found && "planting" in found) return [missing(attributed, found)];
  const meaning = deniedIn(text);
  const observations =
    meaning === null || NOT_SO.test(meaning)
      ? null
      : actObservationsIn(attributed, meaning, context);
  const not = observations?.flatMap((observation) => asNotYet(observation)) ?? [];
  return not.length > 0 ? not : null;
}

type NotYetObservation = Extract<Observation, { readonly kind: "not yet" }>;
type Found = Extract<ReturnType<typeof subjectOf>, { readonly sowing: number | null }>;

function missing(
  { line: { day } }: AttributedLine,
  { planting, sowing }: Found,
): NotYetObservation {
  return { kind: "not yet", day, planting: planting.key, of: { stage: "anything" }, sowing };
}

function asNotYet(observation: Observation): readonly NotYetObservation[] {
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
  { plans }: DiaryContext,
): Observation {
  const { day, text } = attributed.line;
  const subject = subjectOf(postponement.subject.replace(/^the /, ""), { day }, plans);
  if ("why" in subject) return note(attributed.line, subject.why);
  const { key: planting } = subject.planting;
  const { practice } = postponement;
  const until = postponement.until === undefined ? null : dayAhead(postponement.until, day);
  return postponement.leftOut
    ? { kind: "left", day, planting, practice, text }
    : {
        kind: "not yet",
        day,
        planting,
        of: { practice, step: null },
        sowing: subject.sowing,
        ...(until === null ? {} : { until }),
      };
}

/** What failed, was lost, or was moved to another bed; null where the line tells of no such thing. */
function parseEnding(
  attributed: AttributedLine,
  text: string,
  context: DiaryContext,
): readonly Observation[] | null {
  const { plans } = context;
  const { day, text: written } = attributed.line;
  const moved = movedIn(text);
  const ending = moved ?? endedIn(text);
  // What failed is told by what did not come; the rest is not so where the line says not.
  const failed = ending !== null && "kind" in ending && ending.kind === "failed";
  const sure = failed || isOmitted(text);
  if (ending === null || (!sure && NOT_SO.test(text.replace(/^(?:are |is )?not growing/, ""))))
    return null;
  const search = { day, all: true } as const;
  const subject = subjectOf(ending.subject.replace(/^(?:the|all the) /, ""), search, plans);
  if ("why" in subject)
    return moved || subject.why.includes(" fits ") ? [note(attributed.line, subject.why)] : null;
  const { planting, sowing } = subject;
  if ("kind" in ending && mayBeFruit(text) && cropFor(planting)?.perennial)
    return [note(attributed.line, `only the fruit of ${sayPlanting(planting)} may be meant`)];
  if (
    "kind" in ending &&
    planting.start === "seed outdoors" &&
    /transplants|thinnings/.test(attributed.line.text)
  )
    return [note(attributed.line, `only some of ${sayPlanting(planting)} is meant`)];
  if ("kind" in ending && FROST.test(text) && growsAgain(planting))
    return [note(attributed.line, `${sayPlanting(planting)} grows again from below`)];
  if ("kind" in ending)
    return [{ kind: ending.kind, day, planting: planting.key, sowing, text: written }];
  const bed = bedNamed(ending.bed, plans);
  if (bed === null) return [note(attributed.line, `no bed is called ${ending.bed}`)];
  // Into the bed where the plan has it: that is how it is set out.
  if (bed.key === planting.bed)
    return deedsIn(attributed, `planted out ${ending.subject}`, context) ?? null;
  return [{ kind: "moved", day, planting: planting.key, bed: bed.key, text: written }];
}

const FROST = /\b(?:frost|frosted|hail|froze|frozen)\b/;

/** Whether frost takes only what stands above the ground. */
function growsAgain(planting: Planting): boolean {
  return planting.start === "tubers" || cropFor(planting)?.perennial != null;
}

/** Plants that were bought; null for seed, or where no planting is named. */
function parseBought(
  { line }: AttributedLine,
  text: string,
  { plans }: DiaryContext,
): readonly Observation[] | null {
  if (NOT_SO.test(text)) return null;
  const { day, text: written } = line;
  const plants = boughtPlantsIn(text);
  const name = plants ?? boughtIn(text);
  if (name === null) return null;
  const canBe =
    plants === null ? { canBe: ({ start }: { readonly start: string }) => start === "plants" } : {};
  const subject = subjectOf(name, { day, ...canBe }, plans);
  if ("why" in subject || subject.planting.inSince !== null) return null;
  return [{ kind: "bought", day, planting: subject.planting.key, text: written }];
}

/** Sprouts that nobody has planted. */
const IN_STORE =
  /\bsprout\w* in (?:the|a|their|its) (?:bag|packet|cupboard|store|drawer|box|sack)\b/i;
const LAST_ONES = /^(?:the )?last (?:row|few|lot|bit|bed|one|ones|of)\b/;

/** What was done or seen; null where the clause says nothing of the kind. A note in it says why it nearly did. */
function actObservationsIn(
  attributed: AttributedLine,
  text: string,
  context: DiaryContext,
): readonly Observation[] | null {
  if (NOT_SO.test(text)) return null;
  // The last of them are up when they are dug.
  const seen =
    LAST_ONES.test(text) || IN_STORE.test(attributed.line.text)
      ? null
      : stagesIn(attributed.line, text, context);
  if (seen && observed(seen)) return seen;
  const again = sownAgainIn(attributed, text, context);
  if (again) return again;
  const done = deedsIn(attributed, text, context);
  return done && observed(done) ? done : (seen ?? done);
}

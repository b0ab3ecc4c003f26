import { type Day, earliest, latest, type Minute } from "../../base/index.ts";
import type { Crop } from "../../crops/index.ts";
import { type Basis, combineBasis } from "../growth/anchors.ts";
import { anchorOf, type SowingContext } from "../growth/sowing-context.ts";
import type { ReasonLines, Sentence } from "./sentence.ts";

/** What a task is about, by key: `2027/beet`, `2027/bed/root-bed`, `2027/garden`. */
export type TaskSubject = { readonly kind: "planting" | "bed" | "garden"; readonly key: string };

/** What is lost when a task is late: the row tonight, the crop this week, or little. */
export type Harm = "tonight" | "this week" | "when you can";

/**
 * `session`: wants somebody's gardening hours. `daily`: anybody about that day. `timed`: a carrying out or a
 * bringing in at an hour, wants somebody home then. `warning`: told on its day, nobody's work.
 */
export type Rhythm = "session" | "daily" | "timed" | "warning";

/** earliest ≤ due ≤ latest, all inclusive; `latest` is the last day that does no harm. `better` is the side that hurts less. */
export type Window = {
  readonly earliest: Day;
  readonly due: Day;
  readonly latest: Day;
  readonly better: "earlier" | "later";
};

/**
 * `verb`: the object stands behind it, or where it has `…` (`Get … onto their sticks`). `where`: "bed" names the bed,
 * other words stand as they are (`indoors`), null names nothing.
 */
export type Title = {
  readonly verb: string;
  readonly object: string;
  readonly where: string | null;
};

/** Days that come round and on which small things are done together. */
export type Round = "every other Saturday";

/** A job of the practice of that name with its window, before it has a day. */
export type TaskOf<Practice extends string = string> = {
  /** `2027/beet/thin/1`: subject's key, practice, step. No edit of another planting changes it. */
  readonly id: string;
  readonly subject: TaskSubject;
  /** Key of the bed it stands in; null where it stands in none. */
  readonly bed: string | null;
  readonly crop: string | null;
  readonly practice: Practice;
  readonly step: string;
  readonly window: Window;
  readonly harm: Harm;
  readonly rhythm: Rhythm;
  /** One of MINUTES. */
  readonly minutes: number;
  /** Kinds of work a person may leave out, e.g. `lifting`. */
  readonly kinds: readonly string[];
  /** Done under a roof, and so left for rain. */
  readonly indoors: boolean;
  /** For a timed task: minutes the plants stay out (0 for a moment), which end it is, and where the day is set by the run. */
  readonly timed: {
    readonly run: string;
    readonly part: "out" | "in";
    readonly lasts: Minute;
  } | null;
  readonly title: Title;
  readonly say: readonly Sentence[];
  /** What `why` tells, nearest first; sentences of one plain fact each. Made when it is asked for, which is seldom. */
  readonly because: ReasonLines;
  readonly basis: readonly Basis[];
  /** Things to take along, as a list is read. */
  readonly needs: readonly string[];
  /** Things that are found or bought by it, as the `needs` of later tasks name them. */
  readonly brings: readonly string[];
  /** A round of the garden's it keeps to: the last such day on or before its due day; null where any will do. */
  readonly round: Round | null;
  /** The net or fabric it is done under, `root-bed|leaf miners`: such jobs are looked for on one day. Null where nothing has to be lifted. */
  readonly under: string | null;
  /** Tasks of equal `together` are placed on one day. */
  readonly together: string | null;
  /** Ids of tasks whose days this one was reckoned from, forward or back; `why` follows them. */
  readonly hangsOn: readonly string[];
  /** Ids of tasks that must not come later than this one. */
  readonly after: readonly string[];
  /** The act whose day this task sets, and of which planting and sowing. */
  readonly sets: {
    readonly planting: string;
    readonly sowing: number;
    readonly act: "start" | "set out" | "end";
  } | null;
  readonly certainty: "done" | "fixed" | "expected";
  /** Key of the person whose it must be; null: whoever fits. */
  readonly whose: string | null;
};

/** The only minutes a text ever says. */
export const MINUTES = [5, 10, 15, 20, 30, 45, 60] as const;

/** Minutes rounded up to those a text may say; more than an hour is an hour. */
export function roundMinutes(minutes: number): number {
  return MINUTES.find((known) => known >= minutes) ?? 60;
}

const slugs = new Map<string, string>();

/** A practice's name as ids have it: `harden-off`. */
export function slugOf(practice: string): string {
  const slug = slugs.get(practice) ?? practice.replaceAll(" ", "-");
  slugs.set(practice, slug);
  return slug;
}

/** A window with its ends put in order round the due day. */
export function window(
  earliestDay: Day,
  due: Day,
  latestDay: Day,
  better: Window["better"] = "later",
): Window {
  return { earliest: earliest(earliestDay, due), due, latest: latest(latestDay, due), better };
}

/** What every task must say; the rest has plain defaults. */
export type TaskParts = Pick<TaskOf, "window" | "harm" | "rhythm" | "title" | "say" | "basis"> &
  Partial<
    Pick<
      TaskOf,
      | "minutes"
      | "kinds"
      | "indoors"
      | "timed"
      | "because"
      | "needs"
      | "brings"
      | "round"
      | "together"
      | "hangsOn"
      | "after"
      | "sets"
      | "certainty"
    >
  >;

type TaskIdentity<Practice extends string> = Pick<
  TaskOf<Practice>,
  "id" | "subject" | "bed" | "crop" | "practice" | "step" | "whose"
>;

/** One shape for every task, field by field: thousands are made in a telling, and spreading costs ten times as much. */
function taskOf<Practice extends string>(
  identity: TaskIdentity<Practice>,
  parts: TaskParts,
): TaskOf<Practice> {
  return {
    id: identity.id,
    subject: identity.subject,
    bed: identity.bed,
    crop: identity.crop,
    practice: identity.practice,
    step: identity.step,
    window: parts.window,
    harm: parts.harm,
    rhythm: parts.rhythm,
    minutes: roundMinutes(parts.minutes ?? 10),
    kinds: parts.kinds ?? [],
    indoors: parts.indoors ?? false,
    timed: parts.timed ?? null,
    title: parts.title,
    say: parts.say,
    because: parts.because ?? [],
    basis: combineBasis(parts.basis),
    needs: parts.needs ?? [],
    brings: parts.brings ?? [],
    round: parts.round ?? null,
    under: null,
    together: parts.together ?? null,
    hangsOn: parts.hangsOn ?? [],
    after: parts.after ?? [],
    sets: parts.sets ?? null,
    certainty: parts.certainty ?? "expected",
    whose: identity.whose,
  };
}

/** A task of one sowing of a planting. Steps of a second sowing and later carry its number. */
export function plantingTask<const Practice extends string>(
  context: SowingContext,
  practice: Practice,
  step: string,
  parts: TaskParts,
): TaskOf<Practice> {
  const { planting } = context;
  const fullStep = stepOf(context, step);
  const identity: TaskIdentity<Practice> = {
    id: plantingTaskId(context, practice, step),
    subject: { kind: "planting", key: planting.key },
    bed: planting.bed,
    crop: planting.crop,
    practice,
    step: fullStep,
    whose: planting.whose,
  };
  return taskOf(identity, parts);
}

/** The id that a sowing's task of a practice and a step has. */
export function plantingTaskId(context: SowingContext, practice: string, step: string): string {
  return `${context.planting.key}/${slugOf(practice)}/${stepOf(context, step)}`;
}

/** A task of a bed or of the whole garden. */
export function sharedTask<const Practice extends string>(
  year: number,
  bed: string | null,
  practice: Practice,
  step: string,
  parts: TaskParts,
): TaskOf<Practice> {
  const key = bed === null ? `${year}/garden` : `${year}/bed/${bed}`;
  const identity: TaskIdentity<Practice> = {
    id: `${key}/${slugOf(practice)}/${step}`,
    subject: { kind: bed === null ? "garden" : "bed", key },
    bed,
    crop: null,
    practice,
    step,
    whose: null,
  };
  return taskOf(identity, parts);
}

/**
 * The planting as a title says it: its own name, else the crop's as the gardener wrote it, in the plural where that is
 * the trade's: `beet` as beets, `bush bean` as bush beans.
 */
export function objectOf({ planting, crop }: Pick<SowingContext, "planting" | "crop">): string {
  if (planting.name) return planting.name;
  const { written } = planting;
  const kind = namesOf(crop).find(({ one }) => endsIn(written, one));
  if (!kind) return written;
  const before = written.slice(0, -kind.one.length);
  return `${before}${kind.many}`;
}

/** Whether a title's object is more than one: `beets go`, `basil goes`, and by their ends `autumn onions`, `second garlic`. */
export function isMany(context: Pick<SowingContext, "planting" | "crop">): boolean {
  const object = objectOf(context);
  return namesOf(context.crop).some(({ one, many }) => one !== many && endsIn(object, many));
}

const endsIn = (name: string, word: string) => ` ${name.toLowerCase()}`.endsWith(` ${word}`);

/** Names that the trade leaves in the singular, though some write them otherwise. Source: common practice. */
const NEVER_MANY: ReadonlySet<string> = new Set(["beetroot"]);

type OneAndMany = { readonly one: string; readonly many: string };

const cropNames = new WeakMap<Crop, readonly OneAndMany[]>();

/** A crop's own name and those it is also called by, where both their forms are known: `courgette`, `courgettes`. */
function namesOf(crop: Crop): readonly OneAndMany[] {
  const known = cropNames.get(crop);
  if (known) return known;
  const alsoNamed = [...crop.alsoCalled, ...crop.kinds];
  const others = alsoNamed.flatMap((one) => {
    if (NEVER_MANY.has(one)) return [];
    const many = [`${one}s`, `${one}es`].find((form) => alsoNamed.includes(form));
    return many === undefined ? [] : [{ one, many }];
  });
  const names = [{ one: crop.one, many: crop.many }, ...others];
  cropNames.set(crop, names);
  return names;
}

/** A step as its id has it: those of a second sowing and later carry its number. */
function stepOf(context: SowingContext, step: string): string {
  return context.sowing === 1 ? step : `sowing-${context.sowing}-${step}`;
}

/** The id of the step that must come before, for `after`; none where there is no such step. */
export function taskIdBefore(
  context: SowingContext,
  practice: string,
  step: string | undefined,
): readonly string[] {
  if (step === undefined) return [];
  return [`${context.planting.key}/${slugOf(practice)}/${stepOf(context, step)}`];
}

/** Ids of the tasks that set this sowing's acts, for `hangsOn`; those of the diary have none. */
export function anchorTaskIds(
  context: SowingContext,
  ...acts: readonly ("start" | "set out")[]
): readonly string[] {
  const ids: string[] = [];
  for (const act of acts) {
    const id = anchorOf(context, act)?.task ?? null;
    if (id !== null) ids.push(id);
  }
  return ids;
}

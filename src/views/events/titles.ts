import { joinFirst, joinWords, sayCount, verbWith, verbWithin } from "../../base/index.ts";
import type { ScheduledTask, TaskOutline } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";

/** A title is useful alone on a lock screen, most of it in its first 25 characters, and never longer than this. */
export const LONGEST_TITLE = 49;

/** Found only where characters may be fewer than their halves. */
const HALVES = /[\ud800-\udbff]/;

/** Whether it is short enough for a title, counted in characters and not in their halves. */
function fits(title: string): boolean {
  return (
    title.length <= LONGEST_TITLE || (HALVES.test(title) && [...title].length <= LONGEST_TITLE)
  );
}

function clip(text: string, length: number): string {
  const letters = [...text];
  return letters.length <= length
    ? text
    : `${letters
        .slice(0, length - 1)
        .join("")
        .trimEnd()}…`;
}

/** The name of a bed by its key; empty for null or a bed the plan does not have. */
export function bedName(plan: Plan, key: string | null): string {
  return plan.beds.find((bed) => bed.key === key)?.name ?? "";
}

/** As many objects as fit behind the verb, then how many more; `mark` stands before it, `end` behind. */
export function titleNaming(
  verb: string,
  objects: readonly string[],
  { end = "", mark = "" }: { readonly end?: string; readonly mark?: string } = {},
): string {
  for (let count = objects.length; count > 0; count--) {
    const title = `${mark}${verbWith(verb, joinFirst(objects, count))}${end}`;
    if (fits(title)) return title;
  }
  return clip(`${mark}${verbWith(verb, joinFirst(objects, 1))}`, LONGEST_TITLE);
}

/** Each once, in the order they first stand. */
const onceEach = <Thing>(things: readonly Thing[]): readonly Thing[] =>
  things.length < 2 ? things : [...new Set(things)];

/**
 * Verb, crops and place of similar tasks, in at most LONGEST_TITLE characters; the place where all share one and there
 * is room. Tasks not empty; objects in the order given, each once; `mark` stands before it.
 */
export function titleOf(scheduled: readonly ScheduledTask[], plan: Plan, mark = ""): string {
  const first = scheduled[0];
  if (!first) throw new RangeError("a title needs a task");
  const { verb, where } = first.task.title;
  const objects = onceEach(scheduled.map(({ task }) => task.title.object));
  const beds = onceEach(scheduled.map(({ task }) => task.bed));
  const bed = where === "bed" && beds.length === 1 ? bedName(plan, beds[0] ?? null) : "";
  const end = where !== null && where !== "bed" ? ` ${where}` : bed === "" ? "" : `, ${bed}`;
  const full = titleNaming(verb, objects, { end, mark });
  return full.endsWith(end) || where !== "bed" ? full : titleNaming(verb, objects, { mark });
}

/**
 * Similar tasks in one line with all their names, where there is more room than on a lock screen: `Thin beets and
 * carrots, Root bed; lettuce, Salad bed`. Beds in the order of their first task. Not empty.
 */
export function wholeTitle(scheduled: readonly TaskOutline[], plan: Plan): string {
  const first = scheduled[0];
  if (!first) throw new RangeError("a title needs a task");
  const { verb, where } = first.task.title;
  const beds = byBed(scheduled, plan);
  const parts = [...beds].map(([bed, objects]) =>
    bed === "" ? joinWords([...objects]) : `${joinWords([...objects])}, ${bed}`,
  );
  if (verb.includes("…")) {
    const objects = new Set([...beds.values()].flatMap((its) => [...its]));
    const names = [...beds.keys()].filter((bed) => bed !== "");
    return `${verbWith(verb, joinWords([...objects]))}${names.length > 0 ? `, ${joinWords(names)}` : ""}`;
  }
  const end = where === null || where === "bed" ? "" : ` ${where}`;
  return `${verbWith(verb, parts.join("; "))}${end}`.trim();
}

function byBed(scheduled: readonly TaskOutline[], plan: Plan): Map<string, Set<string>> {
  const beds = new Map<string, Set<string>>();
  for (const { task } of scheduled) {
    const bed = task.title.where === "bed" ? bedName(plan, task.bed) : "";
    beds.set(bed, (beds.get(bed) ?? new Set()).add(task.title.object));
  }
  return beds;
}

/** A verb and its place, the objects that it names, and how many told jobs those are. */
type Phrase = { readonly verb: string; readonly where: string; objects: string[]; jobs: number };

function phrasesOf(jobs: readonly (readonly ScheduledTask[])[]): readonly Phrase[] {
  const phrases: Phrase[] = [];
  for (const job of jobs) {
    const [first] = job;
    if (!first) continue;
    const { verb } = first.task.title;
    const where = first.task.title.where === "bed" ? "" : (first.task.title.where ?? "");
    const known = phrases.find((each) => each.verb === verb && each.where === where);
    const phrase = known ?? { verb, where, objects: [], jobs: 0 };
    if (!known) phrases.push(phrase);
    phrase.objects = [
      ...onceEach([...phrase.objects, ...job.map(({ task }) => task.title.object)]),
    ];
    phrase.jobs += 1;
  }
  return phrases;
}

function sayPhrase({ verb, where, objects }: Phrase, begins: boolean, named = objects.length) {
  const wording = (begins ? verbWith : verbWithin)(verb, joinFirst(objects, named));
  return where === "" ? wording : `${wording} ${where}`;
}

/**
 * The jobs of a visit in few words, weightiest first as they come, those of one verb together: `Sow beets and carrots; thin
 * lettuce; 2 more jobs`. As many as fit; what is counted is what the text has a paragraph for. Not empty. `lead` and a mark
 * before it stand first.
 */
export function sessionTitle(
  jobs: readonly (readonly ScheduledTask[])[],
  lead = "",
  mark = "",
): string {
  const phrases = phrasesOf(jobs);
  const [first] = phrases;
  if (!first) throw new RangeError("a title needs a task");
  const end = (count: number) => {
    const more = phrases.slice(count).reduce((sum, phrase) => sum + phrase.jobs, 0);
    return more > 0 ? `; ${sayCount(more, "more job")}` : "";
  };
  for (let count = phrases.length; count > 0; count--) {
    const named = phrases.slice(0, count).map((each, i) => sayPhrase(each, i === 0 && lead === ""));
    const title = `${mark}${lead}${named.join("; ")}${end(count)}`;
    if (fits(title)) return title;
  }
  const named = (count: number) => `${mark}${lead}${sayPhrase(first, lead === "", count)}`;
  for (let count = first.objects.length - 1; count > 0; count--) {
    const title = `${named(count)}${end(1)}`;
    if (fits(title)) return title;
  }
  return clip(named(1), LONGEST_TITLE);
}

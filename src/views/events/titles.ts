import { joinFirst, joinWords, sayCount, verbWith, verbWithin } from "../../base/index.ts";
import type { ScheduledTask } from "../../engine/index.ts";
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

/** As many objects as fit behind the verb, then how many more. */
export function titleNaming(verb: string, objects: readonly string[], end: string): string {
  for (let count = objects.length; count > 0; count--) {
    const title = `${verbWith(verb, joinFirst(objects, count))}${end}`;
    if (fits(title)) return title;
  }
  return clip(verbWith(verb, joinFirst(objects, 1)), LONGEST_TITLE);
}

/** Each once, in the order they first stand. */
const onceEach = <Thing>(things: readonly Thing[]): readonly Thing[] =>
  things.length < 2 ? things : [...new Set(things)];

/**
 * Verb, crops and place of similar tasks, in at most LONGEST_TITLE characters; the place where all share one and there
 * is room. Tasks not empty; objects in the order given, each once.
 */
export function titleOf(scheduled: readonly ScheduledTask[], plan: Plan): string {
  const first = scheduled[0];
  if (!first) throw new RangeError("a title needs a task");
  const { verb, where } = first.task.title;
  const objects = onceEach(scheduled.map(({ task }) => task.title.object));
  const beds = onceEach(scheduled.map(({ task }) => task.bed));
  const bed = where === "bed" && beds.length === 1 ? bedName(plan, beds[0] ?? null) : "";
  const end = where !== null && where !== "bed" ? ` ${where}` : bed === "" ? "" : `, ${bed}`;
  const full = titleNaming(verb, objects, end);
  return full.endsWith(end) || where !== "bed" ? full : titleNaming(verb, objects, "");
}

/**
 * Some tasks in few words, similar ones together and the most harmful first: `Sow beets and carrots; thin lettuce`. As
 * many as fit; not empty.
 */
export function sessionTitle(jobs: readonly ScheduledTask[], lead = ""): string {
  const byVerb = new Map<string, Set<string>>();
  for (const { task } of jobs) {
    const { verb, object, where } = task.title;
    const verbs = where !== null && where !== "bed" ? `${verb}|${where}` : verb;
    const known = byVerb.get(verbs);
    if (known) known.add(object);
    else byVerb.set(verbs, new Set([object]));
  }
  const all = [...byVerb].map(([verbs, objects], i) => {
    const [verb = "", where] = verbs.split("|");
    const named = (i === 0 && lead === "" ? verbWith : verbWithin)(verb, joinWords([...objects]));
    return `${named}${where ? ` ${where}` : ""}`;
  });
  for (let count = all.length; count > 0; count--) {
    const more = all.length - count;
    const title = `${lead}${all.slice(0, count).join("; ")}${more > 0 ? `; ${sayCount(more, "more job")}` : ""}`;
    if (fits(title)) return title;
  }
  return clip(`${lead}${all[0] ?? ""}`, LONGEST_TITLE);
}

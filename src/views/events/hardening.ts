import { capital, joinWords, sayMinute } from "../../base/index.ts";
import type { ScheduledTask } from "../../engine/index.ts";
import { DONE_MARK, openOnes } from "./done.ts";
import { sayEach, sayPart, type Voice } from "./sentences.ts";
import { doneText, shorten } from "./texts.ts";
import { titleNaming } from "./titles.ts";

/** What goes out, and the task of bringing it in again that day; null for a night out. */
type Outing = { readonly out: ScheduledTask; readonly back: ScheduledTask | null };

const isBack = ({ task }: ScheduledTask) => task.timed?.part === "in";

/** Each carrying out with its bringing in, as the run pairs them, in the order of the rungs. */
function outingsOf(rungs: readonly ScheduledTask[]): readonly Outing[] {
  const backs = new Map(rungs.filter(isBack).map((each) => [each.task.timed?.run, each]));
  const outs = rungs.filter((each) => !isBack(each));
  if (outs.length === 0) return rungs.map((out) => ({ out, back: null }));
  return outs.map((out) => ({ out, back: backs.get(out.task.timed?.run) ?? null }));
}

/** `10:00 to 13:00`, with who does either where no one person does both; empty for a night, and for readers. */
function sayHours({ out, back }: Outing, { audience, nameOf }: Voice): string {
  if (audience !== "household" || !out.at || !back?.at) return "";
  const [from, to] = [sayMinute(out.at.from), sayMinute(back.at.from)];
  const same = out.people.some((person) => back.people.includes(person));
  if (same || out.people.length === 0 || back.people.length === 0) return `${from} to ${to}`;
  const [first = "", second = ""] = [out, back].map(({ people }) => joinWords(people.map(nameOf)));
  return `${from} (${first}) to ${to} (${second})`;
}

/** `Harden off basil and peppers`, with the mark where all is done, or `Leave out overnight: tomatoes` where nothing comes in again. Rungs not empty. */
export function hardeningTitle(rungs: readonly ScheduledTask[]): string {
  const open = openOnes(rungs);
  const outings = outingsOf(open.length > 0 ? open : rungs);
  const objects = [...new Set(outings.map(({ out }) => out.task.title.object))];
  const comesBack = outings.some(({ back }) => back !== null);
  const verb = comesBack ? "Harden off" : (outings[0]?.out.task.title.verb ?? "");
  return titleNaming(verb, objects, { mark: open.length > 0 ? "" : DONE_MARK });
}

/** Plants that are out for the same hours in the same way. */
type OutAlike = { readonly hours: string; readonly way: string; readonly objects: string[] };

/** `firsts`: the first sentence of each; `own`: whether each says when it stays out for good. */
function outAlike(
  outings: readonly Outing[],
  voice: Voice,
  { firsts, own }: { readonly firsts: readonly string[]; readonly own: boolean },
): readonly OutAlike[] {
  const all: OutAlike[] = [];
  for (const [i, outing] of outings.entries()) {
    const hours = sayHours(outing, voice);
    const first = firsts[i] ?? "";
    const way = own ? `${first} ${sayPart(outing.out.task.say, "why", voice)}` : first;
    const { object } = outing.out.task.title;
    const known = all.find((each) => each.hours === hours && each.way === way);
    if (!known) all.push({ hours, way, objects: [object] });
    else if (!known.objects.includes(object)) known.objects.push(object);
  }
  return all;
}

const once = (texts: readonly string[]) =>
  [...new Set(texts)].filter((text) => text !== "").join(" ");

/**
 * Of what is still to be done: what goes out on one day and till when, a line for those that are out alike; then what is the same for all, what to do
 * when they are back, and when each stays out for good; first of all that it is done, where all is. At most so many characters; whole lines are dropped from the third on.
 */
export function hardeningText(
  rungs: readonly ScheduledTask[],
  voice: Voice,
  longest: number,
): string {
  const open = openOnes(rungs);
  const outings = outingsOf(open.length > 0 ? open : rungs);
  const whys = new Set(outings.map(({ out }) => sayPart(out.task.say, "why", voice)));
  const ways = outings.map(({ out }) => sayEach(out.task.say, "how", voice));
  const firsts = ways.map(([first = ""]) => first);
  const lines = outAlike(outings, voice, { firsts, own: whys.size > 1 }).map(
    ({ hours, way, objects }) => {
      const names = joinWords(objects);
      return `${hours === "" ? capital(names) : `${hours}, ${names}`}: ${way}`;
    },
  );
  const [first] = rungs;
  const done = first && open.length === 0 ? doneText(first, voice) : "";
  const backs = outings.map(({ back }) => (back ? sayPart(back.task.say, "how", voice) : ""));
  const rest = ways.flatMap((way) => way.slice(1));
  const why = whys.size > 1 || done !== "" ? "" : once([...whys]);
  const parts = [done, lines.join("\n"), once(rest), once(backs), why];
  return shorten(
    parts.filter((part) => part !== ""),
    longest,
  );
}

import { capital, joinWords, sayCount } from "../../base/index.ts";
import { roundMinutes, type ScheduledTask } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import type { EventTaskGroup } from "./grouping.ts";
import { minutesOf, weightiestFirst } from "./job-order.ts";
import { sayEach, sayPart, type Voice } from "./sentences.ts";
import { lastDayText, signText } from "./texts.ts";
import { wholeTitle } from "./titles.ts";

/**
 * The jobs of a visit as they are told, in their order: those alike are one job, told with the first of them, covers
 * that go on with the last. A done one is never told with an open one.
 */
export function toldJobs(jobs: readonly ScheduledTask[], voice: Voice): readonly EventTaskGroup[] {
  const groups: [ScheduledTask, ...ScheduledTask[]][] = [];
  for (const job of jobs) {
    const at = groups.findIndex(([first]) => isToldWith(first, job, voice));
    const known = groups[at];
    if (!known) groups.push([job]);
    else {
      known.push(job);
      if (job.task.practice === "cover") groups.push(...groups.splice(at, 1));
    }
  }
  return groups;
}

/** Things to get; or the same work in one bed or in none, done in the same way at least in part; in several beds, where it goes all the same way and begins nothing. */
function isToldWith(a: ScheduledTask, b: ScheduledTask, voice: Voice): boolean {
  const [one, other] = [a.task.title, b.task.title];
  if (one.verb !== other.verb || one.where !== other.where) return false;
  if (a.task.practice !== b.task.practice) return false;
  if ((a.done === null) !== (b.done === null)) return false;
  if (a.task.practice === "things to have") return true;
  const [ways, its] = [a, b].map(({ task }) => sayEach(task.say, "how", voice));
  const isSame = ways?.join() === its?.join();
  if (isSame && a.task.sets === null) return true;
  const together = one.where !== "bed" || a.task.bed === b.task.bed;
  return together && (isSame || (ways ?? []).some((way) => its?.includes(way)));
}

/** Sentences of a job in the order they are said. A kind of lower rank is kept before one of a higher. */
type Sentences = { readonly rank: number; readonly text: string };

/** What is kept of every job before anything else of any: how to begin, the caution, the last good day, how to go on, the note, the sign, the reason. */
const RANK = { how: 0, caution: 1, lastDay: 2, more: 3, note: 4, sign: 5, why: 6 } as const;

/** `20 min: Thin beets, Root bed.`, of several together. */
function headOf(group: EventTaskGroup, plan: Plan): string {
  return `${sayMinutes(minutesOf(group))}: ${wholeTitle(group, plan)}.`;
}

/** `20 min`, beyond an hour in half hours: `1½ hours`. */
function sayMinutes(minutes: number): string {
  if (minutes <= 60) return `${roundMinutes(minutes)} min`;
  const halves = Math.ceil(minutes / 30);
  return halves % 2 === 0 ? sayCount(halves / 2, "hour") : `${Math.floor(halves / 2)}½ hours`;
}

/** What a group of jobs says below its head, each thing once; of what only some have to do or to say, with their names. */
function sentencesOf(group: EventTaskGroup, voice: Voice): readonly Sentences[] {
  const [first] = group;
  const ways = group.map(({ task }) => sayEach(task.say, "how", voice));
  const shared = (ways[0] ?? []).filter((way) => ways.every((its) => its.includes(way)));
  const own = group.flatMap((job, i) => {
    const rest = (ways[i] ?? []).filter((way) => !shared.includes(way));
    return rest.length === 0 ? [] : [withNames(job.task.title.object, rest.join(" "))];
  });
  const same = (say: (job: ScheduledTask) => string) =>
    group.every((job) => say(job) === say(first)) ? say(first) : "";
  const each = (say: (job: ScheduledTask) => string) =>
    [...new Set(group.map(say))].filter((text) => text !== "").join(" ");
  return [
    ...own.map((text, i) => ({
      rank: i === 0 && shared.length === 0 ? RANK.how : RANK.more,
      text,
    })),
    ...shared.map((text, i) => ({ rank: i === 0 ? RANK.how : RANK.more, text })),
    { rank: RANK.sign, text: same((job) => signText(job, voice)) },
    { rank: RANK.why, text: same(({ task }) => sayPart(task.say, "why", voice)) },
    { rank: RANK.lastDay, text: lastDays(group) },
    { rank: RANK.caution, text: each(({ task }) => sayPart(task.say, "caution", voice)) },
    { rank: RANK.note, text: each(({ note }) => (note ? sayPart([note], "why", voice) : "")) },
  ].filter(({ text }) => text !== "");
}

/** `Beets: to one every 3 in.` */
const withNames = (names: string, text: string) =>
  `${capital(names)}: ${text.charAt(0).toLowerCase()}${text.slice(1)}`;

/** `Fine till Friday 14 May.`, or each with its own: `Beets and kale: fine till Friday 14 May. Leeks: fine till Friday 21 May.` */
function lastDays(group: EventTaskGroup): string {
  // Things to get say by when they are wanted.
  if (group.length > 1 && group[0].task.practice === "things to have") return "";
  const days = new Map<string, Set<string>>();
  for (const job of group) {
    const day = lastDayText(job);
    days.set(day, (days.get(day) ?? new Set()).add(job.task.title.object));
  }
  const [day = ""] = days.keys();
  if (days.size < 2) return day;
  return [...days]
    .filter(([text]) => text !== "")
    .map(([text, names]) => withNames(joinWords([...names]), text))
    .join(" ");
}

/** Open jobs and their plan, whose words, and the most characters they may take. */
type JobTextOptions = { readonly plan: Plan; readonly voice: Voice; readonly longest: number };

/**
 * A paragraph for each job: what and for how long, and below it how, the sign, the reason, until when, a caution. Where
 * there is too little room, every job keeps its head, and the weightiest keep most of the rest. Groups not empty.
 */
export function jobTexts(
  groups: readonly EventTaskGroup[],
  { plan, voice, longest }: JobTextOptions,
): readonly string[] {
  const heads = groups.map((group) => headOf(group, plan));
  const sentences = new Map(groups.map((group) => [group, sentencesOf(group, voice)]));
  let room = longest - heads.reduce((sum, head) => sum + head.length + BETWEEN, 0);
  const kept = new Set<Sentences>();
  const short = new Set<readonly Sentences[]>();
  for (const rank of Object.values(RANK))
    for (const group of weightiestFirst(groups)) {
      const all = sentences.get(group) ?? [];
      for (const each of all.filter((sentence) => sentence.rank === rank)) {
        // What follows on a sentence of how that is left out would not be understood.
        if (rank === RANK.more && short.has(all)) continue;
        if (each.text.length + 1 <= room) {
          kept.add(each);
          room -= each.text.length + 1;
        } else short.add(all);
      }
    }
  return groups.map((group, i) => {
    const said = (sentences.get(group) ?? []).filter((each) => kept.has(each));
    const body = said.map(({ text }) => text).join(" ");
    return body === "" ? (heads[i] ?? "") : `${heads[i]}\n${body}`;
  });
}

/** Characters between two paragraphs. */
const BETWEEN = 2;

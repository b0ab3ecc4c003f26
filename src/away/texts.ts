import { partsOf, sayDay } from "../days/day.ts";
import type { Plan } from "../plan/plan.ts";
import { roundMinutes } from "../practices/task.ts";
import { HARM_WEIGHT } from "../schedule/place.ts";
import type { Placed } from "../schedule/placed.ts";
import { sayWeekday, voiceOf } from "../words/sentences.ts";
import { asManyAsFit, LONGEST_SESSION, lastDayTold } from "../words/texts.ts";
import { list, titleOf } from "../words/titles.ts";
import type { Leave, Span } from "./leave.ts";
import type { List } from "./lists.ts";
import type { Need, Picking } from "./needs.ts";
import { nameOf, neighbourLines } from "./neighbour.ts";
import type { AwayReport } from "./report.ts";

/** One text of an absence: a title under 50 characters, and lines, fewer than 900 characters in all. */
export type AwayText = { readonly list: List; readonly title: string; readonly text: string };

type Telling = {
  readonly report: AwayReport;
  readonly plan: Plan;
  readonly jobs: Readonly<Record<List, readonly Placed[]>>;
  readonly placed: ReadonlyMap<string, Placed>;
};

/**
 * The texts of an absence, in the order they are read: before, what those at home have, the neighbour's list, what
 * waits, after. What there is nothing to say of is left out, but before and after always say so. `placed` is the feed's.
 */
export function awayTexts(
  report: AwayReport,
  plan: Plan,
  placed: readonly Placed[],
): readonly AwayText[] {
  const byId = new Map(placed.map((each) => [each.task.id, each]));
  const jobsOf = (name: List) => report.jobs[name].flatMap((id) => byId.get(id) ?? []);
  const jobs = {
    before: jobsOf("before"),
    home: jobsOf("home"),
    neighbour: jobsOf("neighbour"),
    waits: jobsOf("waits"),
    back: jobsOf("back"),
  };
  const telling = { report, plan, placed: byId, jobs };
  return [before(telling), home(telling), neighbour(telling), waits(telling), back(telling)].flat();
}

/** `19 to 23 June`, `30 July to 3 Aug`, or the one day. */
export function sayDays({ from, to }: Span): string {
  if (from === to) return sayDay(from);
  const sameMonth = partsOf(from).month === partsOf(to).month && to - from < 31;
  return `${sameMonth ? partsOf(from).date : sayDay(from)} to ${sayDay(to)}`;
}

function textOf(name: List, title: string, lines: readonly string[]): AwayText {
  return { list: name, title, text: asManyAsFit(lines, LONGEST_SESSION - 1).join("\n") };
}

function before({ report, plan, jobs, placed }: Telling): readonly AwayText[] {
  const { leave, needs } = report;
  const under = needs.flatMap((need) => roofLine(need, plan));
  const outdoors = inWalkingOrder(
    [
      ...jobs.before
        .filter(({ task }) => task.practice !== "water")
        .map((job) => ({
          bed: job.task.bed,
          indoors: job.task.indoors,
          line: jobLine(job, plan, leave),
        })),
      ...needs.flatMap((need) => pickFirst(need, { plan, placed, leave })),
    ],
    plan,
  );
  const lines = [...under, ...outdoors, ...waterDeep(jobs.before, needs)];
  return [
    textOf(
      "before",
      `Before you go on ${sayDay(leave.from)}`,
      lines.length > 0 ? lines : [NOTHING],
    ),
  ];
}

const NOTHING = "Nothing has to be done before; go with an easy mind.";

/** What stands under a roof: trays and greenhouse. */
function roofLine(need: Need, plan: Plan): readonly string[] {
  switch (need.kind) {
    case "trays": {
      const names = list(need.plantings.map((key) => nameOf(plan, key)));
      const place = need.hardening
        ? "into full shade all day, out of the wind"
        : "out of hard sun, in good light";
      return [`10 min: Trays of ${names}: ${place}, on a wet mat, watered well.`];
    }
    case "vents":
      return ["5 min: Greenhouse: set the vents to open by themselves, or show the neighbour how."];
    case "pick":
    case "water":
    case "up":
      return [];
  }
}

type Line = { readonly bed: string | null; readonly indoors: boolean; readonly line: string };

function inWalkingOrder(lines: readonly Line[], plan: Plan): readonly string[] {
  const order = new Map(plan.beds.map(({ key }, i) => [key, i]));
  const at = ({ bed, indoors }: Line) =>
    indoors ? -1 : (order.get(bed ?? "") ?? plan.beds.length);
  return [...lines].sort((a, b) => at(a) - at(b)).map(({ line }) => line);
}

/** `20 min: Thin beets, Root bed, on Saturday 31 July.`, its day where it has one before they go. */
function jobLine(job: Placed, plan: Plan, { from }: Leave): string {
  const on = job.day < from ? `, on ${sayWeekday(job.day)}` : "";
  return `${roundMinutes(job.task.minutes)} min: ${titleOf([job], plan)}${on}.`;
}

type Where = {
  readonly plan: Plan;
  readonly placed: ReadonlyMap<string, Placed>;
  readonly leave: Leave;
};

/** What bears already is picked before they go, small ones too where they would grow out. */
function pickFirst(need: Need, { plan, placed, leave }: Where): readonly Line[] {
  if (need.kind !== "pick" || need.leaves || need.from >= leave.from) return [];
  const all = need.growsOut
    ? "all that would grow out, small ones too"
    : "all that is ripe or nearly";
  return [
    { bed: need.bed, indoors: false, line: `10 min: ${pickTitle(need, plan, placed)}: ${all}.` },
  ];
}

function pickTitle({ task }: Picking, plan: Plan, placed: ReadonlyMap<string, Placed>): string {
  const first = placed.get(task);
  return first ? titleOf([first], plan) : "Pick";
}

/** Water comes last, whether the week's watering falls there or only the days to come ask for it. */
function waterDeep(jobs: readonly Placed[], needs: readonly Need[]): readonly string[] {
  const week = jobs.some(({ task }) => task.practice === "water");
  if (!week && !needs.some(({ kind }) => kind === "water")) return [];
  return [
    "30 min: Water all beds and bags deep, the evening before: a finger finds them wet all the way.",
  ];
}

function home({ report, plan, jobs }: Telling): readonly AwayText[] {
  if (jobs.home.length === 0) return [];
  const { nameOf: called } = voiceOf(plan, "household");
  const byPeople = new Map<string, Placed[]>();
  for (const job of jobs.home) {
    const who = job.people.length === 0 ? report.leave.home : job.people;
    const names = list(who.map(called));
    byPeople.set(names, [...(byPeople.get(names) ?? []), job]);
  }
  const lines = [...byPeople].flatMap(([names, theirs]) => [
    `${names} ${names.includes(" and ") ? "have" : "has"}:`,
    ...theirs.map((job) =>
      `${sayWeekday(job.day)}: ${titleOf([job], plan)}. ${lastDayTold(job)}`.trim(),
    ),
  ]);
  return [textOf("home", `Meanwhile, ${sayDays(report.leave)}`, lines)];
}

function neighbour({ report, plan, jobs, placed }: Telling): readonly AwayText[] {
  const { leave, needs } = report;
  if (leave.alone.length === 0 && jobs.neighbour.length === 0) return [];
  const voice = voiceOf(plan, "reader");
  const lines = neighbourLines(jobs.neighbour, needs, { plan, voice, placed });
  const days = leave.alone.length > 0 ? list(leave.alone.map(sayDays)) : sayDays(leave);
  const said = lines.length > 0 ? [...lines, "All else can be left. Thank you!"] : [NOBODY];
  return [textOf("neighbour", `For the neighbour, ${days}`, said)];
}

const NOBODY = "Nothing needs a neighbour in these days.";

function waits({ plan, jobs }: Telling): readonly AwayText[] {
  if (jobs.waits.length === 0) return [];
  const lines = jobs.waits.map((job) => {
    const { task, window, day } = job;
    const till = task.rhythm === "warning" ? "" : ` Fine till ${sayWeekday(window.latest)}.`;
    const on = day > window.latest ? "" : `, ${sayWeekday(day)}`;
    return `${titleOf([job], plan)}${task.rhythm === "warning" ? "" : on}.${till}`;
  });
  return [textOf("waits", "This waits until you're back", lines)];
}

type Weighed = { readonly weight: number; readonly line: string };

/** After: most to lose first; of equal weight jobs, then what bears, what may have come up, trays. */
function back({ report, plan, jobs, placed }: Telling): readonly AwayText[] {
  const { needs, leave } = report;
  const lines = [
    ...jobs.back.map((job) => ({ weight: HARM_WEIGHT[job.task.harm], line: lateLine(job, plan) })),
    ...needs.flatMap((need) => lookLine(need, plan, placed)),
  ].sort((a, b) => b.weight - a.weight);
  const said = lines.length > 0 ? lines.map(({ line }) => line) : [ALL_WELL];
  return [textOf("back", `Back after ${sayDay(leave.to)}: look first`, said)];
}

const ALL_WELL = "Nothing presses; walk round once and look.";

function lateLine(job: Placed, plan: Plan): string {
  const { window, day } = job;
  const best =
    day > window.latest ? ` Best was till ${sayDay(window.latest)}, so do it first.` : "";
  return `${roundMinutes(job.task.minutes)} min: ${titleOf([job], plan)}, ${sayWeekday(day)}.${best}`;
}

function lookLine(need: Need, plan: Plan, placed: ReadonlyMap<string, Placed>): readonly Weighed[] {
  switch (need.kind) {
    case "pick": {
      if (need.leaves) return [];
      const why = need.growsOut
        ? "the big ones too, so that it goes on bearing"
        : "all that is ripe";
      const weight = need.growsOut ? HARM_WEIGHT["this week"] : HARM_WEIGHT["when you can"];
      return [{ weight, line: `${pickTitle(need, plan, placed)}: ${why}.` }];
    }
    case "up": {
      const bed = plan.beds.find(({ key }) => key === need.bed)?.name;
      const where = bed ? `, ${bed}` : "";
      const line = `${nameOf(plan, need.planting)}${where}: may be up since about ${sayDay(need.day)}. Any green under a board: off at once. Nothing by ${sayDay(need.late)}: scratch and look.`;
      return [{ weight: HARM_WEIGHT["this week"], line }];
    }
    case "trays":
      return [
        {
          weight: HARM_WEIGHT["this week"],
          line: `Trays of ${list(need.plantings.map((key) => nameOf(plan, key)))}: water what is dry; shade first, then sun again by the hour.`,
        },
      ];
    case "water":
    case "vents":
      return [];
  }
}

import { capital, earliest, joinWords, sayDay, sayWeekday } from "../../base/index.ts";
import { neighbourHelp, type ScheduledTask } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { sayPart, type Voice } from "../events/sentences.ts";
import { bedName } from "../events/titles.ts";
import type { AwayNeed, PickingNeed, TrayCareNeed } from "./away-need.ts";
import { waterLines } from "./cans.ts";

/**
 * What the lines are made with; the voice is a reader's, because this list leaves the house. Scheduled tasks are the
 * feed's, by id.
 */
export type NeighbourContext = {
  readonly plan: Plan;
  readonly voice: Voice;
  readonly scheduled: ReadonlyMap<string, ScheduledTask>;
};

/** The neighbour's list: what to do and what may be eaten, then the cautions, which are always there. */
export type NeighbourList = {
  readonly orders: readonly string[];
  /** The same with what may be picked named and no more, for where that is too long. */
  readonly brief: readonly string[];
  readonly cautions: readonly string[];
};

/**
 * What a neighbour is asked to do: every day, on some days, and what to pick and eat. For somebody who knows nothing of
 * gardening; no people, reasons, hours or links. Both empty where the garden needs nobody.
 */
export function neighbourList(
  jobs: readonly ScheduledTask[],
  needs: readonly AwayNeed[],
  context: NeighbourContext,
): NeighbourList {
  const picks = firstPickingsOf(needs, context.scheduled);
  const work = [
    ...needs.flatMap((need) => roofNeighbourLine(need, context.plan)),
    ...waterLines(
      needs.filter((need) => need.kind === "water"),
      context.plan,
    ),
    ...boardLines(jobs, context.plan),
    ...frostLine(jobs, context.plan),
  ];
  return {
    orders: [...work, ...pickLines(picks, context)],
    brief: [...work, ...briefPickLines(picks)],
    cautions: cautionsOf(picks, context.voice),
  };
}

/**
 * What to mind of the harvests, each once, with the crops it is of before it: on this list it stands far from them. A
 * caution that names its crop stands as it is.
 */
function cautionsOf(picks: readonly FirstPicking[], voice: Voice): readonly string[] {
  const objects = new Map<string, readonly string[]>();
  for (const { first } of picks) {
    const text = sayPart(first.task.say, "caution", voice);
    const { object } = first.task.title;
    const named = text.toLowerCase().includes(object.toLowerCase());
    if (text !== "") objects.set(text, [...(objects.get(text) ?? []), ...(named ? [] : [object])]);
  }
  return [...objects].map(([text, crops]) =>
    crops.length === 0 ? text : `${capital(joinWords([...new Set(crops)]))}: ${text}`,
  );
}

function roofNeighbourLine(need: AwayNeed, plan: Plan): readonly string[] {
  switch (need.kind) {
    case "trays":
      return [traysNeighbourLine(need, plan)];
    case "vents":
      return [
        "Greenhouse, a sunny morning: open the door and the vents. Shut both by four in the afternoon.",
      ];
    case "water":
    case "pick":
    case "up":
      return [];
  }
}

function traysNeighbourLine({ plants, hardeningFloorC }: TrayCareNeed, plan: Plan): string {
  const inside = plan.site.greenhouse ? "in the greenhouse" : "on the sill";
  const where = hardeningFloorC === null ? inside : "in the shade outdoors";
  return `Every day: small plants in trays (${joinWords(plants)}), ${where}. Dry on top? Water them gently.`;
}

/** `South bed, tomatoes`, or the plants alone where they are in no bed. */
function whereOf({ task }: ScheduledTask, plan: Plan): string {
  const bed = bedName(plan, task.bed);
  return bed === "" ? task.title.object : `${bed}, ${task.title.object}`;
}

/**
 * Boards to be looked under, each once, from the first of its days on. Watering, trays and picking are among the daily
 * lines.
 */
function boardLines(jobs: readonly ScheduledTask[], plan: Plan): readonly string[] {
  const firsts = new Map<string, ScheduledTask>();
  for (const job of jobs.filter(({ task }) => neighbourHelp(task) === "boards"))
    if (!firsts.has(job.task.subject.key)) firsts.set(job.task.subject.key, job);
  return [...firsts.values()].map(
    (job) =>
      `From ${sayWeekday(job.day)}, each evening: ${whereOf(job, plan)}. Lift the board. Anything green under it? Take the board away and keep the soil damp.`,
  );
}

/** Covers before a frost night, one line for all that is tender, from the first of their days on. */
function frostLine(jobs: readonly ScheduledTask[], plan: Plan): readonly string[] {
  const frost = jobs.filter(({ task }) => neighbourHelp(task) === "frost");
  if (frost.length === 0) return [];
  const day = sayDay(earliest(...frost.map((job) => job.day)));
  const where = [...new Set(frost.map((job) => whereOf(job, plan)))].join("; ");
  return [
    `From ${day}, is a night near freezing forecast? Before dark lay the covers over: ${where}. Off again in the morning.`,
  ];
}

type FirstPicking = { readonly pick: PickingNeed; readonly first: ScheduledTask };

/** Plants that bear, with their first harvest; those that grow too large first. */
function firstPickingsOf(
  needs: readonly AwayNeed[],
  scheduled: ReadonlyMap<string, ScheduledTask>,
): readonly FirstPicking[] {
  const picks = needs.flatMap((pick) => {
    const first = pick.kind === "pick" ? scheduled.get(pick.task) : null;
    return pick.kind === "pick" && first ? [{ pick, first }] : [];
  });
  return [
    ...picks.filter(({ pick }) => pick.left === "grows out"),
    ...picks.filter(({ pick }) => pick.left !== "grows out"),
  ];
}

/** What may be picked and eaten, a line each with its sign. */
function pickLines(
  picks: readonly FirstPicking[],
  { plan, voice }: NeighbourContext,
): readonly string[] {
  const lines = picks.map(({ pick, first }) => {
    const sign = sayPart(first.task.say, "sign", voice);
    return `${capital(whereOf(first, plan))}: ${sign}${PICKING_HINTS[pick.left]}`;
  });
  return lines.length === 0 ? [] : ["Pick and eat, when:", ...new Set(lines)];
}

/** What may be picked and eaten, by name alone: what grows too large first, then the rest. */
function briefPickLines(picks: readonly FirstPicking[]): readonly string[] {
  const named = (quick: boolean) => [
    ...new Set(
      picks
        .filter(({ pick }) => (pick.left === "grows out") === quick)
        .map(({ first }) => first.task.title.object),
    ),
  ];
  const [quick, slow] = [named(true), named(false)];
  return [
    ...(quick.length > 0
      ? [`Pick every other day, even what you can't use: ${joinWords(quick)}.`]
      : []),
    ...(slow.length > 0 ? [`Pick and eat what is ripe: ${joinWords(slow)}.`] : []),
  ];
}

const PICKING_HINTS: Readonly<Record<PickingNeed["left"], string>> = {
  "grows out": " Pick every other day, even what you can't use.",
  ripens: "",
  stands: " Take outer leaves, leave the middle.",
};

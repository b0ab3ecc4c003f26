import { sayDay } from "../days/day.ts";
import type { Plan } from "../plan/plan.ts";
import { capital } from "../practices/say.ts";
import type { Placed } from "../schedule/placed.ts";
import { sayPart, sayWeekday, type Voice } from "../words/sentences.ts";
import { bedName, list } from "../words/titles.ts";
import { waterLines } from "./cans.ts";
import type { Need, Picking, Trays } from "./need.ts";

/** What the lines are made with; the voice is a reader's, since this list leaves the house. `placed`: the feed's, by id. */
export type Told = {
  readonly plan: Plan;
  readonly voice: Voice;
  readonly placed: ReadonlyMap<string, Placed>;
};

/**
 * The neighbour's lines: what to do every day, what on some days, then what to pick and eat, cautions last. For somebody
 * who knows nothing of gardening; no people, reasons, hours or links. Empty where the garden needs nobody.
 */
export function neighbourLines(
  jobs: readonly Placed[],
  needs: readonly Need[],
  told: Told,
): readonly string[] {
  return [
    ...needs.flatMap((need) => roofLine(need, told.plan)),
    ...waterLines(
      needs.filter((need) => need.kind === "water"),
      told.plan,
    ),
    ...new Set(jobs.flatMap((job) => jobLine(job, told))),
    ...pickLines(
      needs.filter((need) => need.kind === "pick"),
      told,
    ),
  ];
}

function roofLine(need: Need, plan: Plan): readonly string[] {
  switch (need.kind) {
    case "trays":
      return [traysLine(need, plan)];
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

function traysLine({ called, hardeningFloorC }: Trays, plan: Plan): string {
  const inside = plan.site.greenhouse ? "in the greenhouse" : "by the window";
  const where = hardeningFloorC === null ? inside : "in the shade outdoors";
  return `Every day: small plants in trays (${list(called)}), ${where}. Dry on top? Water them gently.`;
}

/** `South bed, tomatoes`, or what they are where they stand in no bed. */
function whereOf({ task }: Placed, plan: Plan): string {
  const bed = bedName(plan, task.bed);
  return bed === "" ? task.title.object : `${bed}, ${task.title.object}`;
}

/** Jobs of a day that anybody can do; watering and picking stand among the standing orders. */
function jobLine(job: Placed, { plan, voice }: Told): readonly string[] {
  const { task, day } = job;
  const where = whereOf(job, plan);
  switch (task.practice) {
    case "board":
      return [
        `From ${sayWeekday(day)}, each evening: ${where}. Lift the board. Anything green under it? Take the board away and keep the soil damp.`,
      ];
    case "first frost":
      return [
        `From ${sayDay(day)}: is a night near freezing forecast? Before dark lay the covers over ${where}; off again in the morning.`,
      ];
    case "harden off":
      return [`${sayWeekday(day)}: ${task.title.object}. ${sayPart(task.say, "how", voice)}`];
    default:
      return [];
  }
}

/** What may be picked and eaten, a line each with its sign, what grows out first; then the cautions, each once. */
function pickLines(picks: readonly Picking[], { plan, voice, placed }: Told): readonly string[] {
  const inTurn = [
    ...picks.filter(({ left }) => left === "grows out"),
    ...picks.filter(({ left }) => left !== "grows out"),
  ];
  const known = inTurn.flatMap((pick) => {
    const first = placed.get(pick.task);
    return first ? [{ pick, first }] : [];
  });
  const lines = new Set(
    known.map(({ pick, first }) => {
      const sign = sayPart(first.task.say, "sign", voice);
      return `${capital(whereOf(first, plan))}: ${sign}${ALSO[pick.left]}`;
    }),
  );
  const cautions = known.map(({ first }) => sayPart(first.task.say, "caution", voice));
  if (lines.size === 0) return [];
  return ["Pick and eat, when:", ...lines, ...new Set(cautions.filter((said) => said !== ""))];
}

const ALSO: Readonly<Record<Picking["left"], string>> = {
  "grows out": " Pick every other day, even what you can't use.",
  ripens: "",
  stands: " Take outer leaves, leave the middle.",
};

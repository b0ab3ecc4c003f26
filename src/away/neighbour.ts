import { sayDay } from "../days/day.ts";
import type { Plan } from "../plan/plan.ts";
import { litres } from "../quantities/quantity.ts";
import { sayQuantity } from "../quantities/say.ts";
import type { Placed } from "../schedule/placed.ts";
import { sayPart, sayWeekday, type Voice } from "../words/sentences.ts";
import { bedName, list } from "../words/titles.ts";
import type { Need, Picking, Thirst, Trays } from "./needs.ts";

/** A can as most have it [litres]. Source: common practice; two gallons, or ten litres. */
const CAN_L = { us: 7.6, metric: 10 } as const;

/** Days from one watering to the next: bags and pots, and beds. Source: common practice for summer; beds twice a week, deep. */
const BAGS_EVERY_DAYS = 2;
const BEDS_EVERY_DAYS = 3;
const WEEK = 7;

/** What the lines are made from; `voice` a reader's, since this list leaves the house. */
export type Told = {
  readonly plan: Plan;
  readonly voice: Voice;
  readonly placed: ReadonlyMap<string, Placed>;
};

/**
 * The neighbour's lines: what to do every day, what on some days, what to pick and eat, cautions last. For somebody
 * who knows nothing of gardening; no names, reasons, hours or links. Empty where the garden needs nobody.
 */
export function neighbourLines(
  jobs: readonly Placed[],
  needs: readonly Need[],
  told: Told,
): readonly string[] {
  const water = needs.filter(isWater);
  const picks = needs.filter(isPick);
  return [
    ...needs.filter(isTrays).map((trays) => traysLine(trays, told.plan)),
    ...(needs.some(({ kind }) => kind === "vents") ? [VENTS] : []),
    ...waterLines(water, told.plan),
    ...jobs.flatMap((job) => jobLine(job, told)),
    ...pickLines(picks, told),
  ];
}

const isWater = (need: Need): need is Thirst => need.kind === "water";
const isPick = (need: Need): need is Picking => need.kind === "pick";
const isTrays = (need: Need): need is Trays => need.kind === "trays";

const VENTS =
  "Greenhouse, a sunny morning: open the door and the vents. Shut both by four in the afternoon.";

function traysLine({ plantings, hardening }: Trays, plan: Plan): string {
  const names = list(plantings.map((key) => nameOf(plan, key)));
  const where = hardening
    ? "in the shade outdoors"
    : plan.site.greenhouse
      ? "in the greenhouse"
      : "by the window";
  return `Every day: trays of small plants (${names}) ${where}. Dry on top? Water them gently.`;
}

/** A planting as the gardener calls it. */
export function nameOf(plan: Plan, key: string): string {
  const planting = plan.plantings.find((each) => each.key === key);
  return planting?.name ?? planting?.written ?? key;
}

function waterLines(thirsts: readonly Thirst[], plan: Plan): readonly string[] {
  const bags = new Set(plan.beds.filter(({ kind }) => kind === "bags").map(({ key }) => key));
  const dripped = thirsts.filter(({ runs }) => runs !== null);
  const byHand = thirsts.filter(({ runs }) => runs === null);
  const often = byHand.filter(({ bed }) => bags.has(bed ?? ""));
  const rest = byHand.filter(({ bed }) => !bags.has(bed ?? ""));
  if (thirsts.length === 0) return [];
  return [
    ...cansLine("Every other day", often, { plan, everyDays: BAGS_EVERY_DAYS }),
    ...cansLine("Every third day", rest, { plan, everyDays: BEDS_EVERY_DAYS }),
    ...dripLine(dripped, plan),
    ...(byHand.length > 0 ? [canTold(plan)] : []),
    "No water on a day after heavy rain.",
  ];
}

function canTold({ measures }: Plan): string {
  return `A can holds ${sayQuantity(litres(CAN_L[measures]), measures)}. Pour slowly on the soil, not on the leaves; evening or early morning.`;
}

type Often = { readonly plan: Plan; readonly everyDays: number };

/** `Every third day: Root bed 5 cans; Salad bed 3 cans.`; beds whose need is not known till the soil is wet. */
function cansLine(
  when: string,
  thirsts: readonly Thirst[],
  { plan, everyDays }: Often,
): readonly string[] {
  if (thirsts.length === 0) return [];
  const said = thirsts.map(({ bed, litresAWeek }) => {
    const name = bedName(plan, bed) || "the plants in no bed";
    if (litresAWeek === null) return `${name} till the soil is wet a finger deep`;
    return `${name} ${cans((litresAWeek * everyDays) / WEEK / CAN_L[plan.measures])}`;
  });
  return [`${when}, water: ${said.join("; ")}.`];
}

/** Whole cans, half a one at the least. */
function cans(count: number): string {
  if (count < 0.75) return "half a can";
  const whole = Math.round(count);
  return whole === 1 ? "1 can" : `${whole} cans`;
}

function dripLine(thirsts: readonly Thirst[], plan: Plan): readonly string[] {
  const said = thirsts.flatMap(({ bed, runs }) => {
    if (!runs) return [];
    const often = runs.times === 1 ? "once a week" : `${runs.times} times a week`;
    return [`${bedName(plan, bed)} ${runs.minutes} min ${often}`];
  });
  return said.length === 0
    ? []
    : [`Open the tap of the drip hose, then shut it: ${said.join("; ")}.`];
}

/** Jobs of a day that anybody can do; watering is told above, as a standing order. */
function jobLine({ task, day, at }: Placed, { plan, voice }: Told): readonly string[] {
  const { object } = task.title;
  const bed = bedName(plan, task.bed);
  const where = bed === "" ? object : `${bed}, ${object}`;
  switch (task.practice) {
    case "board":
      return [
        `From ${sayWeekday(day)}, each evening: ${where}. Lift the board; any green under it, take it away and keep the soil damp.`,
      ];
    case "first frost":
      return [
        `From ${sayDay(day)}: is a night near freezing forecast? Before dark lay the covers over ${where}; off again in the morning.`,
      ];
    case "harden off":
      return at ? [`${sayWeekday(day)}: ${sayPart(task.say, "how", voice)}`] : [];
    default:
      return [];
  }
}

/** What may be picked and eaten, a line each with its sign, what grows out first; then the cautions, each once. */
function pickLines(picks: readonly Picking[], { plan, voice, placed }: Told): readonly string[] {
  if (picks.length === 0) return [];
  const lines = new Set<string>();
  const cautions = new Set<string>();
  for (const pick of [...picks].sort((a, b) => Number(b.growsOut) - Number(a.growsOut))) {
    const first = placed.get(pick.task);
    if (!first) continue;
    const bed = bedName(plan, pick.bed);
    const name = `${first.task.title.object}${bed === "" ? "" : `, ${bed}`}`;
    const every = pick.growsOut ? " Pick every two days, even if you can't use them all." : "";
    const outer = pick.leaves ? " Take outer leaves, leave the middle." : "";
    lines.add(`- ${name}: ${sayPart(first.task.say, "sign", voice)}${every}${outer}`);
    const warned = sayPart(first.task.say, "caution", voice);
    if (warned !== "") cautions.add(warned);
  }
  return ["Pick and eat, when:", ...lines, ...cautions];
}

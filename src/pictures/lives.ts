import { cropOf, isTender } from "../crops/crops.ts";
import type { Crop } from "../crops/facts.ts";
import { type Day, earliest, latest, plus } from "../days/day.ts";
import { type Anchors, anchorKey } from "../growth/anchors.ts";
import { lastHarvest } from "../growth/ending.ts";
import type { Growing } from "../growth/growing.ts";
import { reached } from "../growth/milestones.ts";
import { remembered } from "../growth/remembered.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import { upMilestone } from "../growth/up.ts";
import type { Plan, Planting } from "../plan/plan.ts";
import { seasonOf } from "../plan/season.ts";
import { anchored } from "../schedule/anchored.ts";
import type { Placed } from "../schedule/placed.ts";
import type { Sketch } from "./sketch.ts";
import { climateIn } from "./warmth.ts";

/** One sowing from the day it goes in to the day the last of it is gone; days in that order. */
export type Life = {
  /** Sown, planted, or set out where it was bought. */
  readonly starts: Day;
  /** When it left the house or the greenhouse; null where it grows in its place from the start. */
  readonly out: Day | null;
  /** Usually shows above the soil by then. */
  readonly up: Day;
  /** Full height, and first harvest where it is ready. */
  readonly full: Day;
  /** False where its end comes before any harvest. */
  readonly ready: boolean;
  /** From then on it goes, and by then it is gone: what lies between is not certain. */
  readonly ends: Day;
  readonly gone: Day;
};

/** A planting with its sowings in order; none where nothing is known of the crop's days, or it has none this season. */
export type Grown = {
  readonly planting: Planting;
  readonly crop: Crop | null;
  readonly plan: Plan;
  readonly lives: readonly Life[];
};

/** Every planting of every year, in the order of the plans. */
export function grownOf(sketch: Sketch): readonly Grown[] {
  const anchors = anchorsOf(sketch);
  return sketch.plans.flatMap((plan) => {
    const climate = climateIn(plan, sketch.facts);
    return plan.plantings.map((planting) => {
      const crop = cropOf(planting.crop);
      const whole = { sketch, plan, planting, anchors, climate };
      const numbers = sowingsOf(sketch.placed, planting);
      const lives = crop ? numbers.flatMap((sowing) => lifeOf({ ...whole, crop, sowing })) : [];
      return { planting, crop, plan, lives };
    });
  });
}

/** The days of acts: as the diary saw them, else as their tasks were placed. */
function anchorsOf({ plans, placed, facts }: Sketch): Anchors {
  const plantings = plans.flatMap((plan) => plan.plantings);
  return anchored(remembered(plantings, facts), placed);
}

/** Numbers of a planting's sowings, rising; none where it is never sown or planted. */
function sowingsOf(placed: readonly Placed[], planting: Planting): readonly number[] {
  const numbers = new Set(planting.inSince === null ? [] : [1]);
  for (const { task } of placed)
    if (task.sets?.planting === planting.key && task.sets.act !== "end")
      numbers.add(task.sets.sowing);
  return [...numbers].sort((a, b) => a - b);
}

type One = Pick<Growing, "plan" | "planting" | "crop" | "sowing" | "climate" | "anchors"> & {
  readonly sketch: Sketch;
};

function lifeOf(one: One): readonly Life[] {
  const { plan, planting, sowing, anchors } = one;
  const day = (act: "start" | "set out" | "end") =>
    anchors.get(anchorKey(planting.key, sowing, act))?.day ?? null;
  const [start, out] = [day("start"), day("set out")];
  const starts = start ?? out;
  if (starts === null) return [];
  const bed = plan.beds.find((each) => each.key === planting.bed) ?? null;
  const facts = one.sketch.facts.filter(
    (fact) => "planting" in fact && fact.planting === planting.key,
  );
  const growing: Growing = { ...one, bed, facts, around: () => true };
  const up = upDay(growing, starts);
  const moved = start !== null && out !== null && out > start ? out : null;
  const inPlace = latest(up, moved ?? up);
  const ripe = ripeDays(growing, one.sketch.placed, inPlace);
  const rest = ripe
    ? { full: ripe.full, ...endDays(growing, ripe, day("end")) }
    : unripe(growing, inPlace);
  return [{ starts, out: moved, up, ready: ripe !== null, ...rest }];
}

/** When it shows; plants that were bought show at once. */
function upDay(growing: Growing, starts: Day): Day {
  const up = upMilestone(growing);
  return growing.planting.start === "plants" || !reached(up) ? starts : latest(starts, up.usual);
}

/** First harvest, the last one placed, and the last day on which that one may wait. */
type Ripe = { readonly full: Day; readonly last: Day; readonly waits: Day };

/** Null where it does not ripen, whatever is taken of it before its end, and where its harvest is not told though it might be. */
function ripeDays(growing: Growing, placed: readonly Placed[], up: Day): Ripe | null {
  const ripe = ripeMilestone(growing);
  const picks = picksOf(growing, placed);
  if (!reached(ripe)) return null;
  if (picks.length === 0 && !growing.planting.without.includes("harvest")) return null;
  const days = picks.map(({ day }) => day);
  const full = latest(plus(up, 1), days.length > 0 ? earliest(...days) : ripe.usual);
  const waits = picks.map((pick) => pick.window.latest);
  return { full, last: latest(full, ...days), waits: latest(full, ...waits) };
}

/** A sowing's harvests. */
function picksOf({ planting, sowing }: Growing, placed: readonly Placed[]): readonly Placed[] {
  const step = sowing === 1 ? /^(?!sowing-)/ : new RegExp(`^sowing-${sowing}-`);
  return placed.filter(
    ({ task }) =>
      task.subject.key === planting.key && task.practice === "harvest" && step.test(task.step),
  );
}

/** Days over which what never ripens fades. Source: house rule; its end is the weather's, and no more certain than frost is. */
const FADES_DAYS = 21;

/** What is not ready before its end: it grows, and fades towards the last day on which a harvest would still be worth while, or the season's last. */
function unripe(growing: Growing, up: Day): Pick<Life, "full" | "ends" | "gone"> {
  const last = lastHarvest(growing, up) ?? latest(up, seasonOf(growing.plan).to);
  const full = latest(plus(up, 1), plus(last, -FADES_DAYS));
  return { full, ends: full, gone: latest(plus(full, CLEARED_DAYS), last) };
}

/** Days in which a bed is cleared after the last harvest, at the least. Source: house rule. */
const CLEARED_DAYS = 4;

type End = Pick<Life, "ends" | "gone">;

/** What is picked again and again goes when it has borne its time, all else between its last harvest and the last day it keeps; the year's end takes what is left. */
function endDays(growing: Growing, { full, last, waits }: Ripe, end: Day | null): End {
  const year = lastHarvest(growing, full);
  const bears = growing.crop.harvest.kind === "again and again";
  const { ends, gone } = bears ? bearingEnds(growing, full, end) : { ends: last, gone: waits };
  if (year === null || (bears && isTender(growing.crop)))
    return { ends, gone: latest(plus(ends, CLEARED_DAYS), gone) };
  const over = latest(bears ? full : last, earliest(ends, year));
  return { ends: over, gone: latest(plus(over, CLEARED_DAYS), earliest(gone, year)) };
}

/** Days from the first picking to the last where the facts tell none: least and most. Source: house rule; a picture needs some length. */
const UNTOLD_BEARS_DAYS = [60, 90] as const;

/** How long it bears; frost takes what is tender before, some time between its early date and its late one. */
function bearingEnds(growing: Growing, full: Day, end: Day | null): End {
  const { bearsDays } = growing.crop.harvest;
  const [least, most] = bearsDays?.value ?? UNTOLD_BEARS_DAYS;
  const borne = { ends: plus(full, least), gone: plus(full, Math.max(least + 1, most)) };
  const frost = growing.bed?.kind === "greenhouse" ? null : growing.plan.site.firstFrost;
  if (frost === null || frost.late <= full)
    return end === null || end <= borne.ends ? borne : { ends: end, gone: plus(end, CLEARED_DAYS) };
  const taken = { ends: latest(full, frost.early), gone: latest(plus(full, 1), frost.late) };
  if (bearsDays === null) return taken;
  if (!isTender(growing.crop)) return borne;
  return { ends: earliest(borne.ends, taken.ends), gone: earliest(borne.gone, taken.gone) };
}

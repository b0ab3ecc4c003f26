import { cropOf, isTender } from "../crops/crops.ts";
import type { Crop } from "../crops/facts.ts";
import { type Day, earliest, latest, plus } from "../days/day.ts";
import { type Anchors, anchorKey } from "../growth/anchors.ts";
import type { Growing } from "../growth/growing.ts";
import { reached } from "../growth/milestones.ts";
import { remembered } from "../growth/remembered.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import { upMilestone } from "../growth/up.ts";
import type { Plan, Planting } from "../plan/plan.ts";
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
  /** First harvest, and full height. */
  readonly full: Day;
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
  const anchors = new Map(remembered(plantings, facts));
  for (const { task, day, done } of placed) {
    if (!task.sets) continue;
    const { planting, sowing, act } = task.sets;
    const key = anchorKey(planting, sowing, act);
    anchors.set(key, {
      day,
      from: done ? "diary" : "placed",
      grounds: task.grounds,
      task: task.id,
    });
  }
  return anchors;
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
  const growing: Growing = { ...one, bed, facts: [], around: () => true };
  const up = upDay(growing, starts);
  const moved = start !== null && out !== null && out > start ? out : null;
  const ripe = ripeDays(growing, one.sketch.placed, latest(up, moved ?? up));
  return [
    {
      starts,
      out: moved,
      up,
      full: ripe.full,
      ...endDays(growing, ripe, day("end")),
    },
  ];
}

/** When it shows; plants that were bought show at once. */
function upDay(growing: Growing, starts: Day): Day {
  const up = upMilestone(growing);
  return growing.planting.start === "plants" || !reached(up) ? starts : latest(starts, up.usual);
}

/** First harvest, the last one placed, and the last day on which that one may wait. */
type Ripe = { readonly full: Day; readonly last: Day; readonly waits: Day };

/** Days from up to harvest where nothing at all tells. Source: house rule; a picture needs some length. */
const UNTOLD_DAYS = 60;

function ripeDays(growing: Growing, placed: readonly Placed[], up: Day): Ripe {
  const step = growing.sowing === 1 ? /^(?!sowing-)/ : new RegExp(`^sowing-${growing.sowing}-`);
  const picks = placed.filter(
    ({ task }) =>
      task.subject.key === growing.planting.key &&
      task.practice === "harvest" &&
      step.test(task.step),
  );
  const ripe = ripeMilestone(growing);
  const expected = reached(ripe) ? ripe.usual : plus(up, UNTOLD_DAYS);
  const days = picks.map(({ day }) => day);
  const full = latest(plus(up, 1), days.length > 0 ? earliest(...days) : expected);
  const waits = picks.map((pick) => pick.window.latest);
  return { full, last: latest(full, ...days), waits: latest(full, ...waits) };
}

/** Days in which a bed is cleared after the last harvest, at the least. Source: house rule. */
const CLEARED_DAYS = 4;

type End = Pick<Life, "ends" | "gone">;

/** What is picked again and again goes when it has borne its time, all else between its last harvest and the last day it keeps; frost takes what is tender before. */
function endDays(growing: Growing, { full, last, waits }: Ripe, end: Day | null): End {
  const { kind, bearsDays } = growing.crop.harvest;
  if (kind !== "again and again")
    return { ends: last, gone: latest(plus(last, CLEARED_DAYS), waits) };
  const [least, most] = bearsDays?.value ?? [UNTOLD_DAYS, UNTOLD_DAYS * 1.5];
  const borne = { ends: plus(full, least), gone: plus(full, Math.max(least + 1, most)) };
  const frost = growing.bed?.kind === "greenhouse" ? null : growing.plan.site.firstFrost;
  if (frost === null || frost.late <= full)
    return end === null || end <= borne.ends ? borne : { ends: end, gone: plus(end, CLEARED_DAYS) };
  const taken = { ends: latest(full, frost.early), gone: latest(plus(full, 1), frost.late) };
  if (bearsDays === null) return taken;
  if (!isTender(growing.crop)) return borne;
  return { ends: earliest(borne.ends, taken.ends), gone: earliest(borne.gone, taken.gone) };
}

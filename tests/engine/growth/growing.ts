import { type Day, isoOf } from "../../../src/base/days/day.ts";
import { cropOf } from "../../../src/crops/crops.ts";
import type { Crop } from "../../../src/crops/facts.ts";
import { climateOf, type ObservedWeather } from "../../../src/engine/climate/climate.ts";
import {
  type Anchor,
  type AnchorAct,
  type Anchors,
  anchorKey,
  type Basis,
} from "../../../src/engine/growth/anchors.ts";
import { isReached, type Milestone } from "../../../src/engine/growth/milestones.ts";
import type { SeasonSoFar, SowingContext } from "../../../src/engine/growth/sowing-context.ts";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { parseDiary } from "../../../src/garden/diary/parse.ts";
import type { Plan, Planting, Site } from "../../../src/garden/model/plan.ts";
import { isoDay, normalsOf, planOf, QUARRY } from "../../gardens.ts";

/** Acts and the days (`2027-05-06`) they are known to have fallen on. */
export type Acts = Partial<Record<AnchorAct, string>>;

/** What a planting's own sowing is told to be, beside its plan. */
export type Given = {
  readonly acts?: Acts;
  readonly crop?: Partial<Crop>;
  readonly planting?: Partial<Planting>;
  readonly plan?: Partial<Plan>;
  readonly anchors?: Anchors;
  readonly around?: (day: Day) => boolean;
  readonly sowing?: number;
  readonly observed?: ObservedWeather;
  readonly soFar?: SeasonSoFar;
};

/** Anchors of the first sowing of a planting, seen where a gardener sees them and placed where not. */
export function anchorsOf(planting: string, acts: Acts): Anchors {
  const anchors = new Map<string, Anchor>();
  for (const [act, iso] of Object.entries(acts))
    anchors.set(anchorKey(planting, 1, act as AnchorAct), anchor(isoDay(iso)));
  return anchors;
}

/** A placed day that hangs on the last frost alone. */
export function anchor(day: Day): Anchor {
  return { day, from: "placed", basis: ["last frost"], task: null };
}

/** The first sowing of a crop of a text's plan, as growth and practices are given it. */
export function growingOf(text: string, name: string, given: Given = {}): SowingContext {
  const plan = planOf(text, given.plan);
  const planting = plan.plantings.find(({ key }) => key === `${plan.year}/${name}`);
  const crop = planting && cropOf(planting.crop);
  if (!planting || !crop) throw new Error(`no ${name} in the plan`);
  const bed = plan.beds.find(({ key }) => key === planting.bed) ?? null;
  const facts = parseDiary(plan.diary, [plan], PRACTICES);
  return {
    plan,
    planting: { ...planting, ...given.planting },
    crop: { ...crop, ...given.crop },
    bed,
    sowing: given.sowing ?? 1,
    climate: climateOf(plan, facts, given.observed).at(bed),
    anchors: given.anchors ?? anchorsOf(planting.key, given.acts ?? {}),
    observations: facts.filter((fact) => "planting" in fact && fact.planting === planting.key),
    around: given.around ?? (() => true),
    soFar: given.soFar ?? null,
  };
}

/** The lane with the same low and high on every day of the year [°C]; both the same where one is given. */
export function always(lowC: number, highC = lowC): Site {
  const twelve = (at: number) => Array<number>(12).fill(at);
  return { ...planOf(QUARRY).site, normals: normalsOf(twelve(lowC), twelve(highC)) };
}

/** Anchors seen in the diary: by planting (`2026/beet`), then act, the day (`2026-07-12`). */
export function seenIn(acts: Readonly<Record<string, Acts>>): Anchors {
  const anchors = new Map<string, Anchor>();
  for (const [planting, days] of Object.entries(acts))
    for (const [act, iso] of Object.entries(days))
      anchors.set(anchorKey(planting, 1, act as AnchorAct), seen(isoDay(iso)));
  return anchors;
}

/** A day that the gardener saw it on. */
export function seen(day: Day): Anchor {
  return { day, from: "diary", basis: ["seen"], task: null };
}

/** `early usual late` of a milestone (`05-18 05-24 05-30`), or why it has none. */
export function daysOf(milestone: Milestone): string {
  if (!isReached(milestone)) return milestone.none;
  const { early, usual, late } = milestone;
  return [early, usual, late].map((day) => isoOf(day).slice(5)).join(" ");
}

/** What a milestone hangs on; nothing where it has none. */
export function groundsOf(milestone: Milestone): readonly Basis[] {
  return isReached(milestone) ? milestone.basis : [];
}

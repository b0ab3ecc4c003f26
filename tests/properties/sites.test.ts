import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Schedule } from "../../src/app/build.ts";
import { midway } from "../../src/base/days/day.ts";
import { CROPS } from "../../src/crops/crops.ts";
import { seasonDoubts } from "../../src/engine/doubts/season.ts";
import type { DateDecision } from "../../src/engine/growth/date-decision.ts";
import { lastHarvest } from "../../src/engine/growth/ending.ts";
import { isReached, type Milestone } from "../../src/engine/growth/milestones.ts";
import { ripeMilestone } from "../../src/engine/growth/ripe.ts";
import { anchorOf, type SowingContext } from "../../src/engine/growth/sowing-context.ts";
import { upMilestone } from "../../src/engine/growth/up.ts";
import type { Plan } from "../../src/garden/model/plan.ts";
import { seasonOf } from "../../src/garden/model/season.ts";
import { DEPTH, samples } from "../depth.ts";
import { anySite } from "./anysite.ts";
import { dawn, toldAt } from "./feeds.ts";
import { grownIn, reckonedFor } from "./grown.ts";

/** How many sites are tried; `SITES=10000` tries ten thousand. */
const SITES = Number(process.env.SITES ?? samples(400, 100));

/** Each run looks at everything, so that a site is told but once. */
const faultsOf = (plan: Plan): readonly string[] => {
  const told = toldAt({ id: "any", plans: [plan] }, dawn("2027-01-01"));
  const grown = grownIn(plan, told);
  return [
    ...notNumbers(told, "told"),
    ...told.scheduled.flatMap((placed) => windowFaults(plan, placed)),
    ...grown.flatMap((growing) => [
      ...[upMilestone(growing), ripeMilestone(growing)].flatMap(milestoneFaults),
      ...reckonedFor(growing).flatMap(reckonedFaults),
    ]),
    ...unripeFaults(plan, grown),
  ];
};

/** Numbers anywhere in a value that are none, by where they stand. */
function notNumbers(value: unknown, where: string): readonly string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${where} is ${value}`];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, each]) => notNumbers(each, `${where}.${key}`));
}

/** Days between the middle of a season and anything told of it, at the most. */
const TWO_YEARS = 730;

function windowFaults(
  plan: Plan,
  { task, day, window }: Schedule["scheduled"][number],
): readonly string[] {
  const { earliest, due, latest } = window;
  const inOrder = earliest <= due && due <= latest;
  const { from, to } = seasonOf(plan);
  const near = Math.abs(day - midway(from, to)) <= TWO_YEARS;
  return [
    ...(inOrder ? [] : [`${task.id}: ${earliest}, ${due}, ${latest} are out of order`]),
    ...(near ? [] : [`${task.id}: on ${day}, years away`]),
  ];
}

function milestoneFaults(milestone: Milestone): readonly string[] {
  if (!isReached(milestone)) return [];
  const { early, usual, late } = milestone;
  if (early <= usual && usual <= late && Number.isInteger(early + usual + late)) return [];
  return [`a milestone of ${early}, ${usual}, ${late}`];
}

function reckonedFaults({ early, day, late, stop }: DateDecision): readonly string[] {
  const held = stop === null || day <= stop;
  if (early <= day && day <= late && held && Number.isInteger(early + day + late)) return [];
  return [`a day of ${early}, ${day}, ${late} held till ${stop}`];
}

/** Sowings that are not ready in time in a usual season, and whose planting no doubt names. */
function unripeFaults(plan: Plan, grown: readonly SowingContext[]): readonly string[] {
  const doubts = seasonDoubts(plan).filter(({ code }) => code === "will-not-ripen");
  const named = new Set(doubts.map(({ at }) => `${at.line}:${at.column}`));
  return grown.flatMap((growing) => {
    const { planting, crop, sowing } = growing;
    const { line, column } = planting.at;
    if (crop.overwinter || crop.perennial || named.has(`${line}:${column}`)) return [];
    const ripe = ripeMilestone(growing);
    const from = (anchorOf(growing, "set out") ?? anchorOf(growing, "start"))?.day;
    const end = from === undefined ? null : lastHarvest(growing, from);
    if (isReached(ripe) && (end === null || ripe.usual <= end)) return [];
    const is = isReached(ripe) ? `ready ${ripe.usual}, after ${end}` : ripe.none;
    return [`${planting.key}, sowing ${sowing}: ${is}, and no doubt says so`];
  });
}

describe(`${SITES} gardens anywhere from 66° south to 72° north`, () => {
  test("are of every kind, and some crops ripen there and some do not", () => {
    const plans = fc.sample(anySite, { numRuns: 800, seed: 72 });
    const sites = plans.map(({ site }) => site);
    for (const is of [
      sites.map(({ latitude }) => latitude === null),
      sites.map(({ latitude }) => latitude !== null && latitude < 0),
      sites.map(({ lastFrost }) => lastFrost === null),
      sites.map(({ normals }) => normals === null),
      sites.map(({ normals }) => normals !== null && Math.max(...normals.highC) < 10),
      sites.map(({ normals }) => normals !== null && Math.min(...normals.lowC) > 15),
    ])
      expect(is.filter(Boolean).length).toBeGreaterThan(10);
    const plantings = plans.flatMap((plan) => plan.plantings);
    const ways = new Set(plantings.map(({ crop, start }) => `${crop} ${start}`));
    expect(ways.size).toBe(CROPS.flatMap(({ starts }) => starts).length);
    const unripe = plans.flatMap(seasonDoubts).filter(({ code }) => code === "will-not-ripen");
    expect(unripe.length).toBeGreaterThan(plantings.length / 10);
    expect(unripe.length).toBeLessThan((plantings.length * 2) / 3);
  });

  test(
    "are told without a fault",
    () => {
      fc.assert(
        fc.property(anySite, (plan) => {
          expect(faultsOf(plan)).toEqual([]);
        }),
        { numRuns: SITES, seed: 66 + DEPTH.seed },
      );
    },
    60_000 + SITES * 300,
  );
});

import { buildSchedule, horizonAt } from "../../../src/app/feed.ts";
import {
  type GardenSeason,
  type PlantingLives,
  plantingLivesOf,
} from "../../../src/engine/beds/lives.ts";
import { parseDiary } from "../../../src/garden/diary/parse.ts";
import { ALONE, planOf } from "../../gardens.ts";

const HEAD = ALONE.slice(0, ALONE.indexOf("beds:"));

/** The lane's place with one bed of that size and its crops, in a year; nobody named. */
export function bedOf(crops: readonly string[], { year = 2027, is = "12 x 4 ft" } = {}): string {
  const lines = crops.map((crop) => `      - ${crop}\n`).join("");
  return `${HEAD.replace("2027", String(year))}beds:\n  Long bed:\n    is: ${is}\n    crops:\n${lines}`;
}

/** What is placed of years' texts, in year order. */
export function seasonOf(...texts: readonly string[]): GardenSeason {
  const plans = texts.map((text) => planOf(text));
  const garden = { id: "quarry-lane", plans, usual: {} };
  const { scheduled: placed } = buildSchedule(garden, horizonAt(garden, 0), {});
  const facts = parseDiary(
    plans.flatMap((plan) => plan.diary),
    plans,
  );
  return { plans, scheduled: placed, observations: facts };
}

/** Every planting of those years with its days. */
export function grownIn(...texts: readonly string[]): readonly PlantingLives[] {
  return plantingLivesOf(seasonOf(...texts));
}

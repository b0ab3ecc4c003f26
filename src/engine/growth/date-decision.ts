import { type Day, earliest, latest } from "../../base/index.ts";
import { type Basis, combineBasis } from "./anchors.ts";
import { aheadWarmerK, type SeasonWarmth } from "./seasons.ts";
import type { SowingContext } from "./sowing-context.ts";

/** A calculated day, with each test it had to pass and the day that each test alone would give. */
export type DateDecision = {
  readonly day: Day;
  /** The same tests in a warm and in a cold season, where the soil decides: early ≤ day ≤ late. */
  readonly early: Day;
  readonly late: Day;
  readonly basis: readonly Basis[];
  readonly tests: readonly DateTest[];
  /** The day on which waiting stops, and whether it stopped there instead of in the right soil. */
  readonly stop: Day | null;
  readonly stopped: boolean;
};

/** One test: what it looked at and the first day that passes it; with the day of the frost odds where it is one of frost. */
export type DateTest = { readonly basis: Basis; readonly day: Day; readonly frost?: Day };

/** The day that passes every test, or the stop day before that; the same whatever the season. */
export function decideDate(
  tests: readonly DateTest[],
  stop: Day | null,
  more: readonly Basis[] = [],
): DateDecision {
  const passed = latest(...tests.map((test) => test.day));
  const stopped = stop !== null && passed > stop;
  const day = stopped ? stop : passed;
  const basis = combineBasis(
    tests.map((test) => test.basis),
    more,
  );
  return { day, early: day, late: day, basis, tests, stop, stopped };
}

/**
 * The decision of the usual season, with the days on which the soil would decide in a warm and in a cold one. Where
 * something else gives the day, both are that day, because no text shows more and each season costs as much as the
 * usual one.
 */
export function decideAcrossSeasons(
  context: SowingContext,
  decideIn: (warmerK: number) => DateDecision,
): DateDecision {
  const usual = decideIn(0);
  const { day, tests } = usual;
  if (!tests.some((test) => test.basis === "soil" && test.day === day)) return usual;
  const dayIn = (season: SeasonWarmth) => decideIn(aheadWarmerK(context.climate, season, day)).day;
  return { ...usual, early: earliest(day, dayIn("warm")), late: latest(day, dayIn("cold")) };
}

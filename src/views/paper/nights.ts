import { type Day, midway, type Quantity } from "../../base/index.ts";
import type { Observation } from "../../garden/index.ts";
import { type Plan, seasonOf } from "../../garden/model/index.ts";

/** A low or a soil temperature as the diary has it; `bed` is a key, null where none was named. */
export type Measurement = {
  readonly day: Day;
  readonly bed: string | null;
  readonly value: Quantity;
};

/** A season's cold as it was written down, day by day; frosts are lows at or below freezing. */
export type MeasuredNights = {
  readonly lows: readonly Measurement[];
  readonly soils: readonly Measurement[];
  /** The last frost before the middle of the usual frost-free time, and the first one after; null where none was measured. */
  readonly lastFrost: Day | null;
  readonly firstFrost: Day | null;
};

/** What the diary measured in a plan's season up to today, today included. */
export function measuredNightsOf(
  plan: Plan,
  observations: readonly Observation[],
  today: Day,
): MeasuredNights {
  const { from, to } = seasonOf(plan);
  const measurements = observations
    .flatMap((observation) => (observation.kind === "measured" ? [observation] : []))
    .filter(({ day }) => day >= from && day <= to && day <= today)
    .sort((a, b) => a.day - b.day);
  const lows = measurements.filter(({ what }) => what === "low");
  const frosts = lows.filter(({ value }) => value.si <= 0).map(({ day }) => day);
  const middle = middleOfSeason(plan);
  return {
    lows,
    soils: measurements.filter(({ what }) => what === "soil"),
    lastFrost: frosts.findLast((day) => day <= middle) ?? null,
    firstFrost: frosts.find((day) => day > middle) ?? null,
  };
}

/** The middle of the time without frost; of the season where the plan has no frosts. */
function middleOfSeason(plan: Plan): Day {
  const { lastFrost, firstFrost } = plan.site;
  const { from, to } = seasonOf(plan);
  return lastFrost && firstFrost ? midway(lastFrost.usual, firstFrost.usual) : midway(from, to);
}

import { type Day, midway } from "../../base/index.ts";
import type { Bed, Planting } from "../../garden/model/index.ts";
import { bedShare } from "../rules/spacing.ts";
import type { PlantingInYear } from "../year.ts";
import type { SowingRecord } from "./planting-record.ts";

/**
 * A planting in a bed: the days of its sowings there, and the share of the bed that it takes once grown, null where
 * that is not known.
 */
export type Occupancy = {
  readonly planting: Planting;
  readonly spans: readonly OccupancySpan[];
  readonly share: number | null;
};

/**
 * One sowing in its bed. From `wide` on it takes its full share; from `ends` it begins to go, by `gone` the bed is free
 * of it.
 */
export type OccupancySpan = {
  readonly from: Day;
  readonly fullFrom: Day;
  readonly ends: Day;
  readonly gone: Day;
};

/**
 * The part of its share that a sowing takes until halfway to its full size.
 * Source: house rule: that is how radishes go between rows of carrots, and salad under young cabbages.
 */
const YOUNG_SHARE = 0.5;

/** Everything that is in a bed at any time, in the plans' order; plantings without days there are left out. */
export function occupancyIn(bed: Bed, plantings: readonly PlantingInYear[]): readonly Occupancy[] {
  return plantings.flatMap(({ planting, crop, lives }) => {
    const spans = planting.bed === bed.key ? lives.flatMap(spanOf) : [];
    if (!crop || spans.length === 0) return [];
    return [{ planting, spans, share: bedShare(planting, crop, bed) }];
  });
}

/** Nothing for seedlings that are never set out. */
function spanOf({ placed: from, full, ends, gone }: SowingRecord): readonly OccupancySpan[] {
  return from === null ? [] : [{ from, fullFrom: midway(from, full), ends, gone }];
}

/** Until when a sowing counts: its end, when it begins to go, or the day by which the last of it is gone. */
export type OccupancyLimit = "ends" | "gone";

/**
 * The sowings that are in the bed on a day: from the day they go in to the day before their end, or before they are
 * gone.
 */
export function spansOn(
  { spans }: Occupancy,
  day: Day,
  till: OccupancyLimit = "ends",
): readonly OccupancySpan[] {
  return spans.filter((span) => span.from <= day && day < span[till]);
}

/**
 * The share of the bed that it takes on a day, 0 where it is not there, null where that is not known. The sowings of a
 * row share its length; for plants, each sowing has as many as the plan says.
 */
export function shareOn(
  occupancy: Occupancy,
  day: Day,
  till: OccupancyLimit = "ends",
): number | null {
  const spans = spansOn(occupancy, day, till);
  if (spans.length === 0) return 0;
  if (occupancy.share === null) return null;
  const parts = spans.map(({ fullFrom }) => (day < fullFrom ? YOUNG_SHARE : 1));
  const isRow = occupancy.planting.amount?.kind !== "plants";
  const most = isRow ? Math.max(...parts) : parts.reduce((sum, part) => sum + part, 0);
  return most * occupancy.share;
}

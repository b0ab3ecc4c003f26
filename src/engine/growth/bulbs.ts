import { dayOrThrow } from "../../base/index.ts";
import type { BulbKind, BulbKinds } from "../../crops/index.ts";
import type { Planting } from "../../garden/model/index.ts";
import { dayHours } from "../climate/sun.ts";

const NAMED: readonly (readonly [BulbKind, RegExp])[] = [
  ["long-day", /\blong[- ]day/i],
  ["short-day", /\bshort[- ]day/i],
  ["intermediate", /\bintermediate|\bday[- ]neutral/i],
];

/** The kind of bulb that a planting's own words name, in its variety, name or crop; null where none is named. */
export function bulbKindNamed({ variety, name, written }: Planting): BulbKind | null {
  const words = [variety, name, written].join(" ");
  return NAMED.find(([, pattern]) => pattern.test(words))?.[0] ?? null;
}

/** Hours of the longest day at a latitude [h]. */
export function longestDayHours(latitude: number): number {
  return dayHours(dayOrThrow(2026, latitude < 0 ? 12 : 6, 21), latitude);
}

/** Degrees of latitude from which each kind is grown. Source: from memory, unchecked: usual extension advice, which overlaps by some degrees. */
const FROM_LATITUDE: readonly (readonly [BulbKind, number])[] = [
  ["long-day", 37],
  ["intermediate", 32],
  ["short-day", 0],
];

/** Degrees of latitude beyond which a short-day kind makes its bulbs before it has leaves to fill them. Source: as FROM_LATITUDE. */
const SHORT_DAY_TO_LATITUDE = 42;

/** The kind that is usually grown at a latitude, in either half of the world. */
export function bulbKindFor(latitude: number): BulbKind {
  return FROM_LATITUDE.find(([, from]) => Math.abs(latitude) >= from)?.[0] ?? "short-day";
}

/** Why a kind does not do at a latitude: its days never come, or come too soon; null where it does. */
export function bulbFault(
  kind: BulbKind,
  latitude: number,
  kinds: BulbKinds,
): "never" | "too soon" | null {
  if (longestDayHours(latitude) < kinds[kind].value) return "never";
  return kind === "short-day" && Math.abs(latitude) > SHORT_DAY_TO_LATITUDE ? "too soon" : null;
}

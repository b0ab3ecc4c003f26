import type { Climate } from "../climate/climate.ts";
import type { Planting } from "../plan/plan.ts";
import type { Growing } from "./growing.ts";

/** Gives what is known of a growing, or makes it; the same as long as its climate lives. */
export type Memo<Known> = (growing: Growing, make: () => Known) => Known;

/**
 * A memo for what several practices ask of the very same growing, nothing more. It is kept with the climate, so that it
 * goes with the telling that asked, all at once.
 */
export function memo<Known>(): Memo<Known> {
  const byClimate = new WeakMap<Climate, Map<Growing, Known>>();
  return (growing, make) => {
    const known = kept(byClimate, growing.climate, () => new Map<Growing, Known>());
    return kept(known, growing, make);
  };
}

/** Gives what is known of a planting and one more thing, or makes it. */
export type PlantingMemo<Key, Known> = (growing: Growing, key: Key, make: () => Known) => Known;

/** The same for what hangs on the planting and one more thing alone, not on how far it has come: every pass asks it. */
export function plantingMemo<Key, Known>(): PlantingMemo<Key, Known> {
  const byClimate = new WeakMap<Climate, Map<Planting, Map<Key, Known>>>();
  return ({ climate, planting }, key, make) => {
    const byPlanting = kept(byClimate, climate, () => new Map<Planting, Map<Key, Known>>());
    const byKey = kept(byPlanting, planting, () => new Map<Key, Known>());
    return kept(byKey, key, make);
  };
}

/** What is kept under a key, made where it is not there yet. */
export function kept<Key, Value>(
  map: { get(key: Key): Value | undefined; set(key: Key, value: Value): unknown },
  key: Key,
  make: () => Value,
): Value {
  const there = map.get(key);
  if (there !== undefined) return there;
  const made = make();
  map.set(key, made);
  return made;
}

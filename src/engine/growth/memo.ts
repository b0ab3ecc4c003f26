import type { Planting } from "../../garden/model/plan.ts";
import type { Climate } from "../climate/climate.ts";
import type { Growing } from "./growing.ts";

/*
 * What growth reckons is asked for by many practices in three passes. Memos keep it with the climate, so that it goes
 * with the telling that asked, all at once. They change no answer, since within a telling what is known of earlier years stays put.
 */

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

/** Gives what is known of a growing, or makes it. */
export type Memo<Known> = (growing: Growing, make: () => Known) => Known;

/** A memo for what is asked of the very same growing. */
export function memo<Known>(): Memo<Known> {
  const byClimate = new WeakMap<Climate, Map<Growing, Known>>();
  return (growing, make) => {
    const known = kept(byClimate, growing.climate, () => new Map<Growing, Known>());
    return kept(known, growing, make);
  };
}

/** Gives what is known of a planting and one more thing, or makes it. */
export type PlantingMemo<Key, Known> = (growing: Growing, key: Key, make: () => Known) => Known;

/** A memo for what hangs on the planting and one more thing alone: another pass has another growing of it. */
export function plantingMemo<Key, Known>(): PlantingMemo<Key, Known> {
  const byClimate = new WeakMap<Climate, Map<Planting, Map<Key, Of<Known>>>>();
  return (growing, key, make) => {
    const { climate, planting } = growing;
    const byPlanting = kept(byClimate, climate, () => new Map<Planting, Map<Key, Of<Known>>>());
    const byKey = kept(byPlanting, planting, () => new Map<Key, Of<Known>>());
    const there = byKey.get(key);
    if (there && isAlike(there.growing, growing)) return there.known;
    const known = make();
    byKey.set(key, { growing, known });
    return known;
  };
}

type Of<Known> = { readonly growing: Growing; readonly known: Known };

const isAlike = (a: Growing, b: Growing) =>
  a.crop === b.crop && a.bed === b.bed && a.plan === b.plan;

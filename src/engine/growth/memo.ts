import type { Planting } from "../../garden/model/plan.ts";
import type { Climate } from "../climate/climate.ts";
import type { SowingContext } from "./sowing-context.ts";

/*
 * What growth reckons is asked for by many practices in three passes. Memos keep it with the climate, so that it goes
 * with the telling that asked, all at once. They change no answer, since within a telling what is known of earlier years stays put.
 */

/** What is kept under a key, made where it is not there yet. */
export function cached<Key, Value>(
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
export type Memo<Known> = (context: SowingContext, make: () => Known) => Known;

/** A memo for what is asked of the very same growing. */
export function memoize<Known>(): Memo<Known> {
  const byClimate = new WeakMap<Climate, Map<SowingContext, Known>>();
  return (context, make) => {
    const known = cached(byClimate, context.climate, () => new Map<SowingContext, Known>());
    return cached(known, context, make);
  };
}

/** Gives what is known of a planting and one more thing, or makes it. */
export type PlantingMemo<Key, Known> = (
  context: SowingContext,
  key: Key,
  make: () => Known,
) => Known;

/** A memo for what hangs on the planting and one more thing alone: another pass has another growing of it. */
export function memoizeByPlanting<Key, Known>(): PlantingMemo<Key, Known> {
  const byClimate = new WeakMap<Climate, Map<Planting, Map<Key, CachedValue<Known>>>>();
  return (context, key, make) => {
    const { climate, planting } = context;
    const byPlanting = cached(
      byClimate,
      climate,
      () => new Map<Planting, Map<Key, CachedValue<Known>>>(),
    );
    const byKey = cached(byPlanting, planting, () => new Map<Key, CachedValue<Known>>());
    const there = byKey.get(key);
    if (there && isAlike(there.context, context)) return there.known;
    const known = make();
    byKey.set(key, { context, known });
    return known;
  };
}

type CachedValue<Known> = { readonly context: SowingContext; readonly known: Known };

const isAlike = (a: SowingContext, b: SowingContext) =>
  a.crop === b.crop && a.bed === b.bed && a.plan === b.plan;

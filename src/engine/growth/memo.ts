import type { Climate } from "../climate/climate.ts";
import { type Anchor, type AnchorAct, anchorKey } from "./anchors.ts";
import type { SowingContext } from "./sowing-context.ts";

/*
 * How results are cached, here and in the rest of the engine. What growth calculates is asked for by many practices, in three
 * passes, and once more for what becomes of each planting. A cache is always a WeakMap on an object that never changes: the
 * climate, which each build makes anew for each plan, or the very object that the answer is about (a crop's facts, a list of
 * hours, a household). So a cache goes when its build goes, cannot grow beyond it, and no build sees another's answers.
 * Beside these, three small tables are kept for good: the clocks of zones (base/days/instants.ts) and sunsets (climate/sun.ts),
 * both with a bound, and how practices' names stand in ids (practices/task.ts).
 * Under a climate an answer is kept together with all else that it was calculated from, and is used only where that is the
 * same. What the diary knows of earlier years is the same for a whole climate.
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

/** What is calculated of a sowing. */
export type OfSowing<Known> = (context: SowingContext) => Known;

/**
 * The same calculation, done once for all passes that know the same days of the acts it depends on. It must depend on no other
 * day of the year's own acts.
 */
export function memoizeBySowing<Known>(
  acts: readonly AnchorAct[],
  calculate: OfSowing<Known>,
): OfSowing<Known> {
  const byClimate = new WeakMap<Climate, KnownOfSowings<Known>>();
  return (context) => {
    const { byContext, bySowing } = cached(byClimate, context.climate, newKnownOfSowings<Known>);
    const same = byContext.get(context);
    if (same) return same.known;
    const key = `${context.planting.key}|${context.sowing}`;
    const anchors = acts.map(
      (act) => context.anchors.get(anchorKey(context.planting.key, context.sowing, act)) ?? null,
    );
    const there = bySowing.get(key);
    const holds = there && isAlike(there.context, context) && areSameDays(there.anchors, anchors);
    const now = holds ? there : { context, anchors, known: calculate(context) };
    byContext.set(context, now);
    bySowing.set(key, now);
    return now.known;
  };
}

/** Answers by the very context that asked, and the newest of each sowing by its name. */
type KnownOfSowings<Known> = {
  readonly byContext: Map<SowingContext, KnownOfSowing<Known>>;
  readonly bySowing: Map<string, KnownOfSowing<Known>>;
};

function newKnownOfSowings<Known>(): KnownOfSowings<Known> {
  return { byContext: new Map(), bySowing: new Map() };
}

type KnownOfSowing<Known> = KnownOf<Known> & { readonly anchors: readonly (Anchor | null)[] };

function areSameDays(before: readonly (Anchor | null)[], now: readonly (Anchor | null)[]): boolean {
  return before.every((one, i) => {
    const other = now[i] ?? null;
    if (one === other) return true;
    return (
      one !== null && one.day === other?.day && one.from === other.from && one.basis === other.basis
    );
  });
}

/** Gives what is known of a planting and one more thing, or makes it. */
export type PlantingMemo<Key, Known> = (
  context: SowingContext,
  key: Key,
  make: () => Known,
) => Known;

/** A memo for what depends on the planting and one more thing, and on no day of the year's own acts. */
export function memoizeByPlanting<Key, Known>(): PlantingMemo<Key, Known> {
  const byClimate = new WeakMap<Climate, Map<string, Map<Key, KnownOf<Known>>>>();
  return (context, key, make) => {
    const { climate, planting } = context;
    const byPlanting = cached(
      byClimate,
      climate,
      () => new Map<string, Map<Key, KnownOf<Known>>>(),
    );
    const byKey = cached(byPlanting, planting.key, () => new Map<Key, KnownOf<Known>>());
    const there = byKey.get(key);
    if (there && isAlike(there.context, context)) return there.known;
    const known = make();
    byKey.set(key, { context, known });
    return known;
  };
}

/** An answer with the context that it was calculated from. */
type KnownOf<Known> = { readonly context: SowingContext; readonly known: Known };

function isAlike(a: SowingContext, b: SowingContext): boolean {
  return (
    a.planting === b.planting &&
    a.crop === b.crop &&
    a.bed === b.bed &&
    a.plan === b.plan &&
    a.observations === b.observations
  );
}

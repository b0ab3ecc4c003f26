import type { Climate } from "../climate/climate.ts";
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
    const known = byClimate.get(growing.climate) ?? new Map<Growing, Known>();
    byClimate.set(growing.climate, known);
    const there = known.get(growing);
    if (there !== undefined) return there;
    const made = make();
    known.set(growing, made);
    return made;
  };
}

/** Numbers from 0 to 1 that are the same for the same seed. Source: mulberry32, Tommy Ettinger, 2017, public domain. */
export function random(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** One of some things. */
export function oneOf<T>(things: readonly T[], roll: () => number): T {
  const found = things[Math.floor(roll() * things.length)];
  if (found === undefined) throw new RangeError("nothing to choose from");
  return found;
}

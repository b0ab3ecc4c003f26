import { describe, expect, it } from "vitest";
import { CROPS } from "../../src/crops/crops.ts";
import {
  FIXTURES,
  fixtureOf,
  fixtureWords,
  isAtHand,
  isClimbed,
} from "../../src/crops/fixtures.ts";

describe("what a bed has already", () => {
  it("is known by each of its words, with an article, whatever case", () => {
    for (const { name, words } of FIXTURES)
      for (const word of words)
        expect([word, `a ${word}`, `The ${word.toUpperCase()}`].map(fixtureOf)).toEqual([
          name,
          name,
          name,
        ]);
    expect(fixtureOf("a roof")).toBeNull();
    expect(fixtureWords()[0]?.length).toBeGreaterThan(fixtureWords().at(-1)?.length ?? 0);
  });

  it("each saves something that a crop asks for", () => {
    const things = CROPS.flatMap(({ settingOut, support }) => [
      ...(settingOut?.things ?? []),
      ...(support?.things ?? []),
    ]);
    for (const { name } of FIXTURES)
      expect(
        things.some((thing) => isAtHand(thing, [name])),
        name,
      ).toBe(true);
    expect(isAtHand("collars of card", ["trellis"])).toBe(false);
    expect(isAtHand("a watering can", ["trellis", "stakes", "collars"])).toBe(false);
  });

  it("is climbed where it stands all year", () => {
    expect(isClimbed(["collars", "trellis"])).toBe(true);
    expect(isClimbed(["stakes"])).toBe(false);
  });
});

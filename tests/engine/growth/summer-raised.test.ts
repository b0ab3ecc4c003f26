import { describe, expect, test } from "vitest";
import { isRaisedInShade } from "../../../src/engine/growth/summer-raised.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { withCrops } from "../../winters.ts";
import { growingOf } from "./growing.ts";

const MILD = withCrops("mediterranean", ["broccoli: 8 plants", "tomato: 3 plants"]);

describe("trays of a hot August", () => {
  test("stand outdoors in shade where seed wants no more warmth than it is", () => {
    expect(isRaisedInShade(growingOf(MILD, "broccoli"), isoDay("2027-08-21"))).toBe(true);
    expect(isRaisedInShade(growingOf(MILD, "broccoli"), isoDay("2027-02-01"))).toBe(false);
  });

  test("are not those of tender plants, nor of a place with cool nights", () => {
    expect(isRaisedInShade(growingOf(MILD, "tomato"), isoDay("2027-08-21"))).toBe(false);
    expect(isRaisedInShade(growingOf(QUARRY, "lettuce"), isoDay("2027-07-20"))).toBe(false);
  });
});

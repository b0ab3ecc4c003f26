import { expect, test } from "vitest";
import { celsius } from "../../../src/base/quantities/quantity.ts";
import { FABRIC } from "../../../src/crops/covers.ts";
import { coverWarmEnough, isWarmEnough } from "../../../src/engine/beds/fabric.ts";

const cover = (airF: number, killsF = 32) => coverWarmEnough(celsius(airF), celsius(killsF));

test("the lightest cover that holds is chosen, heavy ones by the least they give", () => {
  expect(cover(30)).toEqual({ fabric: "light fabric", sure: true });
  expect(cover(29)).toEqual({ fabric: "heavy fabric", sure: true });
  expect(cover(26)).toEqual({ fabric: "heavy fabric", sure: true });
  expect(cover(25)).toEqual({ fabric: "heavy fabric", sure: false });
  expect(cover(22)).toEqual({ fabric: "heavy fabric", sure: false });
  expect(cover(21)).toBeNull();
});

test("what is just warm enough holds, and a tenth of a degree less does not", () => {
  expect(isWarmEnough(celsius(28) + 20 / 9, celsius(32))).toBe(true);
  expect(isWarmEnough(celsius(31.9), celsius(32))).toBe(false);
});

test("heavy fabric gives more than light", () => {
  expect(FABRIC.warmsK["heavy fabric"].value[0]).toBeGreaterThan(
    FABRIC.warmsK["light fabric"].value[1],
  );
});

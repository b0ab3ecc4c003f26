import { describe, expect, it } from "vitest";
import { fahrenheit } from "../../src/base/quantities/quantity.ts";
import { PUMPKIN, SQUASHES, SUMMER_SQUASH, WINTER_SQUASH } from "../../src/crops/squashes.ts";

describe("the squashes", () => {
  it("are gourds that survive no cold, sown in warm soil two to a place", () => {
    expect(SQUASHES).toEqual([PUMPKIN, SUMMER_SQUASH, WINTER_SQUASH]);
    for (const { key, family, frost, outdoors, thinnings } of SQUASHES) {
      expect([family, frost.value], key).toEqual(["gourd family", "warm loving"]);
      expect(fahrenheit(outdoors?.soilMinC.value ?? 0), key).toBeCloseTo(60, 9);
      expect(outdoors?.how, key).toContain("two seeds");
      expect(thinnings[0]?.apartCm.value, key).toEqual(outdoors?.apartCm.value);
    }
  });

  it("are picked often in summer, and once to keep", () => {
    expect(SUMMER_SQUASH.harvest).toMatchObject({ kind: "again and again", verb: "Pick" });
    for (const { key, harvest, care } of [PUMPKIN, WINTER_SQUASH]) {
      expect(harvest.kind, key).toBe("once");
      expect(
        care.map(({ practice }) => practice),
        key,
      ).toContain("cure and store");
    }
    expect(SUMMER_SQUASH.harvest.bearsDays?.value).toEqual([56, 90]);
    expect(SUMMER_SQUASH.care.map(({ practice }) => practice)).not.toContain("cure and store");
  });

  it("warn of bitter ones", () => {
    for (const { harvest } of SQUASHES) expect(harvest.caution).toMatch(/bitter/);
  });
});

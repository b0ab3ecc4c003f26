import { describe, expect, test } from "vitest";
import { CROPS, isTender } from "../../src/crops/crops.ts";
import { winterLife } from "../../src/crops/winter-life.ts";

describe("how crops live through a winter", () => {
  test("is for crops alone that no light frost kills", () => {
    const lived = CROPS.filter(({ winter }) => winter !== null);
    expect(lived.length).toBeGreaterThan(15);
    expect(lived.filter(isTender)).toEqual([]);
  });

  test("is of what is grown by autumn, unless it is sown for it", () => {
    expect(winterLife(-12, "through it")).toMatchObject({
      survivesC: { value: -12 },
      picked: "through it",
      sweetened: false,
      sownWeeksBefore: null,
      daysAfterSpring: null,
    });
    expect(winterLife(-10, "after it", { weeks: [0, 8], daysAfterSpring: 55 })).toMatchObject({
      sownWeeksBefore: { value: [0, 8] },
      daysAfterSpring: { value: 55 },
    });
  });
});

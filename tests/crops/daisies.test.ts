import { describe, expect, it } from "vitest";
import { fahrenheit } from "../../src/base/quantities/quantity.ts";
import { DAISY_FAMILY, LETTUCE } from "../../src/crops/daisies.ts";

describe("the daisy family", () => {
  it("is of one family", () => {
    expect(DAISY_FAMILY).toContain(LETTUCE);
    for (const { family } of DAISY_FAMILY) expect(family).toBe("daisy family");
  });

  it("has leaf lettuce that is sown again and cut again", () => {
    expect(LETTUCE.repeatEveryDays?.value).toEqual([14, 14]);
    expect(LETTUCE.harvest).toMatchObject({ kind: "cut and come again", verb: "Cut" });
    expect(LETTUCE.harvest.cuts).not.toBeNull();
  });

  it("has seed that sleeps in warm soil and wakes in cold", () => {
    expect(fahrenheit(LETTUCE.outdoors?.soilMaxC?.value ?? 0)).toBeCloseTo(80, 6);
    expect(fahrenheit(LETTUCE.outdoors?.soilMinC.value ?? 0)).toBeLessThan(50);
  });

  it("bolts in heat", () => {
    expect(fahrenheit(LETTUCE.limits.heatC?.value ?? 0)).toBeCloseTo(70, 9);
  });
});

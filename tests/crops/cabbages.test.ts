import { describe, expect, it } from "vitest";
import { fahrenheit } from "../../src/base/quantities/quantity.ts";
import {
  CABBAGE,
  CABBAGE_FAMILY,
  RADISH,
  TURNIP,
  WINTER_RADISH,
} from "../../src/crops/cabbages.ts";
import { saySource } from "../../src/crops/figures.ts";
import { inch } from "./walk.ts";

describe("the cabbage family", () => {
  it("has winter radishes grown for autumn, slower and farther apart than spring ones", () => {
    expect([RADISH, WINTER_RADISH].map(({ forAutumn }) => forAutumn ?? false)).toEqual([
      false,
      true,
    ]);
    expect(WINTER_RADISH.harvest.days.value[0]).toBeGreaterThan(RADISH.harvest.days.value[1]);
  });

  it("is of one family", () => {
    expect(CABBAGE_FAMILY).toEqual([CABBAGE, RADISH, WINTER_RADISH, TURNIP]);
    for (const { family } of CABBAGE_FAMILY) expect(family).toBe("cabbage family");
  });

  it("has cabbages raised indoors, bought, or sown in their place, three weeks before the last frost", () => {
    expect(CABBAGE.starts).toEqual(["seed indoors", "plants", "seed outdoors"]);
    expect(CABBAGE.settingOut?.weeksFromLastFrost.value).toBe(-3);
    expect(CABBAGE.outdoors?.weeksFromLastFrost?.value).toBe(-3);
    expect(CABBAGE.harvest.from).toBe("setting out");
  });

  it("thins cabbages sown in their place to what raised ones are set out at", () => {
    expect(CABBAGE.thinnings.at(-1)?.apartCm.value[1]).toBeCloseTo(
      CABBAGE.settingOut?.apartCm.value ?? 0,
      9,
    );
  });

  it("has radishes in a month, sown again before they are pulled", () => {
    expect(RADISH.harvest.days.value[1]).toBeLessThanOrEqual(35);
    expect(RADISH.repeatEveryDays?.value[1] ?? 99).toBeLessThan(RADISH.harvest.days.value[0]);
    expect(RADISH.thinnings[0]?.apartCm.value).toEqual([inch(1), inch(2)]);
  });

  it("has turnips and radishes, both quick, by their own rows", () => {
    expect(TURNIP.comesUp).toEqual({ kind: "table", row: "turnip", standsIn: null });
    expect(RADISH.comesUp).toEqual({ kind: "table", row: "radish", standsIn: null });
  });

  it("counts cabbage and turnip from Peet's own 40 °F, radish from the base of cool crops", () => {
    for (const { warmth } of [CABBAGE, TURNIP]) {
      expect(fahrenheit(warmth?.baseC.value ?? 0)).toBeCloseTo(40, 9);
      expect(warmth?.baseC.source.kind).toBe("published");
    }
    expect(RADISH.warmth?.baseC.source.kind).toBe("derived");
  });

  it("has cabbage and turnip bolt after weeks of cold while young, by common practice", () => {
    for (const { limits } of [CABBAGE, TURNIP]) {
      expect(limits.coldYoung?.value.belowC ?? 99).toBeLessThan(10);
      expect(limits.coldYoung?.value.days ?? 0).toBeGreaterThanOrEqual(21);
      expect(limits.coldYoung && saySource(limits.coldYoung.source)).toBe("common practice");
    }
    expect(RADISH.limits.coldYoung).toBeNull();
  });
});

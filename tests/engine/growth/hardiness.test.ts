import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/days/day.ts";
import { fahrenheit } from "../../../src/base/quantities/quantity.ts";
import { CROPS, cropOf } from "../../../src/crops/crops.ts";
import type { Crop } from "../../../src/crops/facts.ts";
import {
  COLDER_AT_LEAVES_K,
  type FrostStage,
  frostStage,
  frostStageOf,
  hardinessOf,
  standsHalfOut,
  YOUNG_DAYS,
} from "../../../src/engine/growth/hardiness.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { growingOf } from "./growing.ts";

const crop = (key: string): Crop => {
  const found = cropOf(key);
  if (!found) throw new Error(key);
  return found;
};
const STAGES: readonly FrostStage[] = ["not up", "young", "standing", "in flower", "bearing"];
const killsF = (key: string, stage: FrostStage) => {
  const { killsC } = hardinessOf(crop(key), stage);
  return killsC === null ? null : Math.round(fahrenheit(killsC));
};

describe("the stage of a sowing", () => {
  const up = isoDay("2027-05-20");
  const days = { up, out: null, ready: isoDay("2027-08-01") };
  const stage = (key: string, iso: string) => frostStage(crop(key), days, isoDay(iso));

  test("is not up till three days before its usual day, young for three weeks, then standing till it is ready", () => {
    expect(stage("beet", "2027-05-16")).toBe("not up");
    expect(stage("beet", "2027-05-17")).toBe("young");
    expect(frostStage(crop("beet"), days, plus(up, YOUNG_DAYS - 1))).toBe("young");
    expect(frostStage(crop("beet"), days, plus(up, YOUNG_DAYS))).toBe("standing");
    expect(stage("beet", "2027-08-01")).toBe("bearing");
  });

  test("of peas is in flower from three weeks before their pods on, and of beans is not", () => {
    expect(stage("pea", "2027-07-10")).toBe("standing");
    expect(stage("pea", "2027-07-11")).toBe("in flower");
    expect(stage("pea", "2027-08-10")).toBe("in flower");
    expect(stage("bean", "2027-07-20")).toBe("standing");
  });

  test("of what stands for years goes by its harvest: asleep, in flower, bearing, in leaf again", () => {
    expect(stage("asparagus", "2027-07-20")).toBe("not up");
    expect(stage("asparagus", "2027-07-25")).toBe("bearing");
    expect(stage("asparagus", "2027-11-20")).toBe("standing");
    expect(stage("strawberry", "2027-06-19")).toBe("standing");
    expect(stage("strawberry", "2027-06-20")).toBe("in flower");
    expect(stage("strawberry", "2027-08-01")).toBe("bearing");
    expect(stage("rhubarb", "2027-07-01")).toBe("standing");
  });

  test("of plants set out is young from that day", () => {
    const out = isoDay("2027-06-10");
    expect(frostStage(crop("tomato"), { ...days, out }, isoDay("2027-06-20"))).toBe("young");
    expect(frostStage(crop("tomato"), { ...days, out }, isoDay("2027-07-02"))).toBe("standing");
  });

  test("is none of what is not in its place yet", () => {
    const beets = growingOf(QUARRY, "beet", { acts: { start: "2027-05-03", up: "2027-05-20" } });
    expect(frostStageOf(beets, isoDay("2027-05-02"))).toBeNull();
    expect(frostStageOf(beets, isoDay("2027-05-10"))).toBe("not up");
    expect(frostStageOf(beets, isoDay("2027-05-25"))).toBe("young");
  });
});

describe("what frost does", () => {
  test("goes by the class, and hurts the young sooner", () => {
    expect([killsF("tomato", "bearing"), killsF("cucumber", "standing")]).toEqual([32, 34]);
    expect([killsF("cabbage", "young"), killsF("cabbage", "standing")]).toEqual([28, 24]);
    expect([killsF("kale", "young"), killsF("kale", "bearing")]).toEqual([24, 20]);
    for (const each of CROPS)
      expect(hardinessOf(each, "young").killsC ?? -99, each.key).toBeGreaterThanOrEqual(
        hardinessOf(each, "standing").killsC ?? -99,
      );
  });

  test("takes lettuce, sown as early as kale, sooner than kale, and sprouts later than their class", () => {
    expect([killsF("lettuce", "young"), killsF("lettuce", "standing")]).toEqual([28, 24]);
    expect(killsF("brussels-sprouts", "standing")).toBe(20);
  });

  test("is nothing to seed in the ground, to what stands the winter, and to tubers", () => {
    for (const each of CROPS) expect(hardinessOf(each, "not up").spared, each.key).toBe("not up");
    for (const stage of STAGES.slice(1)) expect(killsF("garlic", stage)).toBeNull();
    expect(hardinessOf(crop("potato"), "bearing").spared).toBe("under the soil");
    expect(killsF("potato", "young")).toBe(32);
  });

  test("takes peas' blossom, spares their plants, and spares roots that are ready", () => {
    expect([killsF("pea", "standing"), killsF("pea", "in flower")]).toEqual([20, 32]);
    expect([killsF("carrot", "standing"), killsF("carrot", "bearing")]).toEqual([24, null]);
    expect(hardinessOf(crop("parsnip"), "bearing").spared).toBe("under the soil");
    expect(killsF("beet", "bearing")).toBe(20);
    expect(hardinessOf(crop("beet"), "bearing").kind).toBe("hardy");
    expect(hardinessOf(crop("beet"), "standing").kind).toBe("half-hardy");
    expect(
      ["beet", "turnip", "celeriac", "kohlrabi", "radish"].map(crop).every(standsHalfOut),
    ).toBe(true);
    expect(["carrot", "parsnip", "chard", "kale", "leek"].map(crop).some(standsHalfOut)).toBe(
      false,
    );
  });

  test("takes blossom, spears and heads sooner than leaves, and what stands for years comes again", () => {
    expect([killsF("strawberry", "in flower"), killsF("strawberry", "standing")]).toEqual([
      30,
      null,
    ]);
    expect([killsF("asparagus", "bearing"), killsF("rhubarb", "bearing")]).toEqual([31, 26]);
    expect([killsF("cauliflower", "bearing"), killsF("cauliflower", "standing")]).toEqual([27, 24]);
    expect(hardinessOf(crop("asparagus"), "standing").spared).toBe("stands the winter");
  });

  test("is calculated at the leaves, 4 °F below the forecast", () => {
    expect(COLDER_AT_LEAVES_K * 1.8).toBeCloseTo(4, 9);
  });
});

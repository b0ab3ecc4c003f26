import { describe, expect, test } from "vitest";
import { CROPS } from "../../../src/crops/crops.ts";
import { heightOn, lobesOf, STATURE } from "../../../src/views/pictures/stature.ts";
import { on } from "./drawn.ts";

const LIFE = {
  sowing: 1,
  starts: on("2027-05-01"),
  out: null,
  up: on("2027-05-11"),
  full: on("2027-07-10"),
  ready: true,
  ends: on("2027-08-09"),
  gone: on("2027-08-29"),
};
const SCALE = { from: on("2027-04-01"), to: on("2027-10-31"), leftPx: 0, rightPx: 400 };

test("what is eaten goes by the crop, and every known one has an answer", () => {
  const eaten = (key: string) => CROPS.filter((crop) => crop.key === key).map((crop) => crop.eaten);
  expect(["carrot", "potato", "garlic", "beet"].flatMap(eaten)).toEqual([
    "root",
    "root",
    "root",
    "root",
  ]);
  expect(eaten("lettuce")).toEqual(["leaf"]);
  expect(eaten("tomato")).toEqual(["fruit"]);
  for (const crop of CROPS) expect(Object.keys(STATURE)).toContain(crop.eaten);
});

describe("its height", () => {
  test("is nothing until it is up, whole at the first harvest, nothing once it is gone", () => {
    expect(heightOn(LIFE, LIFE.starts)).toBe(0);
    expect(heightOn(LIFE, LIFE.up)).toBe(0);
    expect(heightOn(LIFE, LIFE.full)).toBe(1);
    expect(heightOn(LIFE, LIFE.gone)).toBe(0);
  });

  test("rises till the first harvest and never after", () => {
    for (let day = LIFE.up + 1; day < LIFE.gone; day++) {
      const step = heightOn(LIFE, day) - heightOn(LIFE, day - 1);
      if (day <= LIFE.full) expect(step).toBeGreaterThan(0);
      else expect(step).toBeLessThanOrEqual(0);
    }
  });

  test("in its bed begins with setting out where it was raised indoors", () => {
    const raised = { ...LIFE, out: on("2027-06-01") };
    expect(heightOn(raised, on("2027-05-31"))).toBe(0);
    expect(heightOn(raised, on("2027-06-08"))).toBeGreaterThan(0.2);
  });
});

test("lobes come in turn, tip and notch, with a tip at the first harvest, as far as the scale goes", () => {
  const lobes = lobesOf(LIFE, SCALE, "root");
  const days = lobes.map(({ day }) => day);
  expect(days).toEqual([...days].sort((a, b) => a - b));
  expect(lobes.find(({ day }) => day === LIFE.full)?.tip).toBe(true);
  lobes.slice(1).forEach(({ tip }, i) => {
    expect(tip).not.toBe(lobes[i]?.tip);
  });
  const short = lobesOf(LIFE, { ...SCALE, to: on("2027-06-15") }, "root");
  expect(Math.max(...short.map(({ day }) => day))).toBeLessThanOrEqual(on("2027-06-15"));
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bagLifts, bagStartCm, HILL } from "../../src/practices/hill.ts";
import { QUARRY } from "../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { said, stepOf, titles, told, windowsOf } from "./told.ts";

const INCH = 2.54;
const IN_ROW = QUARRY.replace(
  "  Bags:\n    is: 6 grow bags, 16 in across, 14 in high",
  "  Bags:\n    is: 12 x 4 ft",
);
const potatoes = (given: Given = {}, text = QUARRY) =>
  growingOf(text, "potato", { acts: { start: "2027-05-03" }, ...given });

const lifts = (highIn: number, startIn = 8, rimIn = 1) =>
  bagLifts({ count: 6, acrossCm: 16 * INCH, highCm: highIn * INCH }, startIn * INCH, rimIn * INCH);

describe("the lifts that fill a bag", () => {
  test("of 14 inches begun with 8 are three inches and two, an inch under the rim", () => {
    expect(lifts(14).map((lift) => lift.inches)).toEqual([3, 2]);
  });

  test("take eleven litres a bag for three inches, a tenth for settling in it", () => {
    expect(lifts(14)[0]?.litresABag).toBeCloseTo(
      ((Math.PI / 4) * 40.64 ** 2 * 7.62 * 1.1) / 1000,
      9,
    );
    expect(lifts(14)[0]?.litresABag).toBeCloseTo(10.87, 2);
    expect(lifts(14)[0]?.litresAll).toBeCloseTo(65.24, 2);
  });

  test("are none where the start fills the bag", () => {
    expect(lifts(9)).toEqual([]);
    expect(lifts(6)).toEqual([]);
  });

  const bags = fc.record({
    highIn: fc.integer({ min: 4, max: 40 }),
    acrossIn: fc.integer({ min: 6, max: 40 }),
    startIn: fc.integer({ min: 4, max: 10 }),
    rimIn: fc.integer({ min: 1, max: 2 }),
    count: fc.integer({ min: 1, max: 40 }),
  });
  const filled = ({
    highIn,
    acrossIn,
    startIn,
    rimIn,
    count,
  }: typeof bags extends fc.Arbitrary<infer Bag> ? Bag : never) =>
    bagLifts(
      { count, acrossCm: acrossIn * INCH, highCm: highIn * INCH },
      startIn * INCH,
      rimIn * INCH,
    );

  test("of any bag add up to the bag less start and rim, in whole inches of one to four", () => {
    fc.assert(
      fc.property(bags, (bag) => {
        const high = filled(bag).map((lift) => lift.inches);
        const sum = high.reduce((a, b) => a + b, 0);
        const whole = high.every((each) => Number.isInteger(each) && each >= 1 && each <= 4);
        return whole && sum === Math.max(0, bag.highIn - bag.startIn - bag.rimIn);
      }),
    );
  });

  test("of any bag are as even as whole inches let them be, the bigger first", () => {
    fc.assert(
      fc.property(bags, (bag) => {
        const high = filled(bag).map((lift) => lift.inches);
        const falling = high.every((each, i) => each <= (high[i - 1] ?? 4));
        return falling && (high.length === 0 || Math.max(...high) - Math.min(...high) <= 1);
      }),
    );
  });

  test("of any bag take litres in step with their inches, for one and for all", () => {
    fc.assert(
      fc.property(bags, (bag) => {
        const litresPerInch = ((Math.PI / 4) * (bag.acrossIn * INCH) ** 2 * INCH * 1.1) / 1000;
        return filled(bag).every(
          (lift) =>
            Math.abs(lift.litresABag - lift.inches * litresPerInch) < 1e-9 &&
            Math.abs(lift.litresAll - lift.litresABag * bag.count) < 1e-6,
        );
      }),
    );
  });
});

test("potatoes in a bag are begun in five inches and under three", () => {
  expect(bagStartCm(potatoes()) / INCH).toBeCloseTo(8, 9);
});

describe("hilling potatoes planted on 3 May", () => {
  test("is 28 days after planting and every two weeks from there, once for each lift", () => {
    expect(windowsOf(HILL, potatoes())).toEqual(["1 05-26 05-31 06-05", "2 06-09 06-14 06-19"]);
    expect(titles(HILL.tasks(potatoes()))).toEqual([
      "Hill potatoes [bed]",
      "Hill again: potatoes [bed]",
    ]);
  });

  test("counts from when shoots were seen", () => {
    const seen = potatoes({ acts: { start: "2027-05-03", up: "2027-05-25" } });
    expect(windowsOf(HILL, seen)).toEqual(["1 05-30 06-04 06-09", "2 06-13 06-18 06-23"]);
    expect(said(HILL.tasks(seen)[0])).toContain("why: Shoots came on 25 May.");
    expect(HILL.tasks(seen)[0]?.grounds).toEqual(["seen"]);
  });

  test("says how many inches, how many gallons a bag and for all", () => {
    expect(said(stepOf(HILL, potatoes(), "1"))).toContain(
      "Add 3 in of mix round the shoots: about 3 gal a bag, 17 gal for all 6.",
    );
    expect(said(stepOf(HILL, potatoes(), "2"))).toContain("Add 2 in of mix");
  });

  test("goes by the shoots: 6 to 8 in clear, with 2 to 4 in left in the light", () => {
    const text = said(stepOf(HILL, potatoes(), "1"));
    expect(text).toContain("sign: Shoots stand 6 to 8 in clear of the soil.");
    expect(text).toContain("Leave 2 to 4 in of tops in the light");
  });

  test("stops 1 to 2 in under the rim with the last lift alone", () => {
    expect(said(stepOf(HILL, potatoes(), "1"))).not.toContain("rim");
    expect(said(stepOf(HILL, potatoes(), "2"))).toContain("and stop 1 to 2 in under the rim.");
  });

  test("says to bury shoots before a frost night, and that wet bags are heavy", () => {
    const text = said(stepOf(HILL, potatoes(), "1"));
    expect(text).toContain("Before a frost night, bury the shoots whole.");
    expect(text).toContain("caution: Wet bags are heavy");
    expect(stepOf(HILL, potatoes(), "1")?.kinds).toEqual(["lifting"]);
  });

  test("tells why it is then", () => {
    expect(told(stepOf(HILL, potatoes(), "1"))).toBe("Counted 28 days from planting, 3 May.");
  });

  test("never comes before the hilling before it", () => {
    expect(stepOf(HILL, potatoes(), "2")?.after).toEqual(["2027/potato/hill/1"]);
  });
});

describe("hilling in a row", () => {
  test("is twice without bags, half of 6 to 8 in of soil each time", () => {
    const row = potatoes({}, IN_ROW);
    expect(windowsOf(HILL, row)).toHaveLength(2);
    expect(said(HILL.tasks(row)[0])).toContain("Draw up 3 to 4 in of loose soil");
    expect(said(HILL.tasks(row)[0])).not.toContain("bag");
    expect(HILL.tasks(row)[0]?.needs).toEqual(["a hoe"]);
  });
});

test("nothing else is hilled, and no potato before it is planted", () => {
  expect(windowsOf(HILL, growingOf(QUARRY, "beet", { acts: { start: "2027-05-03" } }))).toEqual([]);
  expect(windowsOf(HILL, growingOf(QUARRY, "potato"))).toEqual([]);
});

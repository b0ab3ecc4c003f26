import { describe, expect, test } from "vitest";
import { bagStartCm, HILL } from "../../../src/engine/practices/hill.ts";
import { QUARRY } from "../../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { said, stepOf, tasksIn, titles, told, windowsOf } from "./told.ts";

const INCH = 2.54;
const IN_ROW = QUARRY.replace(
  "  Bags:\n    is: 6 grow bags, 16 in across, 14 in high",
  "  Bags:\n    is: 12 x 4 ft",
);
const potatoes = (given: Given = {}, text = QUARRY) =>
  growingOf(text, "potato", { acts: { start: "2027-05-03" }, ...given });

test("potatoes in a bag are begun in five inches and under three", () => {
  expect(bagStartCm(potatoes()) / INCH).toBeCloseTo(8, 9);
});

describe("hilling potatoes planted on 3 May", () => {
  test("is 28 days after planting and every two weeks from there, once for each lift", () => {
    expect(windowsOf(HILL, potatoes())).toEqual(["1 05-26 05-31 06-05", "2 06-09 06-14 06-19"]);
    expect(titles(tasksIn(HILL, potatoes()))).toEqual([
      "Hill potatoes [bed]",
      "Hill potatoes again [bed]",
    ]);
  });

  test("counts from when shoots were seen", () => {
    const seen = potatoes({ acts: { start: "2027-05-03", up: "2027-05-25" } });
    expect(windowsOf(HILL, seen)).toEqual(["1 05-30 06-04 06-09", "2 06-13 06-18 06-23"]);
    expect(said(tasksIn(HILL, seen)[0])).toContain("why: Shoots came on 25 May.");
    expect(tasksIn(HILL, seen)[0]?.basis).toEqual(["seen"]);
  });

  test("says how many inches, how many gallons each bag and for all", () => {
    expect(said(stepOf(HILL, potatoes(), "1"))).toContain(
      "Add 3 in of mix round the shoots: about 3 gal each, 17 gal for all 6.",
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

  test("says to bury shoots before a frost night, and that wet mix is heavy", () => {
    const text = said(stepOf(HILL, potatoes(), "1"));
    expect(text).toContain("Before a frost night, bury the shoots whole.");
    expect(text).toContain("caution: Wet mix is heavy");
    expect(stepOf(HILL, potatoes(), "1")?.kinds).toEqual(["lifting"]);
    const site = { ...potatoes().plan.site, lastFrost: null, firstFrost: null };
    expect(said(stepOf(HILL, potatoes({ plan: { site } }), "1"))).not.toContain("frost");
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
    expect(said(tasksIn(HILL, row)[0])).toContain("Draw up 3 to 4 in of loose soil");
    expect(said(tasksIn(HILL, row)[0])).not.toContain("bag");
    expect(tasksIn(HILL, row)[0]?.needs).toEqual(["a hoe"]);
  });
});

test("nothing else is hilled, and no potato before it is planted", () => {
  expect(windowsOf(HILL, growingOf(QUARRY, "beet", { acts: { start: "2027-05-03" } }))).toEqual([]);
  expect(windowsOf(HILL, growingOf(QUARRY, "potato"))).toEqual([]);
});

test("a row takes twenty minutes, six bags twice as long and more", () => {
  const minutes = (text: string) => tasksIn(HILL, potatoes({}, text)).map((task) => task.minutes);
  expect(minutes(IN_ROW)).toEqual([20, 20]);
  expect(minutes(QUARRY)).toEqual([45, 45]);
});

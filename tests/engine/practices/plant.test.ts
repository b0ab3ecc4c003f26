import { describe, expect, test } from "vitest";
import { PLANT } from "../../../src/engine/practices/plant.ts";
import { isoDay, normalsOf, QUARRY } from "../../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { said, tasksIn, titles, windowsOf } from "./told.ts";

const WARM = Array<number>(12).fill(12);
const IN_ROW = QUARRY.replace(
  "  Bags:\n    is: 6 grow bags, 16 in across, 14 in high",
  "  Bags:\n    is: 12 x 4 ft",
);
/** Potatoes in soil that is warm all year, so that the frost alone decides. */
const potatoes = (given: Given = {}, text = QUARRY) => {
  const { site } = growingOf(text, "potato").plan;
  const mild = { ...site, normals: normalsOf(WARM, WARM) };
  return growingOf(text, "potato", { plan: { site: mild }, ...given });
};

describe("planting potatoes", () => {
  test("is two weeks before the last frost where the soil is warm, and may wait two weeks", () => {
    expect(windowsOf(PLANT, potatoes())).toEqual(["1 04-22 04-22 05-06"]);
    expect(titles(tasksIn(PLANT, potatoes()))).toEqual(["Plant potatoes [bed]"]);
  });

  test("is on the day the gardener fixed, and on no other", () => {
    const fixed = potatoes({ planting: { fixed: { start: isoDay("2027-04-10"), out: null } } });
    expect(windowsOf(PLANT, fixed)).toEqual(["1 04-10 04-10 04-10"]);
    expect(said(tasksIn(PLANT, fixed)[0])).toContain("why: You asked for ");
  });

  test("in a bag is so much mix below, and so much above", () => {
    expect(said(tasksIn(PLANT, potatoes())[0])).toContain(
      "Lay 4 to 6 in of mix on the bottom of each, set the tubers on it with their shoots up, and cover with 2 to 4 in",
    );
    expect(tasksIn(PLANT, potatoes())[0]?.needs).toEqual(["tubers", "bags or tubs, and mix"]);
  });

  test("in a row is so deep and so far apart", () => {
    const row = tasksIn(PLANT, potatoes({}, IN_ROW))[0];
    expect(said(row)).toContain("3 to 5 in deep and 10 to 12 in apart");
    expect(row?.needs).toEqual(["tubers"]);
  });

  test("speaks of shoots only where the tubers were sprouted first", () => {
    const bare = { planting: { sproutedFirst: false } };
    for (const text of [QUARRY, IN_ROW]) {
      expect(said(tasksIn(PLANT, potatoes({}, text))[0])).toMatch(
        /shoots up.*\nsign: Shoots are short/,
      );
      const unsprouted = said(tasksIn(PLANT, potatoes(bare, text))[0]);
      expect(unsprouted).toMatch(/eyes up.*\nsign: The soil no longer sticks\./);
      expect(unsprouted).not.toMatch(/shoots/i);
    }
  });

  test("tells how long before the frost it goes in, and the soil's own sign", () => {
    const text = said(tasksIn(PLANT, potatoes())[0]);
    expect(text).toContain(
      "why: About 2 weeks before the usual last frost, as early as it may go in.",
    );
    expect(text).toContain("the soil no longer sticks");
  });

  test("is lifting, and takes two minutes a tuber, an hour at the most", () => {
    expect(tasksIn(PLANT, potatoes())[0]?.kinds).toEqual(["lifting"]);
    expect(tasksIn(PLANT, potatoes())[0]?.minutes).toBe(60);
    const few = potatoes({ planting: { amount: { kind: "plants", count: 6 } } });
    expect(tasksIn(PLANT, few)[0]?.minutes).toBe(30);
  });

  test("goes by the soil where there is no frost", () => {
    const site = { ...potatoes().plan.site, lastFrost: null, firstFrost: null };
    expect(windowsOf(PLANT, potatoes({ plan: { site } }))).toEqual(["1 01-01 01-01 01-15"]);
  });

  test("is not told of potatoes in since before, nor of anything but tubers", () => {
    expect(windowsOf(PLANT, potatoes({ planting: { inSince: isoDay("2027-04-01") } }))).toEqual([]);
    expect(windowsOf(PLANT, growingOf(QUARRY, "beet"))).toEqual([]);
  });
});

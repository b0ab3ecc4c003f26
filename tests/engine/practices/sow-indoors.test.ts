import { describe, expect, test } from "vitest";
import { SOW_INDOORS } from "../../../src/engine/practices/sow-indoors.ts";
import { isoDay, normalsOf, QUARRY } from "../../gardens.ts";
import { withCrops } from "../../winters.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { said, tasksIn, titles, told, windowsOf } from "./told.ts";

const WARM = Array<number>(12).fill(20);
/** Tomatoes whose soil is warm all year, so that they go out with the frost, on 21 May. */
const tomatoes = (given: Given = {}) => {
  const { site } = growingOf(QUARRY, "tomato").plan;
  const mild = { ...site, normals: normalsOf(WARM, WARM) };
  return growingOf(QUARRY, "tomato", { plan: { site: mild }, ...given });
};

describe("sowing tomatoes indoors", () => {
  test("is six weeks before they go out, a week either way", () => {
    expect(windowsOf(SOW_INDOORS, tomatoes())).toEqual(["1 04-02 04-09 04-16"]);
    expect(titles(tasksIn(SOW_INDOORS, tomatoes()))).toEqual(["Sow tomatoes [indoors]"]);
  });

  test("moves with what holds their setting out", () => {
    const asked = tomatoes({ planting: { notBefore: isoDay("2027-06-08") } });
    expect(windowsOf(SOW_INDOORS, asked)).toEqual(["1 04-20 04-27 05-04"]);
  });

  test("is on the day the gardener fixed, and on no other", () => {
    const fixed = tomatoes({ planting: { fixed: { start: isoDay("2027-03-28"), out: null } } });
    expect(windowsOf(SOW_INDOORS, fixed)).toEqual(["1 03-28 03-28 03-28"]);
    expect(tasksIn(SOW_INDOORS, fixed)[0]?.basis).toEqual(["given"]);
  });

  test("on a day of late summer counts on to when they are old enough", () => {
    const text = withCrops("maritime", ["spring cabbage: 10 plants, from seed indoors, sow 1 Aug"]);
    const cabbage = said(tasksIn(SOW_INDOORS, growingOf(text, "spring-cabbage"))[0]);
    expect(cabbage).toContain("go out, about 12 Sep.");
  });

  test("says how deep and how warm, and that light must be there", () => {
    const text = said(tasksIn(SOW_INDOORS, tomatoes())[0]);
    expect(text).toContain("¼ to ½ in deep, damp, at about 70 °F");
    expect(text).toContain("sign: You have light for them");
  });

  test("leaves uncovered what wants light to come up", () => {
    const text = `${QUARRY}crops:\n  - celery: 6 plants, from seed indoors\n`;
    const celery = said(tasksIn(SOW_INDOORS, growingOf(text, "celery"))[0]);
    expect(celery).toContain("pressed in and left uncovered, for it wants light");
    expect(celery).not.toContain("deep");
  });

  test("says how many trays of cells and how much compost, where the plan names a number", () => {
    const many = tomatoes({ planting: { amount: { kind: "plants", count: 90 } } });
    expect(said(tasksIn(SOW_INDOORS, tomatoes())[0])).toMatch(
      /how: 1 tray of cells, about .* compost/,
    );
    expect(said(tasksIn(SOW_INDOORS, many)[0])).toContain("how: 3 trays of cells");
    const some = tomatoes({ planting: { amount: null } });
    expect(said(tasksIn(SOW_INDOORS, some)[0])).not.toContain("compost.");
  });

  test("tells for how many weeks, and every test of the day they go out", () => {
    const [task] = tasksIn(SOW_INDOORS, tomatoes());
    expect(said(task)).toContain("about 6 weeks before they go out, about 21 May");
    expect(told(task)).toContain("Sown 6 weeks before setting out about 21 May.");
    expect(told(task)).toContain("Frost comes after 21 May in 1 spring in 10.");
  });

  test("starts a clock, under a roof", () => {
    const [task] = tasksIn(SOW_INDOORS, tomatoes());
    expect(task?.sets?.act).toBe("start");
    expect(task?.indoors).toBe(true);
  });
});

test("what is sown in a hot August stands in trays outdoors, in shade", () => {
  const plan = withCrops("mediterranean", ["broccoli: 8 plants, set out 1 Oct"]);
  const [task] = tasksIn(SOW_INDOORS, growingOf(plan, "broccoli"));
  expect(titles(task ? [task] : [])).toEqual(["Sow broccoli in trays"]);
  expect(said(task)).toContain("outdoors in light shade: a house is too warm and dark now");
  expect(said(task)).not.toContain("°F");
});

describe("nothing is sown indoors", () => {
  test("that is bought, sown outdoors or in since before", () => {
    expect(windowsOf(SOW_INDOORS, tomatoes({ planting: { start: "plants" } }))).toEqual([]);
    expect(windowsOf(SOW_INDOORS, growingOf(QUARRY, "lettuce"))).toEqual([]);
    const since = tomatoes({ planting: { inSince: isoDay("2027-03-01") } });
    expect(windowsOf(SOW_INDOORS, since)).toEqual([]);
  });
});

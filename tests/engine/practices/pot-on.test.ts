import { describe, expect, test } from "vitest";
import { POT_ON } from "../../../src/engine/practices/pot-on.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { said, tasksIn, titles, windowsOf } from "./told.ts";

const tomatoes = (given: Given = {}) =>
  growingOf(QUARRY, "tomato", { acts: { start: "2027-04-09" }, ...given });

describe("potting tomatoes on that were sown indoors on 9 April", () => {
  test("is two to three weeks after they are up", () => {
    expect(windowsOf(POT_ON, tomatoes())).toEqual(["1 05-01 05-05 05-12"]);
    expect(titles(tasksIn(POT_ON, tomatoes()))).toEqual(["Pot on tomatoes"]);
  });

  test("counts from the day they were seen", () => {
    const seen = tomatoes({ acts: { start: "2027-04-09", up: "2027-04-20" } });
    expect(windowsOf(POT_ON, seen)).toEqual(["1 05-04 05-08 05-15"]);
    expect(said(tasksIn(POT_ON, seen)[0])).toContain("why: They showed on 20 Apr.");
  });

  test("lifts each by a leaf, when the first true leaves are open", () => {
    const text = said(tasksIn(POT_ON, tomatoes())[0]);
    expect(text).toContain("Lift each by a leaf, never by the stem");
    expect(text).toContain("sign: The first true leaves are open");
  });

  test("is not told of what has stood in its bed for years", () => {
    const in2025 = tomatoes({ planting: { inSince: isoDay("2025-10-01") } });
    expect(tasksIn(POT_ON, in2025)).toEqual([]);
  });

  test("is work for a rainy day", () => {
    expect(tasksIn(POT_ON, tomatoes())[0]?.indoors).toBe(true);
  });
});

describe("nothing is potted on", () => {
  test("before it is sown, or that was bought", () => {
    expect(windowsOf(POT_ON, growingOf(QUARRY, "tomato"))).toEqual([]);
    expect(windowsOf(POT_ON, tomatoes({ planting: { start: "plants" } }))).toEqual([]);
  });

  test("that stays in its cells", () => {
    const lettuce = growingOf(QUARRY, "lettuce", {
      acts: { start: "2027-03-15" },
      planting: { start: "seed indoors" },
    });
    expect(windowsOf(POT_ON, lettuce)).toEqual([]);
  });
});

import { describe, expect, test } from "vitest";
import { FIRST_FROST } from "../../../src/engine/practices/first-frost.ts";
import { QUARRY, tellOf } from "../../gardens.ts";
import { withCrops } from "../../winters.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { said, stepOf, tasksIn, titles, windowsOf } from "./told.ts";

const tomatoes = (given: Given = {}) =>
  growingOf(QUARRY, "tomato", { acts: { "set out": "2027-05-21" }, ...given });

describe("tomatoes before the first frost, usual on 2 October", () => {
  test("are picked before the usual day", () => {
    expect(windowsOf(FIRST_FROST, tomatoes())).toEqual(["pick 09-25 09-30 10-07"]);
    expect(titles(tasksIn(FIRST_FROST, tomatoes()))).toEqual(["Pick the last tomatoes [bed]"]);
  });

  test("are picked green too, since they colour indoors, as nothing but peppers does beside", () => {
    expect(said(stepOf(FIRST_FROST, tomatoes(), "pick"))).toContain("they colour indoors.");
    const gourd = tomatoes({ crop: { key: "eggplant" } });
    expect(said(stepOf(FIRST_FROST, gourd, "pick"))).toContain("before a frost night. Clear");
  });

  test("leave their place once they are picked", () => {
    expect(stepOf(FIRST_FROST, tomatoes(), "pick")?.sets).toEqual({
      planting: "2027/tomato",
      sowing: 1,
      act: "end",
    });
  });
});

describe("nothing is told", () => {
  test("of crops that stand frost", () => {
    const beets = growingOf(QUARRY, "beet", { acts: { start: "2027-05-03" } });
    expect(windowsOf(FIRST_FROST, beets)).toEqual([]);
  });

  test("in a place without frost", () => {
    const site = { ...tomatoes().plan.site, firstFrost: null };
    expect(windowsOf(FIRST_FROST, tomatoes({ plan: { site } }))).toEqual([]);
  });

  test("of plants that are not out yet", () => {
    expect(windowsOf(FIRST_FROST, growingOf(QUARRY, "tomato"))).toEqual([]);
  });

  test("of plants that go out after the frost", () => {
    const late = tomatoes({ acts: { "set out": "2027-10-05" } });
    expect(windowsOf(FIRST_FROST, late)).toEqual([]);
  });
});

describe("what ends in a tunnel", () => {
  const texts = (crop: string) => {
    const text = withCrops("very-short", [crop]).replace(
      "is: 6 x 1.2 m",
      "is: hoop house, 6 x 2 m",
    );
    const { scheduled } = tellOf(text, { on: "2027-01-02" });
    return said(scheduled.find(({ task }) => task.id.endsWith("/first-frost/pick"))?.task);
  };

  test("goes by colour where fruit colours, and by growth where it does not", () => {
    expect(texts("tomato: 4 plants, from seed indoors")).toContain("sign: Nothing has coloured");
    expect(texts("basil: 4 plants, from seed indoors")).toContain("sign: Hardly anything new");
  });
});

import { describe, expect, test } from "vitest";
import { HEAT } from "../../../src/engine/practices/heat.ts";
import { QUARRY } from "../../gardens.ts";
import { withCrops } from "../../winters.ts";
import { always, growingOf } from "../growth/growing.ts";
import { said, tasksIn, titles } from "./told.ts";

const MILD = withCrops("mediterranean", ["tomato: 3 plants", "bush beans: 2 rows"]);
const OUT = { acts: { "set out": "2027-04-01" } };

describe("shade in great heat", () => {
  const tomatoes = tasksIn(HEAT, growingOf(MILD, "tomato", OUT));

  test("is told once before hot spells, by the forecast", () => {
    expect(titles(tomatoes)).toEqual(["Shade tomatoes from great heat [bed]"]);
    const text = said(tomatoes[0]);
    expect(text).toContain("sign: The forecast names days over 95 °F or nights over 75 °F.");
    expect(text).toContain("flowers drop and no fruit sets. More sets as the heat passes.");
  });

  test("says where it lasts until when nothing sets, and to cut back what shall bear again", () => {
    const site = { ...always(24.5, 36), lastFrost: null, firstFrost: null };
    const text = said(tasksIn(HEAT, growingOf(MILD, "tomato", { ...OUT, plan: { site } }))[0]);
    expect(text).toContain("Cut tired plants back by a third");
    expect(text).toContain("hardly any fruit sets until about");
  });

  test("is none where summers are cool, nor of beans that are over before it", () => {
    const cool = growingOf(QUARRY, "tomato", { acts: { "set out": "2027-05-21" } });
    expect(tasksIn(HEAT, cool)).toEqual([]);
    const beans = growingOf(MILD, "bean", { acts: { start: "2027-03-20", up: "2027-04-08" } });
    expect(tasksIn(HEAT, beans)).toEqual([]);
  });
});

import { describe, expect, test } from "vitest";
import { GREENHOUSE } from "../../../src/engine/practices/greenhouse.ts";
import { tellOf } from "../../gardens.ts";
import { ending, planWith, toldWith, wordsOf } from "./garden.ts";

describe("the greenhouse", () => {
  const placed = toldWith(["tomato: 6 plants, from seed indoors"]);

  test("has its vents, its shade and its cold nights told once, in that order", () => {
    const days = ["vents", "shade", "cold-nights"].map(
      (step) => ending(placed, `/garden/greenhouse/${step}`).day,
    );
    expect(days).toEqual([...days].sort((a, b) => a - b));
    expect(placed.filter(({ task }) => task.practice === GREENHOUSE.name)).toHaveLength(3);
  });

  test("warns of heaters' fumes where there is a heater, and says that nothing heats it where there is none", () => {
    expect(wordsOf(ending(placed, "cold-nights"))).toContain("fumes");
    const plain = planWith(["tomato: 6 plants, from seed indoors"]).replace(/, kept above.*/, "");
    const told = wordsOf(ending(tellOf(plain, { on: "2027-01-01" }).scheduled, "cold-nights"));
    expect(told).toContain("Nothing heats it.");
    expect(told).not.toMatch(/heater|fumes/);
  });

  test("is called as the plan calls it where only a bed is under glass", () => {
    const tunnel = planWith(["tomato: 6 plants, bought"])
      .replace("is: 12 x 4 ft", "is: tunnel, 12 x 8 ft")
      .replace(/ {2}greenhouse: .*\n/, "");
    const told = tellOf(tunnel, { on: "2027-01-01" }).scheduled;
    expect(ending(told, "greenhouse/vents").task.title.object).toBe("Long bed");
  });

  test("has a lid where it is a cold frame, and neither vents nor a door", () => {
    const text = planWith(["carrot: 1 row"])
      .replace(/ {2}greenhouse: .*\n/, "")
      .concat("  Frame:\n    is: cold frame, 6 x 3 ft\n    crops:\n      - lettuce: 2 rows\n");
    const { scheduled } = tellOf(text, { on: "2027-01-01" });
    const vents = ending(scheduled, "/garden/greenhouse/vents");
    expect(`${vents.task.title.verb} ${vents.task.title.object}`).toBe("Mind the lid of Frame");
    expect(wordsOf(vents)).not.toMatch(/vents|door/);
    expect(wordsOf(ending(scheduled, "/garden/greenhouse/shade"))).toContain("take the lid off");
  });

  test("is nothing while nothing stands in it", () => {
    const told = toldWith(["beet: 1 row", "tomato: 6 plants, bought"]);
    expect(told.filter(({ task }) => task.practice === GREENHOUSE.name)).toEqual([]);
  });

  test("is nothing where there is none", () => {
    const plain = planWith(["tomato: 6 plants, from seed indoors"]).replace(
      / {2}greenhouse: .*\n/,
      "",
    );
    const told = tellOf(plain, { on: "2027-01-01" }).scheduled;
    expect(told.filter(({ task }) => task.practice === "greenhouse")).toEqual([]);
  });
});

import { describe, expect, test } from "vitest";
import { flowerMilestone } from "../../../src/engine/growth/flower.ts";
import { ripeMilestone } from "../../../src/engine/growth/ripe.ts";
import { isoDay } from "../../gardens.ts";
import { planWith } from "../practices/garden.ts";
import { growingOf } from "./growing.ts";

const PLAN = planWith(["summer squash: 2 plants, from seed indoors"]);
const squash = (acts: Parameters<typeof growingOf>[2]) => growingOf(PLAN, "summer-squash", acts);

describe("the first flower", () => {
  test("lies some days before the first harvest, early to late", () => {
    const growing = squash({ acts: { start: "2027-05-20", "set out": "2027-06-12" } });
    const [flower, ripe] = [flowerMilestone(growing), ripeMilestone(growing)];
    if ("none" in flower || "none" in ripe) throw new Error("it has both");
    expect(flower.usual).toBeLessThan(ripe.usual);
    expect([flower.early, flower.usual, flower.late]).toEqual(
      [flower.early, flower.usual, flower.late].sort((a, b) => a - b),
    );
  });

  test("is the day it was seen, once it was", () => {
    const flower = flowerMilestone(
      squash({ acts: { "set out": "2027-06-12", flower: "2027-07-04" } }),
    );
    expect(flower).toMatchObject({ usual: isoDay("2027-07-04"), seen: true });
  });

  test("is none where flowers do not matter", () => {
    const beet = growingOf(planWith(["beet: 1 row"]), "beet", { acts: { start: "2027-05-03" } });
    expect(flowerMilestone(beet)).toHaveProperty("none");
  });
});

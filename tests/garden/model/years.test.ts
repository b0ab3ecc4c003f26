import { describe, expect, it } from "vitest";
import {
  newestCalled,
  predecessorOf,
  withLinkedPlantings,
} from "../../../src/garden/model/years.ts";
import { least, PLAN, planOf } from "../plan/canonical.ts";

const year = (y: number, crops: string) => planOf(least(crops).replace("2027", String(y)));

describe("the planting that one follows", () => {
  it("is found in an earlier year, the newest first", () => {
    const before = year(2026, "crops:\n  - {name: big garlic, crop: garlic}");
    const older = year(2025, "crops:\n  - {name: big garlic, crop: garlic}");
    const now = year(2027, "crops:\n  - carrot: after the big garlic\n  - beet");
    const [carrot, beet] = now.plantings;
    expect(carrot && predecessorOf(carrot, [older, now, before])?.key).toBe("2026/big-garlic");
    expect(beet && predecessorOf(beet, [now])).toBeNull();
  });

  it("is found in the plan's own year first", () => {
    const last = PLAN.plantings.at(-1);
    expect(last && predecessorOf(last, [PLAN])?.key).toBe("2027/garlic");
  });

  it("is none where the newest year that has the name has it twice", () => {
    const twice = year(2026, "crops:\n  - tomato: red, 1 plants\n  - tomato: gold, 1 plants");
    const once = year(2025, "crops:\n  - tomato");
    expect(newestCalled("tomato", [once, twice])).toBeNull();
    expect(newestCalled("tomato", [once])?.key).toBe("2025/tomato");
  });

  it("is named by its key once the years are linked", () => {
    const plans = [
      year(2026, "crops:\n  - garlic: plant 14 Oct"),
      year(2027, "crops:\n  - spinach: after the garlic"),
    ];
    expect(withLinkedPlantings(plans)[1]?.plantings[0]?.after).toBe("2026/garlic");
    expect(withLinkedPlantings([PLAN])[0]?.plantings.map(({ after }) => after)).toEqual(
      PLAN.plantings.map(({ after }) => after),
    );
  });
});

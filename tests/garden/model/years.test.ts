import { describe, expect, it } from "vitest";
import {
  newestCalled,
  newestPlan,
  predecessorOf,
  wholeGarden,
  withLinkedPlantings,
} from "../../../src/garden/model/years.ts";
import { ODA } from "../../engine/schedule/given.ts";
import { least, PLAN, planOf } from "../plan/canonical.ts";

const year = (y: number, crops: string) => planOf(least(crops).replace("2027", String(y)));
const bed = (crop: string, name = "South bed", is = "12 x 4 ft") =>
  `beds:\n  ${name}:\n    is: ${is}\n    crops:\n      - ${crop}`;

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
});

describe("the whole garden", () => {
  it("is the newest plan with the beds and people of every year, the newest of each", () => {
    const before = {
      ...year(2026, bed("carrot", "North bed")),
      people: [{ ...ODA, name: "Oda May" }],
    };
    const now = { ...year(2027, bed("tomato")), people: [ODA] };
    const { beds, people, year: newest } = wholeGarden([before, now]);
    expect([newest, beds.map(({ name }) => name)]).toEqual([2027, ["North bed", "South bed"]]);
    expect(people.map(({ name }) => name)).toEqual(["Oda"]);
    expect(() => wholeGarden([])).toThrow(RangeError);
  });

  it("has what follows a planting of an earlier year named by its key", () => {
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

it("takes the last plan for the newest, and throws for a garden without one", () => {
  expect(newestPlan([year(2026, "crops: [beet]"), year(2027, "crops: [beet]")]).year).toBe(2027);
  expect(() => newestPlan([])).toThrow(RangeError);
});

import { describe, expect, it } from "vitest";
import { least, PLAN, planOf, told } from "./canonical.ts";

describe("people", () => {
  it("have gardening hours, hours at home and work they leave out", () => {
    expect(PLAN.people.map(({ key, name }) => [key, name])).toEqual([
      ["imre", "Imre"],
      ["oda", "Oda"],
    ]);
    expect(PLAN.people[0]?.gardens).toEqual([
      { weekday: 3, from: 1080, to: 1140 },
      { weekday: 6, from: 540, to: 720 },
    ]);
    expect(PLAN.people[1]?.home.map(({ weekday }) => weekday)).toEqual([1, 3, 4, 5, 6, 7]);
    expect(PLAN.people[0]?.leaveOut).toEqual(["lifting"]);
  });

  it("may have no hours at all, or days without hours, which are filled in", () => {
    const plan = planOf(least("people:\n  Oda:\n  Imre: {gardens: Sat}"));
    expect(plan.people[0]).toMatchObject({ gardens: [], home: [], leaveOut: [] });
    expect(plan.people[1]?.gardens).toEqual([{ weekday: 6, from: 540, to: 1020 }]);
    expect(plan.filled.map(({ what }) => what)).toContain("Imre's gardening hours");
  });

  it("keep the key of their first name", () => {
    expect(planOf(least("people:\n  Zoë: {was: Zoe}")).people[0]).toMatchObject({
      key: "zoe",
      name: "Zoë",
    });
    expect(told(least("people:\n  Oda:\n  ODA:"))).toEqual(["alike@9:3"]);
  });

  it("leave out practices by any name, and other work with a doubt", () => {
    const plan = planOf(least("people:\n  Oda: {leave out: [weeding, lifting]}"));
    expect(plan.people[0]?.leaveOut).toEqual(["weed", "lifting"]);
    expect(told(least("people:\n  Oda: {leave out: singing and weeding}"))).toEqual([
      "left-out-unknown@8:20",
    ]);
  });
});

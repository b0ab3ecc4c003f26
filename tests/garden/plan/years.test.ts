import { describe, expect, it } from "vitest";
import {
  predecessorOf,
  problemsBetweenYears,
  wholeGarden,
  withLinkedPlantings,
} from "../../../src/garden/plan/years.ts";
import { ODA } from "../../engine/schedule/given.ts";
import { least, PLAN, planOf } from "./canonical.ts";

const year = (y: number, crops: string) => planOf(least(crops).replace("2027", String(y)));
const bed = (crop: string, name = "South bed", is = "12 x 4 ft") =>
  `beds:\n  ${name}:\n    is: ${is}\n    crops:\n      - ${crop}`;
const codes = (...plans: readonly ReturnType<typeof year>[]) =>
  problemsBetweenYears(plans).map(({ code, at }) => `${code}@${at.line}`);

describe("the years of a garden", () => {
  it("have nothing to tell of one good year", () => {
    expect(problemsBetweenYears([PLAN])).toEqual([]);
    expect(problemsBetweenYears([])).toEqual([]);
  });

  it("doubt a family back in its bed the year after, whatever the order of the plans", () => {
    const plans = [year(2027, bed("tomato")), year(2026, bed("potato"))];
    expect(codes(...plans)).toEqual(["family-too-soon@11"]);
    expect(problemsBetweenYears(plans)[0]?.is).toBe(
      "South bed had potato last year (plans/quarry-lane/2027.yaml, line 11), and tomato is of the nightshade family too",
    );
  });

  it("doubt what is in since last year where last year's plan plants it, and not where it does not", () => {
    const since = "garlic: in since 14 Oct 2026";
    expect(codes(year(2026, bed("garlic")), year(2027, bed(since)))).toEqual(["in-twice@11"]);
    expect(codes(year(2026, bed("beet")), year(2027, bed(since)))).toEqual([]);
  });

  it("doubt it in any year's file while the family should still be away, and say where it stood", () => {
    const back = (y: number, crop: string) => problemsBetweenYears([year(y, bed(crop)), NOW]);
    const NOW = year(2027, bed("tomato"));
    expect(back(2024, "potato")[0]?.is).toContain("had potato in 2024 (");
    expect(back(2024, "potato")[0]?.shouldBe).toContain("3 years without that family");
    expect(back(2023, "potato")).toEqual([]);
    expect(back(2024, "beet")).toEqual([]);
  });

  it("do not doubt it in another bed, or in bags", () => {
    expect(codes(year(2026, bed("potato")), year(2027, bed("tomato", "North bed")))).toEqual([]);
    expect(
      codes(
        year(2026, bed("potato", "Bags", "6 bags")),
        year(2027, bed("potato", "Bags", "6 bags")),
      ),
    ).toEqual([]);
  });

  it("know a bed under a new name by its old one", () => {
    const later = bed("tomato").replace("South bed:", "Long bed:\n    was: South bed");
    expect(codes(year(2026, bed("potato")), year(2027, later))).toEqual(["family-too-soon@12"]);
  });

  it("refuse two files of one year", () => {
    expect(codes(year(2027, ""), year(2027, ""))).toEqual(["key-clash@1"]);
  });

  it("find what a planting follows in an earlier year, the newest first", () => {
    const before = year(2026, "crops:\n  - {name: big garlic, crop: garlic}");
    const older = year(2025, "crops:\n  - {name: big garlic, crop: garlic}");
    const now = year(2027, "crops:\n  - carrot: after the big garlic\n  - beet");
    const [carrot, beet] = now.plantings;
    expect(carrot && predecessorOf(carrot, [older, now, before])?.key).toBe("2026/big-garlic");
    expect(beet && predecessorOf(beet, [now])).toBeNull();
    expect(codes(older, before, now)).toEqual([]);
    expect(codes(now)).toEqual(["after-unknown@8"]);
  });

  it("find it in the plan's own year first", () => {
    const last = PLAN.plantings.at(-1);
    expect(last && predecessorOf(last, [PLAN])?.key).toBe("2027/garlic");
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

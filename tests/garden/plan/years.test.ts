import { describe, expect, it } from "vitest";
import { problemsBetweenYears } from "../../../src/garden/plan/years.ts";
import { least, PLAN, planOf } from "./canonical.ts";

const year = (y: number, crops: string) => planOf(least(crops).replace("2027", String(y)));
const bed = (crop: string, name = "South bed", is = "12 x 4 ft") =>
  `beds:\n  ${name}:\n    is: ${is}\n    crops:\n      - ${crop}`;
const codes = (...plans: readonly ReturnType<typeof year>[]) =>
  problemsBetweenYears(plans).map(({ code, at }) => `${code}@${at.line}`);

describe("the years of a garden", () => {
  it("find nothing wrong in one good year", () => {
    expect(problemsBetweenYears([PLAN])).toEqual([]);
    expect(problemsBetweenYears([])).toEqual([]);
  });

  it("doubt what is in since last year where last year's plan plants it, and not where it does not", () => {
    const since = "garlic: in since 14 Oct 2026";
    expect(codes(year(2026, bed("garlic")), year(2027, bed(since)))).toEqual(["in-twice@11"]);
    expect(codes(year(2026, bed("beet")), year(2027, bed(since)))).toEqual([]);
  });

  it("refuse two files of one year", () => {
    expect(codes(year(2027, ""), year(2027, ""))).toEqual(["key-clash@1"]);
  });

  it("doubt a planting to follow that no year has", () => {
    const before = year(2026, "crops:\n  - {name: big garlic, crop: garlic}");
    const now = year(2027, "crops:\n  - carrot: after the big garlic\n  - beet");
    expect(codes(before, now)).toEqual([]);
    expect(codes(now)).toEqual(["after-unknown@8"]);
  });
});

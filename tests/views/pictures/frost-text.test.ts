import { describe, expect, test } from "vitest";
import {
  autumnOdds,
  frostDateLines,
  raisedPlantsOut,
  springOdds,
  usualFrostText,
} from "../../../src/views/pictures/frost-text.ts";
import { planOf, QUARRY } from "../../gardens.ts";
import { GARDENS, on } from "./drawn.ts";

const plan = planOf(QUARRY);
const shore = planOf(GARDENS["no frost"] ?? "");

describe("the garden's frosts in words", () => {
  test("are its usual dates, then all three with the day for raised plants", () => {
    expect(usualFrostText(plan)).toBe("Last frost usually about 6 May, first frost about 2 Oct.");
    expect(frostDateLines(plan)).toEqual([
      "Last frost: early 20 Apr, usual 6 May, late 21 May.",
      "First frost: early 17 Sep, usual 2 Oct, late 17 Oct.",
      "Tender plants we raised go out from 21 May, when frost still comes in 1 spring in 10.",
    ]);
  });

  test("are said to be none where there are none", () => {
    expect(usualFrostText(shore)).toBe("No frost is expected here.");
    expect([frostDateLines(shore), raisedPlantsOut(shore)]).toEqual([[], null]);
  });
});

test("odds are of frost still to come in spring, and of frost that has come in autumn", () => {
  const { lastFrost, firstFrost } = plan.site;
  if (!lastFrost || !firstFrost) throw new RangeError("the garden has frost");
  expect(springOdds(lastFrost, on("2027-04-20"))).toBe("9 springs in 10");
  expect(autumnOdds(firstFrost, firstFrost.early)).toBe("1 autumn in 10");
});

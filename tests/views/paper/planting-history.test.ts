import { describe, expect, test } from "vitest";
import { plantingHistoriesOf } from "../../../src/views/paper/planting-history.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { backOf, LIVED } from "./paper-year.ts";

const went = (text: string, on: string) => {
  const all = plantingHistoriesOf(backOf(text, on), isoDay(on));
  return (crop: string) => {
    const found = all.find(({ planting }) => planting.crop === crop);
    if (!found) throw new Error(`no ${crop}`);
    return found.sowings;
  };
};

describe("the stages of a sowing", () => {
  const november = went(LIVED, "2027-11-15");

  test("that were written down have the diary's day, beside the plan's", () => {
    const [beet] = november("beet");
    expect([beet?.begun.known, beet?.begun.day]).toEqual(["written", isoDay("2027-05-12")]);
    expect(beet?.begun.planned).toBe(went(QUARRY, "2027-11-15")("beet")[0]?.begun.day);
    const [carrot] = november("carrot");
    expect([carrot?.up?.known, carrot?.up?.day]).toEqual(["written", isoDay("2027-05-24")]);
    expect(november("tomato")[0]?.picked?.day).toBe(isoDay("2027-09-10"));
    expect(november("potato")[0]?.picked?.known).toBe("written");
  });

  test("that nobody wrote about are supposed, and those behind today still ahead", () => {
    expect(november("beet")[0]?.picked?.known).toBe("supposed");
    const may = went(QUARRY, "2027-05-20");
    expect(may("beet")[0]?.begun.known).toBe("supposed");
    expect(may("beet")[0]?.picked?.known).toBe("ahead");
  });

  test("come in order, each sowing by its number", () => {
    expect(november("lettuce").map(({ sowing }) => sowing)).toEqual([1, 2, 3]);
    for (const { begun, picked } of november("lettuce"))
      expect(begun.day).toBeLessThan(picked?.day ?? 0);
  });

  test("are none where there is none: only raised plants are set out", () => {
    expect(november("beet")[0]?.out).toBeNull();
    expect(november("tomato")[0]?.out?.day).toBeGreaterThan(november("tomato")[0]?.begun.day ?? 0);
  });
});

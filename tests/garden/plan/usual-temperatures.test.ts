import { describe, expect, it } from "vitest";
import { least, planOf, told } from "./canonical.ts";

const FROSTS = "last frost: 6 May\n  first frost: 2 Oct";
const planWith = (more: string) => planOf(least("", `${FROSTS}\n  ${more}`));
const read = (more: string) => {
  const { hottestAfternoons, coldestNights } = planWith(more).site;
  return [hottestAfternoons?.si ?? null, coldestNights?.si ?? null];
};
const wrong = (more: string) => told(least("", `${FROSTS}\n  ${more}`));
const guess = (more: string) =>
  planWith(more).filled.filter(({ value }) => value.includes("rough guess"));

describe("the hottest afternoons and the coldest nights", () => {
  it("are read with their unit, or bare in the household's own", () => {
    expect(read("hottest afternoons: 28 °C\n  coldest nights: about -8 °C")).toEqual([28, -8]);
    expect(read("hottest afternoons: 86\n  coldest nights: 14")).toEqual([30, -10]);
  });

  it("are none where the plan does not say", () => {
    expect(read("colder than the forecast by: 3 °F")).toEqual([null, null]);
  });

  it("are refused where they are no temperature, or none of this earth", () => {
    expect(wrong("hottest afternoons: hot")).toEqual(["quantity-unclear@7:23"]);
    expect(wrong("hottest afternoons: 83 °C")).toEqual(["out-of-range@7:23"]);
    expect(wrong("hottest afternoons: 5 °C\n  coldest nights: 9 °C")).toEqual([
      "out-of-range@7:23",
    ]);
  });

  it("are asked for once, with what they would be worth, where there are no monthly means", () => {
    expect(guess("coldest nights: 9 °F").map(({ what }) => what)).toEqual(["hottest afternoons"]);
    expect(guess("colder than the forecast by: 3 °F")).toHaveLength(1);
    expect(guess("hottest afternoons: 83 °F\n  coldest nights: 9 °F")).toEqual([]);
    const means = `{ low: [${Array(12).fill(40)}], high: [${Array(12).fill(60)}] }`;
    expect(guess(`weather: ${means}`)).toEqual([]);
  });
});

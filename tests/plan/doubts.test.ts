import { describe, expect, it } from "vitest";
import { read, TEXT, told } from "./canonical.ts";

const flat = (value: number) => `[${Array.from({ length: 12 }, () => value).join(", ")}]`;

describe("doubts of a plan", () => {
  it("are none in a good plan, two crops in one bed included", () => {
    expect(told(TEXT)).toEqual([]);
  });

  it("leave the plan to be used and say what to do", () => {
    const { plan, problems } = read(TEXT.replace("18 plants", "90 plants"));
    expect(plan).not.toBeNull();
    expect(problems[0]).toMatchObject({
      weight: "doubt",
      shouldBe: "Plant fewer, or give some another bed",
    });
  });

  it("are told where the mean low of a frost date is far from frost", () => {
    const warm = TEXT.replace(/low: .*/, `low: ${flat(55)}`).replace(
      /high: .*/,
      `high: ${flat(80)}`,
    );
    expect(told(warm)).toEqual(["frost-unlike-weather@7:15", "frost-unlike-weather@8:16"]);
    const cold = TEXT.replace(/low: .*/, `low: ${flat(10)}`);
    expect(told(cold)).toHaveLength(2);
    expect(
      told(TEXT.replace(/low: .*/, `low: ${flat(40)}`).replace(/high: .*/, `high: ${flat(80)}`)),
    ).toEqual([]);
  });
});

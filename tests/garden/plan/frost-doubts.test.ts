import { describe, expect, it } from "vitest";
import { read, TEXT, told } from "./canonical.ts";

const flat = (value: number) => `[${Array.from({ length: 12 }, () => value).join(", ")}]`;

describe("doubts of a plan", () => {
  it("are none in a good plan, two crops in one bed included", () => {
    expect(told(TEXT)).toEqual([]);
  });

  it("are reported where the mean low of a frost date is far from frost", () => {
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

  it("are reported where no frost is said of a place whose month has a mean low of hard frost", () => {
    const noFrost = (low: number) =>
      TEXT.replace(/last frost: .*/, "last frost: none")
        .replace(/first frost: .*/, "first frost: none")
        .replace(/low: .*/, `low: [${low}, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40, 40]`)
        .replace(/high: .*/, `high: ${flat(70)}`);
    const frost = (low: number) =>
      read(noFrost(low)).problems.filter(({ code }) => code === "frost-unlike-weather");
    expect(frost(22)).toMatchObject([
      { at: { line: 7 }, is: "The weather's mean low of January is -6 °C, and there is no frost" },
    ]);
    expect(frost(23.1)).toEqual([]);
  });
});

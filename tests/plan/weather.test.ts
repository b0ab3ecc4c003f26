import { describe, expect, it } from "vitest";
import { least, PLAN, read, told } from "./canonical.ts";

const NONE = "last frost: none\n  first frost: none";
const numbers = (first: number) =>
  `[${Array.from({ length: 12 }, (_, n) => first + n).join(", ")}]`;
const MEANS = `low: ${numbers(0)}\nhigh: ${numbers(10)}\n`;
const withFile = (name: string) => least("", `${NONE}\n  weather: ${name}`);

describe("a place's weather", () => {
  it("is given in the plan, in the plan's measures", () => {
    expect(PLAN.site.normals?.lowC).toHaveLength(12);
    expect(PLAN.site.normals?.highC[6]).toBeCloseTo((83 - 32) / 1.8, 6);
  });

  it("is given in a file beside the plan, in the unit that file says", () => {
    const { plan } = read(withFile("weather.yaml"), {
      "weather.yaml": `${MEANS}in: °C\nstation: Valley`,
    });
    expect(plan?.site.normals?.lowC[3]).toBe(3);
    expect(
      read(withFile("w.yaml"), { "w.yaml": `${MEANS}in: °F` }).plan?.site.normals?.lowC[0],
    ).toBeCloseTo(-17.78, 2);
  });

  it("tells a file's problems at their place in that file", () => {
    const { problems } = read(withFile("w.yaml"), { "w.yaml": "low: [1]\nhihg: [2]" });
    expect(problems.map(({ at }) => at.file)).toEqual([
      "plans/quarry-lane/w.yaml",
      "plans/quarry-lane/w.yaml",
    ]);
    expect(read(withFile("w.yaml"), { "w.yaml": "a: [" }).problems[0]?.at.file).toBe(
      "plans/quarry-lane/w.yaml",
    );
  });

  it("offers the nearest file where there is none of that name", () => {
    expect(read(withFile("wether.yaml"), { "weather.yaml": MEANS }).problems[0]).toMatchObject({
      code: "weather-missing",
      shouldBe: "Did you mean weather.yaml",
    });
    expect(told(withFile("constructor"))).toEqual(["weather-missing@7:12"]);
  });

  it("needs twelve means that can be, lows under highs, in degrees", () => {
    const codes = (text: string) =>
      read(withFile("w.yaml"), { "w.yaml": text }).problems.map(
        ({ code, at }) => `${code}@${at.line}`,
      );
    expect(codes(MEANS.replace(", 11]", "]"))).toEqual(["weather-wrong@1"]);
    expect(codes(`${MEANS.replace("[0,", "[99,")}in: °C`)).toEqual(["weather-wrong@1"]);
    expect(codes(`${MEANS.replace("[10,", "[-1,")}in: °C`)).toEqual(["weather-wrong@1"]);
    expect(codes(`${MEANS}in: kelvin`)).toEqual(["weather-wrong@3"]);
    expect(codes("low: cold")).toEqual(["missing@1", "wrong-type@1"]);
    expect(codes("")).toEqual(["wrong-type@1"]);
  });

  it("may tell the spread of a month's mean, and rain in the units of its degrees", () => {
    const more = `${MEANS}spread: ${numbers(1)}\nrain: ${numbers(2)}\n`;
    const normals = (unit: string) =>
      read(withFile("w.yaml"), { "w.yaml": `${more}in: ${unit}` }).plan?.site.normals;
    expect(normals("°C")?.spreadK?.[1]).toBe(2);
    expect(normals("°C")?.rainMm?.[0]).toBe(2);
    expect(normals("°F")?.spreadK?.[8]).toBeCloseTo(5, 9);
    expect(normals("°F")?.rainMm?.[0]).toBeCloseTo(50.8, 9);
    expect(read(withFile("w.yaml"), { "w.yaml": MEANS }).plan?.site.normals).toMatchObject({
      spreadK: null,
      rainMm: null,
    });
  });

  it("needs twelve of those too, and such as can be", () => {
    const codes = (text: string) =>
      read(withFile("w.yaml"), { "w.yaml": `${MEANS}in: °C\n${text}` }).problems.map(
        ({ code, at }) => `${code}@${at.line}:${at.column}`,
      );
    expect(codes("spread: [1, 2]")).toEqual(["weather-wrong@4:9"]);
    expect(codes(`rain: ${numbers(-1)}`)).toEqual(["weather-wrong@4:8"]);
    expect(codes(`spread: ${numbers(5)}`)).toEqual(["weather-wrong@4:49"]);
    expect(codes(`rain: ${numbers(0)}\nyears: [2012, 2013]`)).toEqual([]);
  });
});

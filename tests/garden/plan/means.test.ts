import { describe, expect, it } from "vitest";
import { least, read } from "./canonical.ts";

const NONE = "last frost: none\n  first frost: none";
const numbers = (first: number) =>
  `[${Array.from({ length: 12 }, (_, n) => first + n).join(", ")}]`;
const MEANS = `low: ${numbers(0)}\nhigh: ${numbers(10)}\n`;
const withFile = (name: string) => least("", `${NONE}\n  weather: ${name}`);

describe("a weather's twelve means", () => {
  it("may give the spread of a month's mean, and rain in the units of its degrees", () => {
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

  it("says of means that look like °F in °C what to write, and of no others", () => {
    const advice = (highs: number, unit: string) =>
      read(withFile("w.yaml"), {
        "w.yaml": `low: ${numbers(0)}\nhigh: ${numbers(highs)}\nin: ${unit}`,
      }).problems.find(({ code }) => code === "weather-wrong")?.shouldBe;
    expect(advice(56, "°C")).toBe("This looks like °F; write in: °F");
    expect(advice(135, "°C")).toBe("This looks like °F; write in: °F");
    expect(advice(141, "°C")).toBe("Write twelve monthly means, January first");
    expect(advice(200, "°F")).toBe("Write twelve monthly means, January first");
    expect(advice(40, "°C")).toBeUndefined();
  });
});

import { describe, expect, it } from "vitest";
import { least, on, PLAN, read, told } from "./canonical.ts";

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

  it("may be in a file beside the plan, in that file's unit", () => {
    const { plan } = read(withFile("weather.yaml"), {
      "weather.yaml": `${MEANS}in: °C\nstation: Valley`,
    });
    expect(plan?.site.normals?.lowC[3]).toBe(3);
    expect(
      read(withFile("w.yaml"), { "w.yaml": `${MEANS}in: °F` }).plan?.site.normals?.lowC[0],
    ).toBeCloseTo(-17.78, 2);
  });

  it("reports a file's problems at their place in that file", () => {
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

  it("reports a file that is not made of keys by its name, at its own place", () => {
    for (const text of ["garbage", "- low\n- high", ""]) {
      const [problem] = read(withFile("w.yaml"), { "w.yaml": text }).problems;
      expect(problem).toMatchObject({
        at: { file: "plans/quarry-lane/w.yaml", line: 1, column: 1 },
        is: "The weather file w.yaml holds no low and high",
      });
    }
  });

  it("gives the place its latitude where the place has none, and lists it", () => {
    const lies = (place: string, file: string) => {
      const { plan } = read(least("", `${NONE}\n  ${place}weather: w.yaml`), {
        "w.yaml": `${MEANS}in: °C\n${file}`,
      });
      const filled = plan?.filled.find(({ what }) => what === "latitude");
      return [plan?.site.latitude ?? null, filled?.value ?? null, filled?.why ?? null];
    };
    expect(lies("", "latitude: 47.45")).toEqual([47.45, "47.45", "w.yaml"]);
    expect(lies("latitude: 46.6\n  ", "latitude: 47.45")).toEqual([46.6, null, null]);
    expect(lies("", "")).toEqual([null, "none", expect.stringContaining("day length")]);
    expect(
      read(withFile("w.yaml"), { "w.yaml": `${MEANS}in: °C\nlatitude: 95` }).problems,
    ).toMatchObject([{ code: "out-of-range", at: { file: "plans/quarry-lane/w.yaml", line: 4 } }]);
  });

  it("has its nights placed by its own latitude", () => {
    const nights = "last frost: 20 Sep\nfirst frost: 2 May\n";
    const usual = (latitude: string) =>
      read(least("", "weather: w.yaml"), { "w.yaml": `${MEANS}in: °C\n${nights}${latitude}` }).plan
        ?.site.lastFrost?.usual;
    expect(usual("latitude: -43.5")).toBe(on(9, 20));
    expect(usual("")).not.toBe(on(9, 20));
  });

  it("says that its frost dates are of few years where they are four or fewer", () => {
    const why = (years: string) => {
      const nights = "last frost: 20 Apr\nfirst frost: 2 Oct\n";
      const text = `low: ${numbers(-6)}\nhigh: ${numbers(10)}\nin: °C\n${nights}years: ${years}`;
      const { plan } = read(least("", "weather: w.yaml"), { "w.yaml": text });
      return plan?.filled.find(({ what }) => what === "last frost")?.why;
    };
    expect(why("2018 to 2021")).toBe(
      "w.yaml, 2018 to 2021; 4 years are few, ten or more make surer dates",
    );
    expect(why("2021")).toBe("w.yaml, 2021; 1 year is few, ten or more make surer dates");
    expect(why("[2012, 2015]")).toMatch(/2 years are few/);
    expect(why("2018 to 2022")).toBe("w.yaml, 2018 to 2022");
    expect(why("the old ones")).toBe("w.yaml, the old ones");
  });
});

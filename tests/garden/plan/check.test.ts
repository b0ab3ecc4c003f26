import { describe, expect, it } from "vitest";
import { checkPlan, checkWeather } from "../../../src/garden/plan/check.ts";
import { treeOf } from "../../../src/garden/plan/yaml.ts";
import { least, read, told } from "./canonical.ts";

function check(text: string, how = checkPlan) {
  const { tree } = treeOf(text, "f");
  return tree ? how(tree).map(({ code, at, is }) => `${code}@${at.line}:${at.column} ${is}`) : [];
}

describe("the shape of what is written", () => {
  it("asks for garden, year, place and its clock where they should be", () => {
    expect(check("garden: x\nplace:\n  last frost: none\n  first frost: none")).toEqual([
      "missing@1:1 year is missing",
      "missing@2:1 clock is missing",
    ]);
    expect(check("year: 2027")).toHaveLength(2);
  });

  it("reports every unknown key, with the nearest or with all there are", () => {
    const text = least("crosp: []\ncolour: red\npeople:\n  Oda: {gardns: Sat 9-12}");
    const { problems } = read(text);
    expect(problems.map(({ code, shouldBe }) => [code, shouldBe.slice(0, 22)])).toEqual([
      ["unknown-key", "Did you mean crops"],
      ["unknown-key", "Here may stand: garden"],
      ["unknown-key", "Did you mean gardens"],
    ]);
  });

  it("reports wrong types and numbers that cannot be, in the words of the plan", () => {
    expect(told(least("crops:\n  - {crop: carrot, rows: three}"))).toEqual(["wrong-type@8:20"]);
    expect(told(least("crops:\n  - {crop: carrot, rows: 0}"))).toEqual(["out-of-range@8:20"]);
    expect(told(least("beds: [a]"))).toEqual(["wrong-type@7:1"]);
    expect(told("garden: x\nyear: 2027\nplace: [America/Denver, none]")).toEqual([
      "wrong-type@3:1",
    ]);
    expect(read(least("beds: [a]")).problems[0]).toMatchObject({
      is: "beds is a list",
      shouldBe: "Write keys below it, without dashes",
    });
  });

  it("looks into keys where words could stand too", () => {
    expect(
      told(least("", "last frost: none\n  first frost: none\n  weather: {low: [1], hihg: [2]}")),
    ).toEqual(["missing@7:3", "weather-wrong@7:18", "unknown-key@7:23"]);
  });

  it("checks a weather file by the same definitions", () => {
    expect(check("low: [1]\nhigh: [x]", checkWeather)).toEqual(["wrong-type@2:8 high is x"]);
    expect(check("low: [1]\nhigh: [2]\nin: °C", checkWeather)).toEqual([]);
  });

  it("takes a key that is given nothing for one that is not there", () => {
    expect(told(least("crops:\nrisk:\nbeds:\n  Root bed:"))).toEqual([]);
    expect(told(least("").replace("America/Denver", ""))).toContain("missing@4:3");
  });
});

import { describe, expect, test } from "vitest";
import { seasonDoubts } from "../../../src/engine/doubts/season.ts";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { readPlan } from "../../../src/garden/plan/read.ts";
import { QUARRY } from "../../gardens.ts";

const AT = { garden: "quarry-lane", file: "2027.yaml" };

/** The lane's place with some crops, and its doubts as `code@line: what is. what to do`. */
function told(crop: string, place: (text: string) => string = (text) => text) {
  const head = place(QUARRY.slice(0, QUARRY.indexOf("people:")));
  const { plan } = readPlan(`${head}crops:\n  - ${crop}\n`, AT, PRACTICES);
  if (plan === null) throw new Error("no plan");
  return seasonDoubts(plan).map(({ code, is, shouldBe }) => `${code}: ${is}. ${shouldBe}`);
}

const codes = (...given: Parameters<typeof told>) =>
  told(...given).map((each) => each.split(":")[0]);

describe("what the season leaves in doubt", () => {
  test("is nothing of a crop that suits the place", () => {
    expect(told("garlic")).toEqual([]);
  });

  test("is a variety too slow for the place, with the longest that fits", () => {
    const [doubt = ""] = told("tomato: 6 plants, 130 days");
    expect(doubt).toMatch(/^will-not-ripen: tomato: winter comes before it is ready/);
    const fits = Number(/Choose one of (\d+) days or fewer/.exec(doubt)?.[1]);
    expect(codes(`tomato: 6 plants, ${fits} days`)).toEqual([]);
    expect(codes(`tomato: 6 plants, ${fits + 2} days`)).toEqual(["will-not-ripen"]);
  });

  test("is a crop started too late, and one that only a warm season brings", () => {
    expect(codes("tomato: 6 plants, 72 days, not before 1 Sep")).toEqual(["will-not-ripen"]);
    expect(codes("carrot: 3 rows, sow 1 Oct")).toEqual(["will-not-ripen"]);
    const [doubt = ""] = told("tomato: 6 plants, 72 days, set out 25 Jun");
    expect(doubt).toContain("only in a warm season");
  });

  test("is a greenhouse with fewer places than the fullest day wants, and which day that is", () => {
    const one = (text: string) => text.replace("20 trays", "1 trays");
    expect(codes("tomato: 18 plants", one)).toEqual([]);
    expect(told("tomato: 19 plants", one)[0]).toMatch(
      /^greenhouse-too-full: Seedlings take 2 trays about \d+ May and the greenhouse has 1\. Raise fewer, buy some plants, or sow some outdoors$/,
    );
    expect(codes("lettuce: 40 plants, from seed indoors", one)).toEqual([]);
    expect(codes("lettuce: 41 plants, from seed indoors", one)).toEqual(["greenhouse-too-full"]);
    expect(codes("tomato: 90 plants, bought", one)).toEqual([]);
  });

  test("is no greenhouse too full of what stands there at different times", () => {
    const two = (text: string) => text.replace("20 trays", "2 trays");
    const both = "tomato: 30 plants\n  - lettuce: 80 plants, from seed indoors";
    expect(codes(both, two)).toEqual([]);
  });

  test("is not what winters, nor what stands in since before", () => {
    expect(codes("garlic: 60 cloves, plant this October")).toEqual([]);
    expect(codes("garlic: 60 cloves, in since 14 Oct 2026")).toEqual([]);
  });

  test("is nothing of ripening in a place without frost and warm all year", () => {
    const south = (text: string) =>
      text
        .replace(/last frost: .*/, "last frost: none")
        .replace(/first frost: .*/, "first frost: none")
        .replace(/latitude: .*/, "latitude: 20")
        .replace(/ {2}weather:\n.*\n.*\n/, "");
    expect(codes("tomato: 300 days", south)).toEqual([]);
  });

  test("is no garlic without a frost: it goes in on a cool day", () => {
    const mild = (text: string) =>
      text
        .replace(/last frost: .*/, "last frost: none")
        .replace(/first frost: .*/, "first frost: none")
        .replace(/ {2}weather:\n.*\n.*\n/, "");
    expect(codes("garlic: 60 cloves", mild)).toEqual([]);
    expect(codes("garlic: 60 cloves")).toEqual([]);
  });

  test("is lettuce that would be ready in heat", () => {
    const hot = (text: string) => text.replace("48, 46", "66, 66").replace("83, 81", "95, 95");
    expect(told("lettuce: sow 25 May", hot)[0]).toMatch(
      /^bad-season: lettuce: sown 25 May, it would be ready in heat that ends it\. Sow it earlier/,
    );
  });
});

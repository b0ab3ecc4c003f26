import { describe, expect, test } from "vitest";
import { celsius } from "../../../src/base/quantities/quantity.ts";
import { frostTonight } from "../../../src/engine/beds/frost-tonight.ts";
import { frostTonightText } from "../../../src/views/events/frost-tonight.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { sketchOf } from "../pictures/drawn.ts";

const told = (iso: string, lowF: number, text = QUARRY) =>
  frostTonightText(frostTonight(sketchOf(text).year, isoDay(iso), celsius(lowF)), "us");
const inBed = (name: string, ...asked: Parameters<typeof told>) =>
  told(...asked).sections.find((section) => section.name === name)?.lines;

describe("a frost night in words", () => {
  test("has the forecast first, and what it is here where that differs", () => {
    expect(told("2027-06-15", 29).head).toEqual([
      "The night to Wednesday 16 June: 29 °F by the forecast, colder still at the leaves.",
    ]);
    const lane = QUARRY.replace(
      "  greenhouse:",
      "  colder than the forecast by: 3 °F\n  greenhouse:",
    );
    expect(told("2027-06-15", 29, lane).head[0]).toContain(
      "29 °F by the forecast, about 26 °F here",
    );
  });

  test("says bed by bed what to bury, cover and leave, and what is alike in one line", () => {
    expect(inBed("Bags", "2027-05-29", 29)?.[0]).toMatch(/^Bury the shoots of potatoes/);
    expect(inBed("Root bed", "2027-06-15", 29)).toEqual([
      "Leave carrots and beets: a light frost will do no damage.",
    ]);
    expect(inBed("South bed", "2027-06-15", 33)).toEqual(["Cover tomatoes with heavy fabric."]);
    expect(inBed("South bed", "2027-06-15", 29)?.[0]).toContain("it may just save them");
  });

  test("says what no cover saves, and to pick it, green tomatoes too", () => {
    expect(inBed("South bed", "2027-09-25", 20)).toEqual([
      "No cover saves tomatoes tonight: pick all that is sound, green ones too.",
    ]);
    expect(inBed("South bed", "2027-07-01", 20)?.[0]).toContain("No cover saves tomatoes tonight;");
  });

  test("says of fabric that lies there already that it is enough, or that heavy takes its place", () => {
    const under = QUARRY.replace("from seed indoors", "from seed indoors, under fabric");
    expect(inBed("South bed", "2027-06-08", 35, under)?.[0]).toContain("already under fabric");
    expect(inBed("South bed", "2027-06-08", 32, under)?.[0]).toContain("in place of the light one");
    expect(inBed("South bed", "2027-09-10", 35, under)?.[0]).toBe(
      "Cover tomatoes with light fabric.",
    );
  });

  test("has the beds in front whose plants die first, and in a bed what dies first", () => {
    const names = told("2027-06-15", 27).sections.map(({ name }) => name);
    expect(names.slice(0, 2)).toEqual(["Bags", "South bed"]);
    expect(names.indexOf("Salad bed")).toBeLessThan(names.indexOf("Root bed"));
    const peppers = QUARRY.replace(
      "- tomato: 6 plants, from seed indoors",
      "- kale: 4 plants, bought\n      - tomato: 6 plants, bought\n      - pepper: 4 plants, bought",
    );
    const [first] = inBed("South bed", "2027-06-20", 20, peppers) ?? [];
    expect(first).toMatch(/^No cover saves (?:tomatoes and )?peppers/);
  });

  test("has asparagus that shows picked, and strawberries in flower covered", () => {
    const years = QUARRY.replace(
      "- beet: 2 rows",
      "- asparagus: 12 crowns, in since 20 Apr 2024\n      - strawberry: 20 plants, in since 1 May 2025",
    );
    const lines = inBed("Root bed", "2027-06-03", 29, years)?.join(" ");
    expect(lines).toContain("Pick all asparagus that shows before dark");
    expect(lines).toMatch(/Cover (?:[a-z]+ and )?strawberries/);
  });

  test("brings in trays that are out", () => {
    expect(inBed("Trays", "2027-05-15", 29)).toEqual([
      "Bring in tomatoes before dusk, as after each day out.",
    ]);
  });

  test("ends with water, two layers and the morning where there is something to cover, else says so", () => {
    const foot = told("2027-06-15", 33).foot.join(" ");
    for (const said of ["Water dry soil", "Two layers", "uncover by mid-morning"])
      expect(foot).toContain(said);
    const mild = told("2027-06-15", 50);
    expect([mild.head[1], mild.foot]).toEqual(["Nothing to cover or bring in tonight.", []]);
  });

  test("says no word of the machinery on any night, and ends every line", () => {
    for (const month of ["04", "05", "06", "07", "08", "09", "10", "11"])
      for (const low of [50, 35, 32, 29, 24, 10]) {
        const { head, sections, foot } = told(`2027-${month}-12`, low);
        const lines = [...head, ...sections.flatMap((section) => section.lines), ...foot];
        expect(lines.filter((line) => !line.endsWith("."))).toEqual([]);
        expect(lines.join(" ")).not.toMatch(
          /emergence|window|rung|threshold|undefined|NaN|overdue/,
        );
      }
  });
});

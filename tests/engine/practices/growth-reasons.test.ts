import { describe, expect, test } from "vitest";
import { ripeReasons, upReasons } from "../../../src/engine/practices/growth-reasons.ts";
import { QUARRY } from "../../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { words } from "./told.ts";

type Told = ReturnType<typeof upReasons>;
const lines = (told: Told) =>
  told.map((pieces) => words([{ part: "why", for: "all", pieces }]).replace("why: ", ""));

const up = (name: string, given: Given) => lines(upReasons(growingOf(QUARRY, name, given)));
const ripe = (name: string, given: Given) => lines(ripeReasons(growingOf(QUARRY, name, given)));

describe("how it comes to be up", () => {
  test("is told with the season's spread and the soil it was sown into", () => {
    expect(up("beet", { acts: { start: "2027-05-03" } })).toEqual([
      "Likely up about 18 May, in a warm season 15 May, in a cold one 23 May.",
      "Sown 3 May into soil near 49 °F; each day counts by its warmth.",
    ]);
  });

  test("is told of tubers, and of seed kept warm indoors", () => {
    expect(up("potato", { acts: { start: "2027-05-03" } })[1]).toContain("go by days");
    expect(up("tomato", { acts: { start: "2027-04-09" } })[1]).toBe(
      "Indoors the seed is kept at 70 °F.",
    );
  });

  test("is told of seed that waits outdoors in boxes", () => {
    const given: Given = { acts: { start: "2027-03-04" }, planting: { start: "winter-sown" } };
    expect(up("lettuce", given)[1]).toContain("Sown 4 Mar in boxes outdoors");
  });

  test("is what was seen, and nothing before it is sown", () => {
    expect(up("beet", { acts: { start: "2027-05-03", up: "2027-05-20" } })).toEqual([
      "It was seen up on 20 May.",
    ]);
    expect(up("beet", {})).toEqual([]);
  });
});

describe("how it comes to be ready", () => {
  test("is told from where warmth counts, whose days they are and what is assumed", () => {
    const [spread, counted, base] = ripe("tomato", {
      acts: { "set out": "2027-06-08" },
      planting: { days: 72 },
    });
    expect(spread).toMatch(/^Ready about .*, in a warm season .*, in a cold one /);
    expect(counted).toContain("Counted from 8 June: 72 days more of those that the plan gives");
    expect(counted).toContain("taken at a mean of 70 °F, which is an assumption");
    expect(base).toMatch(/^Warmth counts above 50 °F: .*Peet/);
  });

  test("names the publication where the plan gives no days", () => {
    expect(ripe("tomato", { acts: { "set out": "2027-06-08" } })[1]).toContain("Missouri");
  });

  test("is told of what winters by the last frost", () => {
    expect(ripe("garlic", { acts: { start: "2026-10-14" } })).toEqual([
      "Ready about 23 July, counted from the last frost of its spring.",
    ]);
  });

  test("is what was seen, and nothing before it is in its place", () => {
    const acts = { "set out": "2027-06-08", "first ripe": "2027-08-28" };
    expect(ripe("tomato", { acts })).toEqual(["It was seen ready on 28 Aug."]);
    expect(ripe("tomato", {})).toEqual([]);
  });
});

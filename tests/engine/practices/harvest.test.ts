import { describe, expect, test } from "vitest";
import { HARVEST } from "../../../src/engine/practices/harvest.ts";
import { QUARRY, tellOf } from "../../gardens.ts";
import { due, dueDays, withCrops } from "../../winters.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { ending, planWith, wordsOf } from "./garden.ts";
import { said, stepOf, tasksIn, titles, windowsOf, words } from "./told.ts";

const UP = { acts: { start: "2027-05-03", up: "2027-05-20" } };
const beets = growingOf(QUARRY, "beet", UP);
const lettuce = (given: Given = {}) =>
  growingOf(QUARRY, "lettuce", { acts: { start: "2027-05-03", up: "2027-05-13" }, ...given });

describe("what is brought in once", () => {
  test("has the warmth of its kind from when it was up, and may stand a month", () => {
    expect(windowsOf(HARVEST, beets)).toEqual(["1 07-09 07-18 08-17"]);
    expect(titles(tasksIn(HARVEST, beets))).toEqual(["Pull beets [bed]"]);
  });

  test("says how, by what sign and from when it is likely ready", () => {
    const text = said(tasksIn(HARVEST, beets)[0]);
    expect(text).toContain("how: Pull the biggest first");
    expect(text).toContain("sign: Roots as big as a golf ball show");
    expect(text).toContain("why: Likely ready from about 9 July.");
  });

  test("leaves its place", () => {
    expect(tasksIn(HARVEST, beets)[0]?.sets?.act).toBe("end");
  });

  test("is dried where it is to keep", () => {
    const garlic = growingOf(QUARRY, "garlic", { acts: { start: "2026-10-14" } });
    expect(said(tasksIn(HARVEST, garlic)[0])).toContain("Dry them 2 to 4 weeks in an airy, shady");
    expect(said(tasksIn(HARVEST, beets)[0])).not.toContain("Dry them");
  });

  test("warns of green potatoes, and is lifting", () => {
    const potatoes = growingOf(QUARRY, "potato", { acts: { start: "2027-05-03" } });
    const [dig] = tasksIn(HARVEST, potatoes);
    expect(windowsOf(HARVEST, potatoes)).toEqual(["1 08-09 08-26 09-20"]);
    expect(said(dig)).toContain("caution: Green potatoes and potato sprouts are poisonous");
    expect(dig?.kinds).toEqual(["lifting"]);
  });
});

describe("what is not full grown before winter", () => {
  const crops = ["potato: 32 tubers", "onion: 80 sets", "parsnip: 1 row"];
  const { scheduled } = tellOf(withCrops("very-short", crops), { on: "2027-01-02" });
  const text = (id: string) => words(scheduled.find(({ task }) => task.id === id)?.task.say ?? []);
  const days = dueDays(withCrops("very-short", crops));

  test("is in before the killing frost where it is dried to keep", () => {
    expect(due(days, "potato/harvest/1")).toBe("2027-09-13");
    expect(due(days, "onion/harvest/1")).toBe("2027-09-13");
  });

  test("is stored all the same, and watched for blight", () => {
    for (const key of ["potato", "onion"])
      expect(due(days, `${key}/cure-and-store/1`)).toMatch(/^2027-(?:09|10)-/);
    expect(due(days, "potato/scout/blight")).toMatch(/^2027-06-/);
  });

  test("is told as its crop is brought in, and as a guess where it is one", () => {
    expect(text("2027/potato/harvest/1")).toContain("Once frost has blackened the tops, cut them");
    expect(text("2027/onion/harvest/1")).toContain("how: Lift all, tops standing or not");
    expect(text("2027/parsnip/harvest/1")).toContain("It may not be full grown before winter");
    expect(text("2027/parsnip/harvest/1")).toContain("A rough guess from your frost dates.");
  });
});

describe("what is picked again and again", () => {
  const tomatoes = growingOf(QUARRY, "tomato", { acts: { "set out": "2027-05-21" } });

  test("is told once, when it begins, and keeps its place", () => {
    expect(windowsOf(HARVEST, tomatoes)).toEqual(["1 08-21 09-04 09-22"]);
    expect(tasksIn(HARVEST, tomatoes)[0]?.sets).toBeNull();
    expect(said(tasksIn(HARVEST, tomatoes)[0])).toContain("Pick every two or three days");
  });

  test("begins on the day the first was seen ripe", () => {
    const seen = growingOf(QUARRY, "tomato", {
      acts: { "set out": "2027-05-21", "first ripe": "2027-07-28" },
    });
    expect(said(tasksIn(HARVEST, seen)[0])).toContain("why: You saw it ready on 28 July.");
  });
});

describe("the last picking", () => {
  const told = tellOf(
    planWith(["pea: 2 rows", "broccoli: 6 plants", "cucumber: 4 plants"]).replace(
      "2 Oct",
      "30 Nov",
    ),
    { on: "2027-01-01" },
  ).scheduled;
  const last = (key: string) => wordsOf(ending(told, `${key}/harvest/last`));

  test("is known by pods of pods alone: of heads by shoots that flower, of fruit by its shape", () => {
    expect(last("pea")).toContain("New flowers and pods grow few and small.");
    expect(last("broccoli")).toContain("soon run to flower or seed");
    expect(last("cucumber")).toContain("New fruit is small and misshapen");
  });
});

describe("lettuce that comes again", () => {
  test("says how long after the last cut it is", () => {
    expect(said(stepOf(HARVEST, lettuce(), "cut-2"))).toContain(
      "why: About 18 days after the cut before.",
    );
  });

  test("is cut twice where it is sown again and again", () => {
    expect(windowsOf(HARVEST, lettuce())).toEqual([
      "cut-1 06-29 07-11 07-22",
      "cut-2 07-25 07-29 08-05",
    ]);
    expect(titles(tasksIn(HARVEST, lettuce()))).toEqual([
      "Cut lettuce [bed]",
      "Cut lettuce again [bed]",
    ]);
  });

  test("is cut three times where it is sown once", () => {
    const once = lettuce({ planting: { repeat: null } });
    expect(windowsOf(HARVEST, once)).toHaveLength(3);
  });

  test("leaves the heart but for the last good cut", () => {
    expect(said(stepOf(HARVEST, lettuce(), "cut-1"))).toContain("leave the heart");
    expect(said(stepOf(HARVEST, lettuce(), "cut-2"))).toContain("The last good cut: take all");
  });

  test("leaves its place with the last cut alone", () => {
    expect(tasksIn(HARVEST, lettuce()).map(({ sets }) => sets?.act ?? null)).toEqual([null, "end"]);
  });

  test("of a second sowing carries that sowing's number", () => {
    const second = { ...lettuce(), sowing: 2, anchors: new Map() };
    for (const [key, anchor] of lettuce().anchors)
      second.anchors.set(key.replace("|1|", "|2|"), anchor);
    expect(tasksIn(HARVEST, second).map(({ id }) => id)).toEqual([
      "2027/lettuce/harvest/sowing-2-cut-1",
      "2027/lettuce/harvest/sowing-2-cut-2",
    ]);
  });

  test("is cut too where its plants were bought", () => {
    const bought = lettuce({
      acts: { "set out": "2027-05-10" },
      planting: { start: "plants", repeat: null },
    });
    expect(windowsOf(HARVEST, bought)[0]).toBe("cut-1 06-02 06-16 06-29");
  });
});

test("nothing is brought in that is not in its place", () => {
  for (const name of ["beet", "carrot", "lettuce", "potato", "tomato", "garlic"])
    expect(windowsOf(HARVEST, growingOf(QUARRY, name))).toEqual([]);
});

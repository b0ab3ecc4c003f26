import { describe, expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { WATER } from "../../../src/engine/practices/water.ts";
import { parseDiary } from "../../../src/garden/diary/parse.ts";
import { isoDay, planOf as plainPlan, QUARRY, tellOf } from "../../gardens.ts";
import { said, titles, windows } from "./told.ts";

const DRIP = QUARRY.replace(/(Root bed:\n {4}is: .*\n)/, "$1    drip: 20 gal an hour\n").replace(
  "    warmed by: black film\n",
  "    warmed by: black film\n    drip: 45 l an hour\n",
);

/** The waterings of a garden, first week first. */
function watered(text: string) {
  const { scheduled: placed } = tellOf(text, { on: "2027-01-01" });
  return placed
    .filter(({ task }) => task.practice === WATER.name)
    .map(({ task }) => task)
    .sort((a, b) => a.window.due - b.window.due);
}

/** The events of a garden that tell of watering. */
function events(text: string) {
  const all = tellOf(text, { on: "2027-01-01" }).events;
  return all.filter(({ set, categories }) => set !== "sessions" && categories.includes("water"));
}

const inWeek = (text: string, week: number) =>
  said(watered(text).find(({ step }) => step === `week-${week}`));

describe("watering, week by week", () => {
  test("is one job for all beds, any day of its week", () => {
    const [first] = watered(DRIP);
    expect(titles(watered(DRIP))[0]).toBe("Water the beds [this week]");
    expect(events(DRIP)[0]?.title).toBe("Water the beds this week");
    expect(windows(watered(DRIP)).find((each) => each.startsWith("week-24"))).toBe(
      "week-24 06-14 06-14 06-20",
    );
    expect(first?.rhythm).toBe("daily");
    expect(first?.harm).toBe("when you can");
    expect(first?.subject).toEqual({ kind: "garden", key: "2027/garden" });
  });

  test("is at most one event a week, from up to the first frost", () => {
    const weeks = events(DRIP).map(({ day }) => Math.floor((day + 3) / 7));
    expect(weeks.length).toBeGreaterThan(15);
    expect(new Set(weeks).size).toBe(weeks.length);
    expect(weeks.length).toBeLessThan(27);
  });

  test("says each bed's minutes by its drip lines, in two runs where they are long", () => {
    expect(inWeek(DRIP, 22)).toMatch(/how: Drip: Root bed \d0 min twice, South bed \d+0 min/);
  });

  test("says what the thirstiest bed without lines loses, and none after an inch of rain", () => {
    expect(inWeek(DRIP, 22)).toContain(
      "The other beds: 1 in of water over the week, rain counted.",
    );
    expect(inWeek(QUARRY, 26)).toContain("Give the beds 1½ in of water over the week");
    expect(inWeek(QUARRY, 20)).toContain("Give the beds ¾ in of water over the week");
    for (const text of [DRIP, QUARRY])
      expect(inWeek(text, 26)).toMatch(/how: After (1½|2) in of rain, none\./);
  });

  test("says the soil's own sign", () => {
    expect(inWeek(DRIP, 26)).toContain("sign: A finger two knuckles deep feels dry.");
  });

  test("says what is wanted now, and whether rain is taken off", () => {
    expect(inWeek(DRIP, 28)).toMatch(
      /the thirstiest bed loses about (1\.5|2) in this week, no rain taken off/,
    );
  });

  test("cautions of the house's water once, in the first week, and only where there are lines", () => {
    const cautions = (text: string) =>
      watered(text).map((task) => said(task).includes("backflow preventer"));
    expect(cautions(DRIP).indexOf(true)).toBe(0);
    expect(cautions(DRIP).filter(Boolean)).toHaveLength(1);
    expect(cautions(QUARRY).filter(Boolean)).toEqual([]);
  });
});

describe("a garden whose need cannot be reckoned", () => {
  test("is told an inch a week, no minutes, and what the plan does not give", () => {
    const without = DRIP.replace("  latitude: 46.6\n", "");
    expect(inWeek(without, 26)).not.toMatch(/\d min/);
    expect(inWeek(without, 26)).toContain("Give the beds 1 in of water over the week");
    expect(inWeek(without, 26)).toContain("The plan gives no latitude");
    const rough = DRIP.replace(/ {2}weather:\n.*\n.*\n/, "");
    expect(inWeek(rough, 26)).toContain("The plan gives no monthly lows and highs");
  });

  test("is told an inch for a bed with lines and no size", () => {
    const sizeless = DRIP.replace("  Root bed:\n    is: 12 x 4 ft\n", "  Root bed:\n");
    expect(inWeek(sizeless, 24)).not.toContain("Root bed");
    expect(inWeek(sizeless, 24)).toContain("The other beds: 1½ in of water");
  });
});

describe("metric households", () => {
  test("read millimetres", () => {
    const metric = DRIP.replace("measures: inches and °F", "measures: metric").replace(
      "    low:",
      "    in: °F\n    low:",
    );
    const event = events(metric).find(({ title }) => title.startsWith("Water"));
    expect(event?.text).toContain("After 20 mm of rain, none.");
    expect(event?.text).not.toContain(" in ");
  });
});

describe("many beds with drip lines", () => {
  const many = Array.from(
    { length: 24 },
    (_, i) =>
      `  Long and narrow bed ${i + 1}:\n    is: 12 x 4 ft\n    drip: ${10 + i} gal an hour\n    crops:\n      - name: beet ${i + 1}\n        crop: beet\n        rows: 1\n`,
  ).join("");
  const text = QUARRY.replace(/beds:\n[\s\S]*/, `beds:\n${many}`);

  test("are named as far as they fit, then by their least and most", () => {
    const all = events(text);
    expect(all.length).toBeGreaterThan(5);
    expect(all.some((event) => /, \d+ more \d+ to \d+ min in all\./.test(event.text))).toBe(true);
    for (const event of all) {
      expect(event.text.length).toBeLessThanOrEqual(450);
      expect(event.text).toContain("Right when:");
    }
    expect(all[0]?.text).toContain("backflow");
  });
});

describe("watering is a word of plans", () => {
  test("that a planting can leave out, and then its bed is not counted", () => {
    const without = DRIP.replace("beet: 2 rows", "beet: 2 rows, without watering").replace(
      "under a board",
      "under a board, without watering",
    );
    expect(inWeek(without, 26)).not.toContain("Root bed");
  });

  test("and its steps keep their names when another planting comes or goes", () => {
    const fewer = DRIP.replace(/ {2}Salad bed:\n(?: {4}.*\n)+/, "");
    const steps = (text: string) => new Set(watered(text).map(({ id }) => id));
    const kept = [...steps(fewer)].filter((id) => steps(DRIP).has(id));
    expect(kept.length).toBeGreaterThan(10);
    expect(plainPlan(fewer).beds.length).toBe(plainPlan(DRIP).beds.length - 1);
    expect(parseDiary(plainPlan(fewer).diary, [plainPlan(fewer)], PRACTICES)).toEqual([]);
  });
});

describe("where rain does not reach", () => {
  const BED_UNDER_GLASS =
    "  Glass:\n    is: greenhouse, 10 x 8 ft, unheated\n    crops:\n      - name: glass tomatoes\n        crop: tomato\n        plants: 6\n";
  const wet = Array<number>(12).fill(8).join(", ");
  const rainy = `${QUARRY.replace("sprouted first", "sprouted first, without watering").replace("    high:", `    rain: [${wet}]\n    high:`)}${BED_UNDER_GLASS}`;

  test("a greenhouse is watered all summer, by the day, though it rains enough for the beds", () => {
    const weeks = watered(rainy);
    expect(weeks.length).toBeGreaterThan(8);
    expect(new Set(titles(weeks))).toEqual(new Set(["Water Glass [this week]"]));
    expect(inWeek(rainy, 28)).toMatch(/how: Glass: about \d+ gal a day; no rain gets in there\./);
    expect(inWeek(rainy, 28)).not.toContain("of rain, none");
  });

  test("bags of potatoes get gallons a day in July, and not the bed's inch", () => {
    expect(inWeek(QUARRY, 29)).toMatch(/Bags: about [345] gal a day for all 6\./);
  });
});

test("nothing is watered in a spring whose rain is not known before it is warm", () => {
  const early = QUARRY.replace("beet: 2 rows", "asparagus: 12 crowns, in since 20 Apr 2024");
  expect(watered(early)[0]?.window.due).toBeGreaterThanOrEqual(isoDay("2027-05-17"));
});

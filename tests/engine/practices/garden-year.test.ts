import { describe, expect, test } from "vitest";
import { READY_THE_GARDEN } from "../../../src/engine/practices/garden-year.ts";
import { tellOf } from "../../gardens.ts";
import { withCrops } from "../../winters.ts";
import { ending, planWith, toldWith, wordsOf } from "./garden.ts";
import { titles } from "./told.ts";

const CROPS = ["tomato: 6 plants, from seed indoors", "carrot: 3 rows"];
const placed = toldWith(CROPS);
const job = (step: string) => ending(placed, `/garden/ready-the-garden/${step}`);
const jobsOf = (all = placed) => all.filter(({ task }) => task.practice === READY_THE_GARDEN.name);
const stepsOf = (crops: readonly string[]) => jobsOf(toldWith(crops)).map(({ task }) => task.step);

describe("what a garden needs once a year", () => {
  test("is four jobs, each with its own words", () => {
    expect([...titles(jobsOf().map(({ task }) => task))].sort()).toEqual([
      "Clean pots and trays",
      "Clean the tools",
      "Make the beds ready",
      "Turn the compost heap",
    ]);
  });

  test("is a look for slugs a fortnight after the first thing goes in, where springs are damp", () => {
    const { scheduled } = tellOf(withCrops("maritime", ["carrot: 2 rows"]), { on: "2027-01-01" });
    const look = ending(scheduled, "/garden/ready-the-garden/slugs");
    const sown = ending(scheduled, "/carrot/sow-outdoors/1").task.window.due;
    expect(look.task.window.due).toBe(sown + 14);
    expect(wordsOf(look)).toContain("Slug bait: read the label first");
    expect(look.task.rhythm).toBe("daily");
  });

  test("is clean pots before the first sowing indoors", () => {
    const sown = ending(placed, "/tomato/sow-indoors/1").day;
    expect(job("pots").day).toBeLessThan(sown);
    expect(sown - job("pots").task.window.due).toBe(10);
  });

  test("is beds before the first thing goes into one, named", () => {
    const sown = ending(placed, "/carrot/sow-outdoors/1").day;
    expect(job("beds").day).toBeLessThan(sown);
    expect(wordsOf(job("beds"))).toContain("Begin with Long bed");
  });

  test("is no pots where nothing is raised, and no beds where all is in already", () => {
    expect(stepsOf(["carrot: 3 rows"]).sort()).toEqual(["beds", "compost", "tools"]);
    expect(stepsOf(["rhubarb: 2 crowns, in since 1 Apr 2024"]).sort()).toEqual([
      "compost",
      "tools",
    ]);
  });

  test("keeps the tools with the pots, where those are washed in the dead of winter too", () => {
    const onions = toldWith(["onion: 60 plants, from seed indoors"]);
    const [pots, tools] = ["pots", "tools"].map((step) =>
      ending(onions, `/ready-the-garden/${step}`),
    );
    expect(tools?.day).toBe(pots?.day);
  });

  test("comes half a year later in the south", () => {
    const south = planWith(CROPS)
      .replace("latitude: 46.6", "latitude: -42.9")
      .replace("America/Denver", "Australia/Hobart")
      .replace("20 Apr, 6 May, 21 May", "20 Sep, 6 Oct, 21 Oct")
      .replace("about 2 Oct", "about 20 Apr");
    const lines = south.replace(/ {2}weather:\n {4}low.*\n {4}high.*\n/, "");
    const told = tellOf(lines, { on: "2027-07-01" }).scheduled;
    const tools = ending(told, "/ready-the-garden/tools").task.window.due;
    expect(tools - job("tools").task.window.due).toBeGreaterThan(120);
  });
});

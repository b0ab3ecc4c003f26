import { describe, expect, test } from "vitest";
import { FEED } from "../../../src/engine/practices/feed.ts";
import { QUARRY } from "../../gardens.ts";
import { always, growingOf } from "../growth/growing.ts";
import { planWith } from "./garden.ts";
import { said, stepOf, tasksIn, titles, windowsOf } from "./told.ts";

const acts = { start: "2027-05-03", up: "2027-05-20" };
const sown = (name: string, airC: number, more = {}) =>
  growingOf(QUARRY, name, { acts, plan: { site: always(airC) }, ...more });

const peas = planWith(["pea: 2 rows"]);
const inCold = (airC: number) => growingOf(peas, "pea", { acts, plan: { site: always(airC) } });

describe("a look for pale leaves", () => {
  const beets = sown("beet", 8);

  test("comes ten to fourteen days after they are up in soil still cold", () => {
    expect(windowsOf(FEED, beets)).toEqual(["pale 05-30 06-01 06-07"]);
    expect(titles(tasksIn(FEED, beets))).toEqual(["Look beets over for pale leaves [bed]"]);
    expect(said(tasksIn(FEED, beets)[0])).toContain("caution: Feed: no more than the label says.");
  });

  test("is none in warm soil, before they are up, nor for what was raised or stands the winter", () => {
    expect(windowsOf(FEED, sown("beet", 12))).toEqual([]);
    expect(windowsOf(FEED, sown("beet", 3, { acts: {} }))).toEqual([]);
    expect(stepOf(FEED, sown("tomato", 8), "pale")).toBeUndefined();
    expect(stepOf(FEED, sown("garlic", 8), "pale")).toBeUndefined();
  });

  test("is once and no more for peas, whose roots feed themselves in warmer soil", () => {
    const text = said(stepOf(FEED, inCold(8), "pale"));
    expect(text).toContain("water once with a weak liquid feed, and no more");
    expect(text).toContain("why: Roots feed themselves only once the soil is near 50 °F.");
    expect(stepOf(FEED, inCold(12), "pale")).toBeUndefined();
  });
});

describe("feeding garlic", () => {
  const planted = { acts: { start: "2027-10-27" } };

  test("is as it grows again in spring, sooner where no winter stopped it, and never late", () => {
    const fed = stepOf(FEED, growingOf(QUARRY, "garlic", planted), "spring");
    expect(windowsOf(FEED, growingOf(QUARRY, "garlic", planted))).toEqual([
      "spring 04-21 05-02 05-12",
    ]);
    expect(said(fed)).toContain("never after that");
    const mild = sown("garlic", 6, planted);
    expect(windowsOf(FEED, mild)).toEqual(["spring 03-10 03-24 04-07"]);
  });

  test("is none in the spring it is planted", () => {
    const late = { acts: { start: "2027-04-20" } };
    expect(windowsOf(FEED, growingOf(QUARRY, "garlic", late))).toEqual([]);
  });
});

test("what grows in bags is top-dressed, for it has no row to draw soil over", () => {
  const fed = stepOf(FEED, growingOf(QUARRY, "potato", { acts: { start: "2027-05-08" } }), "1");
  expect(titles(fed ? [fed] : [])).toEqual(["Top-dress potatoes [bed]"]);
  expect(said(fed)).toContain("over the mix");
  expect(said(fed)).not.toContain("row");
});

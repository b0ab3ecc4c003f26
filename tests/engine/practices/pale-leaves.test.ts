import { describe, expect, test } from "vitest";
import { PALE_LEAVES } from "../../../src/engine/practices/pale-leaves.ts";
import { QUARRY } from "../../gardens.ts";
import { always, growingOf } from "../growth/growing.ts";
import { said, titles, windowsOf } from "./told.ts";

const acts = { start: "2027-05-03", up: "2027-05-20" };
const sown = (name: string, airC: number, more = {}) =>
  growingOf(QUARRY, name, { acts, plan: { site: always(airC) }, ...more });

describe("a look for pale leaves", () => {
  const beets = sown("beet", 8);

  test("comes ten to fourteen days after they are up in soil still cold", () => {
    expect(windowsOf(PALE_LEAVES, beets)).toEqual(["pale 05-30 06-01 06-07"]);
    expect(titles(PALE_LEAVES.tasks(beets))).toEqual(["Look for pale leaves: beets [bed]"]);
    expect(said(PALE_LEAVES.tasks(beets)[0])).toContain(
      "caution: Give no more than the label says.",
    );
  });

  test("is none in warm soil, before they are up, nor for what was raised or stands the winter", () => {
    expect(windowsOf(PALE_LEAVES, sown("beet", 12))).toEqual([]);
    expect(windowsOf(PALE_LEAVES, sown("beet", 3, { acts: {} }))).toEqual([]);
    expect(windowsOf(PALE_LEAVES, sown("tomato", 8))).toEqual([]);
    expect(windowsOf(PALE_LEAVES, sown("garlic", 8))).toEqual([]);
  });
});

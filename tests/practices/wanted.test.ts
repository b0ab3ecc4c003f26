import { describe, expect, test } from "vitest";
import { wantsOf } from "../../src/practices/wanted.ts";
import { isoDay, QUARRY } from "../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";

const START: Given = { acts: { start: "2027-05-03" } };
const RAISED: Given = { acts: { start: "2027-04-09", "set out": "2027-05-21" } };
const wanted = (name: string, given: Given) =>
  wantsOf(growingOf(QUARRY, name, given)).map(
    ({ step, things }) => `${step}: ${things.join("; ")}`,
  );

describe("what jobs want", () => {
  test("is cells for what is raised, a board for carrots, bags and mix for potatoes", () => {
    expect(wanted("tomato", RAISED)).toContain("sowing: cells and seed compost");
    expect(wanted("tomato", { ...RAISED, planting: { start: "winter-sown" } })).toContain(
      "sowing: lidded boxes and seed compost",
    );
    expect(wanted("carrot", START)).toContain("board: a board as long as the row");
    expect(wanted("potato", START)[0]).toBe("bags: bags and mix");
  });

  test("is what belongs to setting out, the watering can aside", () => {
    expect(wanted("tomato", RAISED)).toContain("set-out: stakes and ties");
  });

  test("is each thing once, at the first job that wants it", () => {
    const things = wantsOf(growingOf(QUARRY, "tomato", RAISED)).flatMap((want) => want.things);
    expect(new Set(things).size).toBe(things.length);
    const days = wantsOf(growingOf(QUARRY, "tomato", RAISED)).map(({ from }) => from);
    expect(days).toEqual([...days].sort((a, b) => a - b));
  });

  test("is nothing for a job that the planting drops", () => {
    const without = { ...START, planting: { without: ["cover"] } };
    expect(wanted("beet", START).some((want) => want.startsWith("cover-on"))).toBe(true);
    expect(wanted("beet", without).some((want) => want.startsWith("cover"))).toBe(false);
  });

  test("is nothing again for a later sowing, nor to begin what is in since before", () => {
    expect(wanted("beet", { ...START, sowing: 2 })).toEqual([]);
    const since = { ...START, planting: { inSince: isoDay("2027-03-01") } };
    expect(wanted("potato", since).some((want) => want.startsWith("bags"))).toBe(false);
  });
});

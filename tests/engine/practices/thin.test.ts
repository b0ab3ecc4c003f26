import { describe, expect, test } from "vitest";
import { THIN } from "../../../src/engine/practices/thin.ts";
import { QUARRY } from "../../gardens.ts";
import { growingOf } from "../growth/growing.ts";
import { said, stepOf, tasksIn, titles, told, windowsOf } from "./told.ts";

const UP = { acts: { start: "2027-05-03", up: "2027-05-20" } };
const carrots = growingOf(QUARRY, "carrot", UP);

describe("thinning what was seen up on 20 May", () => {
  test("is twice for carrots: the second time to eat", () => {
    expect(windowsOf(THIN, carrots)).toEqual(["1 06-06 06-10 06-18", "2 06-27 07-02 07-11"]);
    expect(titles(tasksIn(THIN, carrots))).toEqual([
      "Thin carrots [bed]",
      "Thin carrots again [bed]",
    ]);
    expect(said(stepOf(THIN, carrots, "2"))).toContain("These thinnings are good to eat.");
  });

  test("is once for beets, and for lettuce", () => {
    expect(windowsOf(THIN, growingOf(QUARRY, "beet", UP))).toEqual(["1 06-05 06-09 06-17"]);
    expect(windowsOf(THIN, growingOf(QUARRY, "lettuce", UP))).toEqual(["1 06-01 06-04 06-11"]);
  });

  test("says to how far, and at what height it is time", () => {
    const text = said(stepOf(THIN, carrots, "2"));
    expect(text).toContain("how: Thin to 2 to 3 in apart.");
    expect(text).toContain("sign: They stand 4 to 5 in tall.");
  });

  test("says when they were seen, and how many days that is counted", () => {
    expect(said(stepOf(THIN, carrots, "1"))).toContain("why: Up on 20 May");
    expect(told(stepOf(THIN, carrots, "1"))).toBe(
      "Counted 21 days from when it is up, 20 May.\nIt was seen up on 20 May.",
    );
  });

  test("says that it is likely, where they were not seen", () => {
    const reckoned = growingOf(QUARRY, "carrot", { acts: { start: "2027-05-03" } });
    expect(said(stepOf(THIN, reckoned, "1"))).toContain("why: Likely up about 19 May");
  });

  test("never comes before the thinning before it", () => {
    expect(stepOf(THIN, carrots, "2")?.after).toEqual(["2027/carrot/thin/1"]);
  });
});

describe("nothing is thinned", () => {
  test("that was planted or raised, or is not sown yet", () => {
    expect(windowsOf(THIN, growingOf(QUARRY, "potato", { acts: { start: "2027-05-03" } }))).toEqual(
      [],
    );
    expect(windowsOf(THIN, growingOf(QUARRY, "tomato", { acts: { start: "2027-04-09" } }))).toEqual(
      [],
    );
    expect(windowsOf(THIN, growingOf(QUARRY, "carrot"))).toEqual([]);
  });
});

test("carrots are thinned without a word of carrot fly where it does not live", () => {
  const { site } = carrots.plan;
  const there = growingOf(QUARRY, "carrot", {
    ...UP,
    plan: { site: { ...site, clock: "Australia/Melbourne" } },
  });
  expect(said(stepOf(THIN, carrots, "1"))).toContain("carrot fly");
  expect(said(stepOf(THIN, there, "1"))).toContain("when the soil is damp");
  expect(said(stepOf(THIN, there, "1"))).not.toContain("fly");
});

import { describe, expect, test } from "vitest";
import { anchorKey } from "../../../src/engine/growth/anchors.ts";
import { OVERWINTER } from "../../../src/engine/practices/overwinter.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { due, dueDays, withCrops } from "../../winters.ts";
import { always, anchor, type Given, growingOf } from "../growth/growing.ts";
import { said, stepOf, tasksIn, titles, told, windowsOf } from "./told.ts";

const garlic = (given: Given = {}) => growingOf(QUARRY, "garlic", given);
const ANY_TIME = { planting: { within: null } };
const planted = (given: Given = {}) => garlic({ acts: { start: "2027-10-27" }, ...given });

describe("planting garlic where the first frost is usual on 2 October", () => {
  test("is a week to two after the killing frost, and fine for another week", () => {
    expect(windowsOf(OVERWINTER, garlic(ANY_TIME))).toEqual(["plant 10-24 10-27 11-06"]);
    expect(titles(tasksIn(OVERWINTER, garlic()))).toEqual(["Plant garlic [bed]"]);
  });

  test("stays in the month the gardener named", () => {
    expect(windowsOf(OVERWINTER, garlic())).toEqual(["plant 10-24 10-27 10-31"]);
    const september = { from: isoDay("2027-09-01"), to: isoDay("2027-09-30") };
    expect(windowsOf(OVERWINTER, garlic({ planting: { within: september } }))).toEqual([
      "plant 09-27 09-30 09-30",
    ]);
  });

  test("is no day earlier than its place is free", () => {
    const anchors = new Map([[anchorKey("2027/lettuce", 3, "end"), anchor(isoDay("2027-10-25"))]]);
    const behind = garlic({ anchors, planting: { within: null, after: "2027/lettuce" } });
    expect(windowsOf(OVERWINTER, behind)).toEqual(["plant 10-26 10-27 11-06"]);
  });

  test("is no day earlier than the gardener asked", () => {
    const asked = garlic({ planting: { within: null, notBefore: isoDay("2027-10-26") } });
    expect(windowsOf(OVERWINTER, asked)).toEqual(["plant 10-26 10-27 11-06"]);
  });

  test("is on the day the gardener fixed, and on no other", () => {
    const fixed = garlic({ planting: { fixed: { start: isoDay("2027-10-09"), out: null } } });
    expect(windowsOf(OVERWINTER, fixed)).toEqual(["plant 10-09 10-09 10-09"]);
    expect(tasksIn(OVERWINTER, fixed)[0]?.certainty).toBe("fixed");
  });

  test("says how deep and how far apart, and the killing frost it waits for", () => {
    const text = said(tasksIn(OVERWINTER, garlic())[0]);
    expect(text).toContain("point up, 3 in deep, 6 in apart");
    expect(text).toContain("sign: A hard frost has come");
    expect(text).toContain("the usual killing frost, about 16 Oct.");
  });

  test("starts its clock", () => {
    expect(tasksIn(OVERWINTER, garlic())[0]?.sets).toEqual({
      planting: "2027/garlic",
      sowing: 1,
      act: "start",
    });
  });

  test("takes half a minute a clove and a quarter of an hour", () => {
    expect(tasksIn(OVERWINTER, garlic())[0]?.minutes).toBe(45);
  });

  test("is not told of garlic in since last autumn", () => {
    const inSince = isoDay("2026-10-14");
    expect(windowsOf(OVERWINTER, garlic({ planting: { inSince } }))).toEqual([]);
  });

  test("is told by cool nights in a place without frost, and never by a hard frost", () => {
    const site = { ...garlic().plan.site, firstFrost: null };
    const mild = garlic({ ...ANY_TIME, plan: { site } });
    expect(windowsOf(OVERWINTER, mild)[0]).toMatch(/^plant 09-26 09-29/);
    expect(said(stepOf(OVERWINTER, mild, "plant"))).toContain("nights are the cool ones of autumn");
    expect(said(stepOf(OVERWINTER, mild, "plant"))).not.toMatch(/frost/);
    expect(windowsOf(OVERWINTER, garlic({ plan: { site } }))[0]).toMatch(/^plant 10-01 10-01/);
  });
});

describe("garlic planted on 27 October", () => {
  test("is mulched as the ground freezes and loses its stalks the summer after", () => {
    expect(windowsOf(OVERWINTER, planted(), ["rest"])).toEqual([
      "mulch 11-20 11-27 12-11",
      "uncover 04-07 04-14 04-21",
      "weed 05-05 05-16 05-26",
      "stalks 06-14 06-24 07-04",
    ]);
  });

  test("is not mulched where the soil does not freeze", () => {
    const days = dueDays(withCrops("maritime", ["garlic: 60 cloves, plant this October"]));
    expect(due(days, "garlic/overwinter/plant")).toMatch(/^2027-10-/);
    expect(due(days, "garlic/overwinter/mulch")).toBe("-");
  });

  test("is mulched with 4 to 6 in of straw or leaves, once the soil's top has frozen", () => {
    const mulch = stepOf(OVERWINTER, planted(), "mulch");
    expect(said(mulch)).toContain("Lay 4 to 6 in of straw or leaves");
    expect(said(mulch)).toContain("sign: The top of the soil has frozen.");
    expect(told(mulch)).toContain("after the usual killing frost, 16 Oct");
  });

  test("is uncovered before the last frost, where the ground freezes for weeks and nowhere else", () => {
    const uncover = stepOf(OVERWINTER, planted(), "uncover");
    expect(titles(uncover ? [uncover] : [])).toEqual(["Draw the mulch off garlic [bed]"]);
    expect(stepOf(OVERWINTER, planted({ plan: { site: always(4) } }), "uncover")).toBeUndefined();
  });

  test("is weeded by hand in the weeks after the last frost of its spring", () => {
    const weed = stepOf(OVERWINTER, planted(), "weed");
    expect(weed?.id).toBe("2027/garlic/overwinter/weed");
    expect(said(weed)).toContain("put back what mulch comes up");
  });

  test("is weeded while it is still cold where weeds grow all winter", () => {
    const mild = stepOf(OVERWINTER, planted({ plan: { site: always(4) } }), "weed");
    const cold = stepOf(OVERWINTER, planted(), "weed");
    expect(mild?.window.latest ?? 0).toBeLessThan(cold?.window.earliest ?? 0);
    expect(said(mild)).not.toContain("mulch");
  });

  test("loses its stalks when they have curled once, and they are good to eat", () => {
    const stalks = stepOf(OVERWINTER, planted(), "stalks");
    expect(said(stalks)).toContain("sign: The stalks have curled once.");
    expect(said(stalks)).toContain("good to eat");
  });
});

describe("garlic from elsewhere in time", () => {
  test("in since last October is mulched no more, but loses its stalks this summer", () => {
    const since = garlic({
      acts: { start: "2026-10-14" },
      planting: { inSince: isoDay("2026-10-14") },
    });
    expect(windowsOf(OVERWINTER, since, ["rest"])).toEqual([
      "uncover 04-08 04-15 04-22",
      "weed 05-06 05-17 05-27",
      "stalks 06-15 06-25 07-05",
    ]);
  });

  test("planted in spring is lifted that summer, and not mulched after", () => {
    const spring = garlic({ acts: { start: "2027-04-10" } });
    expect(windowsOf(OVERWINTER, spring, ["rest"]).map((each) => each.split(" ")[0])).toEqual([
      "weed",
      "stalks",
    ]);
  });

  test("not planted yet has nothing to stand through", () => {
    expect(windowsOf(OVERWINTER, garlic(), ["rest"])).toEqual([]);
  });
});

describe("garlic where the ground freezes early", () => {
  test("is mulched then, and not weeks later in the snow", () => {
    const text = withCrops("very-short", ["garlic: 60 cloves, plant this September"]).replace(
      "  first frost:",
      "  hottest afternoons: 72 °F\n  coldest nights: -17 °F\n  first frost:",
    );
    expect(due(dueDays(text), "garlic/overwinter/mulch")).toMatch(/^2027-10-[12]/);
  });
});

import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/days/day.ts";
import { anchorKey } from "../../../src/engine/growth/anchors.ts";
import { CLOSE_BED } from "../../../src/engine/practices/close-bed.ts";
import { seasonOf } from "../../../src/garden/model/season.ts";
import { QUARRY, tellOf } from "../../gardens.ts";
import { anchor, growingOf } from "../growth/growing.ts";
import { ending, toldWith, wordsOf } from "./garden.ts";
import { sharedIn } from "./told.ts";

describe("closing a bed", () => {
  test("comes after its last crop is out, with an inch of compost and the days of raw manure", () => {
    const placed = toldWith(["beet: 1 row", "carrot: 1 row"]);
    const close = ending(placed, "/close-the-bed/1");
    const last = Math.max(
      ...placed.filter(({ task }) => task.sets?.act === "end").map(({ day }) => day),
    );
    expect(close.day).toBeGreaterThan(last);
    expect(wordsOf(close)).toMatch(/compost over it, about …/);
    expect(wordsOf(close)).toContain("120 days");
  });

  test("is told where its last crop is out on the season's last day, and not after it", () => {
    const beet = growingOf(QUARRY, "beet");
    const { to } = seasonOf(beet.plan);
    const closings = [to, plus(to, 1)].map((end) => {
      const anchors = new Map([[anchorKey(beet.planting.key, 1, "end"), anchor(end)]]);
      return sharedIn(CLOSE_BED, { ...beet, contexts: [beet], anchors }).length;
    });
    expect(closings).toEqual([1, 0]);
  });

  test("is nothing where something stands the winter or for years", () => {
    for (const crop of ["garlic: 60 cloves, plant this October", "rhubarb: 2 crowns"])
      expect(
        toldWith([crop]).filter(({ task }) => task.practice === CLOSE_BED.name),
        crop,
      ).toEqual([]);
  });

  test("is told of a bed whose garlic is lifted this summer", () => {
    const since = toldWith(["garlic: 60 cloves, in since 14 Oct 2026"]);
    const lifted = ending(since, "/garlic/harvest/1");
    expect(ending(since, "/close-the-bed/1").day).toBeGreaterThan(lifted.day);
  });

  test("tips bags out instead, since old mix is not planted again", () => {
    const close = ending(
      tellOf(QUARRY, { on: "2027-01-01" }).scheduled,
      "/bed/bags/close-the-bed/1",
    );
    expect(close.task.title).toEqual({ verb: "Tip out", object: "Bags", where: null });
    expect(wordsOf(close)).not.toContain("Spread");
    expect(close.task.needs).toEqual([]);
  });
});

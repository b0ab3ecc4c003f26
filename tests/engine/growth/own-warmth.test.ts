import { describe, expect, test } from "vitest";
import { celsius } from "../../../src/base/quantities/quantity.ts";
import { COOL_WARMTH } from "../../../src/crops/figures.ts";
import { ownWarmth } from "../../../src/engine/growth/own-warmth.ts";
import { packetWarmth } from "../../../src/engine/growth/warmth.ts";
import { QUARRY } from "../../gardens.ts";
import { type Acts, always, anchorsOf, growingOf, seenIn } from "./growing.ts";

/** Beets where every day is of 60 °F, with what earlier years' diaries saw; their packet has 54 days left when they are up. */
const beets = (seen: Readonly<Record<string, Acts>>) =>
  growingOf(QUARRY, "beet", { anchors: seenIn(seen), plan: { site: always(celsius(60)) } });

const days = (count: number) => packetWarmth(count, COOL_WARMTH);

describe("what the garden itself took", () => {
  test("is the warmth from the day up to the day before it was first ripe", () => {
    const own = ownWarmth(
      beets({ "2026/beet": { up: "2026-05-20", "first ripe": "2026-07-29" } }),
      54,
    );
    expect(own?.year).toBe(2026);
    expect(own?.warmth).toBeCloseTo(days(70), 6);
  });

  test("is from the day it would have come up where only the sowing is known", () => {
    const own = ownWarmth(
      beets({ "2026/beet": { start: "2026-05-01", "first ripe": "2026-07-29" } }),
      54,
    );
    expect(own?.warmth).toBeCloseTo(days(89 - 10), 6);
  });

  test("is the newest year's that has it", () => {
    const seen = {
      "2024/beet": { up: "2024-05-20", "first ripe": "2024-07-10" },
      "2025/beet": { up: "2025-05-20", "first ripe": "2025-07-20" },
      "2026/beet": { up: "2026-05-20" },
    };
    expect(ownWarmth(beets(seen), 54)?.year).toBe(2025);
  });

  test("is forgotten after five years", () => {
    const seen = (year: number) => ({
      [`${year}/beet`]: { up: `${year}-05-20`, "first ripe": `${year}-07-20` },
    });
    expect(ownWarmth(beets(seen(2022)), 54)?.year).toBe(2022);
    expect(ownWarmth(beets(seen(2021)), 54)).toBeNull();
  });

  test("is not believed beyond twice or under half of the packet's", () => {
    const ripe = (day: string) => ({ "2026/beet": { up: "2026-05-01", "first ripe": day } });
    expect(ownWarmth(beets(ripe("2026-08-16")), 54)?.warmth).toBeCloseTo(days(107), 6);
    expect(ownWarmth(beets(ripe("2026-08-18")), 54)).toBeNull();
    expect(ownWarmth(beets(ripe("2026-05-29")), 54)?.warmth).toBeCloseTo(days(28), 6);
    expect(ownWarmth(beets(ripe("2026-05-27")), 54)).toBeNull();
  });

  test("is the older year's where the newest is not believed", () => {
    const seen = {
      "2025/beet": { up: "2025-05-20", "first ripe": "2025-07-20" },
      "2026/beet": { up: "2026-05-20", "first ripe": "2026-05-25" },
    };
    expect(ownWarmth(beets(seen), 54)?.year).toBe(2025);
  });

  test("is nothing where ripe was before up, or no beginning is known", () => {
    const before = { "2026/beet": { up: "2026-07-20", "first ripe": "2026-05-20" } };
    expect(ownWarmth(beets(before), 54)).toBeNull();
    expect(ownWarmth(beets({ "2026/beet": { "first ripe": "2026-07-20" } }), 54)).toBeNull();
  });

  test("is nothing where the first ripe day was only placed", () => {
    const anchors = anchorsOf("2026/beet", { up: "2026-05-20", "first ripe": "2026-07-20" });
    expect(ownWarmth(growingOf(QUARRY, "beet", { anchors }), 54)).toBeNull();
    const other = seenIn({ "2026/carrot": { up: "2026-05-20", "first ripe": "2026-07-20" } });
    const both = new Map([...anchors, ...other]);
    expect(ownWarmth(growingOf(QUARRY, "beet", { anchors: both }), 54)).toBeNull();
  });

  test("is not another planting's, nor this year's own", () => {
    const seen = { up: "2026-05-20", "first ripe": "2026-07-20" };
    expect(ownWarmth(beets({ "2026/beet-golden": seen }), 54)).toBeNull();
    const now = { up: "2027-05-20", "first ripe": "2027-07-20" };
    expect(ownWarmth(beets({ "2027/beet": now }), 54)).toBeNull();
  });

  test("is nothing for what does not go by warmth", () => {
    const anchors = seenIn({ "2026/garlic": { start: "2025-10-27", "first ripe": "2026-07-20" } });
    expect(ownWarmth(growingOf(QUARRY, "garlic", { anchors }), 240)).toBeNull();
  });

  test("is from setting out for what is raised, and from planting for tubers", () => {
    const site = always(celsius(70));
    const raised = seenIn({
      "2026/tomato": { start: "2026-04-01", "set out": "2026-05-21", "first ripe": "2026-08-09" },
    });
    const tomato = growingOf(QUARRY, "tomato", { anchors: raised, plan: { site } });
    expect(ownWarmth(tomato, 75)?.warmth).toBeCloseTo(80 * (celsius(70) - 10), 1);
    const dug = seenIn({
      "2026/potato": { start: "2026-05-01", up: "2026-05-22", "first ripe": "2026-08-09" },
    });
    const potato = growingOf(QUARRY, "potato", {
      anchors: dug,
      plan: { site: always(celsius(60)) },
    });
    const base = potato.crop.warmth?.baseC.value ?? Number.NaN;
    expect(ownWarmth(potato, 100)?.warmth).toBeCloseTo(100 * (celsius(60) - base), 6);
  });
});

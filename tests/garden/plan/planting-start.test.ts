import { describe, expect, it } from "vitest";
import { least, on, planOf, read, told } from "./canonical.ts";

const crop = (item: string) => planOf(least(`crops:\n  - ${item}`)).plantings[0];

describe("how a planting begins", () => {
  it("is as written, else the usual way of its crop, listed", () => {
    expect(crop("tomato")?.start).toBe("seed indoors");
    expect(crop("tomato: bought")?.start).toBe("plants");
    expect(crop("lettuce: from seed indoors")?.start).toBe("seed indoors");
    expect(crop("garlic")?.start).toBe("cloves");
    const { filled } = planOf(least("crops:\n  - tomato\n  - garlic: from cloves"));
    expect(filled.filter(({ what }) => what.endsWith("from"))).toEqual([
      { what: "tomato: from", value: "seed indoors", why: "the usual way, by the crop facts" },
    ]);
  });

  it("is from seed in the crop's own way where only seed is said", () => {
    expect(crop("tomato: from seed")?.start).toBe("seed indoors");
    expect(crop("carrot: from seed")?.start).toBe("seed outdoors");
  });

  it("is what the plan counts, where the crop begins so", () => {
    expect(crop("onion: 80 sets")?.start).toBe("sets");
    expect(crop("onion: 80 plants")?.start).toBe("seed indoors");
  });

  it("is the usual way, with a doubt, where the facts have no other", () => {
    expect(crop("carrot: bought")?.start).toBe("seed outdoors");
    expect(told(least("crops:\n  - carrot: bought"))).toEqual(["start-unknown@8:13"]);
  });

  it("is winter-sown for whatever grows from seed and can be set out", () => {
    for (const name of "lettuce kale chard spinach calendula broccoli leek parsley sweet pea".split(
      / (?!pea)/,
    ))
      expect(crop(`${name}: winter-sown`)?.start, name).toBe("winter-sown");
    expect(told(least("crops:\n  - carrot: winter-sown"))).toEqual(["start-unknown@8:13"]);
    expect(told(least("crops:\n  - potato: winter-sown"))).toEqual(["start-unknown@8:13"]);
  });

  it("is guessed for an unknown crop from its other words", () => {
    expect(crop("moonflower: 6 cloves")?.start).toBe("cloves");
    expect(crop("moonflower: set out 8 Jun")?.start).toBe("plants");
  });
});

describe("a gardener's own days", () => {
  it("are a day it is sown, planted or set out on", () => {
    expect(crop("carrot: sow 3 May")?.fixed).toEqual({ start: on(5, 3), out: null });
    expect(crop("potato: plant 3 May")?.fixed).toEqual({ start: on(5, 3), out: null });
    expect(crop("tomato: sow 20 Mar, set out 8 Jun")?.fixed).toEqual({
      start: on(3, 20),
      out: on(6, 8),
    });
  });

  it("set out what is planted where plants are raised or bought", () => {
    expect(crop("tomato: plant 8 Jun")?.fixed).toEqual({ start: null, out: on(6, 8) });
    expect(crop("tomato: plant in June")).toMatchObject({
      fixed: { out: null },
      notBefore: on(6, 1),
      within: null,
    });
  });

  it("may be a month to begin in", () => {
    expect(crop("garlic: plant this October")).toMatchObject({
      within: { from: on(10, 1), to: on(10, 31) },
      fixed: { start: null, out: null },
    });
  });

  it("are a first day, or the day since when it is in the ground", () => {
    expect(crop("tomato: not before 8 Jun")?.notBefore).toBe(on(6, 8));
    expect(crop("tomato: not before June")?.notBefore).toBe(on(6, 1));
    expect(crop("garlic: in since 14 Oct 2026")?.inSince).toBe(on(10, 14) - 365);
    expect(told(least("crops:\n  - garlic: in since 14 Oct 2026"))).toEqual([]);
  });

  it("are refused twice and doubted outside the season", () => {
    expect(read(least("crops:\n  - carrot: sow 3 May, plant 4 May")).problems[0]?.code).toBe(
      "said-twice",
    );
    expect(told(least("crops:\n  - tomato: set out 8 Jun, plant 9 Jun"))).toEqual([
      "said-twice@8:34",
    ]);
    expect(told(least("crops:\n  - carrot: sow 3 May 2029"))).toEqual(["outside-season@8:17"]);
    expect(told(least("crops:\n  - garlic: in since 14 Oct 2028"))).toEqual([
      "outside-season@8:22",
    ]);
  });
});

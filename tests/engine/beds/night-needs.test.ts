import { describe, expect, test } from "vitest";
import { celsius, fahrenheit } from "../../../src/base/quantities/quantity.ts";
import { cropOf } from "../../../src/crops/crops.ts";
import {
  type FrostNeed,
  frostNeedOf,
  leafC,
  type Night,
  needRank,
} from "../../../src/engine/beds/night-needs.ts";
import type { FrostStage } from "../../../src/engine/growth/hardiness.ts";

type Given = Partial<Pick<Night, "place" | "covers">>;

function need(key: string, stage: FrostStage, lowF: number, given: Given = {}): FrostNeed {
  const crop = cropOf(key);
  if (!crop) throw new Error(key);
  return frostNeedOf(crop, stage, { lowC: celsius(lowF), place: "open", covers: [], ...given });
}

describe("tomatoes", () => {
  test("need nothing at 36 °F, then light fabric, heavy, heavy with luck, and no cover at 25", () => {
    expect(need("tomato", "standing", 36)).toEqual({ kind: "leave", why: "warm enough" });
    expect(need("tomato", "standing", 35)).toMatchObject({ kind: "cover", fabric: "light fabric" });
    expect(need("tomato", "standing", 33)).toMatchObject({ fabric: "heavy fabric", sure: true });
    expect(need("tomato", "standing", 29)).toMatchObject({ fabric: "heavy fabric", sure: false });
    expect(need("tomato", "standing", 25)).toEqual({ kind: "beyond", left: "lost" });
    expect(need("tomato", "bearing", 25)).toEqual({ kind: "beyond", left: "pick" });
  });

  test("under fabric that lies there are left alone where it is enough, and else get heavy in its place", () => {
    const under: Given = { covers: ["fabric"] };
    expect(need("tomato", "standing", 35, under)).toEqual({ kind: "leave", why: "under fabric" });
    expect(need("tomato", "standing", 33, under)).toMatchObject({ kind: "cover", over: true });
    const net: Given = { covers: ["net"] };
    expect(need("tomato", "standing", 35, net)).toMatchObject({ kind: "cover", over: false });
  });

  test("under cloches are left alone on a night that is a little too cold", () => {
    const under: Given = { covers: ["cloche"] };
    expect(need("tomato", "standing", 35, under)).toEqual({ kind: "leave", why: "under cloches" });
    expect(need("tomato", "standing", 31, under).kind).toBe("cover");
  });

  test("in a house are as warm as it is kept, or a little warmer than outdoors without a heater", () => {
    const heated: Given = { place: { keptAboveC: celsius(45) } };
    const cold: Given = { place: { keptAboveC: null } };
    expect(need("tomato", "standing", 10, heated)).toEqual({
      kind: "leave",
      why: "in the greenhouse",
    });
    expect(need("tomato", "standing", 34, cold).kind).toBe("leave");
    expect(need("tomato", "standing", 33, cold).kind).toBe("cover");
    const night = { lowC: celsius(34), place: { keptAboveC: null } };
    expect(fahrenheit(leafC(night))).toBeCloseTo(32, 9);
    expect(leafC({ ...night, place: { keptAboveC: 7 } })).toBe(7);
  });
});

test("strawberries in flower are covered at 29 °F, and asparagus that shows is picked", () => {
  expect(need("strawberry", "standing", 29)).toEqual({ kind: "leave", why: "stands the winter" });
  expect(need("strawberry", "in flower", 29)).toMatchObject({ kind: "cover" });
  expect(need("strawberry", "bearing", 29)).toMatchObject({ kind: "cover" });
  expect(need("asparagus", "bearing", 29)).toEqual({ kind: "pick" });
  expect(need("asparagus", "not up", 10)).toEqual({ kind: "leave", why: "not up" });
});

test("roots that stand half out of the soil are pulled, and those in it are left", () => {
  expect(need("turnip", "bearing", 20)).toEqual({ kind: "pick" });
  expect(need("beet", "bearing", 20)).toEqual({ kind: "pick" });
  expect(need("carrot", "bearing", 5)).toEqual({ kind: "leave", why: "under the soil" });
});

test("ready heads are covered on nights that their leaves stand", () => {
  for (const key of ["broccoli", "cauliflower", "head-lettuce"]) {
    expect(need(key, "standing", 29).kind, key).toBe("leave");
    expect(need(key, "bearing", 29).kind, key).toBe("cover");
  }
});

test("potato shoots are buried while they are short, come again when tall, and tubers are left", () => {
  expect(need("potato", "young", 29)).toEqual({ kind: "bury" });
  expect(need("potato", "standing", 20)).toEqual({ kind: "beyond", left: "comes again" });
  expect(need("potato", "bearing", 10)).toEqual({ kind: "leave", why: "under the soil" });
});

test("what stands frost is left alone, and told whether it is hardy or stands a light one", () => {
  expect(need("lettuce", "standing", 29)).toEqual({ kind: "leave", why: "light frost only" });
  expect(need("beet", "standing", 30)).toEqual({ kind: "leave", why: "light frost only" });
  expect(need("garlic", "standing", -20)).toEqual({ kind: "leave", why: "stands the winter" });
  expect(need("carrot", "not up", 0)).toEqual({ kind: "leave", why: "not up" });
});

test("a colder low never asks less", () => {
  for (const key of [
    "tomato",
    "potato",
    "lettuce",
    "beet",
    "garlic",
    "carrot",
    "strawberry",
    "asparagus",
  ])
    for (const stage of ["not up", "young", "standing", "in flower", "bearing"] as const) {
      const ranks = Array.from({ length: 121 }, (_, i) => needRank(need(key, stage, 50 - i / 2)));
      expect(ranks, `${key} ${stage}`).toEqual([...ranks].sort((a, b) => a - b));
    }
});

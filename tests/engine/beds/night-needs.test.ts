import { describe, expect, test } from "vitest";
import { celsius, degreesC, fahrenheit } from "../../../src/base/quantities/quantity.ts";
import {
  type FrostNeed,
  frostNeedOf,
  leafC,
  needRank,
} from "../../../src/engine/beds/night-needs.ts";
import type { FrostStage } from "../../../src/engine/growth/hardiness.ts";
import type { Planting, Site } from "../../../src/garden/model/plan.ts";
import { planOf, QUARRY } from "../../gardens.ts";
import { growingOf } from "../growth/growing.ts";

const { site } = planOf(QUARRY);
const cold: Site = {
  ...site,
  greenhouse: site.greenhouse && { ...site.greenhouse, keptAbove: null },
};

type Given = { readonly planting?: Partial<Planting>; readonly site?: Site; readonly glass?: true };

function need(key: string, stage: FrostStage, lowF: number, given: Given = {}): FrostNeed {
  const { crop, planting } = growingOf(QUARRY, key);
  const night = { lowC: celsius(lowF), site: given.site ?? site, underGlass: given.glass ?? false };
  return frostNeedOf({ crop, planting: { ...planting, ...given.planting } }, stage, night);
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

  test("under fabric by the plan are left alone where light fabric is enough, and else get heavy in its place", () => {
    const under = { planting: { under: ["fabric"] as const } } as unknown as Given;
    expect(need("tomato", "standing", 35, under)).toEqual({ kind: "leave", why: "under fabric" });
    expect(need("tomato", "standing", 33, under)).toMatchObject({ kind: "cover", over: true });
    const net = { planting: { under: ["net"] as const } } as unknown as Given;
    expect(need("tomato", "standing", 35, net)).toMatchObject({ kind: "cover", over: false });
  });

  test("in a greenhouse are as warm as it is kept, or a little warmer than outdoors without a fire", () => {
    const glass = { glass: true } as const;
    expect(need("tomato", "standing", 10, glass)).toEqual({
      kind: "leave",
      why: "in the greenhouse",
    });
    expect(need("tomato", "standing", 34, { ...glass, site: cold }).kind).toBe("leave");
    expect(need("tomato", "standing", 33, { ...glass, site: cold }).kind).toBe("cover");
    const night = { lowC: celsius(34), site: cold, underGlass: true };
    expect(fahrenheit(leafC(night))).toBeCloseTo(32, 9);
    expect(degreesC(leafC({ ...night, site })).si).toBeCloseTo(celsius(45), 9);
  });
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
  for (const key of ["tomato", "potato", "lettuce", "beet", "garlic", "carrot"])
    for (const stage of ["not up", "young", "standing", "in flower", "bearing"] as const) {
      const ranks = Array.from({ length: 121 }, (_, i) => needRank(need(key, stage, 50 - i / 2)));
      expect(ranks, `${key} ${stage}`).toEqual([...ranks].sort((a, b) => a - b));
    }
});

import { describe, expect, test } from "vitest";
import { plus } from "../../src/base/days/day.ts";
import { celsius, fahrenheit } from "../../src/base/quantities/quantity.ts";
import { cropNamed } from "../../src/crops/crops.ts";
import type { Crop } from "../../src/crops/facts.ts";
import type { SowingContext } from "../../src/engine/growth/sowing-context.ts";
import { successionOf } from "../../src/engine/growth/successions.ts";
import {
  boundsOf,
  dailyWarmth,
  dayWarmth,
  packetWarmth,
  warmthBetween,
} from "../../src/engine/growth/warmth.ts";
import { growingOf } from "../engine/growth/growing.ts";
import { isoDay, planOf, QUARRY } from "../gardens.ts";
import { must, ours } from "./ours.ts";
import { yamlOf } from "./read.ts";
import { NEW_YORK, normalsIn } from "./stations.ts";
import { unlisted, watched } from "./watched.ts";

type Pair = readonly [number, number];
type File = {
  readonly gdd_formula: {
    readonly base_f: Readonly<Record<string, number>>;
    readonly sweet_corn_gdd_to_maturity: Readonly<Record<"early" | "midseason" | "late", number>>;
  };
  readonly base_temperatures_nc: { readonly base_f: Readonly<Record<string, number>> };
  readonly osu_croptime: { readonly thresholds_f: Readonly<Record<string, Pair>> };
  readonly peas_delaware: {
    readonly fastest_pea_gdd_base40: number;
  };
  readonly corn_86_50_example: {
    readonly days: readonly {
      readonly high: number;
      readonly low: number;
      readonly gdd: number;
    }[];
  };
  readonly sweet_corn_uconn: {
    readonly base_f: number;
    readonly plant_first_when_soil_f: number;
    readonly harvest_gap_days_between_plantings: Pair;
    readonly anderson_farm_gdd_between_plantings: number;
  };
  readonly sweet_corn_vermont: { readonly base_f: number; readonly soil_before_planting_f: number };
  readonly succession_intervals: {
    readonly florida: { readonly lettuce: { readonly every_days: number } };
    readonly general: { readonly every_days: Readonly<Record<string, Pair>> };
  };
  readonly boswell_1929: { readonly base_f: number };
};

/** What of the file is not compared, and why. */
const NOT_COMPARED = {
  "gdd_formula.formula": "Words; the corn example is reckoned by it.",
  "gdd_formula.caution": "Words.",
  "gdd_formula.sweet_corn_gdd_to_maturity.late": "A slip, as the caution there says.",
  "base_temperatures_nc.against_gdd_formula": "Words.",
  "peas_delaware.planted": "Without the lows and highs of those springs no day can be reckoned.",
  "peas_delaware.reached_2025": "As the day of planting.",
  "peas_delaware.reached_2020_2024": "As the day of planting.",
  "corn_86_50_example.rule": "Words; its two days are reckoned.",
  "sweet_corn_uconn.rule": "Words; our sowings are held against it.",
  "sweet_corn_uconn.worked": "Words; four days of 24 are 96, as the rule says.",
  sweet_corn_michigan:
    "Ways to choose from; ours is the third, and a plant's leaves are not reckoned.",
  "succession_intervals.florida.lettuce.from_month": "The months of one place.",
  "succession_intervals.florida.lettuce.to_month": "The months of one place.",
  "succession_intervals.florida.lettuce.place": "Words.",
};

const FILE = watched(yamlOf<File>("successions-and-heat-units.yaml"));

/** The file's name of a crop where it is not ours. */
const NAMES: Readonly<Record<string, string>> = {
  bean_snap: "bean",
  snap_bean: "bean",
  bean_bush: "bean",
  sweet_corn: "corn",
  corn_sweet: "corn",
  lettuce_leaf: "lettuce",
};

const ourCrop = (name: string): Crop | null => cropNamed(NAMES[name] ?? name);

/** A difference of temperatures in °C as one in °F. */
const differenceF = (kelvins: number) => (kelvins * 9) / 5;

const baseF = (crop: Crop) => fahrenheit(must(crop.warmth).baseC.value);

describe("base temperatures", () => {
  const { base_f } = FILE.tree.gdd_formula;
  const nc = FILE.tree.base_temperatures_nc.base_f;
  const grown = (row: Readonly<Record<string, number>>) =>
    Object.entries(row).flatMap(([name, base]) => {
      const crop = ourCrop(name);
      return crop?.warmth ? [{ name, base, crop }] : [];
    });

  test("are those read in Peet, for all that is grown here", () => {
    const compared = grown(base_f);
    expect(compared.map(({ name }) => name)).toEqual([
      "corn",
      "bean",
      "turnip",
      "cabbage",
      "pea",
      "pepper",
    ]);
    // 65 °F for pepper is 15 above what others give it; the crop facts say why it is not taken.
    for (const { crop, base } of compared.filter(({ name }) => name !== "pepper"))
      expect(baseF(crop)).toBeCloseTo(base, 9);
  });

  test("lie within 5 °F of those of North Carolina (from memory)", () => {
    const wrong = grown(nc).filter(({ crop, base }) => Math.abs(baseF(crop) - base) > 5 + 1e-9);
    // Their 60 °F is from memory; ours go with the other warm crops, whose 50 was read.
    expect(wrong.map(({ name }) => name)).toEqual(["eggplant", "okra"]);
    expect(grown(nc).length).toBeGreaterThanOrEqual(9);
  });

  test("lie, with their ceilings, within 10 °F of Oregon's (from memory)", () => {
    const rows = Object.entries(FILE.tree.osu_croptime.thresholds_f).flatMap(
      ([name, [base, top]]) => {
        const crop = ourCrop(name);
        return crop ? [{ name, base, top, crop }] : [];
      },
    );
    const wrong = rows.filter(({ crop, base, top }) => {
      const { baseC, ceilingC } = boundsOf(must(crop.warmth));
      return (
        Math.abs(fahrenheit(baseC) - base) > 10 + 1e-9 ||
        Math.abs(fahrenheit(must(ceilingC)) - top) > 10 + 1e-9
      );
    });
    expect(wrong.map(({ name }) => name)).toEqual([]);
    expect(rows.length).toBeGreaterThanOrEqual(4);
  });

  test("of peas are Boswell's 40 °F (from memory)", () => {
    expect(baseF(ours("pea"))).toBeCloseTo(FILE.tree.boswell_1929.base_f, 9);
  });
});

describe("the 86/50 rule for corn", () => {
  test.each([...FILE.tree.corn_86_50_example.days])(
    "gives $gdd for a day of $low to $high °F",
    ({ low, high, gdd }) => {
      const air = { lowC: celsius(low), highC: celsius(high) };
      const day = dayWarmth(air, boundsOf(must(ours("corn").warmth)));
      expect(differenceF(day)).toBeCloseTo(gdd, 9);
    },
  );
});

/** Warmth [°F-days] of the least and the most days of a crop's packet. */
function packetsF(key: string): Pair {
  const { warmth, harvest } = ours(key);
  const [least, most] = harvest.days.value;
  const inF = (days: number) => differenceF(packetWarmth(days, must(warmth)));
  return [inF(least), inF(most)];
}

describe("warmth to harvest", () => {
  test("of corn is Peet's for early and midseason, to a day's warmth of half", () => {
    const { early, midseason } = FILE.tree.gdd_formula.sweet_corn_gdd_to_maturity;
    const [least, most] = packetsF("corn");
    expect(Math.abs(least - early)).toBeLessThanOrEqual(10);
    expect(Math.abs(most - midseason)).toBeLessThanOrEqual(10);
  });

  test("of the fastest pea is Delaware's, to a day", () => {
    const { fastest_pea_gdd_base40 } = FILE.tree.peas_delaware;
    expect(Math.abs(packetsF("pea")[0] - fastest_pea_gdd_base40)).toBeLessThanOrEqual(20);
  });
});

describe("Connecticut's rule for corn sown again and again", () => {
  const { sweet_corn_uconn: rule } = FILE.tree;

  /** Corn in New York's air, the nearest to Connecticut's that is at hand, at the lane's frost dates. */
  function cornEvery(everyDays: number): SowingContext {
    const text = QUARRY.replace("beet: 2 rows", "corn: 4 rows");
    const plan = planOf(text);
    const site = { ...plan.site, normals: normalsIn(NEW_YORK) };
    return growingOf(text, "corn", {
      plan: { site },
      planting: { repeat: { everyDays, times: null } },
    });
  }

  const FIRST = isoDay("2027-05-10");

  const daily = (growing: SowingContext) =>
    dailyWarmth(growing.climate, boundsOf(must(growing.crop.warmth)), 0);

  test("counts from the base that ours counts from, as Vermont's does", () => {
    expect(baseF(ours("corn"))).toBeCloseTo(rule.base_f, 9);
    expect(baseF(ours("corn"))).toBeCloseTo(FILE.tree.sweet_corn_vermont.base_f, 9);
  });

  test("begins in soil within 5 °F of ours, as Vermont's does", () => {
    const soilF = fahrenheit(must(ours("corn").outdoors).soilMinC.value);
    expect(Math.abs(soilF - rule.plant_first_when_soil_f)).toBeLessThanOrEqual(5 + 1e-9);
    const { soil_before_planting_f } = FILE.tree.sweet_corn_vermont;
    expect(Math.abs(soilF - soil_before_planting_f)).toBeLessThanOrEqual(5 + 1e-9);
  });

  // Closer together a whole day of sowing is itself more than a tenth of what lies between.
  test.each([10, 12, 14])("is ours for harvests %d days apart, to 15 in 100", (gap) => {
    const corn = cornEvery(gap);
    const sowings = successionOf(corn, FIRST);
    const warmth = daily(corn);
    const ratios = sowings.slice(1).map(({ day }, i) => {
      const before = must(sowings[i]);
      const [from, to] = [must(before.ripe), must(sowings[i + 1]?.ripe)];
      const wanted = warmthBetween(warmth, from, plus(to, -1));
      return warmthBetween(warmth, before.day, plus(day, -1)) / wanted;
    });
    expect(ratios.length).toBeGreaterThanOrEqual(3);
    for (const ratio of ratios) expect(Math.abs(ratio - 1)).toBeLessThanOrEqual(0.15);
  });

  test("of a sowing for every fourth day brings a farm's 100 between two, to 15 in 100", () => {
    const [, gap] = rule.harvest_gap_days_between_plantings;
    const corn = cornEvery(gap);
    const sowings = successionOf(corn, FIRST).slice(0, 8);
    const [first, last] = [must(sowings[0]), must(sowings.at(-1))];
    const sum = warmthBetween(daily(corn), first.day, plus(last.day, -1));
    const between = differenceF(sum) / (sowings.length - 1);
    expect(Math.abs(between / rule.anderson_farm_gdd_between_plantings - 1)).toBeLessThan(0.15);
  });
});

describe("days between two sowings", () => {
  const { florida, general } = FILE.tree.succession_intervals;

  test("of lettuce are Florida's", () => {
    const { every_days } = florida.lettuce;
    expect(must(ours("lettuce").repeatEveryDays).value).toEqual([every_days, every_days]);
  });

  test("lie inside the usual lists' (from memory), for all that is sown again here", () => {
    const rows = Object.entries(general.every_days).flatMap(([name, [least, most]]) => {
      const ours = ourCrop(name)?.repeatEveryDays?.value;
      return ours ? [{ name, inside: ours[0] >= least && ours[1] <= most }] : [];
    });
    expect(rows.filter(({ inside }) => !inside)).toEqual([]);
    expect(rows.length).toBeGreaterThanOrEqual(7);
  });
});

test("every figure of the file is compared or listed with its reason", () => {
  expect(unlisted(FILE.unread(), NOT_COMPARED)).toEqual({ missing: [], idle: [] });
});

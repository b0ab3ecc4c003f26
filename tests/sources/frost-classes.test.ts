import { describe, expect, test } from "vitest";
import { CROPS, isTender } from "../../src/crops/crops.ts";
import type { FrostClass, NumberRange } from "../../src/crops/facts.ts";
import { hardinessOf } from "../../src/engine/growth/hardiness.ts";
import { plantingOutDay, settingOutDay } from "../../src/engine/growth/starting.ts";
import { growingOf } from "../engine/growth/growing.ts";
import { ALONE, normalsOf } from "../gardens.ts";
import { missesOf } from "./misses.ts";
import { degrees, must, ours, soilMinF } from "./ours.ts";
import { type Held, missed, spanOf, within, yamlOf } from "./read.ts";

type Weeks = readonly [number, number | null];
type Class = { readonly weeks?: Weeks; readonly crops?: readonly string[] };
type System = { readonly classes: Readonly<Record<string, Class>> };
type Classes = {
  readonly class_systems: {
    readonly purdue_illinois: System;
    readonly colorado: System;
    readonly colorado_rest: { readonly very_tender: Class };
  };
  readonly damaging_temperatures: { readonly f: Readonly<Record<string, string>> };
  readonly transplants: {
    readonly knott_weeks: { readonly weeks: Readonly<Record<string, NumberRange>> };
    readonly virginia_rule: {
      readonly weeks: { readonly most_crops: number; readonly cucurbits: number };
      readonly too_early_weeks: NumberRange;
    };
  };
  readonly soil_minimum_for_setting_warm_crops: {
    readonly kansas: { readonly f: { readonly tomato: number } };
    readonly other: {
      readonly soil_f: { readonly tomato: number; readonly cucumber: number };
      readonly night_air_f: { readonly tomato: number };
    };
  };
};

const FILE = yamlOf<Classes>("frost-classes.yaml");
const { purdue_illinois, colorado, colorado_rest } = FILE.class_systems;
/** Our crops by the names of the lists; garlic stands in none. */
const NAMES: Readonly<Record<string, readonly string[]>> = {
  beet: ["beet"],
  spinach: ["spinach"],
  cabbage: ["cabbage"],
  radish: ["radish"],
  turnip: ["turnip"],
  carrot: ["carrot"],
  parsley: ["parsley"],
  parsnip: ["parsnip"],
  lettuce: ["lettuce", "lettuce_leaf"],
  cucumber: ["cucumber"],
  corn: ["corn", "sweet_corn"],
  potato: ["potato"],
  tomato: ["tomato"],
  bean: ["bean", "snap_bean"],
  pea: ["pea"],
  asparagus: ["asparagus"],
  broccoli: ["broccoli"],
  "brussels-sprouts": ["brussels_sprouts"],
  cauliflower: ["cauliflower"],
  celeriac: ["celeriac"],
  celery: ["celery"],
  chard: ["chard", "swiss_chard"],
  "chinese-cabbage": ["chinese_cabbage"],
  collards: ["collards"],
  eggplant: ["eggplant"],
  endive: ["endive"],
  "jerusalem-artichoke": ["jerusalem_artichoke"],
  kale: ["kale"],
  kohlrabi: ["kohlrabi"],
  melon: ["muskmelon", "cantaloupe"],
  mustard: ["mustard"],
  okra: ["okra"],
  onion: ["onion_plants", "onion"],
  pepper: ["pepper"],
  pumpkin: ["pumpkin"],
  rhubarb: ["rhubarb"],
  rutabaga: ["rutabaga"],
  "summer-squash": ["squash_summer", "squash"],
  "sweet-potato": ["sweet_potato"],
  watermelon: ["watermelon"],
  "winter-squash": ["squash_winter", "squash"],
};

const STEPS: Readonly<Record<string, number>> = {
  very_hardy: 0,
  hardy: 0,
  frost_tolerant: 1,
  semi_hardy: 1,
  tender: 2,
  warm_loving: 3,
  very_tender: 3,
};
const stepOf = (frost: FrostClass) => STEPS[frost.replace(" ", "_")] ?? Number.NaN;

/** The class of a crop in a system, by its name there; none where the system does not name it. */
function classIn(classes: Readonly<Record<string, Class>>, crop: string) {
  return Object.entries(classes).find(([, { crops }]) =>
    crops?.some((each) => NAMES[crop]?.includes(each)),
  );
}

/** The crops of ours that a system names, with their class there. */
const classed = (classes: Readonly<Record<string, Class>>) =>
  Object.keys(NAMES).flatMap((crop) => {
    const found = classIn(classes, crop);
    return found ? [{ crop, name: found[0], weeks: found[1].weeks }] : [];
  });

const SYSTEMS = [
  ["Purdue", purdue_illinois.classes],
  ["Colorado", { ...colorado.classes, very_tender: colorado_rest.very_tender }],
] as const;

/** The canonical garden with all other crops beside its own, each as it usually begins. */
const WHOLE = [
  ALONE,
  "crops:",
  ...Object.keys(NAMES)
    .filter((key) => !ALONE.includes(`- ${key}`))
    .map((key) => `  - ${key}`),
].join("\n");

/** Weeks from the average last frost, the lists' own zero point, at which a crop goes into warm soil in our canonical garden: sown, or of what frost kills and may be raised set out, from the one to the other. */
function weeks(key: string): NumberRange {
  const { site } = growingOf(WHOLE, key).plan;
  const warm = normalsOf(Array<number>(12).fill(18), Array<number>(12).fill(24));
  const growing = growingOf(WHOLE, key, {
    plan: { site: { ...site, normals: warm }, risk: { raised: 0.5, seed: 0.5 } },
  });
  const { outdoors, starts } = growing.crop;
  const sown = ["seed outdoors", "tubers", "crowns", "cloves", "sets"].includes(starts[0] ?? "");
  const seed =
    outdoors && (sown || !growing.crop.settingOut) ? plantingOutDay(growing, outdoors) : null;
  const plants = !seed || isTender(growing.crop) ? settingOutDay(growing) : null;
  const days = [seed, plants].flatMap((each) => each?.day ?? []);
  const after = days.map((day) => (day - must(site.lastFrost).usual) / 7);
  return [Math.min(...after), Math.max(...after)];
}

const HELD: readonly Held[] = SYSTEMS.flatMap(([system, classes]) =>
  classed(classes).map(({ crop, weeks: theirs }) => {
    const [from, to] = theirs ?? [Number.NaN, null];
    return within(`${crop} weeks, ${system}`, [weeks(crop), [from, to ?? 52]], 1);
  }),
);

describe("the classes of frost", () => {
  test.each(SYSTEMS)("of %s are at most one step from ours", (_, classes) => {
    for (const { crop, name } of classed(classes)) {
      const apart = (STEPS[name] ?? 9) - stepOf(ours(crop).frost.value);
      expect(Math.abs(apart), crop).toBeLessThanOrEqual(1);
    }
  });

  test("name some forty of our crops between them, and no name here stands in none", () => {
    const named = new Set(
      SYSTEMS.flatMap(([, classes]) => classed(classes)).map(({ crop }) => crop),
    );
    expect([...named].sort()).toEqual(Object.keys(NAMES).sort());
    expect(named.size).toBeGreaterThan(38);
    for (const key of named) expect(CROPS.map((crop) => crop.key)).toContain(key);
  });

  test("have our weeks from the last frost or a week outside, but for the misses told", () => {
    expect(missed(HELD).toSorted()).toEqual(
      missesOf("frost-classes.yaml")
        .filter((name) => name.includes("weeks"))
        .toSorted(),
    );
  });
});

test("no more than one row in ten of the file misses", () => {
  const damaged = Object.keys(NAMES).filter((key) => damagedAt(key) !== undefined);
  const misses = missesOf("frost-classes.yaml");
  expect(misses.filter((name) => name.includes("weeks")).length).toBeLessThanOrEqual(
    HELD.length / 10,
  );
  expect(misses.filter((name) => !name.includes("weeks")).length).toBeLessThanOrEqual(
    damaged.length / 10,
  );
});

/** The frost that damages a crop of ours [°F], `28-32` or `<20`; none where the list has no such crop. */
const damagedAt = (key: string) =>
  NAMES[key]?.flatMap((name) => FILE.damaging_temperatures.f[name] ?? [])[0];

describe("the frosts that damage hardened plants", () => {
  const HURT: readonly Held[] = Object.keys(NAMES).flatMap((key) => {
    const at = damagedAt(key);
    const lightFrost = at === "28-32";
    return at === undefined
      ? []
      : [{ name: `${key} damaged, Texas`, holds: lightFrost === isTender(ours(key)) }];
  });

  test("name the blossom alone of pea", () => {
    expect(damagedAt("pea")).toBeUndefined();
    expect(FILE.damaging_temperatures.f.pea_blossom).toBe("28-32");
  });

  test("are light ones for those that we call tender and for no other, but for the misses told", () => {
    expect(missed(HURT)).toEqual(
      missesOf("frost-classes.yaml").filter((name) => name.includes("damaged")),
    );
  });
});

describe("the frosts that a frost night reckons with", () => {
  /** Ours [°F] for what is grown, or where the list names the blossom, in flower. */
  const killsF = (key: string) => {
    const stage = key === "pea" ? "in flower" : ROOTS.includes(key) ? "bearing" : "standing";
    const { killsC, spared } = hardinessOf(ours(key), stage);
    return spared === "under the soil" ? NO_NIGHT_F : degrees(must(killsC));
  };
  /** A carrot that is ready lies in the soil: no night hurts it, which is below 20 °F as the list has it. */
  const NO_NIGHT_F: NumberRange = [0, 0];
  const ROOTS = ["beet", "carrot", "radish", "turnip", "rutabaga"];
  const theirs = (at: string): NumberRange =>
    at === "<20" ? [0, 20] : (spanOf(at) as NumberRange);
  const named = Object.keys(NAMES).flatMap((key) => {
    const at = key === "pea" ? FILE.damaging_temperatures.f.pea_blossom : damagedAt(key);
    return at === undefined ? [] : [{ key, at }];
  });

  test("are within 2 °F of those that damage hardened plants, but for the misses told", () => {
    const held = named.map(({ key, at }) =>
      within(`${key} hurt below, Texas`, [killsF(key), theirs(at)], 2),
    );
    expect(held.length).toBeGreaterThan(25);
    expect(missed(held).toSorted()).toEqual(
      missesOf("frost-classes.yaml")
        .filter((name) => name.includes("hurt below"))
        .toSorted(),
    );
  });

  test("rise with Purdue's class, from hard frosts over light ones to none at all", () => {
    const of = (key: string) => must(hardinessOf(ours(key), "standing").killsC);
    const rising = ["kale", "cabbage", "tomato", "cucumber"].map(of);
    expect(rising).toEqual([...rising].sort((a, b) => a - b));
    expect(new Set(rising).size).toBe(4);
  });
});

describe("the weeks from seed to setting out", () => {
  test.each(["lettuce", "tomato", "cabbage", "parsley"])("of %s are Knott's", (crop) => {
    expect(must(ours(crop).indoors).weeksToSettingOut.value).toEqual(
      FILE.transplants.knott_weeks.weeks[crop],
    );
  });

  test("of cucumber are Knott's three to four, or a week outside, and hold Virginia's three", () => {
    const { weeksToSettingOut } = must(ours("cucumber").indoors);
    const { cucumber } = FILE.transplants.knott_weeks.weeks;
    const { cucurbits } = FILE.transplants.virginia_rule.weeks;
    expect(within("", [weeksToSettingOut.value, must(cucumber)], 1).holds).toBe(true);
    expect(within("", [weeksToSettingOut.value, [cucurbits, cucurbits]], 0).holds).toBe(true);
  });

  test.each(["lettuce", "tomato", "cabbage"])(
    "of %s are Virginia's six, or a week outside",
    (crop) => {
      const { most_crops } = FILE.transplants.virginia_rule.weeks;
      const held = within(
        crop,
        [must(ours(crop).indoors).weeksToSettingOut.value, [most_crops, most_crops]],
        1,
      );
      expect(held.holds).toBe(true);
    },
  );

  test("are never what Virginia calls too early", () => {
    for (const { key, indoors } of CROPS)
      if (indoors)
        expect(indoors.weeksToSettingOut.value[1], key).toBeLessThanOrEqual(
          FILE.transplants.virginia_rule.too_early_weeks[0],
        );
  });
});

describe("the soil and nights for tomatoes", () => {
  const { kansas, other } = FILE.soil_minimum_for_setting_warm_crops;

  test("are within 5 °F of the published soil", () => {
    for (const theirs of [kansas.f.tomato, other.soil_f.tomato])
      expect(within("soil", [soilMinF("tomato"), [theirs, theirs]], 5).holds).toBe(true);
  });

  test("are within 5 °F of the published soil for cucumbers too", () => {
    const { settingOut } = ours("cucumber");
    const theirs = other.soil_f.cucumber;
    const mine = degrees(must(settingOut?.soilMinC).value);
    expect(within("soil", [mine, [theirs, theirs]], 5).holds).toBe(true);
  });

  test("are the published nights", () => {
    expect(degrees(must(ours("tomato").indoors).nightFloorC.value)[0]).toBeCloseTo(
      other.night_air_f.tomato,
      6,
    );
  });
});

test("every block of the file is compared", () => {
  expect(Object.keys(FILE)).toEqual([
    "class_systems",
    "damaging_temperatures",
    "transplants",
    "soil_minimum_for_setting_warm_crops",
  ]);
  expect(Object.keys(FILE.class_systems)).toHaveLength(3);
});

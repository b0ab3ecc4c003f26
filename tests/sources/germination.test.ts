import { describe, expect, test } from "vitest";
import { celsius, fahrenheit } from "../../src/base/quantities/quantity.ts";
import { CROPS, isTender } from "../../src/crops/crops.ts";
import { COLUMNS_F, EMERGENCE_DAYS } from "../../src/crops/emergence.ts";
import { emergenceShare, SEEDLINGS_PERCENT } from "../../src/crops/seedlings.ts";
import { SEED_DEPTH_M } from "../../src/engine/climate/soil.ts";
import { dailyShare } from "../../src/engine/growth/emergence.ts";
import { missesOf } from "./misses.ts";
import { degrees, inch, must, ours, soilMinF } from "./ours.ts";
import {
  COLORADO_ROWS,
  colorado,
  KNOTT_ROWS,
  knott,
  RANGES,
  READ,
  type Span,
  TEXAS_LINES,
} from "./ranges.ts";
import { csvOf, type Held, missed, spanOf, within, withinTwofold } from "./read.ts";

const TOLERANCE_F = 5;

const MISSES = missesOf("germination-ranges.yaml");

/** Comparisons whose misses have been told, and were asked for. */
const ASKED = new Set<string>();

/** The misses told that are among some comparisons, in their order. */
function toldOf(held: readonly Held[]): readonly string[] {
  for (const { name } of held) ASKED.add(name);
  return held.map(({ name }) => name).filter((name) => MISSES.includes(name));
}

/** Names that the blocks give our crops, and ours. */
const OURS: Readonly<Record<string, string>> = {
  bean: "bean",
  bean_snap: "bean",
  beet: "beet",
  cabbage: "cabbage",
  carrot: "carrot",
  corn: "corn",
  corn_sweet: "corn",
  cucumber: "cucumber",
  lettuce: "lettuce",
  lettuce_leaf: "lettuce",
  parsley: "parsley",
  parsnip: "parsnip",
  pea: "pea",
  radish: "radish",
  spinach: "spinach",
  tomato: "tomato",
  turnip: "turnip",
  asparagus: "asparagus",
  broccoli: "broccoli",
  cauliflower: "cauliflower",
  celery: "celery",
  chard: "chard",
  chard_swiss: "chard",
  eggplant: "eggplant",
  kohlrabi: "kohlrabi",
  cantaloupe: "melon",
  muskmelon: "melon",
  leek: "leek",
  okra: "okra",
  onion: "onion",
  onion_dry_seed: "onion",
  onion_green: "scallion",
  pepper: "pepper",
  pumpkin: "pumpkin",
  squash: "summer-squash",
  squash_summer: "summer-squash",
  watermelon: "watermelon",
};

/** Names that other blocks give what Knott calls otherwise. */
const AS_KNOTT: Readonly<Record<string, string>> = {
  bean: "bean_snap",
  broccoli: "cauliflower",
  cantaloupe: "muskmelon",
  chard: "chard_swiss",
  corn: "corn_sweet",
  kohlrabi: "cabbage",
  leek: "onion",
  lettuce_leaf: "lettuce",
  onion_dry_seed: "onion",
  onion_green: "onion",
  squash_summer: "squash",
};
const asKnott = (name: string) => AS_KNOTT[name] ?? name;

const mine = (rows: readonly string[]) =>
  rows.flatMap((row) => (OURS[row] ? [{ row, key: OURS[row] }] : []));
const others = (rows: readonly string[]) => rows.filter((row) => !OURS[row]);

const KANSAS = RANGES.kansas_state.figures;
const kansas = (name: string): Span => {
  READ.add(`kansas.${name}`);
  return spanOf(must(KANSAS[name]));
};
const NEBRASKA = RANGES.nebraska.figures;
const nebraska = (name: string): Span => {
  READ.add(`nebraska.${name}`);
  return spanOf(must(NEBRASKA[name]));
};

const minimum = (key: string, whose: string, theirs: Span): Held =>
  within(`${key} ${whose}`, [soilMinF(key), theirs], TOLERANCE_F);

const KANSAS_OF: readonly (readonly [string, string, readonly string[]])[] = [
  ["pea_good_at", "good at", ["pea"]],
  ["lettuce_parsnip_spinach_can_sprout_at", "can sprout at", ["lettuce", "parsnip", "spinach"]],
  ["lettuce_parsnip_spinach_best_from", "best from", ["lettuce", "parsnip", "spinach"]],
  ["radish", "from", ["radish"]],
  ["tomato_sweetcorn_bean_from", "from", ["tomato", "corn", "bean"]],
  ["pepper_cucumber_melon_sweetpotato_about", "about", ["cucumber"]],
];

/** All that are sown or planted by the soil of spring: not garlic, which goes in before winter. */
const SPRING = CROPS.filter(
  ({ overwinter, outdoors, settingOut }) =>
    overwinter === null && (outdoors?.soilMinC ?? settingOut?.soilMinC),
);

/** From the soil in which it can sprout at all to the one it likes best; when it pays to sow lies between, as Texas says. */
const between = (least: Span, best: Span | null): Span => [
  least[0],
  Math.max(...least, best?.[0] ?? 0),
];

/** Texas' minimum of a crop, up to what the same page calls realistic, or likes best where it calls nothing so. */
function texas(crop: string, atF: number): Span {
  const best = ["realistic", "optimum"].flatMap((kind) =>
    TEXAS_LINES.filter((line) => line.crop === crop && line.kind === kind).map((line) => line.atF),
  );
  return [atF, Math.max(atF, best[0] ?? atF)];
}

const MINIMA: readonly Held[] = [
  ...mine(KNOTT_ROWS).map(({ row, key }) =>
    minimum(key, "minimum, Knott", between(knott(row, "minimum"), knott(row, "optimum_low"))),
  ),
  ...mine(COLORADO_ROWS).map(({ row, key }) =>
    minimum(
      key,
      "minimum, Colorado",
      between(must(colorado(row, "min_f")), colorado(row, "opt_f")),
    ),
  ),
  ...TEXAS_LINES.flatMap(({ crop, kind, atF }) =>
    OURS[crop] && kind === "realistic"
      ? [minimum(OURS[crop], "realistic, Texas", [atF, atF])]
      : OURS[crop] && kind === "minimum"
        ? [minimum(OURS[crop], "minimum, Texas", texas(crop, atF))]
        : [],
  ),
  ...KANSAS_OF.flatMap(([name, said, keys]) =>
    keys.map((key) => {
      const best =
        said === "can sprout at" ? kansas(name.replace("can_sprout_at", "best_from")) : null;
      return minimum(key, `${said}, Kansas`, between(kansas(name), best));
    }),
  ),
  ...SPRING.map((crop) =>
    isTender(crop)
      ? minimum(crop.key, "warm season, Nebraska", nebraska("warm_season_minimum_soil_f"))
      : minimum(crop.key, "cool season, Nebraska", nebraska("cool_season_minimum_soil_f")),
  ),
];

/** Our warmest soil [°F] of those that have one. */
const maxF = (key: string): Span | null => {
  const most = ours(key).outdoors?.soilMaxC ?? null;
  return most && degrees(most.value);
};
const maximum = (key: string, whose: string, theirs: Span): readonly Held[] => {
  const most = maxF(key);
  return most ? [within(`${key} maximum, ${whose}`, [most, theirs], TOLERANCE_F)] : [];
};

const MAXIMA: readonly Held[] = [
  ...mine(KNOTT_ROWS).flatMap(({ row, key }) => maximum(key, "Knott", knott(row, "maximum"))),
  ...mine(COLORADO_ROWS).flatMap(({ row, key }) =>
    maximum(key, "Colorado", must(colorado(row, "max_f"))),
  ),
];

/** Another block's minimum, optimum or realistic soil against Knott's row of the crop, or of its kin. */
const amid = (name: string, row: string, theirs: Span): Held =>
  within(
    name,
    [theirs, [knott(row, "optimum_low")[0], knott(row, "optimum_high")[1]]],
    TOLERANCE_F,
  );

const TEXAS_AGAINST_KNOTT: readonly Held[] = TEXAS_LINES.map(({ crop, kind, atF }) => {
  const row = asKnott(crop);
  const name = `${crop} ${kind}, Texas against Knott`;
  if (kind === "optimum") return amid(name, row, [atF, atF]);
  const [least] = knott(row, "minimum");
  const theirs: Span = kind === "minimum" ? [least, least] : [least, knott(row, "optimum")[1]];
  return within(name, [[atF, atF], theirs], TOLERANCE_F);
});

const COLORADO_AGAINST_KNOTT: readonly Held[] = COLORADO_ROWS.filter(
  (row) => row !== "lettuce_leaf" && row !== "onion_dry_sets",
).flatMap((row) => {
  const like = asKnott(row);
  const least = colorado(row, "min_f");
  if (least === null) return [];
  return [
    within(`${row} minimum, Colorado against Knott`, [least, knott(like, "minimum")], TOLERANCE_F),
    amid(`${row} optimum, Colorado against Knott`, like, must(colorado(row, "opt_f"))),
  ];
});

const KANSAS_AGAINST_KNOTT: readonly Held[] = ["pepper", "muskmelon"].map((row) =>
  within(
    `${row}, Kansas against Knott`,
    [kansas("pepper_cucumber_melon_sweetpotato_about"), knott(row, "minimum")],
    TOLERANCE_F,
  ),
);

/** Sets are not sown, so Missouri's row of sets is what Colorado's is held against. */
const SETS: readonly Held[] = csvOf("spacing-depth-maturity.csv")
  .filter(({ crop }) => crop === "onion_dry")
  .flatMap(({ depth_in = "", in_row_in = "" }) => [
    within("sets' depth", [must(colorado("onion_dry_sets", "depth_in")), spanOf(depth_in)], 0.25),
    withinTwofold("sets' spacing", [
      must(colorado("onion_dry_sets", "spacing_in")),
      spanOf(in_row_in),
    ]),
  ]);

describe("the published soil for germination", () => {
  test("is within 5 °F of the soil we sow and plant in, but for the misses told", () => {
    const held = [...MINIMA, ...MAXIMA];
    expect(missed(held)).toEqual(toldOf(held));
  });

  test("is read for every crop of ours that is sown, at its coldest and its warmest", () => {
    const read = new Set(mine(KNOTT_ROWS).map(({ key }) => key));
    expect(read.size).toBe(KNOTT_ROWS.length - 1);
    expect(others(KNOTT_ROWS)).toEqual(["bean_lima"]);
    expect(CROPS.filter(({ key }) => maxF(key)).length).toBeGreaterThanOrEqual(6);
  });

  test("holds our warmth indoors between its optimum's ends", () => {
    for (const { row, key } of mine(KNOTT_ROWS)) {
      const { indoors } = ours(key);
      if (!indoors) continue;
      const warmth = fahrenheit(indoors.soilTempC.value);
      expect(warmth, key).toBeGreaterThanOrEqual(knott(row, "optimum_low")[0]);
      expect(warmth, key).toBeLessThanOrEqual(knott(row, "optimum_high")[1]);
    }
  });

  test("is measured by Kansas about as deep as ours is reckoned", () => {
    const depthIn = RANGES.kansas_state.how_to_measure.depth_in;
    expect(Math.abs(depthIn - SEED_DEPTH_M / 0.0254)).toBeLessThanOrEqual(1);
  });
});

describe("the blocks that stand beside each other", () => {
  test("agree within 5 °F of Knott's minimum, and of its optimum's ends", () => {
    const held = [...TEXAS_AGAINST_KNOTT, ...COLORADO_AGAINST_KNOTT, ...KANSAS_AGAINST_KNOTT];
    expect(held.length).toBeGreaterThan(50);
    expect(missed(held)).toEqual(toldOf(held));
  });

  test("agree on how deep and how far apart sets of onions go", () => {
    expect(SETS).toHaveLength(2);
    expect(missed(SETS)).toEqual([]);
  });
});

/** A tested cell of one of the two tables [°F], and whether little comes up there: poor, none, or four weeks and more. */
type Cell = { readonly what: string; readonly atF: number; readonly little: boolean };

const FOUR_WEEKS = 28;
const POOR_PERCENT = 50;

/** Both tables' tested cells of a row by Knott's name. */
function cellsOf(row: string): readonly Cell[] {
  const cells: Cell[] = [];
  COLUMNS_F.forEach((atF, i) => {
    const percent = SEEDLINGS_PERCENT[row]?.[i] ?? null;
    const days = EMERGENCE_DAYS[row]?.[i] ?? "untested";
    if (percent !== null) cells.push({ what: "seedlings", atF, little: percent < POOR_PERCENT });
    if (days !== "untested")
      cells.push({ what: "days", atF, little: days === "none" || days > FOUR_WEEKS });
  });
  return cells;
}

const TABLED = KNOTT_ROWS.filter((row) => cellsOf(row).length > 0);
/** Cells of every row that lie on the far side of one of Knott's bounds, where little is to come up. */
const beyond = (bound: string, isBeyond: (atF: number, boundF: number) => boolean) =>
  TABLED.flatMap((row) =>
    cellsOf(row)
      .filter(({ atF }) => isBeyond(atF, knott(row, bound)[0]))
      .map(
        ({ what, atF, little }): Held => ({
          name: `${row} ${what} at ${atF} °F, Knott`,
          holds: little,
        }),
      ),
  );
const BELOW = beyond("minimum", (atF, boundF) => atF <= boundF - TOLERANCE_F);
const ABOVE = beyond("maximum", (atF, boundF) => atF >= boundF + TOLERANCE_F);

const THREE_WEEKS = 21;

/** Whether at Knott's optimum a half comes up and within three weeks, of what is tested there. */
function doesWell(row: string): boolean {
  const optimumC = celsius(knott(row, "optimum")[0]);
  const share = row in SEEDLINGS_PERCENT ? emergenceShare(row, optimumC) : null;
  const rate = row in EMERGENCE_DAYS ? dailyShare(row, optimumC) : null;
  const enough = share === null || share >= POOR_PERCENT / 100 - 1e-9;
  return enough && (rate === null || rate >= 1 / THREE_WEEKS);
}

describe("Knott's ranges and the two tables of the same experiments", () => {
  test("share all rows but chard's, pumpkin's and squash's", () => {
    const none = KNOTT_ROWS.filter((row) => !TABLED.includes(row));
    expect(none).toEqual(["chard_swiss", "pumpkin", "squash"]);
  });

  test("have nothing or little come up 5 °F and more below the minimum", () => {
    expect(BELOW.length).toBeGreaterThan(40);
    expect(missed(BELOW)).toEqual([]);
  });

  test("have little come up 5 °F and more above the maximum, but for the misses told", () => {
    expect(ABOVE.length).toBeGreaterThan(15);
    expect(missed(ABOVE)).toEqual(toldOf(ABOVE));
  });

  test("have most come up at the optimum, and soon, but for the misses told", () => {
    const held = TABLED.map((row) => ({ name: `${row} optimum, Knott`, holds: doesWell(row) }));
    expect(missed(held)).toEqual(toldOf(held));
  });
});

describe("Colorado's table", () => {
  const ROWS = mine(COLORADO_ROWS);
  const depth = (key: string) => inch(must(ours(key).outdoors ?? ours(key).indoors).depthCm.value);
  const apart = (key: string): Span => {
    const { thinnings, settingOut, outdoors } = ours(key);
    const out = settingOut?.apartCm.value;
    const last = thinnings.at(-1)?.apartCm.value ?? (out ? ([out, out] as const) : null);
    return inch(last ?? must(outdoors).apartCm.value);
  };
  /** What is held against a column's cells, where they are not empty. */
  const against = (column: string, hold: (key: string, theirs: Span) => Held) =>
    ROWS.flatMap(({ row, key }) => {
      const theirs = colorado(row, column);
      return theirs ? [hold(key, theirs)] : [];
    });

  test("is within a quarter inch of our depths", () => {
    const held = against("depth_in", (key, theirs) =>
      within(`${key} depth, Colorado`, [depth(key), theirs], 0.25),
    );
    expect(held.length).toBeGreaterThan(12);
    expect(missed(held)).toEqual(toldOf(held));
  });

  test("is within a factor of two of our spacing, but for the misses told", () => {
    const held = against("spacing_in", (key, theirs) =>
      withinTwofold(`${key} spacing, Colorado`, [apart(key), theirs]),
    );
    expect(held.length).toBeGreaterThan(12);
    expect(missed(held)).toEqual(toldOf(held));
  });

  test("is within ten days of our days to harvest, but for the misses told", () => {
    const held = against("days_to_harvest", (key, theirs) =>
      within(`${key} days, Colorado`, [ours(key).harvest.days.value, theirs], 10),
    );
    expect(held.length).toBeGreaterThan(11);
    expect(missed(held)).toEqual(toldOf(held));
  });

  test("has our days from sowing to up, from the coldest soil we sow into to 77 °F", () => {
    const days = (key: string): Span => {
      const { comesUp, outdoors } = ours(key);
      const coldest = fahrenheit(must(outdoors ?? ours(key).settingOut).soilMinC?.value ?? 0);
      const at = (soilF: number) =>
        comesUp.kind === "table" ? 1 / dailyShare(comesUp.row, celsius(soilF)) : 0;
      return [at(77), at(Math.max(50, coldest))];
    };
    const held = against("days_to_germinate", (key, theirs) =>
      within(`${key} days to germinate, Colorado`, [days(key), theirs], 0),
    );
    expect(held.length).toBeGreaterThan(11);
    expect(missed(held)).toEqual(toldOf(held));
  });

  test("has our weeks of raising plants, or a week outside", () => {
    const held = against("transplant_age_weeks", (key, theirs) =>
      within(
        `${key} transplant age, Colorado`,
        [must(ours(key).indoors).weeksToSettingOut.value, theirs],
        1,
      ),
    );
    expect(held.length).toBeGreaterThanOrEqual(7);
    expect(missed(held)).toEqual(toldOf(held));
  });
});

test("no more than one row in ten misses", () => {
  const rows = KNOTT_ROWS.length + COLORADO_ROWS.length + TEXAS_LINES.length;
  expect(MISSES.length).toBeLessThanOrEqual(
    (rows + Object.keys(KANSAS).length + SPRING.length) / 10,
  );
});

test("every miss told is of a comparison that is made", () => {
  expect(MISSES.filter((name) => !ASKED.has(name))).toEqual([]);
});

test("every row of every block is used, and none is left", () => {
  expect(Object.keys(RANGES).sort()).toEqual([
    "csu_gardennotes_720_table2",
    "csu_gardennotes_720_table2_rest",
    "kansas_state",
    "knott_harrington",
    "nebraska",
    "texas_realistic",
  ]);
  const all = [
    ...KNOTT_ROWS.map((row) => `knott.${row}`),
    ...COLORADO_ROWS.map((row) => `colorado.${row}`),
    ...Object.keys(KANSAS).map((name) => `kansas.${name}`),
    ...Object.keys(NEBRASKA).map((name) => `nebraska.${name}`),
  ];
  expect(all).toHaveLength(27 + 22 + 6 + 2);
  expect(all.filter((row) => !READ.has(row))).toEqual([]);
  expect(TEXAS_LINES).toHaveLength(8 + 3 + 4 + 9 + 3 + 4 + 4 + 3);
});

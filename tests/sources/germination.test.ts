import { describe, expect, test } from "vitest";
import { fahrenheit } from "../../src/quantities/quantity.ts";
import { missesOf } from "./misses.ts";
import { degrees, inch, must, ours, soilMinF } from "./ours.ts";
import { type Held, missed, spanOf, within, withinTwofold, yamlOf } from "./read.ts";

type Table = { readonly columns: readonly string[]; readonly rows: Readonly<Record<string, Row>> };
type Row = readonly (string | number | null)[];
type Ranges = {
  readonly knott_harrington: Table;
  readonly texas_realistic: {
    readonly realistic: Readonly<Record<string, number>>;
    readonly realistic_45_also: readonly string[];
  };
  readonly kansas_state: { readonly figures: Readonly<Record<string, number>> };
  readonly nebraska: { readonly figures: Readonly<Record<string, readonly number[]>> };
  readonly csu_gardennotes_720_table2: Table;
  readonly csu_gardennotes_720_table2_rest: Table;
};

const FILE = yamlOf<Ranges>("germination-ranges.yaml");
const KANSAS = FILE.kansas_state.figures;
const TOLERANCE_F = 5;

const span = (figure: string | number | null | undefined) => spanOf(figure ?? "");

/** A cell of one crop's row by its column's name. */
function cell({ columns, rows }: Table, row: string, column: string) {
  return span(rows[row]?.[columns.indexOf(column)]);
}

const COLORADO: readonly (readonly [string, Table, string])[] = [
  ["beet", FILE.csu_gardennotes_720_table2, "beet"],
  ["carrot", FILE.csu_gardennotes_720_table2, "carrot"],
  ["lettuce", FILE.csu_gardennotes_720_table2, "lettuce_leaf"],
  ["tomato", FILE.csu_gardennotes_720_table2_rest, "tomato"],
];
const KNOTT = ["beet", "carrot", "lettuce", "tomato"];

const minimum = (crop: string, whose: string, theirs: readonly [number, number]): Held =>
  within(`${crop} ${whose}`, [soilMinF(crop), theirs], TOLERANCE_F);

const MINIMA: readonly Held[] = [
  ...KNOTT.map((crop) =>
    minimum(crop, "minimum, Knott", cell(FILE.knott_harrington, crop, "minimum")),
  ),
  ...COLORADO.map(([crop, table, row]) =>
    minimum(crop, "minimum, Colorado", cell(table, row, "min_f")),
  ),
  minimum("tomato", "realistic, Texas", span(FILE.texas_realistic.realistic.tomato)),
  minimum("lettuce", "realistic, Texas", [45, 45]),
  minimum("lettuce", "can sprout at, Kansas", span(KANSAS.lettuce_parsnip_spinach_can_sprout_at)),
  minimum("lettuce", "best from, Kansas", span(KANSAS.lettuce_parsnip_spinach_best_from)),
  minimum("tomato", "from, Kansas", span(KANSAS.tomato_sweetcorn_bean_from)),
  ...["beet", "carrot", "lettuce", "potato"].map((crop) =>
    minimum(
      crop,
      "cool season, Nebraska",
      spanOf(FILE.nebraska.figures.cool_season_minimum_soil_f ?? []),
    ),
  ),
  minimum(
    "tomato",
    "warm season, Nebraska",
    spanOf(FILE.nebraska.figures.warm_season_minimum_soil_f ?? []),
  ),
];

const { soilMaxC } = must(ours("lettuce").outdoors);
const lettuceMaxF = degrees(must(soilMaxC).value);

const MAXIMA: readonly Held[] = [
  within(
    "lettuce maximum, Knott",
    [lettuceMaxF, cell(FILE.knott_harrington, "lettuce", "maximum")],
    TOLERANCE_F,
  ),
  within(
    "lettuce maximum, Colorado",
    [lettuceMaxF, cell(FILE.csu_gardennotes_720_table2, "lettuce_leaf", "max_f")],
    TOLERANCE_F,
  ),
];

describe("the published soil for germination", () => {
  test("is within 5 °F of the soil we sow and plant in, but for the misses told", () => {
    expect([...missed([...MINIMA, ...MAXIMA])].sort()).toEqual(
      [...missesOf("germination-ranges.yaml")].sort(),
    );
  });

  test("is read for Texas' 45 °F of lettuce", () => {
    expect(FILE.texas_realistic.realistic_45_also).toContain("lettuce");
  });

  test("holds our warmth indoors between its optimum's ends", () => {
    for (const crop of ["tomato", "lettuce"]) {
      const warmth = fahrenheit(must(ours(crop).indoors).soilTempC.value);
      const [least] = cell(FILE.knott_harrington, crop, "optimum_low");
      const [most] = cell(FILE.knott_harrington, crop, "optimum_high");
      expect(warmth).toBeGreaterThanOrEqual(least);
      expect(warmth).toBeLessThanOrEqual(most);
    }
  });
});

describe("Colorado's table", () => {
  const depth = (crop: string) =>
    inch(must(ours(crop).outdoors ?? ours(crop).indoors).depthCm.value);
  const apart = (crop: string) => {
    const { thinnings, settingOut } = ours(crop);
    const last = thinnings[thinnings.length - 1]?.apartCm.value;
    const out = settingOut?.apartCm.value;
    return inch(last ?? [must(out), must(out)]);
  };

  test("is within a quarter inch of our depths", () => {
    const held = COLORADO.map(([crop, table, row]) =>
      within(crop, [depth(crop), cell(table, row, "depth_in")], 0.25),
    );
    expect(missed(held)).toEqual([]);
  });

  test("is within a factor of two of our spacing", () => {
    const held = COLORADO.map(([crop, table, row]) =>
      withinTwofold(crop, [apart(crop), cell(table, row, "spacing_in")]),
    );
    expect(missed(held)).toEqual([]);
  });

  test("is within ten days of our days to harvest", () => {
    const held = COLORADO.map(([crop, table, row]) =>
      within(crop, [ours(crop).harvest.days.value, cell(table, row, "days_to_harvest")], 10),
    );
    expect(missed(held)).toEqual([]);
  });

  test("has our weeks of raising tomatoes", () => {
    const [, table, row] = COLORADO[3] ?? ["", FILE.knott_harrington, ""];
    expect(cell(table, row, "transplant_age_weeks")).toEqual(
      must(ours("tomato").indoors).weeksToSettingOut.value,
    );
  });
});

test("every block of the file is compared", () => {
  expect(Object.keys(FILE).sort()).toEqual([
    "csu_gardennotes_720_table2",
    "csu_gardennotes_720_table2_rest",
    "kansas_state",
    "knott_harrington",
    "nebraska",
    "texas_realistic",
  ]);
});

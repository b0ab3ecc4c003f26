import { describe, expect, test } from "vitest";
import { CROPS } from "../../src/crops/crops.ts";
import type { NumberRange } from "../../src/crops/facts.ts";
import { rowLayoutOf } from "../../src/engine/growth/amounts.ts";
import { missesOf } from "./misses.ts";
import { inch, must, ours } from "./ours.ts";
import { type Held, missed, spanOf, within, withinTwofold, yamlOf } from "./read.ts";

type Row = {
  readonly first_when: string;
  readonly first_to_in?: number;
  readonly second_to_in?: NumberRange;
  readonly final_in?: NumberRange | number;
};
type Thinning = {
  readonly florida_ifas: { readonly when: { readonly height_in: NumberRange } };
  readonly north_dakota: {
    readonly when: { readonly height_in: NumberRange };
    readonly final_in: Readonly<Record<string, number>>;
  };
  readonly csu_block_spacing: {
    readonly equidistant_in: Readonly<Record<string, string | number>>;
  };
  readonly bed_layout: {
    readonly worked: {
      readonly bed_in: NumberRange;
      readonly spacing_in: number;
      readonly rows: number;
      readonly plants_per_row: number;
      readonly plants: number;
    };
  };
  readonly thinning_by_crop: { readonly rows: Readonly<Record<string, Row>> };
};

const FILE = yamlOf<Thinning>("thinning.yaml");
/** Our crops that are thinned and that the crop sheets have, by the sheets' name. */
const ROWS: Readonly<Record<string, string>> = {
  beet: "beet",
  spinach: "spinach",
  radish: "radish",
  turnip: "turnip",
  carrot: "carrot",
  parsley: "parsley",
  parsnip: "parsnip",
  lettuce: "lettuce_leaf",
  chard: "chard",
  rutabaga: "rutabaga",
  onion: "onion_seed",
  leek: "leek",
  "head-lettuce": "lettuce_head",
  kale: "kale",
  collards: "collards",
  kohlrabi: "kohlrabi",
  basil: "basil",
  cilantro: "cilantro",
};
const THINNED = Object.keys(ROWS);
/** Our crops that are thinned and stand in no sheet, or there only by the place of two or three seeds. */
const NO_SHEET: readonly string[] =
  "cabbage winter-radish broccoli cauliflower bok-choy chinese-cabbage mustard rapini komatsuna hamburg-parsley fennel chervil dill endive radicchio salsify scorzonera melon pumpkin summer-squash winter-squash watermelon okra savory".split(
    " ",
  );

const first = (key: string) => inch(ours(key).thinnings[0]?.heightCm.value ?? [0, 0]);
const final = (key: string) => inch(ours(key).thinnings.at(-1)?.apartCm.value ?? [0, 0]);
const rowOf = (key: string) => FILE.thinning_by_crop.rows[ROWS[key] ?? ""];
const sown = (key: string) => inch(must(ours(key).outdoors).apartCm.value);

/** Inches of `2 in tall / 2-3 true leaves`. */
const tall = (when: string | undefined) => spanOf(when?.split(" in")[0] ?? "");

const HEIGHTS: readonly Held[] = THINNED.flatMap((crop) => [
  within(`${crop} height, Florida`, [first(crop), FILE.florida_ifas.when.height_in], 0),
  within(`${crop} height, North Dakota`, [first(crop), FILE.north_dakota.when.height_in], 0),
  within(`${crop} height, crop sheets`, [first(crop), tall(rowOf(crop)?.first_when)], 0),
]);

const NORTH_DAKOTA = FILE.north_dakota.final_in;
const COLORADO = FILE.csu_block_spacing.equidistant_in;
/** Plants in the row of `4 x 12`. */
const BEAN_AND_PEA = String(COLORADO.bean_and_pea).split(" x ")[0] ?? "";
/** What we sow at its last spacing, with no thinning. */
const SOWN_AT_SPACING = { corn_sweet: "corn", cucumber: "cucumber" } as const;

const SPACING: readonly Held[] = [
  ...Object.keys(NORTH_DAKOTA).map((crop) =>
    withinTwofold(`${crop} spacing, North Dakota`, [final(crop), spanOf(NORTH_DAKOTA[crop] ?? 0)]),
  ),
  ...["beet", "carrot"].map((crop) =>
    withinTwofold(`${crop} spacing, Colorado`, [final(crop), spanOf(COLORADO[crop] ?? 0)]),
  ),
  withinTwofold("cabbage spacing, Colorado", [
    final("cabbage"),
    spanOf(COLORADO.broccoli_cabbage_cauliflower ?? 0),
  ]),
  ...["bean", "pea"].map((crop) =>
    withinTwofold(`${crop} spacing, Colorado`, [sown(crop), spanOf(BEAN_AND_PEA)]),
  ),
  ...THINNED.map((crop) => {
    const row = rowOf(crop);
    const theirs = row?.final_in ?? row?.second_to_in ?? [0, 0];
    return withinTwofold(`${crop} spacing, crop sheets`, [final(crop), spanOf(theirs)]);
  }),
  ...(["corn_sweet", "cucumber"] as const).map((row) =>
    withinTwofold(`${row} spacing, crop sheets`, [
      sown(SOWN_AT_SPACING[row]),
      spanOf(FILE.thinning_by_crop.rows[row]?.final_in ?? 0),
    ]),
  ),
];

describe("published thinning", () => {
  test("begins at the height that we tell, but for the misses told", () => {
    const heights = missesOf("thinning.yaml").filter((name) => name.includes("height"));
    expect(missed(HEIGHTS).toSorted()).toEqual(heights.toSorted());
  });

  test("ends within a factor of two of our spacing, but for the misses told", () => {
    const spacings = missesOf("thinning.yaml").filter((name) => name.includes("spacing"));
    expect(missed(SPACING)).toEqual(spacings);
  });

  test("thins carrots twice, to an inch the first time", () => {
    expect(ours("carrot").thinnings.map(({ step }) => step)).toEqual(["1", "2"]);
    const apart = inch(ours("carrot").thinnings[0]?.apartCm.value ?? [0, 0]);
    expect(apart).toEqual(spanOf(rowOf("carrot")?.first_to_in ?? 0));
  });

  test("thins all others once", () => {
    for (const key of THINNED.filter((crop) => crop !== "carrot"))
      expect(ours(key).thinnings, key).toHaveLength(1);
  });

  test("is of every crop of ours that is thinned, but for those that no sheet has", () => {
    const thinned = CROPS.filter(({ thinnings }) => thinnings.length > 0).map(({ key }) => key);
    expect(thinned.filter((key) => !THINNED.includes(key))).toEqual(NO_SHEET);
    for (const key of THINNED) expect(rowOf(key), key).toBeDefined();
  });

  test("lays out a bed as ours", () => {
    const { bed_in, spacing_in, rows, plants_per_row, plants } = FILE.bed_layout.worked;
    const [widthCm, lengthCm] = bed_in.map((side) => side * 2.54);
    const apartCm = spacing_in * 2.54;
    const layout = rowLayoutOf({
      lengthCm: lengthCm ?? 0,
      widthCm: widthCm ?? 0,
      apartCm,
      rowsCm: apartCm,
    });
    expect(layout).toEqual({ rows, perRow: plants_per_row, plants });
  });

  test("is compared block by block", () => {
    expect(Object.keys(FILE)).toEqual([
      "florida_ifas",
      "north_dakota",
      "csu_block_spacing",
      "thinning_by_crop",
      "bed_layout",
    ]);
  });
});

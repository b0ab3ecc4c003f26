import { describe, expect, test } from "vitest";
import type { Range } from "../../src/crops/facts.ts";
import { missesOf } from "./misses.ts";
import { inch, ours } from "./ours.ts";
import { type Held, missed, spanOf, within, withinTwofold, yamlOf } from "./read.ts";

type Row = {
  readonly first_when: string;
  readonly first_to_in?: number;
  readonly second_to_in?: Range;
  readonly final_in?: Range;
};
type Thinning = {
  readonly florida_ifas: { readonly when: { readonly height_in: Range } };
  readonly north_dakota: {
    readonly when: { readonly height_in: Range };
    readonly final_in: Readonly<Record<string, number>>;
  };
  readonly csu_block_spacing: {
    readonly equidistant_in: Readonly<Record<string, string | number>>;
  };
  readonly thinning_by_crop: { readonly rows: Readonly<Record<string, Row>> };
};

const FILE = yamlOf<Thinning>("thinning.yaml");
const CROPS = ["beet", "carrot", "lettuce"] as const;
const ROWS = { beet: "beet", carrot: "carrot", lettuce: "lettuce_leaf" } as const;

const first = (key: string) => inch(ours(key).thinnings[0]?.heightCm.value ?? [0, 0]);
const final = (key: string) => inch(ours(key).thinnings.at(-1)?.apartCm.value ?? [0, 0]);
const rowOf = (key: (typeof CROPS)[number]) => FILE.thinning_by_crop.rows[ROWS[key]];

/** Inches of `2 in tall / 2-3 true leaves`. */
const tall = (when: string | undefined) => spanOf(when?.split(" in")[0] ?? "");

const HEIGHTS: readonly Held[] = CROPS.flatMap((crop) => [
  within(`${crop} height, Florida`, [first(crop), FILE.florida_ifas.when.height_in], 0),
  within(`${crop} height, North Dakota`, [first(crop), FILE.north_dakota.when.height_in], 0),
  within(`${crop} height, crop sheets`, [first(crop), tall(rowOf(crop)?.first_when)], 0),
]);

const NORTH_DAKOTA = FILE.north_dakota.final_in;
const COLORADO = FILE.csu_block_spacing.equidistant_in;

const SPACING: readonly Held[] = [
  ...["carrot", "lettuce"].map((crop) =>
    withinTwofold(`${crop} spacing, North Dakota`, [final(crop), spanOf(NORTH_DAKOTA[crop] ?? 0)]),
  ),
  ...["beet", "carrot"].map((crop) =>
    withinTwofold(`${crop} spacing, Colorado`, [final(crop), spanOf(COLORADO[crop] ?? 0)]),
  ),
  ...CROPS.map((crop) => {
    const row = rowOf(crop);
    const theirs = row?.final_in ?? row?.second_to_in ?? [0, 0];
    return withinTwofold(`${crop} spacing, crop sheets`, [final(crop), theirs]);
  }),
];

describe("published thinning", () => {
  test("begins at the height that we tell, but for the misses told", () => {
    const heights = missesOf("thinning.yaml").filter((name) => name.includes("height"));
    expect(missed(HEIGHTS)).toEqual(heights);
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

  test("thins beets and lettuce once", () => {
    expect(ours("beet").thinnings).toHaveLength(1);
    expect(ours("lettuce").thinnings).toHaveLength(1);
  });

  test("is compared block by block", () => {
    expect(Object.keys(FILE)).toEqual([
      "florida_ifas",
      "north_dakota",
      "csu_block_spacing",
      "thinning_by_crop",
    ]);
  });
});

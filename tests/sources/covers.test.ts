import { expect, test } from "vitest";
import { FABRIC } from "../../src/crops/covers.ts";
import { missesOf } from "./misses.ts";
import { type Held, missed, spanOf, within, yamlOf } from "./read.ts";

type Weight = { readonly f: string };
type Covers = {
  readonly weights: {
    readonly new_hampshire: {
      readonly light_frost_protection_f: number;
      readonly heavy_frost_protection_f: readonly [number, number];
    };
    readonly classes: Readonly<Record<string, Weight | string>>;
  };
};

const FILE = yamlOf<Covers>("covers-and-pests.yaml");
const { new_hampshire, classes } = FILE.weights;
const ours = (fabric: keyof typeof FABRIC.warmsK) =>
  FABRIC.warmsK[fabric].value.map((kelvin) => kelvin * 1.8) as unknown as readonly [number, number];

/** Ours, heavy or light, by the names of the classes from memory; the one between them is none of ours. */
const OURS: Readonly<Record<string, keyof typeof FABRIC.warmsK>> = {
  "insect_0.45_0.55oz": "light fabric",
  "medium_0.9oz": "light fabric",
  "heavy_1.5_2oz": "heavy fabric",
};

const HELD: readonly Held[] = Object.entries(classes).flatMap(([name, weight]) =>
  typeof weight === "string"
    ? []
    : [within(`${name}, usual figures`, [ours(OURS[name] ?? "light fabric"), spanOf(weight.f)], 0)],
);

test("fabrics keep off the frost that New Hampshire gives for them", () => {
  const { light_frost_protection_f: light, heavy_frost_protection_f: heavy } = new_hampshire;
  for (const [mine, theirs] of [
    [ours("light fabric"), [light, light]],
    [ours("heavy fabric"), heavy],
  ] as const)
    for (const end of [0, 1] as const) expect(mine[end]).toBeCloseTo(theirs[end] ?? Number.NaN, 9);
});

test("the classes of weight from memory hold ours, but for the misses told", () => {
  expect(HELD.map(({ name }) => name)).toHaveLength(Object.keys(OURS).length);
  expect(missed(HELD)).toEqual(missesOf("covers-and-pests.yaml"));
});

test("no row of the weights is left out, and the rest of the file is of pests and flowers", () => {
  expect(Object.keys(FILE.weights)).toEqual(["new_hampshire", "classes"]);
  expect(Object.keys(FILE)).toEqual([
    "weights",
    "new_england",
    "cucurbit_removal",
    "leafminer_whole_season",
    "carrot_fly",
    "brassica_netting",
    "needs_pollination",
    "families_sharing_pests",
  ]);
});

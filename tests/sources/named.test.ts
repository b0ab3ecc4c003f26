import { describe, expect, test } from "vitest";
import { CROPS } from "../../src/crops/crops.ts";
import type { NumberRange } from "../../src/crops/facts.ts";
import { CITE } from "../../src/crops/figures.ts";
import { allFigures, type Found } from "../crops/walk.ts";
import { csvOf, yamlOf } from "./read.ts";

/** Names of the tables that are ours by another key. */
const OURS: Readonly<Record<string, string>> = {
  bean_bush_lima: "lima-bean",
  bean_lima: "lima-bean",
  bean_pole_snap: "pole-bean",
  bean_snap: "bean",
  cantaloupe: "melon",
  chard_swiss: "chard",
  corn_sweet: "corn",
  lettuce_head: "head-lettuce",
  lettuce_leaf: "lettuce",
  muskmelon: "melon",
  mustard_greens: "mustard",
  onion_dry: "onion",
  onion_dry_seed: "onion",
  onion_dry_sets: "onion",
  onion_green: "scallion",
  onion_plants: "onion",
  onion_seed: "onion",
  onion_sets: "onion",
  snap_bean: "bean",
  squash_summer: "summer-squash",
  squash_winter: "winter-squash",
  sweet_corn: "corn",
  swiss_chard: "chard",
  tomato_on_ground: "tomato",
  tomato_staked: "tomato",
};

/** Kinds of one vegetable that a table names by its one word; the same sheets plant and space them alike. */
const KINDS: Readonly<Record<string, readonly string[]>> = {
  bean: ["pole-bean", "dry-bean"],
  broccoli: ["sprouting-broccoli"],
  cabbage: ["spring-cabbage"],
  corn: ["popcorn"],
  lettuce: ["head-lettuce"],
  onion: ["scallion"],
};

const key = (name: string) => OURS[name] ?? name.replaceAll("_", "-");
const keysOf = (names: readonly string[]) =>
  new Set(names.map(key).flatMap((each) => [each, ...(KINDS[each] ?? [])]));

type Classes = Readonly<Record<string, { readonly crops: readonly string[] }>>;
const systems = yamlOf<{
  class_systems: Record<"purdue_illinois" | "colorado", { readonly classes: Classes }>;
}>("frost-classes.yaml").class_systems;
const classed = ({ classes }: { readonly classes: Classes }) =>
  Object.values(classes).flatMap(({ crops }) => crops);
type Table = { readonly rows: Readonly<Record<string, unknown>> };
const ranges = yamlOf<{
  csu_gardennotes_720_table2: Table;
  texas_realistic: Record<string, unknown>;
}>("germination-ranges.yaml");

const MISSOURI = csvOf("spacing-depth-maturity.csv").filter(
  ({ status }) => !/memory/.test(status ?? ""),
);

/** The crops that each source names. */
const NAMES: Readonly<Record<string, ReadonlySet<string>>> = {
  [CITE.missouri]: keysOf(MISSOURI.map(({ crop = "" }) => crop)),
  [CITE.purdue]: keysOf(classed(systems.purdue_illinois)),
  [CITE.coloradoFrost]: keysOf(classed(systems.colorado)),
  [CITE.colorado]: keysOf(Object.keys(ranges.csu_gardennotes_720_table2.rows)),
  [CITE.coloradoBlocks]: keysOf([
    "bean",
    "pea",
    "beet",
    "broccoli",
    "cabbage",
    "cauliflower",
    "carrot",
  ]),
  [CITE.kansas]: keysOf(
    "pea lettuce parsnip spinach radish tomato sweet_corn bean pepper cucumber melon sweet_potato".split(
      " ",
    ),
  ),
  [CITE.texas]: keysOf(
    "cucumber cantaloupe pumpkin watermelon bean tomato turnip corn parsley lettuce spinach cabbage chard eggplant pepper radish".split(
      " ",
    ),
  ),
  [CITE.northDakota]: keysOf(["carrot", "spinach", "lettuce", "radish", "parsnip"]),
  [CITE.peet]: keysOf(["corn", "bean", "turnip", "cabbage", "pea", "pepper"]),
  [CITE.harrington]: keysOf([
    ...csvOf("emergence-days.csv").map(({ crop = "" }) => crop),
    ...csvOf("percent-normal-seedlings.csv").map(({ crop = "" }) => crop),
  ]),
};

const PUBLISHED = allFigures(CROPS).filter(({ figure }) => figure.source.kind === "published");
const cropOf = ({ path }: Found) => path.split(".")[0] ?? "";
const citeOf = ({ figure }: Found) =>
  figure.source.kind === "published" ? figure.source.cite : "";

describe("a figure said to be published", () => {
  test("is of a source that names its crop", () => {
    const strange = PUBLISHED.filter((found) => {
      const names = NAMES[citeOf(found)];
      return names ? !names.has(cropOf(found)) : !wholeSheet(found);
    });
    expect(strange.map((found) => `${found.path}: ${citeOf(found).slice(0, 40)}`)).toEqual([]);
  });

  test("of Missouri's table is that row's own number", () => {
    const wrong = PUBLISHED.filter((found) => citeOf(found) === CITE.missouri).filter((found) => {
      const rows = MISSOURI.filter(({ crop = "" }) => keysOf([crop]).has(cropOf(found)));
      return !rows.some((row) => fits(found, row));
    });
    expect(wrong.map(({ path, figure }) => `${path} ${JSON.stringify(figure.value)}`)).toEqual([]);
  });
});

/** Sheets on one crop alone, and what they are on. */
const SHEETS: readonly (readonly [RegExp, RegExp])[] = [
  [/type onion/, /^onion$/],
  [/potato/i, /^potato$/],
  [/garlic|Anoka/i, /^garlic$/],
  [/Succession Planting/, /^lettuce$/],
  [/Virginia Cooperative Extension 426-331/, /^asparagus$/],
  [/growing degree days/, /^(?:pop)?corn$/],
];

const wholeSheet = (found: Found) =>
  SHEETS.some(([title, crop]) => title.test(citeOf(found)) && crop.test(cropOf(found)));

function fits({ path, figure }: Found, row: Readonly<Record<string, string>>): boolean {
  const [least, most] = [figure.value].flat() as NumberRange | [number];
  const inches = (name: string) =>
    Math.abs(least / 2.54 - Number.parseFloat(row[name] ?? "")) < 1e-9 &&
    (most === undefined || Math.abs(most - least) < 1e-9);
  if (path.endsWith("rowsCm")) return inches("row_hand_in");
  if (path.endsWith("apartCm")) return inches("in_row_in");
  if (path.endsWith("depthCm")) return inches("depth_in");
  if (path.endsWith("firstHarvestYear")) return Number(row.days_low) === least * 365;
  return Number(row.days_low) === least && Number(row.days_high) === most;
}

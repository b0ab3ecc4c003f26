import { describe, expect, test } from "vitest";
import type { NumberRange } from "../../src/crops/facts.ts";
import { missesOf } from "./misses.ts";
import { inch, must, ours } from "./ours.ts";
import { csvOf, type Held, missed, spanOf, within, withinTwofold } from "./read.ts";

/** Rows of the table that are of our crops, and which of ours. */
const OURS: Readonly<Record<string, string>> = {
  bean_bush_snap: "bean",
  beet: "beet",
  cabbage: "cabbage",
  corn_sweet: "corn",
  cucumber: "cucumber",
  lettuce_head: "head-lettuce",
  parsnip: "parsnip",
  pea: "pea",
  radish: "radish",
  tomato_on_ground: "tomato",
  tomato_staked: "tomato",
  potato: "potato",
  turnip_roots: "turnip",
  asparagus: "asparagus",
  bean_pole_snap: "pole-bean",
  broccoli: "broccoli",
  cantaloupe: "melon",
  cauliflower: "cauliflower",
  chinese_cabbage: "chinese-cabbage",
  collards: "collards",
  eggplant: "eggplant",
  kale: "kale",
  kohlrabi: "kohlrabi",
  mustard_greens: "mustard",
  okra: "okra",
  onion_dry: "onion",
  onion_green: "scallion",
  pumpkin: "pumpkin",
  rutabaga: "rutabaga",
  squash_summer: "summer-squash",
  squash_winter: "winter-squash",
  swiss_chard: "chard",
  watermelon: "watermelon",
};

/** Rows of another crop, or of the same for its leaves. */
const OTHERS = ["bean_bush_lima", "turnip_greens"];

type Row = Readonly<Record<string, string>> & { readonly name: string; readonly key: string };

const rows = csvOf("spacing-depth-maturity.csv").flatMap((row): readonly Row[] => {
  const key = OURS[row.crop ?? ""];
  return key === undefined ? [] : [{ ...row, name: row.crop ?? "", key }];
});

const one = (value: number): NumberRange => [value, value];

/** Last spacing in the row [in]: as thinned, else as set out or planted. */
function apartIn(key: string): NumberRange {
  const { thinnings, settingOut, outdoors } = ours(key);
  const thinned = thinnings[thinnings.length - 1]?.apartCm.value;
  return inch(
    thinned ?? (settingOut ? one(settingOut.apartCm.value) : must(outdoors).apartCm.value),
  );
}

const rowsIn = (key: string) =>
  inch(one(must(ours(key).outdoors ?? ours(key).settingOut).rowsCm.value));

/** The misses told that are among some comparisons. */
const MISSES = missesOf("spacing-depth-maturity.csv");
const told = (held: readonly Held[]) =>
  held.map(({ name }) => name).filter((name) => MISSES.includes(name));

describe("Missouri's table", () => {
  test("has a row for thirty-three of our crops, and two of others", () => {
    expect(rows.map(({ name }) => name).sort()).toEqual(Object.keys(OURS).sort());
    const names = csvOf("spacing-depth-maturity.csv").map((row) => row.crop ?? "");
    expect([...names].sort()).toEqual([...Object.keys(OURS), ...OTHERS].sort());
  });

  test("is within a factor of two of our rows", () => {
    const held = rows.map((row) =>
      withinTwofold(`${row.name} rows`, [rowsIn(row.key), spanOf(row.row_hand_in ?? "")]),
    );
    expect(missed(held)).toEqual(told(held));
  });

  test("is within a factor of two of our spacing in the row", () => {
    const held = rows.map((row) =>
      withinTwofold(`${row.name} spacing`, [apartIn(row.key), spanOf(row.in_row_in ?? "")]),
    );
    expect(missed(held)).toEqual(told(held));
  });

  test("is within a quarter inch of our depths, where it gives one", () => {
    const sown = rows.filter((row) => row.depth_in !== "");
    const held = sown.map((row) =>
      within(
        `${row.name} depth`,
        [inch(must(ours(row.key).outdoors).depthCm.value), spanOf(row.depth_in ?? "")],
        0.25,
      ),
    );
    expect(sown.length).toBeGreaterThan(20);
    expect(missed(held)).toEqual(told(held));
  });

  test("is within ten days of our days to harvest", () => {
    const held = rows.map((row) => {
      const theirs: NumberRange = [Number(row.days_low), Number(row.days_high)];
      return within(`${row.name} days`, [ours(row.key).harvest.days.value, theirs], 10);
    });
    expect(missed(held)).toEqual(told(held));
  });
});

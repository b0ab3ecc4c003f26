import { describe, expect, test } from "vitest";
import { CROPS } from "../../src/crops/crops.ts";
import type { Range } from "../../src/crops/facts.ts";
import { inch, must, ours } from "./ours.ts";
import { csvOf, missed, spanOf, within, withinTwofold } from "./read.ts";

/** Rows of the table that are of our crops, and which of ours. */
const OURS: Readonly<Record<string, string>> = {
  bean_bush_snap: "bean",
  beet: "beet",
  cabbage: "cabbage",
  corn_sweet: "corn",
  cucumber: "cucumber",
  lettuce_head: "lettuce",
  parsnip: "parsnip",
  pea: "pea",
  radish: "radish",
  tomato_on_ground: "tomato",
  tomato_staked: "tomato",
  potato: "potato",
  turnip_roots: "turnip",
};

/** Rows that are called like one of ours and are another crop, or the same for its leaves. */
const OTHERS = ["bean_bush_lima", "bean_pole_snap", "chinese_cabbage", "turnip_greens"];

type Row = Readonly<Record<string, string>> & { readonly name: string; readonly key: string };

const rows = csvOf("spacing-depth-maturity.csv").flatMap((row): readonly Row[] => {
  const key = OURS[row.crop ?? ""];
  return key === undefined ? [] : [{ ...row, name: row.crop ?? "", key }];
});

const one = (value: number): Range => [value, value];

/** Last spacing in the row [in]: as thinned, else as set out or planted. */
function apartIn(key: string): Range {
  const { thinnings, settingOut, outdoors } = ours(key);
  const thinned = thinnings[thinnings.length - 1]?.apartCm.value;
  return inch(
    thinned ?? (settingOut ? one(settingOut.apartCm.value) : must(outdoors).apartCm.value),
  );
}

const rowsIn = (key: string) =>
  inch(one(must(ours(key).outdoors ?? ours(key).settingOut).rowsCm.value));

describe("Missouri's table", () => {
  test("has thirteen rows of our crops, and no other row names one of them", () => {
    expect(rows.map(({ name }) => name).sort()).toEqual(Object.keys(OURS).sort());
    expect(rows).toHaveLength(13);
    const names = csvOf("spacing-depth-maturity.csv").map((row) => row.crop ?? "");
    const like = names.filter((name) => CROPS.some(({ key }) => name.split("_").includes(key)));
    expect(like.sort()).toEqual([...Object.keys(OURS), ...OTHERS].sort());
  });

  test("is within a factor of two of our rows", () => {
    const held = rows.map((row) =>
      withinTwofold(row.name, [rowsIn(row.key), spanOf(row.row_hand_in ?? "")]),
    );
    expect(missed(held)).toEqual([]);
  });

  test("is within a factor of two of our spacing in the row", () => {
    const held = rows.map((row) =>
      withinTwofold(row.name, [apartIn(row.key), spanOf(row.in_row_in ?? "")]),
    );
    expect(missed(held)).toEqual([]);
  });

  test("is within a quarter inch of our depths, where it gives one", () => {
    const sown = rows.filter((row) => row.depth_in !== "");
    const held = sown.map((row) =>
      within(
        row.name,
        [inch(must(ours(row.key).outdoors).depthCm.value), spanOf(row.depth_in ?? "")],
        0.25,
      ),
    );
    expect(sown).toHaveLength(10);
    expect(missed(held)).toEqual([]);
  });

  test("is within ten days of our days to harvest", () => {
    const held = rows.map((row) => {
      const theirs: Range = [Number(row.days_low), Number(row.days_high)];
      return within(row.name, [ours(row.key).harvest.days.value, theirs], 10);
    });
    expect(missed(held)).toEqual([]);
  });
});

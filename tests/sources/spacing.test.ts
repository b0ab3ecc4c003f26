import { describe, expect, test } from "vitest";
import type { Range } from "../../src/crops/facts.ts";
import { inch, must, ours } from "./ours.ts";
import { csvOf, missed, spanOf, within, withinTwofold } from "./read.ts";

/** Rows of the table that are of our crops, and which of ours. */
const OURS: Readonly<Record<string, string>> = {
  beet: "beet",
  lettuce_head: "lettuce",
  tomato_on_ground: "tomato",
  tomato_staked: "tomato",
  potato: "potato",
};

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
  test("has five rows of our crops, and no other row names one of them", () => {
    expect(rows.map(({ name }) => name).sort()).toEqual(Object.keys(OURS).sort());
    const names = csvOf("spacing-depth-maturity.csv").map((row) => row.crop ?? "");
    const like = names.filter((name) => /beet|carrot|lettuce|tomato|potato|garlic/.test(name));
    expect(like.sort()).toEqual(Object.keys(OURS).sort());
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
    expect(sown).toHaveLength(3);
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

import { expect, test } from "vitest";
import { remarksOf } from "../../../src/views/paper/remarks.ts";
import { isoDay } from "../../gardens.ts";

const kindOf = (text: string) => {
  const day = isoDay("2027-06-03");
  return remarksOf([{ kind: "note", day, text, why: null }], day, day)[0]?.kind;
};

test.each([
  ["Slugs ate half of the beets", "failed"],
  ["the basil died", "failed"],
  ["gave up on the basil", "left"],
  ["left it this year", "left"],
  ["moved two lettuces", "moved"],
  ["frost on the roof", "frost"],
  ["a cat slept in the onions", "plain"],
  ["nothing was eaten", "plain"],
  ["no slugs this year", "plain"],
])("%s: %s", (text, kind) => {
  expect(kindOf(text)).toBe(kind);
});

test("remarks come by day, and only those of the days asked for", () => {
  const note = (iso: string) => ({ kind: "note", day: isoDay(iso), text: iso, why: null }) as const;
  const all = [note("2027-07-02"), note("2027-05-01"), note("2027-09-01")];
  const told = remarksOf(all, isoDay("2027-05-01"), isoDay("2027-07-02"));
  expect(told.map(({ text }) => text)).toEqual(["2027-05-01", "2027-07-02"]);
});

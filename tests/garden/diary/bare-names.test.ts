import { expect, test } from "vitest";
import { withBareNames } from "../../../src/garden/diary/bare-names.ts";
import { PLAN } from "../plan/canonical.ts";

const bare = (text: string) => withBareNames(text, [PLAN]);

test("a planting stands without what says how many and what they look like", () => {
  expect(bare("put the tomato babies out")).toEqual(["put tomato babies out", "put tomato out"]);
  expect(bare("transplanted 24 plants beets")).toEqual(["transplanted beets"]);
  expect(bare("two rows of my carrots sown")).toEqual(["carrots sown"]);
});

test("plantings side by side are listed", () => {
  expect(bare("sowed the beets, the carrots and some potatoes")).toEqual([
    "sowed beets and carrots and potatoes",
  ]);
});

test("first, last and the number of a sowing stay", () => {
  expect(bare("dug the last of the carrots")).toEqual(["dug the last of carrots"]);
  expect(bare("second lettuce up")).toEqual(["second lettuce up"]);
});

test("what names no planting has none", () => {
  expect(bare("a fox came by")).toEqual([]);
});

import { expect, test } from "vitest";
import { countFrom } from "../../../src/garden/diary/counts.ts";

test("a count is a word or figures", () => {
  expect(["a", "two", "forty", "12"].map(countFrom)).toEqual([1, 2, 40, 12]);
  expect(["lots", "", "1.5", "constructor"].map(countFrom)).toEqual([null, null, null, null]);
});

import { expect, test } from "vitest";
import { withoutVarieties } from "../../../src/garden/diary/varieties.ts";
import { PLAN } from "../plan/canonical.ts";

const read = (text: string) => withoutVarieties(text, [PLAN]);

test("a variety behind its crop goes, since the crop is meant", () => {
  expect(read("carrot Nantes 2, 3 rows")).toBe("carrot, 3 rows");
  expect(read("garlic Solent Wight and Germidour planted")).toBe("garlic planted");
});

test("days, shouting and the plan's own names stay", () => {
  for (const text of ["carrots Saturday and beets", "carrots UP today", "beets South bed sown"])
    expect(read(text), text).toBe(text);
});

test("a line that writes every word large keeps them", () => {
  expect(read("Carrots Sown Today")).toBe("Carrots Sown Today");
});

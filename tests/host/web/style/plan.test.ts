import { expect, test } from "vitest";
import { PLAN_STYLE } from "../../../../src/host/web/style/plan.ts";

test("text and picture stand side by side only where there is room for both", () => {
  const [narrow = "", wide = ""] = PLAN_STYLE.split("@media (min-width: 62rem)");
  expect(narrow).not.toContain("grid-template-columns");
  expect(wide).toContain("grid-template-columns: minmax(0, 1fr) 26rem");
});

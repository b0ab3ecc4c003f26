import { expect, test } from "vitest";
import { SANS, SERIF } from "../../../../src/host/web/style/type.ts";

test("both end in a kind that every reader has, and fit into a style attribute's rules", () => {
  expect(SERIF).toMatch(/, serif$/);
  expect(SANS).toMatch(/, sans-serif$/);
  expect(`${SERIF}${SANS}`).not.toMatch(/[;{}<]|url/);
});

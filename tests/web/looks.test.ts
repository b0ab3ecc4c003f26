import { expect, test } from "vitest";
import { isLook } from "../../src/web/looks.ts";

test("what can be looked at is frost, the pictures, and a month on paper", () => {
  for (const rest of ["frost", "pictures", "season.svg", "soil.svg", "sheet", "sheet/2027-05"])
    expect(isLook(rest), rest).toBe(true);
  for (const rest of [
    "",
    "toString",
    "constructor",
    "sheet/2027",
    "sheet/2027-05/x",
    "frost/1",
    "a.svg",
  ])
    expect(isLook(rest), rest).toBe(false);
});

import { expect, test } from "vitest";
import { dryDaysIn } from "../../../src/garden/diary/dry-days.ts";
import { on } from "../plan/canonical.ts";

const days = (text: string) => dryDaysIn(text, on(6, 10));

test("days without rain are counted up to the line's own", () => {
  expect(days("no rain for two weeks")).toBe(14);
  expect(days("no rain since the 4th")).toBe(6);
  expect(days("it did not rain since forty days")).toBe(40);
  expect(days("no rain all week")).toBe(7);
  expect(days("dry for a fortnight")).toBe(14);
});

test("a day of the month that is still to come was last month's", () => {
  expect(days("no rain since the 20th")).toBe(20);
});

test("rain, and none without a time, say nothing of the kind", () => {
  for (const text of ["no rain yet", "rain at last", "no rain for ages", "no peas for two weeks"])
    expect(days(text), text).toBeNull();
});

import { expect, test } from "vitest";
import { spelledOut } from "../../../src/garden/diary/spelling.ts";

test("short and hasty words are written out", () => {
  expect(spelledOut("not bothering with celery this yr")).toBe(
    "not bothering with celery this year",
  );
  expect(spelledOut("approx. 20 mil, dont worry")).toBe("about 20 mm, don't worry");
  expect(spelledOut("stuck 'em back")).toBe("stuck them back");
});

test("signs that dictation spells are signs", () => {
  expect(spelledOut("peas up comma beans not full stop")).toBe("peas up, beans not.");
});

test("everything else stays", () => {
  for (const text of ["", "emmer and temper", "constructor", "millet 3 cm"])
    expect(spelledOut(text), text).toBe(text);
});

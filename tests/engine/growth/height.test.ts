import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { dayAtHeight } from "../../../src/engine/growth/height.ts";
import { QUARRY } from "../../gardens.ts";
import { growingOf } from "./growing.ts";

const acts = { start: "2027-05-03", up: "2027-05-20" };
const beets = (diary: string) =>
  growingOf(diary === "" ? QUARRY : `${QUARRY}diary:\n${diary}`, "beet", { acts });

describe("when it is so tall", () => {
  test("goes by what it grew a day up to the last measuring", () => {
    const measured = beets("  - 30 May: beets 5 cm tall\n");
    expect(isoOf(dayAtHeight(measured, 8) ?? (0 as never))).toBe("2027-06-05");
    expect(isoOf(dayAtHeight(measured, 5) ?? (0 as never))).toBe("2027-05-30");
    const later = beets("  - 30 May: beets 5 cm tall\n  - 4 June: beets 9 cm tall\n");
    expect(isoOf(dayAtHeight(later, 9) ?? (0 as never))).toBe("2027-06-04");
  });

  test("is not known before anything was measured, or before it was up", () => {
    expect(dayAtHeight(beets(""), 8)).toBeNull();
    expect(dayAtHeight(beets("  - 18 May: beets 5 cm tall\n"), 8)).toBeNull();
  });
});

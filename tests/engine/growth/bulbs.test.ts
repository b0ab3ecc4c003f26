import { describe, expect, test } from "vitest";
import { cropOf } from "../../../src/crops/crops.ts";
import {
  bulbFault,
  bulbKindFor,
  bulbKindNamed,
  longestDayHours,
} from "../../../src/engine/growth/bulbs.ts";
import { least, planOf } from "../../garden/plan/canonical.ts";

const named = (crop: string) => {
  const [planting] = planOf(least(`crops:\n  - ${crop}`)).plantings;
  return planting ? bulbKindNamed(planting) : null;
};
const KINDS = cropOf("onion")?.bulbs;

describe("kinds of onion by the length of day", () => {
  test("are named in the variety or with the crop", () => {
    expect(named("onion: long-day yellow, 80 sets")).toBe("long-day");
    expect(named("short-day onion: 80 plants")).toBe("short-day");
    expect(named("onion: variety day-neutral, 80 sets")).toBe("intermediate");
    expect(named("onion: 80 sets")).toBeNull();
  });

  test("are those usually grown at a latitude, north and south", () => {
    expect([52, 46.6, 35, 28, -37.1, -20].map(bulbKindFor)).toEqual([
      "long-day",
      "long-day",
      "intermediate",
      "short-day",
      "long-day",
      "short-day",
    ]);
  });

  test("form no bulbs where their days never come, and small ones where these come too soon", () => {
    if (!KINDS) throw new Error("onions have kinds");
    expect(bulbFault("long-day", 25, KINDS)).toBe("never");
    expect(bulbFault("long-day", -25, KINDS)).toBe("never");
    expect(bulbFault("long-day", 40, KINDS)).toBeNull();
    expect(bulbFault("short-day", 52, KINDS)).toBe("too soon");
    expect(bulbFault("short-day", 28, KINDS)).toBeNull();
    expect(longestDayHours(52)).toBeGreaterThan(16);
  });
});

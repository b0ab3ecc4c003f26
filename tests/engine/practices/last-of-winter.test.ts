import { describe, expect, test } from "vitest";
import { lastOfTheWinter } from "../../../src/engine/practices/last-of-winter.ts";
import { isoDay, tellOf } from "../../gardens.ts";
import { withCrops } from "../../winters.ts";
import { growingOf } from "../growth/growing.ts";
import { said, titles, windows } from "./told.ts";

const leek = growingOf(withCrops("maritime", ["leek: 40 plants"]), "leek");
const day = isoDay("2028-04-26");
const ripe = {
  early: isoDay("2027-09-01"),
  usual: isoDay("2027-09-05"),
  late: isoDay("2027-09-10"),
  basis: ["warmth"],
  seen: false,
} as const;

describe("the last of what is picked through the winter", () => {
  test("is taken as it flowers in spring, and frees its place", () => {
    const task = lastOfTheWinter(leek, { ripe, winter: { day, by: "spring" }, after: "1" });
    expect(titles([task])).toEqual(["Dig the last leeks [bed]"]);
    expect(windows([task])).toEqual(["last 04-19 04-26 05-06"]);
    expect(said(task)).toContain("A stalk rises");
    expect(task.sets?.act).toBe("end");
    expect(task.id).toBe("2027/leek/harvest/last");
  });

  test("is brought in a week before frozen soil or hard cold", () => {
    const frozen = lastOfTheWinter(leek, { ripe, winter: { day, by: "frozen soil" }, after: "1" });
    expect(windows([frozen])).toEqual(["last 04-12 04-19 04-26"]);
    expect(said(frozen)).toContain("frozen too hard to dig");
    const cold = lastOfTheWinter(leek, { ripe, winter: { day, by: "cold" }, after: "1" });
    expect(said(cold)).toContain("too cold");
  });

  test("comes after the first, which ends nothing", () => {
    const { scheduled } = tellOf(withCrops("maritime", ["parsnip: 2 rows"]), { on: "2027-01-02" });
    const harvests = scheduled.filter(({ task }) => task.practice === "harvest");
    expect(harvests.map(({ task }) => task.sets?.act ?? null)).toEqual([null, "end"]);
  });
});

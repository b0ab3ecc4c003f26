import { describe, expect, test } from "vitest";
import { summersOf, yearlyHarvest } from "../../../src/engine/growth/perennial.ts";
import { isoDay } from "../../gardens.ts";
import { planWith } from "../practices/garden.ts";
import { growingOf } from "./growing.ts";

const rhubarb = (more: string) => growingOf(planWith([`rhubarb: 2 crowns${more}`]), "rhubarb");
const harvest = (more: string) => {
  const growing = rhubarb(more);
  if (!growing.crop.perennial) throw new Error("rhubarb stands for years");
  return yearlyHarvest(growing, growing.crop.perennial);
};

describe("what stands for years", () => {
  test("counts its summers from the year it was planted in", () => {
    expect(summersOf(rhubarb(""))).toBe(1);
    expect(summersOf(rhubarb(", in since 20 Apr 2026"))).toBe(2);
  });

  test("is left alone in its first summer, with the reason", () => {
    expect(harvest("")).toEqual({ none: "it is left alone in its first years" });
  });

  test("is then cut round the usual last frost", () => {
    expect(harvest(", in since 20 Apr 2026")).toMatchObject({
      early: isoDay("2027-04-29"),
      late: isoDay("2027-05-20"),
    });
  });
});

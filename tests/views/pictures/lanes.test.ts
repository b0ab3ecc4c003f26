import { describe, expect, test } from "vitest";
import { bedRowsOf, type Plant } from "../../../src/views/pictures/beds.ts";
import { lanesOf } from "../../../src/views/pictures/lanes.ts";
import { widthOf } from "../../../src/views/pictures/measure.ts";
import { QUARRY } from "../../gardens.ts";
import { on, sketchOf } from "./drawn.ts";

const SCALE = { from: on("2027-01-01"), to: on("2027-12-31"), leftPx: 0, rightPx: 730 };
const SIZES = { namePx: 14 };
const row = bedRowsOf(sketchOf(QUARRY)).find(({ name }) => name === "Root bed");
const [model] = row?.plants ?? [];

/** A planting that stands between two days, under a name. */
function standing(name: string, from: string, to: string): Plant {
  const life = model?.lives[0];
  if (!model || !life) throw new RangeError("the garden has no carrots");
  return {
    ...model,
    name,
    days: "",
    shorter: "",
    brief: "",
    lives: [{ ...life, starts: on(from), gone: on(to) }],
  };
}

const lanes = (...plants: readonly Plant[]) =>
  lanesOf({ bed: null, name: "", plants }, SCALE, SIZES).map((lane) =>
    lane.map(({ plant }) => plant.name),
  );

describe("a bed's lanes", () => {
  test("what follows another shares its lane, what stands beside it has its own", () => {
    const spring = standing("Radishes", "2027-04-01", "2027-05-10");
    const summer = standing("Beans", "2027-06-01", "2027-09-01");
    const beside = standing("Carrots", "2027-05-01", "2027-08-01");
    expect(lanes(spring, summer)).toEqual([["Radishes", "Beans"]]);
    expect(lanes(spring, beside, summer)).toEqual([["Radishes", "Beans"], ["Carrots"]]);
  });

  test("words keep apart even where the drawings would", () => {
    const long = "A very long name of a kind from last year's swap of seed";
    const one = standing(long, "2027-04-01", "2027-05-01");
    const two = standing(long, "2027-05-03", "2027-06-01");
    expect(lanes(one, two).length).toBe(2);
  });

  test("a bed with nothing has one lane", () => {
    expect(lanes()).toEqual([[]]);
  });
});

test("words begin at the drawing, never leave the lane, and a name without end is cut", () => {
  const late = standing("Winter cabbages", "2027-11-20", "2027-12-30");
  const endless = standing("x".repeat(300), "2027-04-01", "2027-05-01");
  const set = lanesOf({ bed: null, name: "", plants: [late, endless] }, SCALE, SIZES);
  const [first, second] = set.map(([only]) => only);
  expect((first?.x ?? 730) + widthOf("Winter cabbages", 14)).toBeLessThanOrEqual(730);
  const cut = second?.runs[0]?.text ?? "";
  expect(cut).toMatch(/^x+…$/);
  expect(widthOf(cut, 14)).toBeLessThanOrEqual(730);
});

test("where both do not fit, days become brief, then the name is cut, then it stands alone", () => {
  const said = (name: string, days: string, brief: string, shorter = "") => {
    const plant = { ...standing(name, "2027-04-01", "2027-05-01"), days, shorter, brief };
    const [lane] = lanesOf({ bed: null, name: "", plants: [plant] }, SCALE, SIZES);
    return lane?.[0]?.runs.map(({ text }) => text);
  };
  const days = "sown 2 May, out 3 June, ready 28 July";
  const long = "The long one from last year's swap of seed ";
  expect(said("Beets", days, "2 May")).toEqual(["Beets", days]);
  expect(said(long.repeat(2), days, "2 May")?.[1]).toBe("2 May");
  expect(said(long.repeat(2), days, "2 May", "sown 2 May")?.[1]).toBe("sown 2 May");
  expect(said(long.repeat(9), days, "2 May")).toEqual([
    expect.stringMatching(/^The long one.*…$/),
    days,
  ]);
  expect(said("Beets", days.repeat(4), "")).toEqual(["Beets"]);
});

import { expect, test } from "vitest";
import type { PacketComparison } from "../../../src/engine/growth/packet.ts";
import { plantingsIn } from "../../../src/engine/year.ts";
import { QUARRY, tellOf } from "../../gardens.ts";
import { LIVED } from "../../views/paper/paper-year.ts";

/** The comparisons of a text's plantings by their crops. */
const comparedIn = (text: string): Readonly<Record<string, PacketComparison>> =>
  Object.fromEntries(
    plantingsIn(tellOf(text, { on: "2027-11-15" }).year).flatMap(({ planting, packet }) =>
      packet ? [[planting.crop, packet]] : [],
    ),
  );

test("a first ripe day that was written down gives the garden's own days beside the packet's", () => {
  const all = comparedIn(LIVED);
  expect(Object.keys(all)).toEqual(["tomato"]);
  expect(all.tomato?.took).toBeGreaterThan(0);
});

test("a later first ripe day took longer", () => {
  const later = comparedIn(LIVED.replace("10 Sep: first ripe", "20 Sep: first ripe")).tomato;
  expect(later?.packet).toBe(comparedIn(LIVED).tomato?.packet);
  expect(later?.took).toBeGreaterThan(comparedIn(LIVED).tomato?.took ?? 0);
});

test("nothing is compared in a year without one", () => {
  expect(comparedIn(QUARRY)).toEqual({});
});

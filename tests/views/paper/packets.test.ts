import { expect, test } from "vitest";
import { packetComparisonsOf } from "../../../src/views/paper/packets.ts";
import { plantingHistoriesOf } from "../../../src/views/paper/planting-history.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { backOf, LIVED } from "./paper-year.ts";

const kept = (text: string) => {
  const back = backOf(text, "2027-11-15");
  return packetComparisonsOf(plantingHistoriesOf(back, isoDay("2027-11-15")), back);
};

test("a first ripe day that was written down gives the garden's own days beside the packet's", () => {
  const all = kept(LIVED);
  expect(all.map(({ planting }) => planting.crop)).toEqual(["tomato"]);
  expect(all[0]?.took).toBeGreaterThan(0);
});

test("a later first ripe day took longer", () => {
  const later = kept(LIVED.replace("10 Sep: first ripe", "20 Sep: first ripe"))[0];
  expect(later?.packet).toBe(kept(LIVED)[0]?.packet);
  expect(later?.took).toBeGreaterThan(kept(LIVED)[0]?.took ?? 0);
});

test("nothing is kept of a year without one", () => {
  expect(kept(QUARRY)).toEqual([]);
});

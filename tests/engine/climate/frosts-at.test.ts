import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { degreesC } from "../../../src/base/quantities/quantity.ts";
import { frostsAt, type PlaceFrosts } from "../../../src/engine/climate/frosts-at.ts";
import type { Bed, FrostDates } from "../../../src/garden/model/plan.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";

const { site, beds } = planOf(QUARRY);
const open = beds[0] as Bed;
const house = (keptAboveC: number | null): Bed => ({
  ...open,
  kind: "greenhouse",
  keptAbove: keptAboveC === null ? null : degreesC(keptAboveC),
});
const daysOf = (dates: FrostDates | null) =>
  dates && [dates.early, dates.usual, dates.late].map((day) => isoOf(day).slice(5));
const of = ({ lastFrost, firstFrost }: PlaceFrosts) => [daysOf(lastFrost), daysOf(firstFrost)];

describe("frosts where a bed stands", () => {
  test("are the site's own in the open", () => {
    expect(frostsAt(site, open)).toBe(site);
    expect(frostsAt(site, null)).toBe(site);
  });

  test("come two weeks later under glass without heat, and end two weeks sooner", () => {
    expect(of(site)).toEqual([
      ["04-20", "05-06", "05-21"],
      ["09-17", "10-02", "10-17"],
    ]);
    expect(of(frostsAt(site, house(null)))).toEqual([
      ["04-06", "04-22", "05-07"],
      ["10-01", "10-16", "10-31"],
    ]);
  });

  test("come as much later as the site's own hard frosts do, where those are known", () => {
    const usual = isoDay("2027-11-01");
    const killingFrost = { early: usual, usual, late: usual, given: 3 } as const;
    expect(of(frostsAt({ ...site, killingFrost }, house(null)))[1]?.[1]).toBe("11-01");
  });

  test("are none in a heated house, where nothing freezes outdoors, and where autumn's would meet spring's", () => {
    const none = [null, null];
    expect(of(frostsAt(site, house(5)))).toEqual(none);
    expect(of(frostsAt({ ...site, firstFrost: null, lastFrost: null }, house(null)))).toEqual(none);
    const around = (iso: string): FrostDates => {
      const usual = isoDay(iso);
      return { early: usual, usual, late: usual, given: 1 };
    };
    const mild = { ...site, lastFrost: around("2027-01-20"), firstFrost: around("2027-12-28") };
    expect(of(frostsAt(mild, house(null)))).toEqual(none);
  });

  test("come to a house that is heated against less than frost", () => {
    expect(of(frostsAt(site, house(-5)))).toEqual(of(frostsAt(site, house(null))));
  });
});

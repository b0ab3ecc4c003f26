import { describe, expect, test } from "vitest";
import { freeOn } from "../../../src/engine/beds/free.ts";
import { occupancyIn } from "../../../src/engine/beds/occupancy.ts";
import { isoDay } from "../../gardens.ts";
import { bedOf, grownIn } from "./gardens.ts";

function free(on: string, crops: readonly string[], is = "12 x 4 ft") {
  const grown = grownIn(bedOf(crops, { is }));
  const bed = grown[0]?.plan.beds[0];
  if (!bed) throw new Error("no bed");
  return freeOn(bed, occupancyIn(bed, grown), isoDay(on));
}

describe("what is free of a bed", () => {
  test("is all of it before anything stands there, with what is to come", () => {
    const found = free("2027-03-01", ["carrot: 4 rows", "beet: 2 rows"]);
    expect(found).toMatchObject({ standing: [], freeShare: 1, freeFrom: isoDay("2027-03-01") });
    expect(found.freeCm).toBeCloseTo(4 * 30.48, 5);
    expect(found.coming.map(({ name }) => name).sort()).toEqual(["beet", "carrot"]);
  });

  test("is what its plants leave, and all of it when the last is gone", () => {
    const found = free("2027-08-01", ["carrot: 6 rows", "beet: 2 rows"]);
    expect(found.standing.map(({ name }) => name)).toEqual(["carrot", "beet"]);
    const crowded = free("2027-08-01", ["carrot: 6 rows"]).freeShare ?? 0;
    expect(crowded).toBeCloseTo(0.5, 5);
    expect(found.freeShare).toBeLessThan(crowded);
    expect(found.freeShare).toBeGreaterThan(0);
    expect(found.freeFrom).toBe(Math.max(...found.standing.map(({ gone }) => gone)));
  });

  test("counts sowings that follow one another as one", () => {
    const [once] = free("2027-06-01", ["lettuce: 2 rows, sow 9 May"]).standing;
    const [again] = free("2027-06-01", [
      "lettuce: 2 rows, every 14 days, 4 times, sow 9 May",
    ]).standing;
    expect(again?.gone).toBeGreaterThan(once?.gone ?? 0);
    expect(
      free("2027-06-01", ["lettuce: 2 rows, every 14 days, 4 times, sow 9 May"]).coming,
    ).toEqual([]);
  });

  test("is not known where the plan gives no amount or no size, and has no width in bags", () => {
    expect(free("2027-08-01", ["carrot"]).freeShare).toBeNull();
    expect(free("2027-05-01", ["carrot: 3 rows"], "greenhouse").freeShare).toBeNull();
    const bags = free("2027-08-01", ["potato: 12 plants"], "6 grow bags, 16 in across, 14 in high");
    expect([bags.freeShare, bags.freeCm]).toEqual([0.5, null]);
  });
});

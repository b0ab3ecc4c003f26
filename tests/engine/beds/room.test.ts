import { describe, expect, test } from "vitest";
import { cropOf } from "../../../src/crops/crops.ts";
import { freeInBeds, roomIn } from "../../../src/engine/beds/room.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { bedOf, yearOf } from "./gardens.ts";

const LANE = yearOf(QUARRY);
const room = (bed: string, on: string, season = LANE) => {
  const found = roomIn(season, bed, isoDay(on));
  if (!found) throw new Error("no such bed");
  return found;
};

describe("the room of a bed", () => {
  test("tells who stands there, who comes, and what is free", () => {
    const summer = room("salad-bed", "2027-07-01");
    expect(summer.standing.map(({ name }) => name)).toEqual(["lettuce"]);
    expect(summer.freeShare).toBeGreaterThan(0);
    expect(room("garlic-bed", "2027-07-01").coming.map(({ name }) => name)).toEqual(["garlic"]);
    expect(room("garlic-bed", "2027-07-01")).toMatchObject({ standing: [], freeShare: 1 });
  });

  test("is plain JSON", () => {
    const told = room("salad-bed", "2027-06-01");
    expect(JSON.parse(JSON.stringify(told))).toEqual(told);
  });

  test("names the families that stood there too few years ago", () => {
    const season = yearOf(bedOf(["potato: 9 plants"], { year: 2026 }), bedOf(["beet: 1 rows"]));
    expect(room("long-bed", "2027-06-01", season).away).toEqual([
      { family: "nightshade family", had: "potato", year: 2026 },
    ]);
    expect(room("salad-bed", "2027-06-01").away).toEqual([]);
  });

  test("names plantings whose days nobody knows", () => {
    const season = yearOf(bedOf(["moonflower: 3 plants", "beet: 1 rows"]));
    expect(room("long-bed", "2027-06-01", season).unknown).toEqual(["moonflower"]);
  });

  test("has crops of years apart from the rest", () => {
    const { crops, perennials } = room("salad-bed", "2027-06-01");
    const isForYears = (crop: string) => {
      const facts = cropOf(crop);
      return facts !== null && "perennial" in facts && facts.perennial !== null;
    };
    expect(crops.some(({ crop }) => isForYears(crop))).toBe(false);
    expect(perennials.every(({ crop }) => isForYears(crop))).toBe(true);
  });

  test("answers for a year that no plan is written for yet", () => {
    const next = room("salad-bed", "2029-05-20");
    expect(next.standing).toEqual([]);
    const verdicts = (on: string) => room("root-bed", on).crops.map(({ verdict }) => verdict);
    expect(verdicts("2029-05-20")).toEqual(verdicts("2027-05-20"));
  });

  test("is null where no plan has such a bed", () => {
    expect(roomIn(LANE, "sald-bed", isoDay("2027-05-20"))).toBeNull();
  });
});

test("what is free in each bed is what the room of each says", () => {
  const day = isoDay("2027-07-01");
  const free = freeInBeds(LANE, day);
  expect([...free.keys()]).toEqual(["bags", "root-bed", "salad-bed", "south-bed", "garlic-bed"]);
  for (const [bed, space] of free) expect(room(bed, "2027-07-01")).toMatchObject(space);
});

import { expect, test } from "vitest";
import {
  fullestDay,
  meet,
  standingByBed,
  standsOn,
} from "../../../../src/views/pictures/from-above/standing.ts";
import { isoDay, QUARRY } from "../../../gardens.ts";
import { bedsSketchOf, standing } from "./beds.ts";

test("plantings stand in their beds with what is said of them, in the plan's order", () => {
  const all = standingByBed(bedsSketchOf(QUARRY, "2027-06-20"));
  expect(all.get("root-bed")?.map(({ name }) => name)).toEqual(["Carrots", "Beets"]);
  expect(all.get("root-bed")?.[0]?.amount).toEqual({ kind: "rows", count: 3 });
  expect(all.get("bags")?.[0]?.spacing?.apartCm).toBeGreaterThan(10);
});

test("raised plants stand in the bed from the day they are set out", () => {
  const [tomato] = standingByBed(bedsSketchOf(QUARRY, "2027-06-20")).get("south-bed") ?? [];
  if (!tomato) throw new Error("no tomato");
  expect(standsOn(tomato, isoDay("2027-05-10"))).toBe(false);
  expect(standsOn(tomato, isoDay("2027-06-20"))).toBe(true);
  expect(standsOn(tomato, tomato.sowings[0]?.gone ?? isoDay("2027-06-20"))).toBe(false);
});

test("two of a name in one bed are told apart by their varieties", () => {
  const twice = QUARRY.replace(
    "- tomato: 6 plants, from seed indoors",
    "- tomato: early one, 6 plants, bought\n      - tomato: late one, 6 plants, bought",
  );
  const names = standingByBed(bedsSketchOf(twice, "2027-06-20")).get("south-bed");
  expect(names?.map(({ name }) => name)).toEqual(["Tomatoes (early one)", "Tomatoes (late one)"]);
});

test("what stands in a bed that the plan does not have stands in none", () => {
  const bare = bedsSketchOf(QUARRY, "2027-06-20");
  const plan = { ...bare.plan, beds: bare.plan.beds.slice(0, 1) };
  const rest = standingByBed({ ...bare, plan }).get(null) ?? [];
  expect(rest.map(({ name }) => name)).toContain("Carrots");
});

test("two meet where any of their sowings are there at once", () => {
  const early = standing("early", {}, ["2027-05-01", "2027-06-01"]);
  const late = standing("late", {}, ["2027-06-01", "2027-07-01"]);
  expect(meet(early, late)).toBe(false);
  expect(meet(early, standing("both"))).toBe(true);
});

test("the fullest day is one on which most stands, within the season", () => {
  const sketch = bedsSketchOf(QUARRY, "2027-06-20");
  const count = (day: number) =>
    [...standingByBed(sketch).values()]
      .flat()
      .filter((each) => standsOn(each, (isoDay("1970-01-01") + day) as never)).length;
  const day = fullestDay(sketch);
  const most = Math.max(...Array.from({ length: 360 }, (_, i) => count(isoDay("2027-01-01") + i)));
  expect(count(day)).toBe(most);
});

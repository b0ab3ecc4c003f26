import { describe, expect, it } from "vitest";
import type { Planting } from "../../../src/garden/model/plan.ts";
import { least, PLAN, planOf, read, told } from "./canonical.ts";

function planting(item: string): Planting {
  const found = planOf(least(`crops:\n  - ${item}`)).plantings[0];
  if (!found) throw new Error("no planting");
  return found;
}

describe("plantings", () => {
  it("are the same written as phrase, as keys under the crop, or as keys", () => {
    const phrase = planting("potato: early red, 18 plants, sprouted first");
    const under = planting("potato: {variety: early red, plants: 18, sprouted first: true}");
    const keys = planting("{crop: potato, variety: early red, plants: 18, sprouted first: true}");
    const rest = ({ at: _, ...planting }: Planting) => planting;
    expect(rest(under)).toEqual(rest(phrase));
    expect(rest(keys)).toEqual(rest(phrase));
  });

  it("may be under a bed or under none", () => {
    expect(PLAN.plantings[0]?.bed).toBe("bags");
    expect(planting("carrot").bed).toBeNull();
    const both = planOf(least("crops:\n  - carrot\nbeds:\n  A b:\n    crops:\n      - beet"));
    expect(both.plantings.map(({ key, bed }) => [key, bed])).toEqual([
      ["2027/carrot", null],
      ["2027/beet", "a-b"],
    ]);
  });

  it("are known by name, else by crop and variety, in every name of the trade", () => {
    expect(planting("carrot: called Summer roots").key).toBe("2027/summer-roots");
    expect(planting("carrot: long orange, 3 rows").key).toBe("2027/carrot-long-orange");
    expect(planting("beetroot").key).toBe("2027/beet");
    expect(planting("beetroot")).toMatchObject({ crop: "beet", written: "beetroot", known: true });
    expect(planting("Spuds").crop).toBe("potato");
  });

  it("keep their key under a new name with was", () => {
    expect(planting("{crop: carrot, name: late roots, was: summer roots}").key).toBe(
      "2027/summer-roots",
    );
    expect(planting("{crop: carrot, name: late roots, was: summer roots}").name).toBe("late roots");
  });

  it("keep their key with was, where the first name was a crop's in any name of the trade", () => {
    expect(planting("{crop: beet, name: red ones, was: beetroot}").key).toBe(
      planting("beetroot").key,
    );
    expect(planting("{crop: carrot, name: roots, was: 'carrots, long orange'}").key).toBe(
      planting("carrots: long orange").key,
    );
    expect(planting("{crop: beet, name: late, was: beetroot patch}").key).toBe(
      planting("{crop: beet, name: beetroot patch}").key,
    );
  });

  it("keep their key whatever bed, order and days they get", () => {
    const keys = (crops: string) =>
      planOf(least(crops))
        .plantings.map(({ key }) => key)
        .sort();
    const one = keys("crops:\n  - carrot\n  - beet: 3 rows");
    expect(keys("crops:\n  - beet: sow 3 May\nbeds:\n  X:\n    crops:\n      - carrot")).toEqual(
      one,
    );
  });

  it("ask for a name where two are alike, at the second", () => {
    const { problems } = read(least("crops:\n  - carrot: 3 rows\n  - carrots: sow 3 Jul"));
    expect(problems.map(({ code, at }) => [code, at.line])).toEqual([["alike", 9]]);
    expect(problems[0]?.shouldBe).toContain("name:");
    expect(told(least("crops:\n  - carrot: 3 rows\n  - carrot: called late, sow 3 Jul"))).toEqual(
      [],
    );
  });

  it("stay in the plan where the facts do not know the crop, which is a doubt", () => {
    const { plan, problems } = read(least("crops:\n  - Moon flower: 3 rows"));
    expect(plan?.plantings[0]).toMatchObject({
      crop: "moon-flower",
      known: false,
      start: "seed outdoors",
    });
    expect(problems.map(({ code }) => code)).toEqual(["crop-unknown"]);
    expect(read(least("crops:\n  - tomatoe")).problems[0]?.shouldBe).toBe("Did you mean tomato");
  });

  it("are for a person of the plan", () => {
    const text = least("people:\n  Zoë: {was: Zoe B}\ncrops:\n  - carrot: for zoë");
    expect(planOf(text).plantings[0]?.whose).toBe("zoe-b");
  });
});

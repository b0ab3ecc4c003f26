import { describe, expect, test } from "vitest";
import { sayDay } from "../../../src/base/index.ts";
import { bedRowsOf } from "../../../src/views/pictures/beds.ts";
import { QUARRY, tellOf } from "../../gardens.ts";
import { GARDENS, on, sketchOf } from "./drawn.ts";

const rows = bedRowsOf(sketchOf(QUARRY));
const plant = (name: string) =>
  rows.flatMap((row) => row.plants).find((each) => each.name.startsWith(name));

test("beds come in the plan's order, each with its own plantings", () => {
  expect(rows.map(({ name, plants }) => [name, plants.map((each) => each.name)])).toEqual([
    ["Bags", ["Potatoes"]],
    ["Root bed", ["Carrots", "Beets"]],
    ["Salad bed", ["Lettuce"]],
    ["South bed", ["Tomatoes"]],
    ["Garlic bed", ["Garlic"]],
  ]);
});

describe("the words of a planting", () => {
  test("say when it goes in, out, and is ready", () => {
    expect(plant("Beets")?.days).toMatch(/^sown \d+ Apr, ready \d+ July$/);
    expect(plant("Potatoes")?.days).toMatch(/^planted /);
    expect(plant("Tomatoes")?.days).toMatch(/^sown \d+ \w+, out \d+ \w+, ready /);
  });

  test("leave out what comes after this season", () => {
    expect(plant("Garlic")?.days).toMatch(/^planted \d+ \w+$/);
  });

  test("say that it is not ready here where it is not, and the first ready sowing where one is", () => {
    const [field] = bedRowsOf(sketchOf(GARDENS["two months without frost"] ?? ""));
    const said = (name: string) => field?.plants.find((each) => each.name === name);
    expect(said("Sweet corn")?.days).toMatch(/^sown \d+ \w+, not ready here$/);
    expect(said("Sweet corn")?.brief).toMatch(/^\d+ \w+, not ready here$/);
    expect(said("Radishes")?.days).toMatch(/^sown \d+ \w+, ready \d+ July$/);
  });

  test("say from when to when one eats of what is picked for weeks, over all its sowings", () => {
    const [lettuce] = rows[2]?.plants ?? [];
    expect(lettuce?.days).toMatch(/^sown \d+ \w+, 3 sowings, ready \d+ \w+ to \d+ \w+$/);
    const [first, last] = [lettuce?.lives[0], lettuce?.lives.at(-1)];
    expect(lettuce?.brief).toContain(`ready ${sayDay(first?.full ?? on("2027-01-01"))} to `);
    expect(lettuce?.brief).toContain(` to ${sayDay(last?.ends ?? on("2027-01-01"))}`);
  });

  test("keep the crop's name as it was written, and its kind", () => {
    const [row] = bedRowsOf(
      sketchOf(QUARRY.replace("- beet: 2 rows", "- beetroot: Boltardy, 2 rows")),
    ).slice(1);
    expect(row?.plants.map((each) => each.name)).toContain("Beetroot (Boltardy)");
  });
});

test("what stands in no bed comes last, and a garden with nothing has one empty row", () => {
  const none = bedRowsOf(sketchOf(GARDENS["no beds, nobody, no latitude"] ?? ""));
  expect(none.map(({ bed, name }) => [bed, name])).toEqual([[null, ""]]);
  const empty = bedRowsOf(sketchOf(GARDENS["nothing in it"] ?? ""));
  expect(empty.map(({ name, plants }) => [name, plants.length])).toEqual([["Bare bed", 0]]);
});

test("what went in last autumn stands in this year's beds, and no longer once it is lifted", () => {
  const next = QUARRY.replace("year: 2027", "year: 2028").replace(
    "garlic: 60 cloves, plant this October",
    "beet: second, 1 row",
  );
  const { year } = tellOf([QUARRY, next], { on: "2028-03-01" });
  const sketch = { ...sketchOf(QUARRY), year };
  const names = (of: number) =>
    bedRowsOf({ ...sketch, plan: year.plans[of - 2027] ?? sketch.plan })
      .find(({ name }) => name === "Garlic bed")
      ?.plants.map((each) => each.name);
  expect(names(2028)).toEqual(["Garlic", "Beets (second)"]);
  expect(names(2027)).toEqual(["Garlic"]);
});

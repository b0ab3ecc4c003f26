import { describe, expect, test } from "vitest";
import { sharedNets } from "../../src/beds/nets.ts";
import { bedOf, grownIn } from "./gardens.ts";

const shared = (...crops: readonly string[]) =>
  sharedNets(grownIn(bedOf(crops))).map(({ against, plantings }) => [
    against,
    ...plantings.map(({ crop }) => crop),
  ]);

describe("what shares a net", () => {
  test("is what stands in one bed at the same time with the same pest", () => {
    expect(shared("lettuce: 2 rows", "pea: 2 rows", "potato: 4 plants")).toEqual([
      ["birds", "pea", "lettuce"],
    ]);
  });

  test("is nothing alone, nor with another pest", () => {
    expect(shared("beet: 2 rows", "potato: 4 plants")).toEqual([]);
    expect(shared("beet: 2 rows", "carrot: 2 rows, under a net")).toEqual([]);
  });

  test("is nothing that comes when the other has gone, nor in another bed", () => {
    const [one, two] = ["pea: 2 rows, sow 20 Apr", "lettuce: 2 rows, sow 1 Aug"];
    expect(shared(one, two.replace("1 Aug", "10 May"))).toHaveLength(1);
    expect(
      shared("radish: 1 rows, under a net, sow 20 Apr", "turnip: 1 rows, under a net, sow 20 Jul"),
    ).toEqual([]);
    const other = `${bedOf([one])}  Short bed:\n    is: 4 x 4 ft\n    crops:\n      - lettuce: 2 rows\n`;
    expect(sharedNets(grownIn(other))).toEqual([]);
  });

  test("needs it from the first of them to the last", () => {
    const grown = grownIn(bedOf(["lettuce: 2 rows", "pea: 2 rows"]));
    const lives = grown.flatMap((each) => each.lives);
    const [net] = sharedNets(grown);
    expect(net?.from).toBe(Math.min(...lives.map(({ starts }) => starts)));
    expect(net?.to).toBe(Math.max(...lives.map(({ ends }) => ends)));
  });
});

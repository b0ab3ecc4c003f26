import { describe, expect, it } from "vitest";
import type { Problem } from "../../../src/base/problems/problem.ts";
import { type BagWords, readBags } from "../../../src/garden/plan/bags.ts";
import { wordsAt } from "../../../src/garden/plan/tree.ts";

const HERE = { file: "f", line: 1, column: 1 };

function bagsOf(each: string, ...rest: readonly string[]) {
  const problems: Problem[] = [];
  const filled: { what: string; value: string; why: string }[] = [];
  const words: BagWords = {
    count: 2,
    each,
    first: wordsAt(`2 bags ${each}`, HERE),
    rest: rest.map((text) => wordsAt(text, HERE)),
  };
  const bags = readBags(words, "Tubs", { problems, filled });
  return { bags, problems: problems.map(({ code }) => code), filled };
}

describe("bags", () => {
  it("are as large as said, and nothing is filled in", () => {
    const { bags, problems, filled } = bagsOf("", "16 in across", "14 in high");
    expect([bags.count, bags.across.si, bags.high.si]).toEqual([2, 40.64, 35.56]);
    expect([problems, filled]).toEqual([[], []]);
  });

  it("are the usual size where nothing is said, and that is listed", () => {
    expect(bagsOf("").filled).toEqual([
      {
        what: "bags of Tubs",
        value: "16 in across, 14 in high",
        why: "the plan does not say their size; house rule",
      },
    ]);
  });

  it("hold what is said of one of them", () => {
    const { bags, filled } = bagsOf("of 40 l");
    expect((Math.PI * (bags.across.si / 2) ** 2 * bags.high.si) / 1000).toBeCloseTo(40, 5);
    expect(filled[0]?.why).toContain("from what one holds");
    expect(bagsOf("", "40 l", "50 cm across").bags.high.si).toBeCloseTo(20.37, 1);
  });

  it("report what no bag can be", () => {
    expect(bagsOf("", "sunny").problems).toEqual(["unknown-word"]);
    expect(bagsOf("", "16 across").problems).toEqual(["quantity-unclear"]);
  });
});

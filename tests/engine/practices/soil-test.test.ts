import { describe, expect, test } from "vitest";
import { SOIL_TEST } from "../../../src/engine/practices/soil-test.ts";
import { tellOf } from "../../gardens.ts";
import { planWith } from "./garden.ts";

const BEETS = planWith(["beet: 1 row"]);
const told = (year: number, text = BEETS) =>
  tellOf(text.replace("year: 2027", `year: ${year}`), { on: `${year}-01-01` }).scheduled.filter(
    ({ task }) => task.practice === SOIL_TEST.name,
  );

describe("a soil test", () => {
  test("is a week after the usual first frost, every third year", () => {
    expect([2026, 2027, 2028, 2029].map((year) => told(year).length)).toEqual([0, 0, 1, 0]);
    const [test] = told(2028);
    expect(test?.task.basis).toEqual(["first frost"]);
    expect(test?.task.title.object).toBe("soil for a test");
  });

  test("is none without beds of soil", () => {
    const bags = BEETS.replace("is: 12 x 4 ft", "is: 6 grow bags, 16 in across, 14 in high");
    expect(told(2028, bags)).toEqual([]);
  });
});

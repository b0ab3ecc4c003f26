import { describe, expect, test } from "vitest";
import {
  caution,
  householdOnly,
  how,
  lengthRange,
  sign,
  why,
} from "../../../src/engine/practices/sentence.ts";
import { words } from "./told.ts";

describe("a sentence", () => {
  test("stands in its part, and is for all", () => {
    const all = [how("Water."), sign("It is dry."), why("No rain."), caution("Mind the step.")];
    expect(all.map(({ part }) => part)).toEqual(["how", "sign", "why", "caution"]);
    expect(all.every((each) => each.for === "all")).toBe(true);
  });

  test("can be kept for the household, the same in all else", () => {
    expect(householdOnly(why("Oda is away."))).toEqual({
      part: "why",
      for: "household",
      pieces: ["Oda is away."],
    });
  });
});

describe("lengths", () => {
  test("from least to most are told with both ends", () => {
    expect(words([how("To ", lengthRange([5.08, 7.62]), " apart.")])).toBe(
      "how: To 2 to 3 in apart.",
    );
  });

  test("of one value are told once", () => {
    expect(words([how(lengthRange([5.08, 5.08]), " apart.")])).toBe("how: 2 in apart.");
  });
});

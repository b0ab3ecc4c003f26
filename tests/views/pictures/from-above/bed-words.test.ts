import { describe, expect, test } from "vitest";
import {
  asInSentence,
  bedsInWords,
  sizeText,
  textOf,
} from "../../../../src/views/pictures/from-above/bed-words.ts";
import { detailsOf } from "../../../../src/views/pictures/from-above/details.ts";
import { QUARRY } from "../../../gardens.ts";
import { BEDS, bedsSketchOf } from "./beds.ts";

describe("the size of a bed in words", () => {
  const sizes = (text: string, measures: "us" | "metric") =>
    bedsSketchOf(text, "2027-06-20").plan.beds.map((bed) => sizeText(bed, measures));

  test("says what it is and how large, as the household measures", () => {
    expect(sizes(QUARRY, "us").slice(0, 2)).toEqual(["6 of 16 in", "12 × 4 ft"]);
    const odd = BEDS["glass, film, pots and cloches"] ?? "";
    const [glass, film, frame, pots, low] = sizes(odd, "metric");
    expect(frame).toBe("cold frame, 2.7 × 1.2 m");
    expect(glass).toBe("greenhouse, 3 × 2.4 m");
    expect(film).toBe("tunnel, 6 × 3 m");
    expect(pots).toMatch(/^7 of \d+ cm$/);
    expect(low).toBe("4 × 1.2 m");
  });

  test("says that none is given", () => {
    expect(sizes(BEDS["no sizes, no amounts"] ?? "", "metric")[0]).toBe("no size given");
  });
});

test("the beds in words: names with sizes, and what stands in each", () => {
  const words = bedsInWords(bedsSketchOf(QUARRY, "2027-06-20"));
  expect(words[1]).toEqual({ name: "Root bed, 12 × 4 ft", text: "Carrots and beets." });
  expect(words[4]).toEqual({ name: "Garlic bed, 8 × 4 ft", text: "Empty." });
});

test("what is said of a bed follows what stands in it; nothing at all is nothing", () => {
  const sketch = bedsSketchOf(QUARRY, "2027-06-20");
  const { beds, rest } = detailsOf(sketch);
  const [bags] = beds;
  if (!bags) throw new Error("no bags");
  const note = { ...bags.note, lines: ["Hill potatoes."] };
  expect(textOf({ ...bags, note }, sketch, "Empty")).toBe("Potatoes. Hill potatoes.");
  expect(textOf(rest, sketch, "")).toBe("");
  expect(asInSentence("Beets")).toBe("beets");
});

import { expect, test } from "vitest";
import { detailsOf, namesIn } from "../../../../src/views/pictures/from-above/details.ts";
import { QUARRY } from "../../../gardens.ts";
import { bedsSketchOf } from "./beds.ts";

const note = (bed: string | null) => ({ bed, lines: ["Thin beets."], marks: [], freeCm: null });

test("all beds are drawn in the plan's order, or those with a note alone", () => {
  const keys = (alone: boolean) =>
    detailsOf(
      bedsSketchOf(QUARRY, "2027-06-20", {
        notes: { text: "", beds: [note("root-bed"), note("bags")], alone },
      }),
    ).beds.map(({ bed }) => bed.key);
  expect(keys(false)).toEqual(["bags", "root-bed", "salad-bed", "south-bed", "garlic-bed"]);
  expect(keys(true)).toEqual(["bags", "root-bed"]);
});

test("a bed's names are those of what stands, and of what is marked", () => {
  const sketch = bedsSketchOf(QUARRY, "2027-05-12");
  const [, root] = detailsOf(sketch).beds;
  if (!root) throw new Error("no root bed");
  expect(namesIn(root, sketch)).toEqual(["Carrots", "Beets"]);
  const south = detailsOf(sketch).beds[3];
  if (!south) throw new Error("no south bed");
  const marks = [{ planting: "2027/tomato", as: "do" } as const];
  expect(namesIn(south, sketch)).toEqual([]);
  expect(namesIn({ ...south, note: { ...south.note, marks } }, sketch)).toEqual(["Tomatoes"]);
});

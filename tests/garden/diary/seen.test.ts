import { expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { stagesIn } from "../../../src/garden/diary/seen.ts";
import { on, PLAN } from "../plan/canonical.ts";

const line = { day: on(8, 1), text: "", at: { file: "f", line: 1, column: 1 } };
const seen = (text: string) =>
  stagesIn(line, text, { plans: [PLAN], vocabulary: PRACTICES })?.map((each) =>
    each.kind === "seen" ? `${each.planting} ${each.stage}` : each.kind === "note" && each.why,
  ) ?? null;

test("a stage is seen of each planting that is named", () => {
  expect(seen("carrots and beets up")).toEqual(["2027/carrot up", "2027/beet up"]);
  expect(seen("picked the first carrots")).toEqual(["2027/carrot first ripe"]);
  expect(seen("radish up")).toEqual(["no planting is called radish"]);
  expect(seen("carrots thinned")).toBeNull();
});

test("one first fruit is ripe, and a first of what is no fruit says nothing", () => {
  expect(seen("first tomato")).toEqual(["2027/tomato first ripe"]);
  expect(seen("first tomatoes")).toBeNull();
  expect(seen("first beet")).toBeNull();
});

test("what is planted months later is not seen yet", () => {
  expect(
    stagesIn({ ...line, day: on(3, 1) }, "second garlic up", {
      plans: [
        {
          ...PLAN,
          plantings: PLAN.plantings.map((p) =>
            p.name === "second garlic" ? { ...p, fixed: { ...p.fixed, start: on(10, 14) } } : p,
          ),
        },
      ],
      vocabulary: PRACTICES,
    })?.map(({ kind }) => kind),
  ).toEqual(["note"]);
});

import { describe, expect, test } from "vitest";
import { frostPicture } from "../../../src/views/pictures/frost.ts";
import { QUARRY } from "../../gardens.ts";
import { GARDENS, labelsOf, pointsOf, read, sketchOf } from "./drawn.ts";
import { byId, type Tag, under } from "./xml.ts";

const svg = read(frostPicture(sketchOf(QUARRY)));
const words = (tag: Tag) => labelsOf(tag).map((label) => label.text);

/** The edge of a drift, and the ground and top it stands between: its body's lowest point, and where certainty lies. */
function edge(part: "spring" | "autumn") {
  const [body, line] = under(byId(svg, `frost-${part}`), "path").map((path) =>
    pointsOf(path.attributes.d ?? ""),
  );
  const groundY = Math.max(...(body ?? []).map(({ y }) => y));
  return { points: line ?? [], groundY };
}

describe("the drifts", () => {
  test("the spring one only falls, the autumn one only rises", () => {
    const rises = (points: readonly { readonly y: number }[]) =>
      points.slice(1).map(({ y }, i) => (points[i]?.y ?? y) - y);
    expect(edge("spring").points.length).toBeGreaterThan(10);
    expect(rises(edge("spring").points).filter((rise) => rise > 0)).toEqual([]);
    expect(rises(edge("autumn").points).filter((rise) => rise < 0)).toEqual([]);
  });

  test("each passes one half at its usual date, where its mark stands", () => {
    for (const part of ["spring", "autumn"] as const) {
      const marks = under(byId(svg, `frost-${part}`), "circle").map(({ attributes }) => ({
        x: Number(attributes.cx),
        y: Number(attributes.cy),
      }));
      const [first, usual, last] = marks;
      const middle = ((first?.y ?? 0) + (last?.y ?? 0)) / 2;
      expect(usual?.y).toBeCloseTo(middle, 0);
      expect(edge(part).points).toContainEqual(usual);
      const tenth = Math.max(first?.y ?? 0, last?.y ?? 0);
      expect((edge(part).groundY - (usual?.y ?? 0)) / (edge(part).groundY - tenth)).toBeCloseTo(
        5,
        0,
      );
    }
  });
});

test("the garden's own dates stand in it with their odds", () => {
  const said = words(svg);
  for (const date of ["20 Apr early", "6 May usual", "21 May late", "17 Sep early", "2 Oct usual"])
    expect(said).toContain(date);
  expect(said).toContain("9 springs in 10");
  expect(said).toContain("149 days between the usual frosts");
});

test("the day for raised plants is marked at the plan's own risk, and said in words", () => {
  const at = (text: string) => words(read(frostPicture(sketchOf(text)))).join(" ");
  expect(at(QUARRY)).toContain(
    "go out from 21 May. Frost still comes after that in 1 spring in 10.",
  );
  const bold = QUARRY.replace("raised: 1 spring in 10", "raised: 1 spring in 2");
  expect(at(bold)).toContain("go out from 6 May. Frost still comes after that in 1 spring in 2.");
});

test("today is told with its odds, and no day is drawn where there is none", () => {
  expect(words(svg)).toContain("today 25 May: 1 spring in 20");
  const without = words(read(frostPicture(sketchOf(QUARRY, "phone", null))));
  expect(without.filter((said) => said.startsWith("today"))).toEqual([]);
});

test("a place without frost says so and has no drift", () => {
  const shore = read(frostPicture(sketchOf(GARDENS["no frost"] ?? "")));
  expect(words(shore).join(" ")).toContain("No frost is expected here");
  expect(under(shore, "g").filter(({ attributes }) => attributes.id?.startsWith("frost-"))).toEqual(
    [],
  );
});

test("where there is no frost the ground is drawn as warm as it is", () => {
  const shore = read(frostPicture(sketchOf(GARDENS["no frost"] ?? "")));
  expect(under(byId(shore, "frost-ground"), "stop").length).toBeGreaterThan(2);
  expect(() => byId(svg, "frost-ground")).toThrow();
});

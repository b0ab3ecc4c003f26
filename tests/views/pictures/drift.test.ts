import { expect, test } from "vitest";
import {
  chanceOn,
  drawDrift,
  edgeAt,
  type FrostField,
  xAtChance,
} from "../../../src/views/pictures/drift.ts";
import { planOf, QUARRY } from "../../gardens.ts";
import { on } from "./drawn.ts";
import { parse, under } from "./xml.ts";

const { lastFrost, firstFrost } = planOf(QUARRY).site;
if (!lastFrost || !firstFrost) throw new RangeError("the garden has frost");
const field: FrostField = {
  scale: { from: on("2027-04-01"), to: on("2027-10-31"), leftPx: 0, rightPx: 428 },
  topPx: 100,
  groundPx: 300,
};

test("the chance falls through spring and rises through autumn, one half on the usual date", () => {
  expect(chanceOn(lastFrost, "spring", on("2027-05-06"))).toBeCloseTo(0.5, 2);
  expect(chanceOn(lastFrost, "spring", on("2027-05-21"))).toBeCloseTo(0.1, 2);
  expect(chanceOn(firstFrost, "autumn", firstFrost.late)).toBeCloseTo(0.9, 2);
});

test("the edge stands as high as the chance", () => {
  expect(edgeAt(lastFrost, "spring", { day: on("2027-05-06"), field }).y).toBeCloseTo(200, 0);
  expect(xAtChance(lastFrost, "spring", { chance: 0.5, field })).toBe(70);
  expect(xAtChance(firstFrost, "autumn", { chance: 0.5, field })).toBe(368);
});

test("a drift has a body, an edge and a mark at each of three dates", () => {
  const svg = parse(drawDrift(lastFrost, "spring", field));
  expect(svg.attributes.id).toBe("frost-spring");
  expect(under(svg, "path").length).toBe(2);
  const days = [lastFrost.early, lastFrost.usual, lastFrost.late];
  expect(under(svg, "circle").map(({ attributes }) => Number(attributes.cx))).toEqual(
    days.map((day) => edgeAt(lastFrost, "spring", { day, field }).x),
  );
});

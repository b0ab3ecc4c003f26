import { describe, expect, test } from "vitest";
import type { Day } from "../../../src/base/days/day.ts";
import { seasonOf } from "../../../src/garden/model/season.ts";
import { bedRowsOf } from "../../../src/views/pictures/beds.ts";
import { monthsOf, type Scale, xOf } from "../../../src/views/pictures/scale.ts";
import { seasonPicture } from "../../../src/views/pictures/season.ts";
import { QUARRY } from "../../gardens.ts";
import { inOtherZones } from "../../zones.ts";
import { GARDENS, labelsOf, on, pointsOf, read, sketchOf } from "./drawn.ts";
import { type Tag, under } from "./xml.ts";
import { allPictures } from "./zone.ts";

const sketch = sketchOf(QUARRY);
const svg = read(seasonPicture(sketch));
const words = (tag: Tag) => labelsOf(tag).map((label) => label.text);

/** The demo's own months on a phone: April to November. */
const SCALE: Scale = { from: on("2027-04-01"), to: on("2027-11-30"), leftPx: 16, rightPx: 374 };

/** The days of a planting's first sowing, and the outline it is drawn with. */
function drawn(key: string) {
  const plant = bedRowsOf(sketch)
    .flatMap((row) => row.plants)
    .find(({ planting }) => planting.key === key);
  const life = plant?.lives[0];
  if (!life) throw new RangeError(`no ${key}`);
  const fill = `url(#of-${key.replace("/", "_2f")}-1)`;
  const shape = under(svg, "path").find(({ attributes }) => attributes.fill === fill);
  return { life, points: pointsOf(shape?.attributes.d ?? "") };
}

const x = (day: Day) => Math.round(xOf(SCALE, day) * 10) / 10;

describe("the silhouette of carrots", () => {
  const { life, points } = drawn("2027/carrot");
  const placed = (practice: string) =>
    sketch.year.scheduled.find(
      ({ task }) => task.id.startsWith("2027/carrot") && task.practice === practice,
    )?.day;

  test("begins at the day they are sown", () => {
    expect(life.starts).toBe(placed("sow outdoors"));
    expect(Math.min(...points.map((point) => point.x))).toBe(x(life.starts));
  });

  test("is tallest at the first harvest", () => {
    expect(life.full).toBe(placed("harvest"));
    const tallest = points.reduce((best, each) => (each.y < best.y ? each : best));
    expect(tallest.x).toBe(x(life.full));
  });

  test("shows above the soil only when they are up", () => {
    const soilY = points[0]?.y ?? 0;
    expect(life.up).toBeGreaterThan(life.starts);
    const above = points.filter((point) => point.y < soilY - 0.1).map((point) => point.x);
    expect(Math.min(...above)).toBeGreaterThan(x(life.up));
  });
});

test("what is raised indoors starts in its bed on the day it is set out", () => {
  const { life, points } = drawn("2027/tomato");
  expect(life.out).not.toBeNull();
  expect(Math.min(...points.map((point) => point.x))).toBe(x(life.out ?? life.starts));
});

test("each sowing of a succession is drawn", () => {
  const shapes = under(svg, "path").filter(({ attributes }) =>
    attributes.fill?.startsWith("url(#of-2027_2flettuce-"),
  );
  expect(shapes.length).toBe(3);
  expect(words(svg).join("\n")).toMatch(/^Lettuce sown \d+ \w+, ready \d+ \w+ to \d+ \w+$/m);
});

test("beds stand in the plan's order, with the months along the top and today named", () => {
  const beds = ["Bags", "Root bed", "Salad bed", "South bed", "Garlic bed"];
  const said = labelsOf(svg);
  const found = beds.map((bed) => said.find((label) => label.text === bed)?.box.y ?? Number.NaN);
  expect(found).toEqual([...found].sort((a, b) => a - b));
  const top = said.find((label) => label.text === "Jul")?.box.y ?? 0;
  expect(top).toBeLessThan(found[0] ?? 0);
  expect(words(svg)).toContain("today 25 May");
  expect(monthsOf(SCALE).length).toBe(8);
});

test("it is told planting by planting for whoever cannot see it", () => {
  const desc = under(svg, "desc")
    .flatMap((tag) => tag.children)
    .join("");
  expect(desc).toMatch(/Carrots, Root bed: sown \d+ Apr, ready \d+ July\./);
  expect(desc).toMatch(/Tomatoes, South bed: sown \d+ \w+, out \d+ \w+, ready/);
});

test("a crop that is not known keeps its name and has no shape", () => {
  const small = read(seasonPicture(sketchOf(GARDENS["no beds, nobody, no latitude"] ?? "")));
  expect(words(small)).toContain("Quince not known here, so not drawn");
  expect(
    under(small, "linearGradient").filter(({ attributes }) => attributes.id?.includes("quince")),
  ).toEqual([]);
});

test("the months begin with the first thing drawn, though the season begins later", () => {
  const cove = sketchOf(GARDENS["a mild winter"] ?? "");
  const starts = bedRowsOf(cove).flatMap(({ plants }) =>
    plants.flatMap((plant) => plant.lives.map((life) => life.starts)),
  );
  const first = Math.min(...starts);
  expect(first).toBeLessThan(seasonOf(cove.plan).from);
  const tag = read(seasonPicture(cove));
  const [month] = words(tag).filter((said) => /^[A-Z]([a-z]{2})?$/.test(said));
  expect(month?.charAt(0)).toBe("D");
  expect(words(tag).join("\n")).toMatch(/^Lettuce sown \d+ Dec/m);
});

test("a southern season runs on over the new year", () => {
  const south = read(
    seasonPicture(sketchOf(GARDENS["a southern year, over the new year"] ?? "", "phone", null)),
  );
  const months = words(south)
    .filter((said) => /^[A-Z]([a-z]{2})?$/.test(said))
    .join(" ");
  expect(months).toMatch(/Dec Jan|D J/);
});

test("the bytes are the same in every time zone that the process may stand in", () => {
  const here = allPictures();
  const there = inOtherZones({
    folder: import.meta.dirname,
    ...{ imports: 'import { allPictures } from "./zone.ts";', gives: "allPictures()" },
  });
  for (const [zone, pictures] of there) expect(pictures, zone).toEqual(here);
});

import { describe, expect, test } from "vitest";
import { BEET } from "../../../src/crops/beets.ts";
import { eatingLine, type LaneGround, silhouette } from "../../../src/views/pictures/silhouette.ts";
import { on, pointsOf } from "./drawn.ts";
import { parse, under } from "./xml.ts";

const LIFE = {
  sowing: 1,
  starts: on("2027-05-01"),
  out: null,
  up: on("2027-05-11"),
  full: on("2027-07-10"),
  ready: true,
  ends: on("2027-08-09"),
  gone: on("2027-08-29"),
};
const GROUND: LaneGround = {
  scale: { from: on("2027-04-01"), to: on("2027-10-31"), leftPx: 0, rightPx: 428 },
  soilY: 100,
  topPx: 50,
  rootPx: 8,
};
const drawn = (
  life: typeof LIFE | (Omit<typeof LIFE, "out"> & { readonly out: typeof LIFE.starts }),
  ground = GROUND,
) => parse(`<g>${silhouette("it", life, { crop: BEET, ground })}</g>`);
const outline = (svg: ReturnType<typeof drawn>) =>
  pointsOf(
    under(svg, "path").find(({ attributes }) => attributes.fill === "url(#it)")?.attributes.d ?? "",
  );

describe("one sowing", () => {
  test("runs from the day it goes in to the day the last is gone", () => {
    const xs = outline(drawn(LIFE)).map(({ x }) => x);
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([60, 300]);
  });

  test("keeps to the room above and below the soil", () => {
    const ys = outline(drawn(LIFE)).map(({ y }) => y);
    expect(Math.min(...ys)).toBeGreaterThanOrEqual(50);
    expect(Math.max(...ys)).toBe(108);
  });

  test("fades from the day it ends to the day it is gone", () => {
    const [fade] = under(drawn(LIFE), "linearGradient");
    expect([fade?.attributes.x1, fade?.attributes.x2]).toEqual(["260", "300"]);
    expect(under(drawn(LIFE), "stop").map(({ attributes }) => attributes["stop-opacity"])).toEqual([
      "1",
      "0.12",
    ]);
  });

  test("has its seed in the ground on the day it goes in", () => {
    const [seed] = under(drawn(LIFE), "ellipse");
    expect(seed?.attributes.cx).toBe("60");
  });
});

test("what was raised indoors hangs from a thin line until it goes out, and has no seed in the bed", () => {
  const svg = drawn({ ...LIFE, out: on("2027-06-01") });
  expect(under(svg, "ellipse")).toEqual([]);
  const shelf = under(svg, "path").find(({ attributes }) => attributes.class === "soil-line");
  expect(shelf?.attributes.d).toBe("M60 57.5H122");
});

test("what runs over the edge of the scale ends at it", () => {
  const narrow = {
    ...GROUND,
    scale: { ...GROUND.scale, from: on("2027-06-01"), to: on("2027-07-31") },
  };
  const xs = outline(drawn(LIFE, narrow)).map(({ x }) => x);
  expect([Math.min(...xs), Math.max(...xs)]).toEqual([0, 428]);
});

describe("the line on which one eats of a sowing", () => {
  const lines = (life: Partial<typeof LIFE>) =>
    under(parse(`<g>${eatingLine({ ...LIFE, ...life }, GROUND)}</g>`), "path")
      .filter(({ attributes }) => attributes.class === "ink-line")
      .map(({ attributes: { d, "stroke-dasharray": dashes } }) => [d, dashes !== undefined]);

  test("runs from the first harvest to the last, and dashed on to the day the last is gone", () => {
    expect(lines({})).toEqual([
      ["M200 100H260", false],
      ["M260 100H300", true],
    ]);
  });

  test("is a day at the least, and not there for what does not get ready", () => {
    expect(lines({ ends: LIFE.full })[0]).toEqual(["M200 100H202", false]);
    expect(lines({ ready: false })).toEqual([]);
  });
});

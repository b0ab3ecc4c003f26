import { expect, test } from "vitest";
import {
  monthNames,
  monthsOf,
  type Scale,
  sampleDays,
  shows,
  wholeMonths,
  xInside,
  xOf,
} from "../../../src/views/pictures/scale.ts";
import { on } from "./drawn.ts";
import { parse, textIn, under } from "./xml.ts";

const SCALE: Scale = { from: on("2027-04-01"), to: on("2027-04-30"), leftPx: 10, rightPx: 310 };

test("days stand evenly between the edges, the day behind the last on the right one", () => {
  expect(xOf(SCALE, on("2027-04-01"))).toBe(10);
  expect(xOf(SCALE, on("2027-04-16"))).toBe(160);
  expect(xOf(SCALE, on("2027-05-01"))).toBe(310);
});

test("days outside are told apart, and can be held inside", () => {
  expect(xOf(SCALE, on("2027-03-31"))).toBe(0);
  expect(xInside(SCALE, on("2027-03-31"))).toBe(10);
  expect(xInside(SCALE, on("2027-06-30"))).toBe(310);
  expect(
    [on("2027-03-31"), on("2027-04-30"), on("2027-05-01")].map((day) => shows(SCALE, day)),
  ).toEqual([false, true, false]);
});

test("a span is widened to whole months, over a new year too", () => {
  expect(wholeMonths(on("2027-11-20"), on("2028-02-02"))).toEqual({
    from: on("2027-11-01"),
    to: on("2028-02-29"),
  });
});

test("months and steps of days begin where the scale does, and the last day is always there", () => {
  const two = { ...SCALE, to: on("2027-05-31") };
  expect(monthsOf(two)).toEqual([on("2027-04-01"), on("2027-05-01")]);
  expect(sampleDays(SCALE, 10)).toEqual(
    ["2027-04-01", "2027-04-11", "2027-04-21", "2027-04-30"].map(on),
  );
});

test("months are named by three letters, or by one where there is no room", () => {
  const year = { from: on("2027-01-01"), to: on("2027-12-31"), leftPx: 0, rightPx: 360 };
  const names = (scale: Scale) =>
    under(parse(`<g>${monthNames(scale, 20, 12)}</g>`), "text").map(textIn);
  expect(names({ ...year, rightPx: 800 }).slice(0, 2)).toEqual(["Jan", "Feb"]);
  expect(names({ ...year, rightPx: 200 }).slice(0, 2)).toEqual(["J", "F"]);
});

import { describe, expect, test } from "vitest";
import {
  coordinatesIn,
  isBlankBed,
  isBlankPerson,
} from "../../../src/garden/model/first-answers.ts";
import { bedRow } from "../plan/first-answers.ts";

describe("a place as a map shows it", () => {
  test.each([
    ["46.59, -112.04", 46.59, -112.04],
    ["46.59,-112.04", 46.59, -112.04],
    ["46.5891° N, 112.0391° W", 46.5891, -112.0391],
    ["33.9° S 151.2° E", -33.9, 151.2],
    ["60,1; 10,5", 60.1, 10.5],
    ["−33.9, 18.4", -33.9, 18.4],
  ])("%s is latitude and longitude", (said, latitude, longitude) => {
    expect(coordinatesIn(said)).toEqual({ latitude, longitude });
  });

  test("one number is the latitude alone", () => {
    expect(coordinatesIn("60,1")).toEqual({ latitude: 60.1, longitude: null });
    expect(coordinatesIn("33.9 S")).toEqual({ latitude: -33.9, longitude: null });
  });

  test.each(["Oslo", "46.59, north", "1, 2, 3", "1234", ""])("%s is none", (said) => {
    expect(coordinatesIn(said)).toBeNull();
  });
});

test("a row counts once something is typed in it, whatever is chosen from its list", () => {
  expect(isBlankBed(bedRow({ kind: "pots" }))).toBe(true);
  expect(isBlankBed(bedRow({ count: "6" }))).toBe(false);
  expect(isBlankPerson({ name: "", gardens: "", home: "" })).toBe(true);
  expect(isBlankPerson({ name: "", gardens: "Sat", home: "" })).toBe(false);
});

import { describe, expect, test } from "vitest";
import { checkedDays, isNear } from "../../../src/garden/forecast/answer.ts";
import type { WeatherDay } from "../../../src/garden/model/weather.ts";
import { isoDay } from "../../gardens.ts";
import { QUESTION } from "./answers.ts";

const day = (iso: string, lowC = 2): WeatherDay => ({
  ...{ day: isoDay(iso), lowC, highC: 12, rainMm: null, gustMps: null },
});

describe("an answer's place", () => {
  test("may be a quarter of a degree away, and not a degree", () => {
    expect(isNear(QUESTION, 46.75, -111.25)).toBe(true);
    expect(isNear(QUESTION, 47.6, -111.5)).toBe(false);
  });

  test("is near across the line where west meets east", () => {
    expect(isNear({ latitude: -17, longitude: 179.9 }, -17, -179.9)).toBe(true);
  });
});

describe("an answer's days", () => {
  const three = ["2027-05-10", "2027-05-11", "2027-05-12"].map((iso) => day(iso));

  test("are given in day order", () => {
    expect(checkedDays([...three].reverse(), QUESTION).days).toEqual(three);
  });

  test("twice the same is a gap", () => {
    expect(checkedDays([...three, day("2027-05-12")], QUESTION).fault).toBe(
      "days missing in between",
    );
  });

  test("none at all are too few", () => {
    expect(checkedDays([], QUESTION).fault).toBe("too few days");
  });
});

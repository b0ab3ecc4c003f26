import { describe, expect, test } from "vitest";
import { readMetNorway } from "../../../src/garden/forecast/met-norway.ts";
import { isoDay } from "../../gardens.ts";
import { metNorwayAnswer, QUESTION, type Step } from "./answers.ts";

const read = (text: string) => readMetNorway(text, QUESTION);

/** From noon in the garden (18:00 UTC) on: hours until the next midnight there, then six hours each. */
const STEPS: readonly Step[] = [
  ...Array.from({ length: 12 }, (_, i) => ({
    time: new Date(Date.UTC(2027, 4, 10, 18 + i)).toISOString(),
    air: 12 - i,
    hourMm: i === 0 ? 0.5 : 0.25,
  })),
  ...Array.from({ length: 13 }, (_, i) => ({
    time: new Date(Date.UTC(2027, 4, 11, 6 + 6 * i)).toISOString(),
    air: 5,
    six: { mm: 1, min: i === 0 ? -2 : 3, max: i === 2 ? 16 : 9 },
  })),
];

describe("MET Norway's answer", () => {
  test("is put together day by day by the garden's clock", () => {
    const { days } = read(metNorwayAnswer(STEPS));
    expect(days?.map(({ day }) => day)).toEqual(
      ["2027-05-10", "2027-05-11", "2027-05-12", "2027-05-13"].map(isoDay),
    );
    expect(days?.[0]).toEqual({
      ...{ day: isoDay("2027-05-10"), lowC: 1, highC: 12, rainMm: 3.25, gustMps: 3 },
    });
  });

  test("has the lows between its steps, not only those at them", () => {
    const { days } = read(metNorwayAnswer(STEPS));
    expect(days?.[1]).toMatchObject({ lowC: -2, highC: 16, rainMm: 4 });
  });

  test("has the damp hours of days that are told by the hour", () => {
    const hourly = Array.from({ length: 48 }, (_, i) => ({
      time: new Date(Date.UTC(2027, 4, 10, 18 + i)).toISOString(),
      ...{ air: 12, hourMm: 0, percent: i >= 12 && i < 19 ? 93 : 70 },
    }));
    const { days } = read(metNorwayAnswer([...hourly, ...STEPS.slice(-6)]));
    expect(days?.slice(0, 2).map(({ humidHours }) => humidHours)).toEqual([undefined, 7]);
  });

  test("leaves out a last day that is not whole", () => {
    const { days } = read(metNorwayAnswer(STEPS.slice(0, -2)));
    expect(days?.map(({ day }) => day)).not.toContain(isoDay("2027-05-14"));
    expect(days).toHaveLength(3);
  });

  test.each([
    ["HTML", "<!doctype html>", "no JSON"],
    ["another form", '{"properties":{}}', "not of the documented form"],
    [
      "times that are none",
      metNorwayAnswer([{ time: "soon", air: 3 }]),
      "not of the documented form",
    ],
    [
      "Fahrenheit",
      metNorwayAnswer(STEPS, (all) => ({
        ...all,
        meta: { units: { air_temperature: "fahrenheit" } },
      })),
      "in other units",
    ],
    ["no steps", metNorwayAnswer([]), "too few days"],
    ["another place", metNorwayAnswer(STEPS).replace("-111.5", "10.7"), "of another place"],
  ] as const)("with %s is not used", (_, text, fault) => {
    expect(read(text)).toEqual({ days: null, fault });
  });
});

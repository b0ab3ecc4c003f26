import { describe, expect, test } from "vitest";
import { openMeteoRows, readOpenMeteo } from "../../../src/garden/forecast/open-meteo.ts";
import { isoDay } from "../../gardens.ts";
import { openMeteoAnswer, QUESTION, type Told } from "./answers.ts";

const FOUR: readonly Told[] = [
  [2, 14, 0, 8],
  [-1, 12, 3.5, 12],
  [4, 17],
  [6, 20],
];
const read = (text: string) => readOpenMeteo(text, QUESTION);

describe("Open-Meteo's answer", () => {
  test("is days in the garden's own zone, with rain and gusts where it says them", () => {
    const { days, fault } = read(openMeteoAnswer("2027-05-10", FOUR));
    expect(fault).toBeNull();
    expect(days).toEqual([
      { day: isoDay("2027-05-10"), lowC: 2, highC: 14, rainMm: 0, gustMps: 8 },
      { day: isoDay("2027-05-11"), lowC: -1, highC: 12, rainMm: 3.5, gustMps: 12 },
      { day: isoDay("2027-05-12"), lowC: 4, highC: 17, rainMm: null, gustMps: null },
      { day: isoDay("2027-05-13"), lowC: 6, highC: 20, rainMm: null, gustMps: null },
    ]);
  });

  test("may begin in the past, and a day without figures at its end is left out", () => {
    const text = openMeteoAnswer("2027-05-08", [[1, 9], [0, 8], ...FOUR], (answer) => {
      const daily = answer.daily as Record<string, (number | null)[]>;
      return { ...answer, daily: { ...daily, temperature_2m_min: [1, 0, 2, -1, 4, null] } };
    });
    expect(read(text).days?.map(({ lowC }) => lowC)).toEqual([1, 0, 2, -1, 4]);
  });

  test.each([
    ["a page of HTML", "<html><body>Bad gateway</body></html>", "no JSON"],
    ["nothing at all", "", "no JSON"],
    ["an error", '{"error":true,"reason":"Latitude must be in range"}', "says an error"],
    ["JSON of another form", '{"hello":"world"}', "not of the documented form"],
    [
      "lists of different lengths",
      openMeteoAnswer("2027-05-10", FOUR, (answer) => ({
        ...answer,
        daily: { ...(answer.daily as object), temperature_2m_max: [14] },
      })),
      "not of the documented form",
    ],
    [
      "days that are none",
      openMeteoAnswer("2027-05-10", FOUR, (answer) => ({
        ...answer,
        daily: { ...(answer.daily as object), time: ["a", "b", "c", "d"] },
      })),
      "not of the documented form",
    ],
    [
      "another place",
      openMeteoAnswer("2027-05-10", FOUR, (answer) => ({ ...answer, longitude: 11.5 })),
      "of another place",
    ],
    [
      "Fahrenheit",
      openMeteoAnswer("2027-05-10", FOUR, (answer) => ({
        ...answer,
        daily_units: { ...(answer.daily_units as object), temperature_2m_min: "°F" },
      })),
      "in other units",
    ],
    ["a day of 300 °C", openMeteoAnswer("2027-05-10", [[2, 300], ...FOUR]), "nonsense"],
    ["a low above its high", openMeteoAnswer("2027-05-10", [[20, 3], ...FOUR]), "nonsense"],
    ["rain below nothing", openMeteoAnswer("2027-05-10", [[2, 9, -4], ...FOUR]), "nonsense"],
    ["last year", openMeteoAnswer("2026-05-10", FOUR), "of another time"],
    ["days that begin tomorrow", openMeteoAnswer("2027-05-11", FOUR), "of another time"],
    ["too few days", openMeteoAnswer("2027-05-10", FOUR.slice(0, 2)), "too few days"],
    [
      "a gap",
      openMeteoAnswer("2027-05-10", FOUR, (answer) => ({
        ...answer,
        daily: { ...(answer.daily as object), temperature_2m_min: [2, null, 4, 6] },
      })),
      "days missing in between",
    ],
  ] as const)("with %s is not used: %#", (_, text, fault) => {
    expect(read(text)).toEqual({ days: null, fault });
  });
});

describe("the damp of Open-Meteo's days", () => {
  /** The hours of a day, so many of them at 95 %, the rest at 60 %. */
  const hoursOf = (day: string, humid: number, many = 24) =>
    Array.from({ length: many }, (_, i) => ({
      time: `${day}T${String(i).padStart(2, "0")}:00`,
      percent: i < humid ? 95 : 60,
    }));
  const withHours = (hours: ReturnType<typeof hoursOf>, unit = "%") =>
    openMeteoAnswer("2027-05-10", FOUR, (answer) => ({
      ...answer,
      hourly_units: { time: "iso8601", relative_humidity_2m: unit },
      hourly: {
        time: hours.map(({ time }) => time),
        relative_humidity_2m: hours.map(({ percent }) => percent),
      },
    }));

  test("is counted by the hour, of days whose hours are said", () => {
    const hours = [...hoursOf("2027-05-10", 7), ...hoursOf("2027-05-11", 3, 9)];
    const { days } = read(withHours(hours));
    expect(days?.map(({ humidHours }) => humidHours)).toEqual([7, undefined, undefined, undefined]);
  });

  test("in another unit, or with more hours than values, spoils the answer", () => {
    expect(read(withHours(hoursOf("2027-05-10", 7), "kg/kg")).fault).toBe("in other units");
    const text = withHours(hoursOf("2027-05-10", 7)).replace(",60]", "]");
    expect(read(text).fault).toBe("not of the documented form");
  });
});

describe("the archive's answer", () => {
  test("is rows of a station, gaps and all", () => {
    const text = openMeteoAnswer("2027-05-10", FOUR, (answer) => ({
      ...answer,
      daily: { ...(answer.daily as object), temperature_2m_min: [2, null, 4, 6] },
    }));
    expect(openMeteoRows(text, QUESTION)).toEqual([
      ["2027-05-10", 2, 14, 0],
      ["2027-05-11", null, 12, 3.5],
      ["2027-05-12", 4, 17, null],
      ["2027-05-13", 6, 20, null],
    ]);
  });

  test("of another place, in other units or of another form is none", () => {
    const wrong = [
      openMeteoAnswer("2027-05-10", FOUR, (all) => ({ ...all, latitude: 12 })),
      openMeteoAnswer("2027-05-10", FOUR).replace("°C", "°F"),
      "<html>",
    ];
    for (const text of wrong) expect(openMeteoRows(text, QUESTION)).toBeNull();
  });
});

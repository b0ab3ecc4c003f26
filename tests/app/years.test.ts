import { expect, test } from "vitest";
import { readYears } from "../../src/app/years.ts";
import { archiveAnswer } from "../garden/forecast/answers.ts";
import { isoDay } from "../gardens.ts";

const PLACE = { latitude: 46.6, longitude: -112 };
const ON = isoDay("2027-01-20");
const read = (text: string) => readYears(text, PLACE, ON);

test("years behind a place are a weather file with their source, day and place", () => {
  const { file } = read(archiveAnswer(46.6, -112));
  expect(file).toContain("source: Open-Meteo\nfetched: 2027-01-20\nyears: 2024 to 2026\n");
  expect(file).toContain("latitude: 46.6\nlongitude: -112\nin: °C\n");
  expect(file).toMatch(/^last frost: \[\d+ Mar/m);
});

type Daily = Record<string, (number | string | null)[]>;
const withDaily = (change: (daily: Daily) => Daily) =>
  archiveAnswer(46.6, -112, (all) => ({ ...all, daily: change(all.daily as Daily) }));

test.each([
  ["an HTML page", "<html>", "not of the documented form"],
  ["an answer of another place", archiveAnswer(12, -112), "not of the documented form"],
  [
    "one in °F",
    archiveAnswer(46.6, -112, (all) => ({
      ...all,
      daily_units: { temperature_2m_min: "°F", temperature_2m_max: "°F" },
    })),
    "not of the documented form",
  ],
  [
    "one without a summer",
    withDaily((daily) => ({
      ...daily,
      temperature_2m_min: daily.temperature_2m_min?.map(() => -30) ?? [],
      temperature_2m_max: daily.temperature_2m_max?.map(() => -20) ?? [],
    })),
    "nonsense",
  ],
  [
    "one with a low above its high",
    withDaily((daily) => ({
      ...daily,
      temperature_2m_min: daily.temperature_2m_min?.map(() => 50) ?? [],
    })),
    "nonsense",
  ],
  [
    "one of forty days",
    withDaily((daily) =>
      Object.fromEntries(Object.entries(daily).map(([key, list]) => [key, list.slice(0, 40)])),
    ),
    "nonsense",
  ],
  [
    "one whose Mays are missing",
    withDaily((daily) => ({
      ...daily,
      temperature_2m_min:
        daily.temperature_2m_min?.map((low, i) => (i % 365 > 115 && i % 365 < 155 ? null : low)) ??
        [],
    })),
    "too few days",
  ],
])("of %s nothing is used", (_, text, fault) => {
  expect(read(text)).toEqual({ file: null, fault });
});

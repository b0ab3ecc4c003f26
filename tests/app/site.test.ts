import { expect, test } from "vitest";
import { siteWeather } from "../../src/app/site.ts";
import { PLAINLY, plainFile } from "../garden/station/files.ts";

const NAMED = { name: "station.csv", latitude: null };

test("a station's days give a weather file, and what was taken for granted", () => {
  const { weather, notes, problems } = siteWeather(plainFile(), PLAINLY, NAMED);
  expect(problems).toEqual([]);
  expect(weather).toMatch(/^source: station\.csv$/m);
  expect(notes.length).toBeGreaterThan(1);
});

test("a record without a month gives none, and says which it lacks", () => {
  const [head = "", ...rows] = plainFile().trim().split("\n");
  const noMay = [head, ...rows.filter((row) => !row.includes("-05-"))].join("\n");
  const { weather, problems } = siteWeather(noMay, PLAINLY, NAMED);
  expect(weather).toBeNull();
  expect(problems.map(({ code }) => code)).toEqual(["month-missing"]);
});

test("a text that is no table gives none", () => {
  expect(siteWeather("", PLAINLY, NAMED).weather).toBeNull();
});

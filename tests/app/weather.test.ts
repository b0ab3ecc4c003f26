import { expect, test } from "vitest";
import { readWeather, weatherFromTable, weatherTable } from "../../src/app/weather.ts";
import { openMeteoAnswer, QUESTION } from "../garden/forecast/answers.ts";

const THREE = openMeteoAnswer("2027-05-10", [
  [2, 9],
  [3, 9],
  [4, 9],
]);

test("an answer becomes what is known as of the day it was asked, and says whose it is", () => {
  const { weather, fault } = readWeather("Open-Meteo", THREE, QUESTION);
  expect(fault).toBeNull();
  expect(weather).toMatchObject({ source: "Open-Meteo", asOf: QUESTION.today, saidColder: [] });
  expect(weather?.days.map(({ lowC }) => lowC)).toEqual([2, 3, 4]);
});

test("of a faulty answer nothing is used", () => {
  expect(readWeather("Open-Meteo", "<html>", QUESTION)).toEqual({
    ...{ weather: null, fault: "no JSON" },
  });
});

test("what is known is written as a table, and read from it again", () => {
  const { weather } = readWeather("Open-Meteo", THREE, QUESTION);
  if (weather === null) throw new Error("no weather");
  const { weather: again, problems } = weatherFromTable(
    weatherTable(weather),
    "days.csv",
    QUESTION.today,
  );
  expect(problems).toEqual([]);
  expect(again).toEqual({ ...weather, source: "a file" });
});

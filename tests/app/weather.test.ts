import { expect, test } from "vitest";
import { readWeather } from "../../src/app/weather.ts";
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

import fc from "fast-check";
import { expect, test } from "vitest";
import { readWeatherAnswer } from "../../../src/garden/forecast/read.ts";
import { WEATHER_SERVICES } from "../../../src/garden/model/weather.ts";
import { metNorwayAnswer, openMeteoAnswer, QUESTION } from "./answers.ts";

test("each service's answer is read in its own form", () => {
  const text = openMeteoAnswer("2027-05-10", [
    [2, 9],
    [3, 9],
    [4, 9],
  ]);
  expect(readWeatherAnswer("Open-Meteo", text, QUESTION).fault).toBeNull();
  expect(readWeatherAnswer("MET Norway", text, QUESTION).fault).toBe("not of the documented form");
  expect(readWeatherAnswer("MET Norway", metNorwayAnswer([]), QUESTION).fault).toBe("too few days");
});

test("whatever is answered, nothing is thrown, and what is used is whole", () => {
  const source = fc.constantFrom(...WEATHER_SERVICES);
  fc.assert(
    fc.property(source, fc.oneof(fc.string(), fc.json()), (name, text) => {
      const { days, fault } = readWeatherAnswer(name, text, QUESTION);
      expect((days === null) !== (fault === null)).toBe(true);
    }),
  );
});

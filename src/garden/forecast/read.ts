import type { WeatherService } from "../model/weather.ts";
import type { WeatherAnswer, WeatherQuestion } from "./answer.ts";
import { readMetNorway } from "./met-norway.ts";
import { readOpenMeteo } from "./open-meteo.ts";

/** A service's answer as days, or what is wrong with it. Never throws, whatever the text. */
export function readWeatherAnswer(
  source: WeatherService,
  text: string,
  question: WeatherQuestion,
): WeatherAnswer {
  return source === "MET Norway" ? readMetNorway(text, question) : readOpenMeteo(text, question);
}

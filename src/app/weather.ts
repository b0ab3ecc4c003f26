import { type AnswerFault, readWeatherAnswer, type WeatherQuestion } from "../garden/index.ts";
import type { KnownWeather, WeatherSource } from "../garden/model/index.ts";

export type { WeatherQuestion } from "../garden/index.ts";
export { type KnownWeather, mergeWeather, type WeatherSource } from "../garden/model/index.ts";

/** What a service's answer says of the weather, or what is wrong with it; nothing of a faulty one is used. */
export type WeatherReading =
  | { readonly weather: KnownWeather; readonly fault: null }
  | { readonly weather: null; readonly fault: AnswerFault };

/** The text of a service's answer as what is known of the weather. Never throws, whatever the text. */
export function readWeather(
  source: WeatherSource,
  text: string,
  question: WeatherQuestion,
): WeatherReading {
  const { days, fault } = readWeatherAnswer(source, text, question);
  if (fault !== null) return { weather: null, fault };
  return { weather: { source, asOf: question.today, days, saidColder: [] }, fault: null };
}

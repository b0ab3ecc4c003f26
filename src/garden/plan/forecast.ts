import { joinWords, type Problem, suggestion } from "../../base/index.ts";
import type { Site } from "../model/plan.ts";
import { WEATHER_SERVICES } from "../model/weather.ts";
import { diagnostic } from "./codes.ts";
import { numberUnder, type Tree, wordsUnder } from "./tree.ts";

/**
 * Who is asked for this year's weather, `forecast: Open-Meteo`, and the place's longitude [degrees, west negative]; the latitude
 * is the place's own or its station's. Problems: `unknown-word`, `forecast-nowhere`.
 */
export function readForecast(
  tree: Tree | null,
  latitude: number | null,
  problems: Problem[],
): Pick<Site, "longitude" | "forecast"> {
  const longitude = numberUnder(tree, "longitude");
  const words = wordsUnder(tree, "forecast");
  if (words === null) return { longitude, forecast: null };
  const wanted = words.text.toLowerCase().replace(/^(?:from|by|of) /, "");
  const forecast = WEATHER_SERVICES.find((name) => name.toLowerCase() === wanted) ?? null;
  if (forecast === null)
    problems.push(
      diagnostic(
        "unknown-word",
        words.at,
        `${words.text.slice(0, 60)} is no weather service that can be asked`,
        suggestion(words.text, WEATHER_SERVICES, `Write ${joinWords(WEATHER_SERVICES, "or")}`),
      ),
    );
  else if (latitude === null || longitude === null)
    problems.push(
      diagnostic(
        "forecast-nowhere",
        words.at,
        "A forecast needs the place's latitude and longitude",
        "Write latitude: 46.6 and longitude: -111.5, in degrees",
      ),
    );
  return { longitude, forecast };
}

import type { KnownWeather, Site } from "../../garden/model/index.ts";
import type { ObservedWeather } from "./climate.ts";

/**
 * The garden's own weather on the days of which it is known, measured and forecast alike: lows are less what the garden is colder
 * than the forecast. Empty where nobody was asked.
 */
export function observedWeatherOf(
  weather: KnownWeather | null,
  { colderBy }: Pick<Site, "colderBy">,
): ObservedWeather {
  const colderK = colderBy?.si ?? 0;
  return new Map(
    weather?.days.map(({ day, lowC, highC, rainMm }) => [
      day,
      { lowC: lowC - colderK, highC, rainMm },
    ]),
  );
}

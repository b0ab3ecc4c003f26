import type { KnownWeather, Site } from "../../garden/model/index.ts";
import type { ObservedWeather } from "./climate.ts";

/**
 * How far a forecast is off [K], by days ahead from today on; and how far days are from the usual [K]. Source: from memory, unchecked:
 * standard deviations of daily temperatures.
 */
const [OFF_K, USUALLY_OFF_K] = [[1, 1.5, 1.8, 2.1, 2.4, 2.7, 3, 3.3, 3.6, 3.9], 4.5] as const;

/**
 * How much of a forecast counts that many days ahead, 0 to 1: the farther ahead, the nearer to the usual is the best guess. A day
 * that was measured counts whole. Source: regression to the mean, 1 less the share of the forecast's error in the variance of days.
 */
export function believedAhead(days: number): number {
  return days < 0 ? 1 : 1 - ((OFF_K[Math.min(days, OFF_K.length - 1)] ?? 0) / USUALLY_OFF_K) ** 2;
}

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
    weather?.days.map(({ day, lowC, highC, rainMm, gustMps }) => [
      day,
      {
        ...{ lowC: lowC - colderK, highC, rainMm, believed: believedAhead(day - weather.asOf) },
        ...(gustMps !== null && { gustMps }),
      },
    ]),
  );
}

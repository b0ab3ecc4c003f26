import type { KnownWeather, Site } from "../../garden/model/index.ts";
import type { ObservedAir } from "./climate.ts";

/**
 * The air of the garden on the days whose weather is known, measured and forecast alike: lows are less what the garden is colder
 * than the forecast. Empty where nobody was asked.
 */
export function knownAirOf(
  weather: KnownWeather | null,
  { colderBy }: Pick<Site, "colderBy">,
): ObservedAir {
  const colderK = colderBy?.si ?? 0;
  return new Map(
    weather?.days.map(({ day, lowC, highC }) => [day, { lowC: lowC - colderK, highC }]),
  );
}

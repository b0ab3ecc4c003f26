import type { Day } from "../../base/index.ts";

/** Services that a plan may name to be asked for the coming nights. */
export const WEATHER_SERVICES = ["Open-Meteo", "MET Norway"] as const;

/** One of them. */
export type WeatherService = (typeof WEATHER_SERVICES)[number];

/** A day's weather at the place, midnight to midnight of the garden's clock; null where the service does not say. */
export type WeatherDay = {
  readonly day: Day;
  /** Lowest and highest air temperature, two metres above the ground [°C]. */
  readonly lowC: number;
  readonly highC: number;
  /** Rain and melted snow [mm]. */
  readonly rainMm: number | null;
  /** The strongest gust, or the strongest wind where only that is known [m/s]. */
  readonly gustMps: number | null;
  /** Hours of air nearly full of water, 90 % and more; left out where the service does not say enough of them. */
  readonly humidHours?: number;
};

/**
 * What is known of this year's weather: measured until the day before `asOf`, forecast from then on. Plain JSON; no place
 * is in it.
 */
export type KnownWeather = {
  readonly source: WeatherService | "a file";
  readonly asOf: Day;
  /** In day order, each day once; days may be missing. */
  readonly days: readonly WeatherDay[];
  /**
   * The lowest low [°C] that was forecast for a day when it was first warned of, where a later forecast is milder; so that a
   * warning can be taken back. Days in order.
   */
  readonly saidColder: readonly { readonly day: Day; readonly lowC: number }[];
};

/** How many days before its night a low is believed enough to warn of it. Source: house rule: today, tomorrow and the day after. */
export const WARNED_DAYS = 3;

/** How long a day's weather is kept [days]. Source: house rule: a season and the winter before it. */
const KEPT_DAYS = 400;

/**
 * What is known after a new answer of the service: its days in place of those known before, older days kept, and of the
 * nights near enough to have been warned of, how cold they were said to be.
 */
export function mergeWeather(before: KnownWeather | null, answer: KnownWeather): KnownWeather {
  if (before === null) return answer;
  const days = new Map(
    before.days.filter(({ day }) => day > answer.asOf - KEPT_DAYS).map((each) => [each.day, each]),
  );
  for (const each of answer.days) days.set(each.day, fuller(each, days.get(each.day), answer));
  return {
    source: answer.source,
    asOf: answer.asOf,
    days: [...days.values()].sort((a, b) => a.day - b.day),
    saidColder: saidColderIn(before, answer),
  };
}

/**
 * A new day's figures, with those of before where the service no longer says them. One that has no past only says what is left
 * of today, so that the hours behind it count too.
 */
function fuller(
  next: WeatherDay,
  before: WeatherDay | undefined,
  { asOf, days }: KnownWeather,
): WeatherDay {
  if (before === undefined) return next;
  const rest = next.day === asOf && days[0]?.day === asOf;
  const both = rest
    ? {
        lowC: Math.min(next.lowC, before.lowC),
        highC: Math.max(next.highC, before.highC),
        rainMm: moreOf(next.rainMm, before.rainMm),
      }
    : {};
  return {
    ...(before.humidHours !== undefined && { humidHours: before.humidHours }),
    ...next,
    rainMm: next.rainMm ?? before.rainMm,
    gustMps: next.gustMps ?? before.gustMps,
    ...both,
  };
}

const moreOf = (a: number | null, b: number | null) =>
  a === null || b === null ? (a ?? b) : Math.max(a, b);

function saidColderIn(before: KnownWeather, answer: KnownWeather): KnownWeather["saidColder"] {
  const said = new Map(before.saidColder.map(({ day, lowC }) => [day, lowC]));
  for (const { day, lowC } of before.days)
    if (day > before.asOf && day <= before.asOf + WARNED_DAYS)
      said.set(day, Math.min(lowC, said.get(day) ?? lowC));
  const now = new Map(answer.days.map(({ day, lowC }) => [day, lowC]));
  return [...said]
    .filter(([day, lowC]) => day >= answer.asOf && lowC < (now.get(day) ?? lowC))
    .map(([day, lowC]) => ({ day, lowC }))
    .sort((a, b) => a.day - b.day);
}

import * as v from "valibot";
import { type Day, dayAt } from "../../base/index.ts";
import type { WeatherDay } from "../model/weather.ts";
import {
  checkedDays,
  faulty,
  HUMID_PERCENT,
  isNear,
  jsonOf,
  type WeatherAnswer,
  type WeatherQuestion,
} from "./answer.ts";

const amount = v.optional(v.number());

const Period = v.optional(
  v.object({
    details: v.optional(
      v.object({
        precipitation_amount: amount,
        air_temperature_min: amount,
        air_temperature_max: amount,
      }),
    ),
  }),
);

/** Locationforecast 2.0, `complete`, which alone has the extremes of six hours. Source: MET Norway, Locationforecast data model. */
const AnswerSchema = v.object({
  geometry: v.object({ coordinates: v.array(v.number()) }),
  properties: v.object({
    meta: v.object({ units: v.record(v.string(), v.string()) }),
    timeseries: v.array(
      v.object({
        time: v.string(),
        data: v.object({
          instant: v.object({
            details: v.object({
              air_temperature: v.number(),
              wind_speed: amount,
              wind_speed_of_gust: amount,
              relative_humidity: amount,
            }),
          }),
          next_1_hours: Period,
          next_6_hours: Period,
        }),
      }),
    ),
  }),
});

type MetNorwayAnswer = v.InferOutput<typeof AnswerSchema>;
type Step = MetNorwayAnswer["properties"]["timeseries"][number];

const UNITS = {
  air_temperature: "celsius",
  precipitation_amount: "mm",
  wind_speed: "m/s",
  relative_humidity: "%",
} as const;

/**
 * Steps a day must have to be a day: four of six hours each, as the far end of the forecast has them; today only has those to
 * come. Source: house rule.
 */
const STEPS_A_DAY = 4;

/**
 * The days of MET Norway's answer, put together from its hours by the garden's clock, today from now on. It has no past days.
 * The last day is left out where it is not whole. Faults: all of AnswerFault but `says an error`.
 */
export function readMetNorway(text: string, question: WeatherQuestion): WeatherAnswer {
  const json = jsonOf(text);
  if (json === undefined) return faulty("no JSON");
  const { success, output } = v.safeParse(AnswerSchema, json);
  if (!success) return faulty("not of the documented form");
  const [longitude = Number.NaN, latitude = Number.NaN] = output.geometry.coordinates;
  if (!isNear(question, latitude, longitude)) return faulty("of another place");
  const { units } = output.properties.meta;
  if (Object.entries(UNITS).some(([what, unit]) => (units[what] ?? unit) !== unit))
    return faulty("in other units");
  const byDay = stepsByDay(output, question.clock);
  if (byDay === null) return faulty("not of the documented form");
  const whole = [...byDay].filter(
    ([day, steps]) => day === question.today || steps.length >= STEPS_A_DAY,
  );
  return checkedDays(
    whole.map(([day, steps]) => dayFrom(day, steps)),
    question,
  );
}

/** Steps by the garden's day; null where one has no time. */
function stepsByDay(
  { properties }: MetNorwayAnswer,
  clock: string,
): ReadonlyMap<Day, readonly Step[]> | null {
  const byDay = new Map<Day, Step[]>();
  for (const step of properties.timeseries) {
    const instant = Date.parse(step.time);
    if (!Number.isFinite(instant)) return null;
    const day = dayAt(instant, clock);
    byDay.set(day, [...(byDay.get(day) ?? []), step]);
  }
  return byDay;
}

function dayFrom(day: Day, steps: readonly Step[]): WeatherDay {
  const air = steps.flatMap(airOf);
  const winds = steps.flatMap(({ data: { instant } }) => {
    const { wind_speed_of_gust: gust, wind_speed: wind } = instant.details;
    return gust ?? wind ?? [];
  });
  const rain = steps.flatMap((step) => rainOf(step) ?? []);
  return {
    day,
    lowC: Math.min(...air),
    highC: Math.max(...air),
    rainMm: rain.length === 0 ? null : rain.reduce((a, b) => a + b, 0),
    gustMps: winds.length === 0 ? null : Math.max(...winds),
    ...humidHoursOf(steps),
  };
}

/** The air at a step, and the extremes of the six hours after it where the next step is as far away. */
function airOf({ data }: Step): readonly number[] {
  const now = data.instant.details.air_temperature;
  const later = data.next_1_hours === undefined ? data.next_6_hours?.details : undefined;
  return [now, later?.air_temperature_min ?? now, later?.air_temperature_max ?? now];
}

/** The rain until the next step: of its hour where that is said, else of its six hours. */
function rainOf({ data }: Step): number | null {
  const hour = data.next_1_hours?.details?.precipitation_amount;
  return hour ?? data.next_6_hours?.details?.precipitation_amount ?? null;
}

/** Steps of an hour that a day must have for its damp to be known. Source: house rule. */
const MOST_OF_A_DAY = 20;

function humidHoursOf(steps: readonly Step[]): Pick<WeatherDay, "humidHours"> {
  const hourly = steps.flatMap(({ data }) =>
    data.next_1_hours === undefined ? [] : (data.instant.details.relative_humidity ?? []),
  );
  if (hourly.length < MOST_OF_A_DAY) return {};
  return { humidHours: hourly.filter((percent) => percent >= HUMID_PERCENT).length };
}

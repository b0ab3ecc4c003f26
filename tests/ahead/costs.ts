import { mergeWeather, readWeather } from "../../src/app/weather.ts";
import { isoOf, plus } from "../../src/base/index.ts";
import type { KnownWeather } from "../../src/garden/model/weather.ts";
import { openMeteoAnswer, QUESTION, type Told } from "../garden/forecast/answers.ts";

/** Days that are asked for: behind, and ahead with today. */
const [BEHIND, AHEAD] = [92, 10];

/** An answer as large as Open-Meteo's is, with its days by the hour, as of a day so many after the tenth of May. */
function answerOn(off: number): string {
  const days = Array.from({ length: BEHIND + AHEAD }, (_, i) =>
    plus(QUESTION.today, off + i - BEHIND),
  );
  const told = days.map((_, i): Told => [5.3 + (i % 7), 17.8 + (i % 5), (i % 4) * 1.1, 6.2]);
  const hours = days.flatMap((day) =>
    Array.from({ length: 24 }, (_, i) => `${isoOf(day)}T${String(i).padStart(2, "0")}:00`),
  );
  return openMeteoAnswer(isoOf(days[0] ?? QUESTION.today), told, (all) => ({
    ...all,
    hourly_units: { time: "iso8601", relative_humidity_2m: "%" },
    hourly: { time: hours, relative_humidity_2m: hours.map((_, i) => 55 + (i % 45)) },
  }));
}

/** What the weather costs: bytes of an answer, of what a garden keeps after a year of answers, and CPU of reading one [ms]. */
export function weatherCosts(): {
  readonly answerBytes: number;
  readonly keptBytes: number;
  readonly readMs: number;
} {
  const bytes = (text: string) => new TextEncoder().encode(text).length;
  let kept: KnownWeather | null = null;
  let readMs = Number.POSITIVE_INFINITY;
  for (let off = 0; off < 366; off += 6) {
    const text = answerOn(off);
    const before = process.cpuUsage();
    const { weather } = readWeather("Open-Meteo", text, {
      ...QUESTION,
      today: plus(QUESTION.today, off),
    });
    const { user, system } = process.cpuUsage(before);
    readMs = Math.min(readMs, (user + system) / 1000);
    if (weather !== null) kept = mergeWeather(kept, weather);
  }
  return { answerBytes: bytes(answerOn(0)), keptBytes: bytes(JSON.stringify(kept)), readMs };
}

/** Answers a day of a service for so many gardens in so many places, each place asked four times a day. */
export const callsADay = (places: number) => 4 * places;

import { readWeather, WEATHER_SERVICES } from "../../src/app/weather.ts";
import { readYears } from "../../src/app/years.ts";
import { dayAt } from "../../src/base/index.ts";
import type { Fetch } from "../../src/host/weather/fetch-answer.ts";
import { networkSource } from "../../src/host/weather/network-source.ts";
import type { SourceAnswer } from "../../src/host/weather/source.ts";

/** A place in open country that stands for any: no garden of ours lies there. */
const PLACE = { latitude: 46.6, longitude: -111.5, clock: "America/Denver" };

/** What became of asking the services themselves: a line each, and how many answered as they document. */
export type LiveAnswers = { readonly lines: readonly string[]; readonly good: number };

/** Asks every service both questions, once each; `now` in ms since 1970 UTC. Never throws. */
export async function askLive(
  fetch: Fetch,
  { now, contact }: { readonly now: number; readonly contact: string | null },
): Promise<LiveAnswers> {
  const question = { ...PLACE, today: dayAt(now, PLACE.clock) };
  const lines: string[] = [];
  let good = 0;
  const tell = <Value>(
    what: string,
    answer: SourceAnswer<Value>,
    say: (value: Value) => string,
  ) => {
    if (answer.kind === "good") good += 1;
    lines.push(`${what}: ${answer.kind === "good" ? say(answer.value) : faultOf(answer)}`);
  };
  for (const service of WEATHER_SERVICES) {
    const source = networkSource(service, { fetch, now, contact, readWeather, readYears });
    tell(
      `${service}, season so far and nights ahead`,
      await source.seasonSoFar(question, null),
      (weather) => {
        const ahead = weather.days.filter(({ day }) => day >= question.today).length;
        return `${weather.days.length - ahead} days behind, ${ahead} ahead`;
      },
    );
    tell(`${service}, years behind`, await source.yearsBehind(PLACE), ({ file }) =>
      (/^years: .*$/m.exec(file)?.[0] ?? "").replace("years: ", ""),
    );
  }
  return { lines, good };
}

const faultOf = (answer: SourceAnswer<unknown>) =>
  answer.kind === "failed" ? answer.fault : "nothing new";

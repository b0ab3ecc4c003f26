import type {
  KnownWeather,
  WeatherQuestion,
  WeatherReading,
  WeatherService,
  YearsReading,
} from "../../app/index.ts";
import { type Day, dayAt } from "../../base/index.ts";
import { type Fetch, type FetchedAnswer, fetchAnswer, NO_HEADERS } from "./fetch-answer.ts";
import type { SourceAnswer, WeatherSource, YearsBehind } from "./source.ts";
import { SERVICES, userAgentOf, type WeatherPlace } from "./terms.ts";

/**
 * What a service is asked with: how requests go out, the clock [ms since 1970 UTC], how who runs this can be reached (null: they did
 * not say), and what reads its answers.
 */
export type NetworkPorts = {
  readonly fetch: Fetch;
  readonly now: number;
  readonly contact: string | null;
  readonly readWeather: (
    service: WeatherService,
    text: string,
    question: WeatherQuestion,
  ) => WeatherReading;
  readonly readYears: (text: string, place: WeatherPlace, fetched: Day) => YearsReading;
};

/** A weather service as a source. Its terms are kept: who asks is said, and nobody is asked who wants to know and is not told. */
export function networkSource(service: WeatherService, ports: NetworkPorts): WeatherSource {
  const { urlOf, yearsUrlOf, wantsContact, attribution } = SERVICES[service];
  const { now, contact, readWeather, readYears } = ports;
  const ask = async (url: string, knownSince: string | null): Promise<FetchedAnswer> =>
    wantsContact && contact === null
      ? failed("wants to know who asks: set CONTACT")
      : fetchAnswer({ url, userAgent: userAgentOf(contact), knownSince }, ports);
  return {
    attribution,
    yearsBehind: async (place) => {
      if (yearsUrlOf === null) return failed("has no years behind");
      const answer = await ask(yearsUrlOf(place, now), null);
      return readWith(answer, (text): Read<YearsBehind> => {
        const years = readYears(text, place, dayAt(now, place.clock));
        return years.file === null
          ? { value: null, fault: years.fault }
          : { value: years, fault: null };
      });
    },
    seasonSoFar: async (question, knownSince) =>
      readWith(await ask(urlOf(question), knownSince), (text): Read<KnownWeather> => {
        const { weather, fault } = readWeather(service, text, question);
        return weather === null ? { value: null, fault } : { value: weather, fault: null };
      }),
  };
}

type Read<Value> =
  | { readonly value: Value; readonly fault: null }
  | { readonly value: null; readonly fault: string };

function readWith<Value>(
  answer: FetchedAnswer,
  read: (text: string) => Read<Value>,
): SourceAnswer<Value> {
  if (answer.kind !== "text") return answer;
  const { text, kind: _, ...headers } = answer;
  const { value, fault } = read(text);
  return fault === null
    ? { ...headers, kind: "good", value }
    : { ...headers, kind: "failed", fault };
}

const failed = (fault: string) => ({ ...NO_HEADERS, kind: "failed", fault }) as const;

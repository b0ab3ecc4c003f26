import {
  type StationRequest,
  sayProblem,
  siteWeather,
  type WeatherQuestion,
  weatherFromTable,
} from "../../app/index.ts";
import { NO_HEADERS } from "./fetch-answer.ts";
import type { SourceAnswer, WeatherSource } from "./source.ts";

/** A local file of days: its text, how it is to be read, the name it is given in what is made of it, and its latitude [degrees] or null. */
export type DaysFile = {
  readonly text: string;
  readonly request: StationRequest;
  readonly name: string;
  readonly latitude: number | null;
};

/** A local file of days as a source, for those without a network; its days are of whatever place they are of. */
export function fileSource({ text, request, name, latitude }: DaysFile) {
  return {
    attribution: null,
    yearsBehind: () => {
      const { weather, notes, problems } = siteWeather(text, request, { name, latitude });
      return weather === null
        ? failed([...notes, ...problems.map(sayProblem)])
        : good({ file: weather, notes });
    },
    seasonSoFar: ({ today }: Pick<WeatherQuestion, "today">) => {
      const { weather, problems } = weatherFromTable(text, request.file, today);
      return weather === null ? failed(problems.map(sayProblem)) : good(weather);
    },
  } as const satisfies WeatherSource;
}

const good = <Value>(value: Value): SourceAnswer<Value> => ({
  ...NO_HEADERS,
  ...{ kind: "good", value },
});

const failed = (lines: readonly string[]): SourceAnswer<never> => ({
  ...NO_HEADERS,
  ...{ kind: "failed", fault: lines.join("\n") },
});

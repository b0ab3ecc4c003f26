import type { KnownWeather, WeatherQuestion } from "../../app/index.ts";
import type { ServiceHeaders } from "./fetch-answer.ts";
import type { WeatherPlace } from "./terms.ts";

/** What a question came to: a value that has passed every check, that nothing is new, or why nothing can be used. */
export type SourceAnswer<Value> = ServiceHeaders &
  (
    | { readonly kind: "good"; readonly value: Value }
    | { readonly kind: "unchanged" }
    | { readonly kind: "failed"; readonly fault: string }
  );

/** The years behind a place as the text of a plan's weather file, and what was used, guessed and left out for it, a line each. */
export type YearsBehind = { readonly file: string; readonly notes: readonly string[] };

/** An answer at once, as of a file, or later, as of a service. */
type Soon<Value> = SourceAnswer<Value> | Promise<SourceAnswer<Value>>;

/**
 * Where weather comes from: two questions, which never throw. A service is one, asked over the network; a local file is another.
 */
export type WeatherSource = {
  /** Who wants to be named, and how; null: nobody. */
  readonly attribution: string | null;
  /** Daily lows, highs and rain of past years of a place. */
  readonly yearsBehind: (place: WeatherPlace) => Soon<YearsBehind>;
  /**
   * The last three months and the next ten days. `knownSince` is the `Last-Modified` of the answer that is known; null: none
   * is.
   */
  readonly seasonSoFar: (
    question: WeatherQuestion,
    knownSince: string | null,
  ) => Soon<KnownWeather>;
};

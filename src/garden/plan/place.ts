import {
  isZone,
  type Measures,
  nearest,
  type Problem,
  type Quantity,
  quantityFrom,
  zoneNames,
} from "../../base/index.ts";
import type { FilledDefault, Risk, Site } from "../model/plan.ts";
import type { Vocabulary } from "../model/vocabulary.ts";
import { diagnostic } from "./codes.ts";
import { readForecast } from "./forecast.ts";
import { readFrosts } from "./frosts.ts";
import { heatIn } from "./houses.ts";
import { numberUnder, splitWords, type Tree, valueUnder, type Words, wordsUnder } from "./tree.ts";
import { readUsualTemperatures } from "./usual-temperatures.ts";
import { type CompanionFiles, readWeather, type WeatherResult } from "./weather.ts";

/** Where readers add problems and list what they filled in. */
export type ReadLog = { readonly problems: Problem[]; readonly filled: FilledDefault[] };

/** What reading words of the trade needs. */
export type WordReadContext = ReadLog & { readonly vocabulary: Vocabulary };

/** What reading a place needs. */
export type PlaceReadContext = ReadLog & {
  readonly year: number | null;
  readonly measures: Measures;
  readonly beside: CompanionFiles;
};

/** A site, and whether it is a place without frost: its dates are also null where they are wrong. */
export type PlaceResult = { readonly site: Site; readonly frostless: boolean };

/**
 * The site of a plan; what is wrong in it is null and reported. Problems: `zone-unknown`, `quantity-unclear`, and those
 * of frost dates, usual temperatures, weather and forecast. Early and late frost dates and a missing latitude (the weather's, where it has one) are
 * filled in and listed.
 */
export function readPlace(tree: Tree | null, reading: PlaceReadContext): PlaceResult {
  const said = numberUnder(tree, "latitude");
  const given = said !== null && Math.abs(said) <= 90 ? said : null;
  const clock = readClock(wordsUnder(tree, "clock"), reading);
  const colderBy = readColder(wordsUnder(tree, "colder than the forecast by"), reading);
  const { normals, weatherFrosts, stationLocation } = readWeather(valueUnder(tree, "weather"), {
    ...reading,
    latitude: given,
    longitude: numberUnder(tree, "longitude"),
    hasFrosts: Boolean(wordsUnder(tree, "last frost") && wordsUnder(tree, "first frost")),
    colderK: colderBy?.si ?? 0,
  });
  const latitude = valueUnder(tree, "latitude")
    ? given
    : latitudeOf(tree, stationLocation, reading);
  const { frostless, ...frosts } = readFrosts(tree, latitude, { ...reading, weatherFrosts });
  const greenhouse = readGreenhouse(wordsUnder(tree, "greenhouse"), reading);
  const hasMeans = valueUnder(tree, "weather") !== null;
  const temperatures = readUsualTemperatures(tree, { ...reading, hasMeans });
  const asked = readForecast(tree, latitude, reading.problems);
  return {
    site: { clock, latitude, ...asked, ...frosts, ...temperatures, colderBy, greenhouse, normals },
    frostless,
  };
}

/** The station's latitude [degrees], or none, where the place does not give one; listed in both cases. */
function latitudeOf(
  tree: Tree | null,
  stationLocation: WeatherResult["stationLocation"],
  { filled }: ReadLog,
) {
  const why =
    stationLocation?.by ?? "the plan does not say; day length is left out of the reckoning";
  if (tree)
    filled.push({ what: "latitude", value: String(stationLocation?.latitude ?? "none"), why });
  return stationLocation?.latitude ?? null;
}

function readClock(words: Words | null, { problems }: ReadLog): string {
  if (words === null) return "UTC";
  if (isZone(words.text)) return words.text;
  const near = nearest(words.text, zoneNames()) ?? byCity(words.text);
  problems.push(
    diagnostic(
      "zone-unknown",
      words.at,
      `${words.text.slice(0, 60)} is no time zone`,
      near ? `Did you mean ${near}` : "Write one such as America/Denver or Europe/Paris",
    ),
  );
  return "UTC";
}

function byCity(text: string): string | null {
  const city = text.trim().toLowerCase().replace(/\s+/g, "_");
  return zoneNames().find((zone) => zone.toLowerCase().endsWith(`/${city}`)) ?? null;
}

function readColder(words: Words | null, { problems }: ReadLog): Quantity | null {
  if (words === null) return null;
  const found = quantityFrom(words.text, true);
  if (found?.kind === "difference") return found;
  problems.push(unclearQuantity(words, "a difference of temperatures", "3 °F or 2 °C"));
  return null;
}

/** `X is not a length. Write it with its unit, such as 10 ft`. */
export function unclearQuantity(words: Words, what: string, like: string): Problem {
  return diagnostic(
    "quantity-unclear",
    words.at,
    `${words.text.slice(0, 60)} is not ${what} with its unit`,
    `Write ${like}`,
  );
}

function readGreenhouse(words: Words | null, reading: ReadLog): Site["greenhouse"] {
  if (words === null) return null;
  let trays: number | null = null;
  let keptAbove: Quantity | null = null;
  for (const piece of splitWords(words, /,| and /)) {
    const places = /^(\d+) (?:trays?|flats?)$/i.exec(piece.text);
    const heat = heatIn(piece.text);
    if (places) trays = Number(places[1]);
    else if (heat && heat !== "unclear") keptAbove = heat.keptAbove;
    else if (heat)
      reading.problems.push(unclearQuantity(piece, "a temperature", "kept above 45 °F"));
    else {
      reading.problems.push(
        diagnostic(
          "unknown-word",
          piece.at,
          `${piece.text.slice(0, 60)} is not understood of a greenhouse`,
          "Write 20 trays, kept above 45 °F",
        ),
      );
    }
  }
  return trays === null ? null : { trays, keptAbove, at: words.at };
}

/**
 * The chances of frost that are accepted for plants raised under cover and for seed. Where the plan does not say, they
 * are 1 spring in 10 and 1 in 2, listed as filled in.
 * Source: house rule: a plant of two months' care is worth a late day nine springs in ten; a pinch of seed is not.
 */
export function readRisk(tree: Tree | null, reading: ReadLog): Risk {
  return {
    raised: chance(tree, "plants we raised", { value: 0.1, says: "1 spring in 10" }, reading),
    seed: chance(tree, "seed in the ground", { value: 0.5, says: "1 spring in 2" }, reading),
  };
}

function chance(
  tree: Tree | null,
  key: string,
  usual: { readonly value: number; readonly says: string },
  { problems, filled }: ReadLog,
): number {
  const words = wordsUnder(tree, key);
  if (words === null) {
    filled.push({ what: `risk: ${key}`, value: usual.says, why: "house rule" });
    return usual.value;
  }
  const odds = /^(\d+)(?: springs?| years?)? in (\d+)(?: springs?| years?)?$/i.exec(words.text);
  const share = /^(\d+(?:\.\d+)?) ?%$/.exec(words.text);
  const value = odds ? Number(odds[1]) / Number(odds[2]) : share ? Number(share[1]) / 100 : null;
  if (value !== null && value > 0 && value < 1) return value;
  problems.push(
    diagnostic(
      value === null ? "unknown-word" : "out-of-range",
      words.at,
      `${words.text.slice(0, 60)} is no chance of frost`,
      "Write one such as 1 spring in 10, more than never and less than always",
    ),
  );
  return usual.value;
}

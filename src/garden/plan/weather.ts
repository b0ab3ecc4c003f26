import { type Measures, type Problem, suggestion, type TextPosition } from "../../base/index.ts";
import type { Normals } from "../model/plan.ts";
import { checkWeather } from "./check.ts";
import { diagnostic } from "./codes.ts";
import type { WeatherFrosts } from "./frost-sides.ts";
import { FROST_SPREAD_DAYS } from "./frosts.ts";
import { readMeans } from "./means.ts";
import { readNights } from "./nights.ts";
import { asksForYears, YEARS_FILE, yearsBeside } from "./place-years.ts";
import { stationFrosts } from "./station-frosts.ts";
import { itemsOf, numberUnder, type Tree, valueUnder } from "./tree.ts";
import { treeOf } from "./yaml.ts";

/** Texts of the files beside a plan, by file name. */
export type CompanionFiles = {
  readonly file: string;
  readonly texts: Readonly<Record<string, string>>;
};

/**
 * What reading weather needs; the year and the plan's own latitude [degrees], else the weather's, decide which season
 * its frost dates are in.
 */
export type WeatherReadContext = {
  readonly problems: Problem[];
  readonly measures: Measures;
  readonly beside: CompanionFiles;
  readonly year: number | null;
  readonly latitude: number | null;
  readonly longitude: number | null;
  /** Whether the plan has frost dates of its own. */
  readonly hasFrosts: boolean;
  /** How much colder the garden is than the station [K]. */
  readonly colderK: number;
};

/**
 * A site's months, its own frost dates, and the station's latitude; all null where the plan has no weather, or it is
 * wrong and has been reported.
 */
export type WeatherResult = {
  readonly normals: Normals | null;
  readonly weatherFrosts: WeatherFrosts | null;
  /** Degrees, with its source; null where the weather has none. */
  readonly stationLocation: { readonly latitude: number; readonly by: string } | null;
};

const NONE: WeatherResult = { normals: null, weatherFrosts: null, stationLocation: null };

/**
 * The number of years below which a note says that they are few. Source: house rule: a tenth of the years can't be seen
 * in so few.
 */
const FEW_YEARS = 4;

/**
 * Twelve monthly means of lows and highs [°C], with whatever else the weather has: spread [K], rain [mm], frost dates,
 * latitude. The weather is in the plan, in a file beside it, or the years behind the place, from a service. Problems: `weather-missing`, `weather-wrong`, those of
 * days and of the years, and a file's own problems at their place in it. Degrees are in the unit of `in:`, else of the plan's measures;
 * rain is in inches where that is °F, else in mm.
 */
export function readWeather(tree: Tree | null, reading: WeatherReadContext): WeatherResult {
  if (tree?.kind === "words")
    return asksForYears(tree.words) ? readYears(tree, reading) : readWeatherFile(tree, reading);
  if (tree?.kind !== "map") return NONE;
  return readWeatherFigures(tree, { ...reading, name: "the plan's weather", at: tree.at });
}

type TreeWords = Extract<Tree, { kind: "words" }>;

function readYears(tree: TreeWords, reading: WeatherReadContext): WeatherResult {
  const text = yearsBeside(tree.words, reading);
  return text === null ? NONE : readFileText(tree, { ...reading, name: YEARS_FILE, text });
}

function readWeatherFile(tree: TreeWords, reading: WeatherReadContext): WeatherResult {
  const { problems, beside } = reading;
  const name = tree.words.text;
  const names = Object.keys(beside.texts);
  const text = names.includes(name) ? beside.texts[name] : undefined;
  if (text === undefined) {
    const advice = suggestion(name, names, "Put it beside the plan, or give low and high here");
    problems.push(
      diagnostic("weather-missing", tree.at, `There is no ${name.slice(0, 60)}`, advice),
    );
    return NONE;
  }
  return readFileText(tree, { ...reading, name, text });
}

function readFileText(
  tree: TreeWords,
  reading: WeatherReadContext & { readonly name: string; readonly text: string },
): WeatherResult {
  const { problems, beside, name, text } = reading;
  const folder = beside.file.includes("/") ? beside.file.replace(/[^/]*$/, "") : "";
  const read = treeOf(text, `${folder}${name}`);
  const wrong = read.tree ? weatherFileProblems(read.tree, name) : [];
  problems.push(...read.problems, ...wrong);
  if (!read.tree || wrong.length > 0) return NONE;
  return readWeatherFigures(read.tree, { ...reading, at: tree.at });
}

/** What is wrong in a weather file as a whole; a file that is not made of keys is reported by its name. */
function weatherFileProblems(tree: Tree, name: string): readonly Problem[] {
  if (tree.kind === "map") return checkWeather(tree);
  const is = `The weather file ${name.slice(0, 60)} holds no low and high`;
  return [diagnostic("wrong-type", tree.at, is, "Write low: and high:, twelve monthly means each")];
}

type NamedWeatherContext = WeatherReadContext & {
  readonly name: string;
  readonly at: TextPosition;
};

function readWeatherFigures(tree: Tree, reading: NamedWeatherContext): WeatherResult {
  const normals = readMeans(tree, reading);
  if (normals === null) return NONE;
  const { year, problems, colderK, name, at } = reading;
  const found = numberUnder(tree, "latitude");
  const stationLocation = found === null ? null : { latitude: found, by: name };
  const latitude = reading.latitude ?? found;
  if (year === null) return { normals, weatherFrosts: null, stationLocation };
  const [january = 0, july = 0] = [normals.highC[0], normals.highC[6]];
  const south = latitude === null ? january > july : latitude < 0;
  const before = problems.length;
  const nights = readNights(tree, { year, south, spreadDays: FROST_SPREAD_DAYS, problems });
  if (problems.length > before) return { normals, weatherFrosts: null, stationLocation };
  const from = fromYears(tree, name);
  const colderF = Math.round(colderK * 1.8 * 1e6) / 1e6;
  return {
    normals,
    weatherFrosts: { frosts: stationFrosts(nights, colderF), name, from, at },
    stationLocation,
  };
}

/** The weather's name and years, with a note where they are few. */
function fromYears(tree: Tree, name: string): string {
  const years = itemsOf(valueUnder(tree, "years")).flatMap((item) =>
    item.kind === "words" ? [item.words.text] : [],
  );
  const from = [name, ...years].join(", ").slice(0, 120);
  const many = countOf(years);
  if (many === null || many > FEW_YEARS) return from;
  return `${from}; ${many === 1 ? "1 year is" : `${many} years are`} few, ten or more make surer dates`;
}

/** How many years `2018 to 2021`, or a list of years, is; null where the words are something else. */
function countOf(years: readonly string[]): number | null {
  const counts = years.map((text) => {
    const [, first, last = first] = /^(\d{4})(?: ?(?:to|-|–) ?(\d{4}))?$/.exec(text) ?? [];
    return first === undefined ? null : Number(last) - Number(first) + 1;
  });
  const known = counts.filter((many) => many !== null);
  return known.length === 0 || known.length < counts.length
    ? null
    : known.reduce((a, b) => a + b, 0);
}

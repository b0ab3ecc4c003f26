import type { Place, Problem } from "../../base/problems/problem.ts";
import type { Measures } from "../../base/quantities/quantity.ts";
import type { Normals } from "../model/plan.ts";
import { checkWeather } from "./check.ts";
import { tell } from "./codes.ts";
import { FROST_SPREAD_DAYS } from "./frosts.ts";
import { readMeans } from "./means.ts";
import { offer } from "./nearest.ts";
import { readNights } from "./nights.ts";
import { ownFrosts } from "./own.ts";
import type { Own } from "./sides.ts";
import { itemsOf, numberUnder, type Tree, under } from "./tree.ts";
import { treeOf } from "./yaml.ts";

/** Texts of the files beside a plan by their names. */
export type Beside = {
  readonly file: string;
  readonly texts: Readonly<Record<string, string>>;
};

/** What reading weather needs; the year and the plan's own latitude [degrees], else the weather's, place its frost dates in the plan's season. */
export type WeatherReading = {
  readonly told: Problem[];
  readonly measures: Measures;
  readonly beside: Beside;
  readonly year: number | null;
  readonly latitude: number | null;
  /** How much colder the garden is than the station [K]. */
  readonly colderK: number;
};

/** A site's months, its own frost dates, and the station's latitude; all null where the plan has no weather, or it is wrong and told. */
export type WeatherRead = {
  readonly normals: Normals | null;
  readonly own: Own | null;
  /** Degrees, with what says it; null where the weather does not. */
  readonly lies: { readonly latitude: number; readonly by: string } | null;
};

const NONE: WeatherRead = { normals: null, own: null, lies: null };

/** Years [count] whose frost dates are said to be few. Source: house rule: a tenth of the years is not seen in so few. */
const FEW_YEARS = 4;

/**
 * Twelve monthly means of lows and highs [°C], with what else the weather tells: spread [K], rain [mm], frost dates,
 * latitude. It is given in the plan or in a file beside it. Problems: `weather-missing`, `weather-wrong`, those of days,
 * and a file's own problems at their place in it. Degrees are those of `in:`, else of the plan's measures, and rain is in
 * inches where they are °F, else in mm.
 */
export function readWeather(tree: Tree | null, reading: WeatherReading): WeatherRead {
  if (tree?.kind === "words") return besideThePlan(tree, reading);
  if (tree?.kind !== "map") return NONE;
  return figures(tree, { ...reading, name: "the plan's weather", at: tree.at });
}

function besideThePlan(
  tree: Extract<Tree, { kind: "words" }>,
  reading: WeatherReading,
): WeatherRead {
  const { told, beside } = reading;
  const name = tree.words.text;
  const names = Object.keys(beside.texts);
  const text = names.includes(name) ? beside.texts[name] : undefined;
  if (text === undefined) {
    const advice = offer(name, names, "Put it beside the plan, or give low and high here");
    told.push(tell("weather-missing", tree.at, `There is no ${name.slice(0, 60)}`, advice));
    return NONE;
  }
  const folder = beside.file.includes("/") ? beside.file.replace(/[^/]*$/, "") : "";
  const read = treeOf(text, `${folder}${name}`);
  const wrong = read.tree ? wrongIn(read.tree, name) : [];
  told.push(...read.problems, ...wrong);
  if (!read.tree || wrong.length > 0) return NONE;
  return figures(read.tree, { ...reading, name, at: tree.at });
}

/** What is wrong in a weather file as a whole; one that is not made of keys is told by its name. */
function wrongIn(tree: Tree, name: string): readonly Problem[] {
  if (tree.kind === "map") return checkWeather(tree);
  const is = `The weather file ${name.slice(0, 60)} holds no low and high`;
  return [tell("wrong-type", tree.at, is, "Write low: and high:, twelve monthly means each")];
}

type Named = WeatherReading & { readonly name: string; readonly at: Place };

function figures(tree: Tree, reading: Named): WeatherRead {
  const normals = readMeans(tree, reading);
  if (normals === null) return NONE;
  const { year, told, colderK, name, at } = reading;
  const found = numberUnder(tree, "latitude");
  const lies = found === null ? null : { latitude: found, by: name };
  const latitude = reading.latitude ?? found;
  if (year === null) return { normals, own: null, lies };
  const [january = 0, july = 0] = [normals.highC[0], normals.highC[6]];
  const south = latitude === null ? january > july : latitude < 0;
  const before = told.length;
  const nights = readNights(tree, { year, south, spreadDays: FROST_SPREAD_DAYS, told });
  if (told.length > before) return { normals, own: null, lies };
  const from = fromYears(tree, name);
  const colderF = Math.round(colderK * 1.8 * 1e6) / 1e6;
  return { normals, own: { frosts: ownFrosts(nights, colderF), name, from, at }, lies };
}

/** The weather's name and years, and that they are few. */
function fromYears(tree: Tree, name: string): string {
  const years = itemsOf(under(tree, "years")).flatMap((item) =>
    item.kind === "words" ? [item.words.text] : [],
  );
  const from = [name, ...years].join(", ").slice(0, 120);
  const many = countOf(years);
  if (many === null || many > FEW_YEARS) return from;
  return `${from}; ${many === 1 ? "1 year is" : `${many} years are`} few, ten or more make surer dates`;
}

/** How many years `2018 to 2021`, or a list of years, is; null where the words say something else. */
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

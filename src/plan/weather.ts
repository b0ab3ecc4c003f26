import type { Place, Problem } from "../problems/problem.ts";
import { celsius, type Measures } from "../quantities/quantity.ts";
import { checkWeather } from "./check.ts";
import { tell } from "./codes.ts";
import { FROST_SPREAD_DAYS } from "./frosts.ts";
import { offer } from "./nearest.ts";
import { readNights } from "./nights.ts";
import { ownFrosts } from "./own.ts";
import type { Normals } from "./plan.ts";
import type { Own } from "./sides.ts";
import { itemsOf, type Tree, under, wordsUnder } from "./tree.ts";
import { treeOf } from "./yaml.ts";

/** Texts of the files beside a plan by their names. */
export type Beside = {
  readonly file: string;
  readonly texts: Readonly<Record<string, string>>;
};

/** What reading weather needs; the year and latitude [degrees] place its frost dates in the plan's season. */
export type WeatherReading = {
  readonly told: Problem[];
  readonly measures: Measures;
  readonly beside: Beside;
  readonly year: number | null;
  readonly latitude: number | null;
  /** How much colder the garden is than the station [K]. */
  readonly colderK: number;
};

/** A site's months and its own frost dates; both null where the plan has no weather, or it is wrong and told. */
export type WeatherRead = { readonly normals: Normals | null; readonly own: Own | null };

const NONE: WeatherRead = { normals: null, own: null };

/** No monthly mean on earth lies outside [°C]. Source: house rule: wider than any record of a garden. */
const MEANS_C = { least: -60, most: 60 } as const;

/** No month's mean varies by more from year to year [K]. Source: house rule: twice the most of any station's. */
const SPREAD_K = { least: 0, most: 15 } as const;

/** No month is wetter [mm]. Source: from memory, unchecked: the wettest month on record, Cherrapunji's, had 9,300. */
const RAIN_MM = { least: 0, most: 9500 } as const;

/**
 * Twelve monthly means of lows and highs [°C], with what else the weather tells: spread [K], rain [mm], frost dates.
 * It is given in the plan or in a file beside it. Problems: `weather-missing`, `weather-wrong`, those of days, and a
 * file's own problems at their place in it. Degrees are those of `in:`, else of the plan's measures, and rain is in
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
  const wrong = read.tree ? checkWeather(read.tree) : [];
  told.push(...read.problems, ...wrong);
  if (!read.tree || wrong.length > 0) return NONE;
  return figures(read.tree, { ...reading, name, at: tree.at });
}

type Named = WeatherReading & { readonly name: string; readonly at: Place };

function figures(tree: Tree, reading: Named): WeatherRead {
  const normals = normalsOf(tree, reading);
  if (normals === null) return NONE;
  const { year, latitude, told, colderK, name, at } = reading;
  if (year === null) return { normals, own: null };
  const [january = 0, july = 0] = [normals.highC[0], normals.highC[6]];
  const south = latitude === null ? january > july : latitude < 0;
  const before = told.length;
  const nights = readNights(tree, { year, south, spreadDays: FROST_SPREAD_DAYS, told });
  if (told.length > before) return { normals, own: null };
  const years = itemsOf(under(tree, "years")).flatMap((item) =>
    item.kind === "words" ? [item.words.text] : [],
  );
  const from = [name, ...years].join(", ").slice(0, 120);
  const colderF = Math.round(colderK * 1.8 * 1e6) / 1e6;
  return { normals, own: { frosts: ownFrosts(nights, colderF), name, from, at } };
}

function normalsOf(tree: Tree, { told, measures }: Named): Normals | null {
  const unit = wordsUnder(tree, "in");
  const inF = unit ? /^(°? ?f|fahrenheit)$/i.test(unit.text) : measures === "us";
  if (unit && !inF && !/^(°? ?c|celsius)$/i.test(unit.text)) {
    told.push(tell("weather-wrong", unit.at, `${unit.text} is no unit`, "Write °C or °F"));
    return null;
  }
  const air = { told, si: (value: number) => (inF ? celsius(value) : value), ...MEANS_C };
  const lowC = twelve(tree, "low", air);
  const highC = twelve(tree, "high", air);
  const spreadK = twelve(tree, "spread", { told, si: (v) => (inF ? v / 1.8 : v), ...SPREAD_K });
  const rainMm = twelve(tree, "rain", { told, si: (v) => (inF ? v * 25.4 : v), ...RAIN_MM });
  if (lowC === null || highC === null) return null;
  const crossed = lowC.findIndex((low, month) => low >= (highC[month] ?? low));
  if (crossed < 0) return { lowC, highC, spreadK, rainMm };
  const at = itemsOf(under(tree, "low"))[crossed]?.at ?? tree.at;
  told.push(
    tell("weather-wrong", at, `Month ${crossed + 1}'s low is above its high`, "Check the means"),
  );
  return null;
}

/** How twelve numbers are read: into SI, and between which [SI] they can be. */
type Twelve = {
  readonly told: Problem[];
  readonly si: (value: number) => number;
  readonly least: number;
  readonly most: number;
};

function twelve(
  tree: Tree,
  key: "low" | "high" | "spread" | "rain",
  { told, si, least, most }: Twelve,
): readonly number[] | null {
  const list = under(tree, key);
  if (list?.kind !== "list") return null;
  const values = list.items.flatMap((item) =>
    item.kind === "words" && typeof item.value === "number" ? [item.value] : [],
  );
  if (values.length !== list.items.length) return null;
  const inSi = values.map(si);
  const odd = inSi.findIndex((value) => !(value >= least && value <= most));
  if (values.length === 12 && odd < 0) return inSi;
  const what = key === "spread" ? "spread" : key === "rain" ? "rain" : "mean";
  const is =
    values.length === 12
      ? `${values[odd]} is no month's ${what}`
      : `${key} has ${values.length} months`;
  const at = odd < 0 ? list.at : (list.items[odd]?.at ?? list.at);
  told.push(tell("weather-wrong", at, is, "Write twelve monthly means, January first"));
  return null;
}

import type { Problem } from "../problems/problem.ts";
import { celsius, type Measures } from "../quantities/quantity.ts";
import { checkWeather } from "./check.ts";
import { tell } from "./codes.ts";
import { offer } from "./nearest.ts";
import type { Site } from "./plan.ts";
import { itemsOf, type Tree, under, wordsUnder } from "./tree.ts";
import { treeOf } from "./yaml.ts";

/** Texts of the files beside a plan by their names. */
export type Beside = {
  readonly file: string;
  readonly texts: Readonly<Record<string, string>>;
};

type Normals = Site["normals"];
type Reading = {
  readonly told: Problem[];
  readonly measures: Measures;
  readonly beside: Beside;
};

/** No monthly mean on earth lies outside [°C]. Source: house rule: wider than any record of a garden. */
const MEANS_C = { least: -60, most: 60 } as const;

/**
 * Twelve monthly means of lows and highs [°C], given in the plan or in a file beside it; null for none, and where
 * something is wrong and told (`weather-missing`, `weather-wrong`, and a file's own problems at their place
 * in it). Degrees are those of `in:`, else of the plan's measures.
 */
export function readWeather(tree: Tree | null, reading: Reading): Normals {
  if (tree?.kind === "words") return besideThePlan(tree, reading);
  return tree?.kind === "map" ? means(tree, reading) : null;
}

function besideThePlan(tree: Extract<Tree, { kind: "words" }>, reading: Reading): Normals {
  const { told, beside } = reading;
  const name = tree.words.text;
  const names = Object.keys(beside.texts);
  const text = names.includes(name) ? beside.texts[name] : undefined;
  if (text === undefined) {
    const advice = offer(name, names, "Put it beside the plan, or give low and high here");
    told.push(tell("weather-missing", tree.at, `There is no ${name.slice(0, 60)}`, advice));
    return null;
  }
  const folder = beside.file.includes("/") ? beside.file.replace(/[^/]*$/, "") : "";
  const read = treeOf(text, `${folder}${name}`);
  const wrong = read.tree ? checkWeather(read.tree) : [];
  told.push(...read.problems, ...wrong);
  return read.tree && wrong.length === 0 ? means(read.tree, reading) : null;
}

function means(tree: Tree, { told, measures }: Reading): Normals {
  const unit = wordsUnder(tree, "in");
  const inF = unit ? /^(°? ?f|fahrenheit)$/i.test(unit.text) : measures === "us";
  if (unit && !inF && !/^(°? ?c|celsius)$/i.test(unit.text)) {
    told.push(tell("weather-wrong", unit.at, `${unit.text} is no unit`, "Write °C or °F"));
    return null;
  }
  const lowC = twelve(tree, "low", { told, inF });
  const highC = twelve(tree, "high", { told, inF });
  if (lowC === null || highC === null) return null;
  const crossed = lowC.findIndex((low, month) => low >= (highC[month] ?? low));
  if (crossed < 0) return { lowC, highC, spreadK: null, rainMm: null };
  const at = itemsOf(under(tree, "low"))[crossed]?.at ?? tree.at;
  told.push(
    tell("weather-wrong", at, `Month ${crossed + 1}'s low is above its high`, "Check the means"),
  );
  return null;
}

function twelve(
  tree: Tree,
  key: "low" | "high",
  { told, inF }: { readonly told: Problem[]; readonly inF: boolean },
): readonly number[] | null {
  const list = under(tree, key);
  if (list?.kind !== "list") return null;
  const values = list.items.flatMap((item) =>
    item.kind === "words" && typeof item.value === "number" ? [item.value] : [],
  );
  const inC = values.map((value) => (inF ? celsius(value) : value));
  const odd = inC.findIndex((value) => !(value >= MEANS_C.least && value <= MEANS_C.most));
  if (values.length === 12 && list.items.length === 12 && odd < 0) return inC;
  if (values.length !== list.items.length) return null;
  const is =
    values.length === 12
      ? `${values[odd]} is no monthly mean`
      : `${key} has ${values.length} means`;
  const at = odd < 0 ? list.at : (list.items[odd]?.at ?? list.at);
  told.push(tell("weather-wrong", at, is, "Write twelve monthly means, January first"));
  return null;
}

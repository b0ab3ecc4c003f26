import { celsius, type Measures, type Problem } from "../../base/index.ts";
import type { Normals } from "../model/plan.ts";
import { diagnostic } from "./codes.ts";
import { itemsOf, type Tree, valueUnder, wordsUnder } from "./tree.ts";

/** No monthly mean on earth is outside this range [°C]. Source: house rule: wider than any record of a garden. */
const MEANS_C = { least: -60, most: 60 } as const;

/**
 * The largest number that may be a mean in °F where it can't be °C [as written]. Source: house rule: above any month on
 * earth.
 */
const MOST_F = 140;

/** The most that a month's mean varies from year to year [K]. Source: house rule: twice the most of any station's. */
const SPREAD_K = { least: 0, most: 15 } as const;

/**
 * The most rain of a month [mm]. Source: from memory, unchecked: the wettest month on record, Cherrapunji's, had 9,300.
 */
const RAIN_MM = { least: 0, most: 9500 } as const;

/**
 * A weather's twelve means of lows and highs [°C], their spread [K] and rain [mm] where it has them; null where
 * something is wrong and has been reported. Problem: `weather-wrong`, with the unit to write where the means look like
 * °F.
 */
export function readMeans(
  tree: Tree,
  { problems, measures }: { readonly problems: Problem[]; readonly measures: Measures },
): Normals | null {
  const unit = wordsUnder(tree, "in");
  const inF = unit ? /^(°? ?f|fahrenheit)$/i.test(unit.text) : measures === "us";
  if (unit && !inF && !/^(°? ?c|celsius)$/i.test(unit.text)) {
    problems.push(
      diagnostic("weather-wrong", unit.at, `${unit.text} is no unit`, "Write °C or °F"),
    );
    return null;
  }
  const air = {
    problems,
    si: (value: number) => (inF ? celsius(value) : value),
    ...MEANS_C,
    inF,
  };
  const lowC = twelve(tree, "low", air);
  const highC = twelve(tree, "high", air);
  const spreadK = twelve(tree, "spread", { problems, si: (v) => (inF ? v / 1.8 : v), ...SPREAD_K });
  const rainMm = twelve(tree, "rain", { problems, si: (v) => (inF ? v * 25.4 : v), ...RAIN_MM });
  if (lowC === null || highC === null) return null;
  const crossed = lowC.findIndex((low, month) => low >= (highC[month] ?? low));
  if (crossed < 0) return { lowC, highC, spreadK, rainMm };
  const at = itemsOf(valueUnder(tree, "low"))[crossed]?.at ?? tree.at;
  problems.push(
    diagnostic(
      "weather-wrong",
      at,
      `Month ${crossed + 1}'s low is above its high`,
      "Check the means",
    ),
  );
  return null;
}

/** How twelve numbers are read: the conversion to SI, and the range [SI] they must be in. */
type TwelveNumbers = {
  readonly problems: Problem[];
  readonly si: (value: number) => number;
  readonly least: number;
  readonly most: number;
  /** For means of air temperature only: whether they are read as °F. */
  readonly inF?: boolean;
};

function twelve(
  tree: Tree,
  key: "low" | "high" | "spread" | "rain",
  { problems, si, least, most, inF }: TwelveNumbers,
): readonly number[] | null {
  const list = valueUnder(tree, key);
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
  const value = values[odd] ?? 0;
  const likeF = values.length === 12 && inF === false && value > most && value <= MOST_F;
  const advice = likeF
    ? "This looks like °F; write in: °F"
    : "Write twelve monthly means, January first";
  problems.push(diagnostic("weather-wrong", at, is, advice));
  return null;
}

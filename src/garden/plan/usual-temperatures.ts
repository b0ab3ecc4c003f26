import { type Measures, type Problem, type Quantity, temperatureFrom } from "../../base/index.ts";
import type { FilledDefault, Site } from "../model/plan.ts";
import { diagnostic } from "./codes.ts";
import { type Tree, type Words, wordsUnder } from "./tree.ts";

/** The keys of the two temperatures that most gardeners know, the hottest month's and the coldest one's. */
export const TEMPERATURE_KEYS = { hot: "hottest afternoons", cold: "coldest nights" } as const;

/** No month's mean is outside this range [°C]. Source: house rule: wider than any garden's. */
const LEAST_C = -50;
const MOST_C = 50;

/** What reading them needs. */
export type TemperatureReadContext = {
  readonly problems: Problem[];
  readonly filled: FilledDefault[];
  readonly measures: Measures;
  /** The plan has monthly means, which say more: both are read and not asked for. */
  readonly hasMeans: boolean;
};

/** The two of a site. */
export type UsualTemperatures = Pick<Site, "hottestAfternoons" | "coldestNights">;

/**
 * How hot the afternoons of the hottest month usually are, and how cold the nights of the coldest; null where the plan does
 * not say, or it is wrong and has been reported. Problems: `quantity-unclear`, `out-of-range`. Where neither they nor
 * monthly means are known, that is listed as filled in, with what they would be worth.
 */
export function readUsualTemperatures(
  tree: Tree | null,
  reading: TemperatureReadContext,
): UsualTemperatures {
  const hot = wordsUnder(tree, TEMPERATURE_KEYS.hot);
  const cold = wordsUnder(tree, TEMPERATURE_KEYS.cold);
  const hottestAfternoons = readTemperature(hot, reading);
  const coldestNights = readTemperature(cold, reading);
  if (tree && !reading.hasMeans && !(hot && cold)) reading.filled.push(missingOf(hot, cold));
  if (!hot || !hottestAfternoons || !coldestNights || hottestAfternoons.si > coldestNights.si)
    return { hottestAfternoons, coldestNights };
  const is = `The hottest afternoons are not warmer than the coldest nights`;
  reading.problems.push(diagnostic("out-of-range", hot.at, is, "Check both"));
  return { hottestAfternoons: null, coldestNights: null };
}

function readTemperature(
  words: Words | null,
  { problems, measures }: TemperatureReadContext,
): Quantity | null {
  if (words === null) return null;
  const found = temperatureFrom(words.text.replace(/^(?:about|around|near) +/i, ""), measures);
  if (found && found.si >= LEAST_C && found.si <= MOST_C) return found;
  const text = words.text.slice(0, 60);
  problems.push(
    found
      ? diagnostic("out-of-range", words.at, `${text} is no usual temperature`, "Check its unit")
      : diagnostic(
          "quantity-unclear",
          words.at,
          `${text} is not a temperature`,
          "Write 28 °C or 82 °F",
        ),
  );
  return null;
}

/** What is left to guess, and what the missing numbers would be worth. Source: tests/hindcast, README. */
function missingOf(hot: Words | null, cold: Words | null): FilledDefault {
  const keys = [...(hot ? [] : [TEMPERATURE_KEYS.hot]), ...(cold ? [] : [TEMPERATURE_KEYS.cold])];
  return {
    what: keys.join(" and "),
    value: "a rough guess from the frost dates",
    why: `below place: say how warm the hottest month's afternoons usually are and how cold the coldest month's nights, and days for sowing and harvest are told ${WORTH}`,
  };
}

/** Source: the widths of tests/hindcast, with frost dates alone and with both numbers. */
const WORTH = "about a quarter closer";

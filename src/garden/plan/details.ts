import { joinWords, nearest, quantityFrom, suggestion } from "../../base/index.ts";
import {
  type Crop,
  canBeCutAgain,
  coverWords,
  fixtureOf,
  fixtureWords,
  plantCoverOf,
} from "../../crops/index.ts";
import type { Amount, Planting } from "../model/plan.ts";
import { diagnostic } from "./codes.ts";
import { wordListUnder } from "./people.ts";
import { type ReadLog, unclearQuantity, type WordReadContext } from "./place.ts";
import {
  type LabelledReadContext,
  PLANTED_PARTS,
  type PlantingReadContext,
} from "./planting-start.ts";
import { namedPractice, practiceWords } from "./practices.ts";
import { numberUnder, type Tree, valueUnder, type Words, wordsUnder } from "./tree.ts";

/**
 * How much of a crop: plants (cloves, tubers, sets, crowns), rows or a length; null, listed as filled in, where the
 * plan does not say. Problems: `said-twice`, `quantity-unclear`.
 */
export function readAmount(tree: Tree, what: string, reading: PlantingReadContext): Amount | null {
  const given = ["plants", ...PLANTED_PARTS, "rows", "length"].filter((key) =>
    valueUnder(tree, key),
  );
  const second = given[1];
  if (second) {
    const at = valueUnder(tree, second)?.at ?? tree.at;
    reading.problems.push(
      diagnostic(
        "said-twice",
        at,
        `How much is said twice: ${joinWords(given)}`,
        "Keep one of them",
      ),
    );
  }
  if (given.length === 0)
    reading.filled.push({
      what: `${what}: how much`,
      value: "nothing",
      why: "the plan does not say",
    });
  const length = wordsUnder(tree, "length");
  if (length) return readLength(length, reading);
  const rows = numberUnder(tree, "rows");
  if (rows !== null) return { kind: "rows", count: rows };
  const counted = ["plants", ...PLANTED_PARTS].find((key) => numberUnder(tree, key) !== null);
  const count = counted === undefined ? null : numberUnder(tree, counted);
  return count === null ? null : { kind: "plants", count };
}

function readLength(words: Words, { problems }: ReadLog): Amount | null {
  const length = quantityFrom(words.text);
  if (length?.kind === "length" && length.si > 0) return { kind: "length", length };
  problems.push(unclearQuantity(words, "a length", "10 ft or 3 m"));
  return null;
}

const SMALL: readonly string[] = ["zero", "one", "two", "three", "four", "five", "six"];

/** The number of days that words give: `72`, `72 days`, `2 weeks`, `two weeks`; null for anything else. */
export function daysFrom(text: string): number | null {
  const small = text.trim().toLowerCase();
  if (small === "week") return 7;
  const found = /^(\d+|[a-z]+)(?: (days?|weeks?))?$/.exec(small);
  const word = found?.[1] ?? "";
  const count = /^\d+$/.test(word) ? Number(word) : SMALL.indexOf(word);
  const days = count * (found?.[2]?.startsWith("week") ? 7 : 1);
  return days > 0 && days <= 1000 ? days : null;
}

/** The number of days of a key, or null. Problem: `quantity-unclear`. */
export function daysUnder(tree: Tree, key: string, { problems }: ReadLog): number | null {
  const words = wordsUnder(tree, key);
  const days = words && daysFrom(words.text);
  if (words && days === null)
    problems.push(
      diagnostic(
        "quantity-unclear",
        words.at,
        `${words.text.slice(0, 60)} is no number of days`,
        "Write one such as 72 days",
      ),
    );
  return days;
}

/** How it is sown again: by `every`, or by `times` alone with the crop's own interval, which is listed as filled in. */
export function readRepeat(
  tree: Tree,
  crop: Crop | null,
  { what, reading }: LabelledReadContext,
): Planting["repeat"] {
  const every = daysUnder(tree, "every", reading);
  const times = numberUnder(tree, "times");
  if (every !== null) return { everyDays: every, times };
  if (times === null || times < 2 || valueUnder(tree, "every")) return null;
  const usual = crop?.repeatEveryDays?.value ?? [14, 14];
  const everyDays = Math.round((usual[0] + usual[1]) / 2);
  reading.filled.push({
    what: `${what}: every`,
    value: `${everyDays} days`,
    why: crop?.repeatEveryDays ? "the crop facts" : "house rule: two weeks",
  });
  return { everyDays, times };
}

/** The covers that a key names (`under` of a planting, `cover` of a bed), in the order written. Problem: `unknown-word`. */
export function readCovers(tree: Tree, key: string, { problems }: ReadLog): Planting["under"] {
  return wordListUnder(tree, key).flatMap((words) => {
    const cover = plantCoverOf(words.text);
    if (cover) return [cover];
    const small = words.text.toLowerCase().replace(/^(?:an?|the) /, "");
    const advice = suggestion(
      small,
      coverWords("plants"),
      "Write a board, a net, fabric or cloches",
    );
    problems.push(
      diagnostic("unknown-word", words.at, `${words.text.slice(0, 60)} covers nothing`, advice),
    );
    return [];
  });
}

/** What `has` names: what stands there or is at hand already, in the order written. Problem: `unknown-word`. */
export function readFixtures(tree: Tree, { problems }: ReadLog): Planting["has"] {
  return wordListUnder(tree, "has").flatMap((words) => {
    const fixture = fixtureOf(words.text);
    if (fixture) return [fixture];
    const small = words.text.toLowerCase().replace(/^(?:an?|the) /, "");
    const advice = suggestion(
      small,
      fixtureWords(),
      "Write a trellis, canes, stakes, cages or collars",
    );
    problems.push(
      diagnostic("unknown-word", words.at, `${words.text.slice(0, 60)} is not known here`, advice),
    );
    return [];
  });
}

/** What the trade lays on soil, by the words that name it. Source: common practice. */
const MULCHES =
  "mulch straw hay leaves leaf leafmould mould mold compost bark wood woodchips chips chippings grass clippings manure wool cardboard paper newspaper gravel stones pebbles grit sawdust shavings needles husks hulls shells bracken seaweed hemp flax film plastic fabric fleece burlap sacking mat mats".split(
    " ",
  );

/**
 * What the soil is mulched with, as written; null where nothing is said, or `none`. Doubt: `mulch-unknown`, where no word of it is
 * one the trade has; it is taken for a mulch all the same.
 */
export function readMulch(tree: Tree, { problems }: ReadLog): string | null {
  const words = wordsUnder(tree, "mulch");
  if (words === null || /^(?:no|none|bare)$/i.test(words.text)) return null;
  const each = words.text.toLowerCase().split(/[^\p{L}]+/u);
  if (!each.some((word) => MULCHES.includes(word)))
    problems.push(
      diagnostic(
        "mulch-unknown",
        words.at,
        `No mulch is called ${words.text.slice(0, 60)}`,
        suggestion(
          each.at(-1) ?? "",
          MULCHES,
          "Write straw, leaves, compost or what else lies there",
        ),
      ),
    );
  return words.text;
}

/**
 * Whether it is cut young to grow again, where the plan says so and the crop can. Doubt: `not-cut-again`, for a crop
 * that is not grown for its leaves.
 */
export function readCutAgain(tree: Tree, crop: Crop | null, { problems }: ReadLog): boolean {
  const said = valueUnder(tree, "cut and come again");
  if (said?.kind !== "words" || said.value !== true) return false;
  if (!crop || canBeCutAgain(crop)) return true;
  problems.push(
    diagnostic(
      "not-cut-again",
      said.at,
      `${crop.many} do not grow again once they are cut`,
      "Leave it out; they are told as they usually are",
    ),
  );
  return false;
}

/** Practices left out for it, by their plain names. Problem: `practice-unknown`. */
export function readWithout(
  tree: Tree,
  { problems, vocabulary }: WordReadContext,
): readonly string[] {
  return wordListUnder(tree, "without").flatMap((words) => {
    const practice = namedPractice(words.text, vocabulary);
    if (practice) return [practice];
    const near = nearest(words.text, practiceWords(vocabulary));
    problems.push(
      diagnostic(
        "practice-unknown",
        words.at,
        `${words.text.slice(0, 60)} is no practice that can be left out`,
        near ? `Did you mean ${near}` : "Write one such as weeding, thinning or hilling",
      ),
    );
    return [];
  });
}

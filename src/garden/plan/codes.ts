import type { Problem, TextPosition } from "../../base/index.ts";

/**
 * Every code a plan's problem or doubt can have, and when it is raised. A problem stops the plan; a doubt is reported
 * and the plan is used. Codes never change their meaning; a new case gets a new code.
 */
export const CODES = {
  // The text itself.
  "too-long": ["problem", "the file is larger than 256 KiB, or one value than 400 letters"],
  "too-many": ["problem", "more plantings, beds, people, absences or diary lines than are read"],
  "too-deep": ["problem", "lists or braces stand more than 30 deep in each other"],
  "too-many-aliases": ["problem", "an alias stands in itself, or aliases blow the file up"],
  tab: ["problem", "a tab stands where only spaces can indent"],
  indent: ["problem", "a line is indented unlike its neighbours"],
  colon: ["problem", "a second colon and space, or none, where one is needed"],
  unclosed: ["problem", "a quote, brace or bracket is never closed"],
  unreadable: ["problem", "a line cannot be read for any other reason"],
  "not-a-plan": ["problem", "the file is empty or is not made of keys"],
  // Keys and their values.
  "said-twice": ["problem", "the same key, or the same thing in phrase and key, is said twice"],
  "unknown-key": ["problem", "a key that a plan does not have in that place"],
  missing: ["problem", "a key that is needed is not there, or is empty"],
  "wrong-type": ["problem", "words where a number should be, a list where one value should be"],
  "out-of-range": ["problem", "a number that cannot be: no plants, latitude 120, a risk of 2"],
  "unknown-word": ["problem", "a part of a phrase that is not understood"],
  // Days and hours.
  "two-readings": ["problem", "a day written in figures alone, such as 05-06"],
  "no-such-day": ["problem", "a day the calendar does not have, such as 31 June"],
  "day-unclear": ["problem", "words that are no day"],
  "span-backwards": ["problem", "a span that ends before it begins"],
  "hours-unclear": ["problem", "days of the week or hours that are not understood"],
  // The place.
  "zone-unknown": ["problem", "a clock that is no time zone"],
  "quantity-unclear": ["problem", "an amount without its unit, or with one of another kind"],
  "frost-order": ["problem", "three frost dates that are not early, usual, late"],
  "frost-half": ["problem", "only one of last and first frost is given"],
  "frosts-crossed": [
    "problem",
    "the first frost comes before the last one, or the dates are those of the other half of the world",
  ],
  "weather-missing": ["problem", "a weather file that does not lie beside the plan"],
  "weather-wrong": [
    "problem",
    "monthly means that are not twelve, a low above its high, or dates of nights out of order",
  ],
  "years-missing": [
    "problem",
    "the years behind a place are asked for and not here, and the plan has no frost dates of its own",
  ],
  "years-awaited": [
    "doubt",
    "the years behind a place are asked for and not here; the plan's own frost dates serve till then",
  ],
  "forecast-nowhere": [
    "problem",
    "a forecast or the years behind a place are asked for, and the place has no latitude or no longitude",
  ],
  "calendar-missing": ["problem", "a calendar file of absences that does not lie beside the plan"],
  "calendar-wrong": ["problem", "a file of absences that is no iCalendar"],
  "calendar-too-large": ["problem", "a calendar of absences with more in it than is read"],
  "calendar-unread": ["doubt", "events of a calendar that repeat in a way that is not read"],
  // Names.
  alike: ["problem", "two plantings, beds or people of one name"],
  "name-unfit": ["problem", "a name without a letter or a digit, or one kept for the garden's own"],
  "nobody-called": ["problem", "a person the plan does not name"],
  "no-planting-called": ["problem", "a planting that the plan does not hold, nearly named"],
  "fits-several": ["problem", "a name that fits more than one planting"],
  "after-circle": ["problem", "plantings that each wait for the other"],
  "practice-unknown": ["problem", "a practice to leave out that is not one"],
  "answers-orphaned": [
    "doubt",
    "answers to jobs of a planting or bed that was renamed without was:",
  ],
  "key-clash": ["problem", "two years' files of one garden that are the same year"],
  // Doubts.
  "crop-unknown": ["doubt", "a crop that the facts do not have"],
  "start-unknown": ["doubt", "a way to begin that the facts do not have for that crop"],
  "bed-too-full": ["doubt", "more rows or plants than the bed or its bags hold"],
  "bed-crowded": [
    "doubt",
    "plantings that stand in a bed at the same time and are together more than it holds",
  ],
  "net-over-hosts": [
    "doubt",
    "a net or fabric over a bed that held hosts of the same pest the year before",
  ],
  "greenhouse-too-full": ["doubt", "more trays of seedlings than the greenhouse has places for"],
  "frost-unlike-weather": [
    "doubt",
    "the mean low on a frost date is far from frost, or the weather file's own date is far from it, or no frost is said where a month's mean low is hard frost",
  ],
  "will-not-ripen": ["doubt", "a usual season does not bring it to harvest in time, or may not"],
  "will-not-bulb": ["doubt", "a kind of onion whose length of day does not come there"],
  "bad-season": ["doubt", "heat, long days or cold will spoil a crop sown then"],
  "too-many-sowings": ["doubt", "more sowings of one planting than are told"],
  "not-cut-again": ["doubt", "cut and come again asked for of what does not grow again once cut"],
  "not-sown-again": ["doubt", "sowing again asked for of what is not sown where it grows"],
  "outside-season": ["doubt", "a day that lies outside the plan's season"],
  "left-out-unknown": ["doubt", "work to leave out for a person that is no known kind"],
  "in-twice": ["doubt", "a crop that stands in since last year stands in last year's plan too"],
  "family-too-soon": [
    "doubt",
    "the same family stood in that bed fewer years ago than it should be away",
  ],
  "year-unlike-file": ["doubt", "a year that is not the one the file is named after"],
  "mulch-unknown": ["doubt", "a mulch that is none the trade lays"],
  "after-unknown": ["doubt", "a planting to follow that no year's file holds"],
} as const satisfies Record<string, readonly ["problem" | "doubt", string]>;

/** One of the codes. */
export type Code = keyof typeof CODES;

/**
 * A problem or doubt of that code, with its weight from the table. `is` and `shouldBe` are sentences without full stop.
 */
export function diagnostic(code: Code, at: TextPosition, is: string, shouldBe: string): Problem {
  return { code, weight: CODES[code][0], at, is, shouldBe };
}

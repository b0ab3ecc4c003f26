import { Document, isScalar } from "yaml";
import {
  coordinatesIn,
  type FirstAnswers,
  type FirstBed,
  type FirstCrop,
  type FirstPerson,
  isBlankBed,
  isBlankPerson,
} from "../model/first-answers.ts";
import { TEMPERATURE_KEYS } from "./usual-temperatures.ts";

const HINTS = ` What is to be said of a crop goes behind its name:
   - carrot: 3 rows, under a board
   - tomato: 6 plants, from seed indoors`;

/** A first plan's text from those answers. It is only a text: reading it reports what is wrong in it. */
export function firstPlan(answers: FirstAnswers): string {
  const { garden, year, measures, people, beds } = answers;
  const loose = cropsIn(null, answers);
  const named = people.filter((person) => !isBlankPerson(person));
  const laid = beds.flatMap((bed, at) => (isBlankBed(bed) ? [] : [bedIn(bed, at, answers)]));
  const document = new Document({
    garden,
    year: asNumber(year),
    measures,
    place: placeOf(answers),
    ...(named.length > 0 && { people: new Map(named.map(personOf)) }),
    ...(laid.length > 0 && { beds: new Map(laid) }),
    ...(loose.length > 0 && { crops: loose }),
  });
  if (answers.guessed) markGuess(document);
  document.commentBefore = HINTS;
  return document.toString({ lineWidth: 0 });
}

/** A guess says so where it stands, so that somebody puts the true days there one year. */
function markGuess(document: Document): void {
  for (const key of ["last frost", "first frost"]) {
    const said = document.getIn(["place", key], true);
    if (isScalar(said)) said.comment = " guessed from the two temperatures; better: your own";
  }
}

function placeOf(answers: FirstAnswers) {
  const { clock, where, weather, hottest, coldest, lastFrost, firstFrost, forecast } = answers;
  const at = coordinatesIn(where);
  const frosts = { "last frost": lastFrost, "first frost": firstFrost };
  return {
    clock,
    ...(where !== "" && { latitude: at?.latitude ?? where }),
    ...(at?.longitude != null && { longitude: at.longitude }),
    ...(weather === "" && frosts),
    ...(weather === "" && hottest !== "" && { [TEMPERATURE_KEYS.hot]: asNumber(hottest) }),
    ...(weather === "" && coldest !== "" && { [TEMPERATURE_KEYS.cold]: asNumber(coldest) }),
    ...(weather !== "" && { weather }),
    ...(forecast !== "" && { forecast }),
  };
}

function personOf({ name, gardens, home }: FirstPerson) {
  return [name, { ...(gardens !== "" && { gardens }), ...(home !== "" && { home }) }] as const;
}

function bedIn(bed: FirstBed, at: number, answers: FirstAnswers) {
  const is = bedWords(bed, answers.measures);
  const crops = cropsIn(at, answers);
  return [bed.name, { ...(is !== "" && { is }), ...(crops.length > 0 && { crops }) }] as const;
}

/** A bed as a plan says what it is: `12 x 4 ft`, `6 bags of 10 gal`, `greenhouse, 8 x 6 ft`. */
function bedWords(
  { kind, length, width, count, holds }: FirstBed,
  measures: FirstAnswers["measures"],
): string {
  if (kind === "bags" || kind === "pots") {
    const each = holds === "" ? "" : ` of ${withUnit(holds, measures === "metric" ? "l" : "gal")}`;
    return `${count} ${kind}${each}`;
  }
  const sides = [length, width].filter((side) => side !== "");
  const size = sides.map((side) => withUnit(side, lengthUnit(measures))).join(" x ");
  return [...(kind === "bed" ? [] : [kind]), ...(size === "" ? [] : [size])].join(", ");
}

const lengthUnit = (measures: FirstAnswers["measures"]) => (measures === "metric" ? "m" : "ft");

/** A bare number in the unit that a garden of those measures has for it; anything else as it was said. */
function withUnit(said: string, unit: string): string {
  return /^[\d.,/½¼¾ ]+$/u.test(said) ? `${said} ${unit}` : said;
}

/** Where a crop stands: the place of its bed, null where that is none, or an empty row. */
export function bedOf({ bed }: FirstCrop, { beds }: FirstAnswers): number | null {
  const row = bed === null ? undefined : beds[bed];
  return row === undefined || isBlankBed(row) ? null : bed;
}

function cropsIn(bed: number | null, answers: FirstAnswers) {
  const { crops, measures } = answers;
  return crops
    .filter((crop) => bedOf(crop, answers) === bed)
    .map((crop) => {
      const phrase = cropParts(crop, measures).map(({ words }) => words);
      return phrase.length === 0 ? crop.crop : { [crop.crop]: phrase.join(", ") };
    });
}

/** What is said of a crop, part by part, with the answer that each is. */
export function cropParts(
  { amount, unit, start, since }: FirstCrop,
  measures: FirstAnswers["measures"],
): readonly { readonly of: "amount" | "start" | "since"; readonly words: string }[] {
  const much = unit === "length" ? withUnit(amount, lengthUnit(measures)) : `${amount} ${unit}`;
  return [
    ...(amount === "" ? [] : [{ of: "amount", words: much } as const]),
    ...(start === "" ? [] : [{ of: "start", words: START_WORDS[start] ?? start } as const]),
    ...(since === "" ? [] : [{ of: "since", words: `in since ${since}` } as const]),
  ];
}

/** How a plan's phrase says the ways to begin that it has words of its own for. */
const START_WORDS: Readonly<Record<string, string>> = {
  "seed indoors": "from seed indoors",
  "seed outdoors": "from seed outdoors",
  plants: "bought",
  tubers: "from tubers",
  cloves: "from cloves",
  sets: "from sets",
  crowns: "from crowns",
};

function asNumber(said: string): number | string {
  const number = Number(said.replace(",", "."));
  return said !== "" && Number.isFinite(number) ? number : said;
}

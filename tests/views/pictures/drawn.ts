import { dayFromIso } from "../../../src/base/days/day.ts";
import type { Year } from "../../../src/engine/year.ts";
import type { Plan } from "../../../src/garden/model/plan.ts";
import { type Box, boxOf } from "../../../src/views/pictures/labels.ts";
import type { PictureForm, Sketch } from "../../../src/views/pictures/sketch.ts";
import type { TextRun, TextSpot } from "../../../src/views/pictures/svg.ts";
import { isoDay, tellOf } from "../../gardens.ts";
import { parse, type Tag, textIn, under } from "./xml.ts";

const NORTH =
  "weather: { low: [-3, -3, 0, 3, 7, 11, 13, 12, 9, 5, 1, -2], high: [3, 4, 9, 14, 19, 22, 24, 24, 19, 14, 8, 4] }";
const NAMES = ["carrot", "beet", "lettuce", "tomato", "potato", "garlic"];
const KINDS = [
  "Danvers",
  "early red",
  "the long one from last year's swap of seed",
  "Nantes",
  "Oma",
];

/** Twelve beds of five plantings each, with names of every length. */
const BIG = `garden: The Long Field Allotment Society of the Upper Valley
year: 2027
place:
  clock: Europe/Berlin
  latitude: 51
  last frost: about 6 May
  first frost: about 12 Oct
  ${NORTH}
beds:
${Array.from({ length: 12 }, (_, b) => {
  const crops = Array.from({ length: 5 }, (_, k) => {
    const n = b * 5 + k;
    return `      - ${NAMES[n % 6]}: ${KINDS[n % 5]} ${n + 1}\n`;
  }).join("");
  return `  Bed ${b + 1}${b % 4 === 3 ? " behind the old greenhouse by the hedge" : ""}:\n    is: 12 x 1.2 m\n    crops:\n${crops}`;
}).join("")}`;

/** Gardens whose pictures must all be sound, by what is odd about them. */
export const GARDENS: Readonly<Record<string, string>> = {
  "sixty plantings in twelve beds": BIG,
  "no beds, nobody, no latitude": `garden: Small
year: 2027
place:
  clock: America/Denver
  last frost: about 6 May
  first frost: about 2 Oct
crops:
  - carrot
  - tomato: 6 plants
  - quince
`,
  "no frost": `garden: Shore
year: 2027
place:
  clock: America/Los_Angeles
  last frost: none
  first frost: none
crops:
  - lettuce: 2 rows, every 14 days, 4 times
  - tomato: 6 plants
`,
  "no frost and never cold": `garden: Reef
year: 2027
place:
  clock: Pacific/Honolulu
  latitude: 21
  last frost: none
  first frost: none
  weather: { low: [66, 66, 67, 69, 70, 73, 74, 74, 74, 73, 71, 68], high: [80, 80, 81, 83, 85, 87, 88, 89, 89, 87, 84, 81] }
beds:
  Reef bed:
    is: 12 x 4 ft
    crops:
      - lettuce: 2 rows
      - tomato: 6 plants
      - carrot
`,
  "two months without frost": `garden: Fell
year: 2027
measures: metric
place:
  clock: Europe/Stockholm
  latitude: 67
  last frost: about 12 June
  first frost: about 25 Aug
  weather: { low: [-18, -17, -13, -6, 0, 6, 9, 7, 2, -4, -10, -15], high: [-8, -7, -2, 4, 10, 16, 19, 16, 10, 3, -3, -6] }
beds:
  Field:
    is: 8 x 1.2 m
    crops:
      - radish
      - potato: 20 plants
      - carrot
      - lettuce: every 14 days, 3 times
      - sweet corn
      - peas
`,
  "a mild winter": `garden: Cove
year: 2027
measures: metric
place:
  clock: Europe/London
  latitude: 50
  last frost: about 5 Feb
  first frost: about 31 Dec
  weather: { low: [4, 4, 5, 6, 9, 11, 13, 13, 12, 9, 7, 5], high: [9, 9, 11, 13, 16, 18, 20, 20, 18, 15, 12, 10] }
beds:
  Cove bed:
    is: 4 x 1.2 m
    crops:
      - lettuce: from seed indoors
      - tomato: 6 plants, from seed indoors
      - spinach
`,
  "a southern year, over the new year": `garden: Down South
year: 2027
place:
  clock: Australia/Hobart
  latitude: -42.8
  last frost: about 12 Oct
  first frost: about 5 May
  weather: { low: [12, 12, 11, 9, 7, 5, 4, 5, 6, 8, 9, 11], high: [22, 22, 20, 17, 15, 12, 12, 13, 15, 17, 19, 20] }
beds:
  Home bed:
    is: 4 x 1.2 m
    crops:
      - carrot
      - tomato: 6 plants, from seed indoors
`,
  "a single crop": `garden: One
year: 2027
place:
  clock: Europe/Berlin
  latitude: 51
  last frost: 20 Apr, 6 May, 21 May
  first frost: about 2 Oct
beds:
  Only bed:
    is: 4 x 1.2 m
    crops:
      - beet
`,
  "nothing in it": `garden: Bare
year: 2027
place:
  clock: Europe/Berlin
  last frost: about 6 May
  first frost: about 2 Oct
beds:
  Bare bed:
    is: 4 x 1.2 m
`,
};

/** What a year's text is drawn from, as of a day (`2027-05-25`); null for no day at all. */
export function sketchOf(
  text: string,
  form: PictureForm = "phone",
  on: string | null = "2027-05-25",
): Sketch & { readonly year: Year } {
  const year = yearOf(text, on ?? "2027-03-01");
  return { year, plan: firstPlan(year), form, today: on === null ? null : dayFromIso(on) };
}

/** Years by their text and day: many pictures are drawn from one. */
const YEARS = new Map<string, Year>();

function yearOf(text: string, on: string): Year {
  const key = `${on} ${text}`;
  const year = YEARS.get(key) ?? tellOf(text, { on }).year;
  YEARS.set(key, year);
  return year;
}

/** The first plan of a year. */
export function firstPlan({ plans: [plan] }: Year): Plan {
  if (!plan) throw new RangeError("a year has a plan");
  return plan;
}

/** The day of a text like `2027-05-25`. */
export const on = isoDay;

/** A picture read back; throws where it is not well formed. */
export function read(svg: string): Tag {
  return parse(svg);
}

/** Width and height of the view [px]. */
export function viewOf(svg: Tag): { readonly widthPx: number; readonly heightPx: number } {
  const [, , widthPx = 0, heightPx = 0] = (svg.attributes.viewBox ?? "").split(" ").map(Number);
  return { widthPx, heightPx };
}

/** A line of text in a picture and the room it takes. */
export type Label = { readonly text: string; readonly sizePx: number; readonly box: Box };

/** Every line of text of a picture with its room, reckoned from its place, size and words. */
export function labelsOf(svg: Tag): readonly Label[] {
  return under(svg, "text").map((each) => {
    const { x, y, "font-size": size, "text-anchor": from } = each.attributes;
    const spot = { x: Number(x), y: Number(y), sizePx: Number(size), from } as TextSpot;
    const runs: readonly TextRun[] = [{ text: textIn(each), ink: "ink", look: "plain" }];
    return { text: textIn(each), sizePx: spot.sizePx, box: boxOf(spot, runs) };
  });
}

/** The points a path passes through, in its order, without the handles of its curves; for paths of M, L, C and Z alone. */
export function pointsOf(d: string): readonly { readonly x: number; readonly y: number }[] {
  return [...d.matchAll(/[MLC]([^MLCZ]*)/g)].map((piece) => {
    const numbers = (piece[1] ?? "").trim().split(/[ ,]+/).map(Number);
    const [x = Number.NaN, y = Number.NaN] = numbers.slice(-2);
    return { x, y };
  });
}

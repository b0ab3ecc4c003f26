import { Document } from "yaml";
import { TEMPERATURE_KEYS } from "./usual-temperatures.ts";

/** The answers of somebody who makes a garden, in the gardener's own words as a plan has them. */
export type FirstAnswers = {
  readonly garden: string;
  readonly year: number;
  readonly measures: "inches and °F" | "metric";
  readonly clock: string;
  /** Degrees, or empty. */
  readonly latitude: string;
  readonly lastFrost: string;
  readonly firstFrost: string;
  /** How hot the hottest month's afternoons usually are and how cold the coldest month's nights, or empty. */
  readonly hottest: string;
  readonly coldest: string;
  readonly people: readonly string[];
  readonly beds: readonly FirstBed[];
  /** Crops by name, each with the name of its bed, or null. */
  readonly crops: readonly { readonly name: string; readonly bed: string | null }[];
};

/** A bed: its name and its size in words (`12 x 4 ft`), empty where that was not given. */
export type FirstBed = { readonly name: string; readonly size: string };

const HINTS = ` How much of a crop, and what is to be said of it, goes behind its name:
   - carrot: 3 rows, under a board
   - tomato: 6 plants, from seed indoors
 Save, and whatever is not understood is told beside its line.`;

/** A first plan's text from those answers. It is only a text: reading it reports what is wrong in it. */
export function firstPlan(answers: FirstAnswers): string {
  const { garden, year, measures, clock, latitude, lastFrost, firstFrost } = answers;
  const { hottest, coldest, people, beds, crops } = answers;
  const loose = crops.filter(({ bed }) => bed === null).map(({ name }) => name);
  const place = {
    clock,
    ...(latitude === "" ? {} : { latitude: asNumber(latitude) }),
    "last frost": lastFrost,
    "first frost": firstFrost,
    ...(hottest === "" ? {} : { [TEMPERATURE_KEYS.hot]: asNumber(hottest) }),
    ...(coldest === "" ? {} : { [TEMPERATURE_KEYS.cold]: asNumber(coldest) }),
  };
  const document = new Document({
    garden,
    year,
    measures,
    place,
    ...(people.length === 0 ? {} : { people: new Map(people.map((name) => [name, {}])) }),
    ...(beds.length === 0 ? {} : { beds: new Map(beds.map((bed) => bedIn(bed, crops))) }),
    ...(loose.length === 0 ? {} : { crops: loose }),
  });
  document.commentBefore = HINTS;
  return document.toString({ lineWidth: 0 });
}

function bedIn({ name, size }: FirstBed, crops: FirstAnswers["crops"]) {
  const here = crops.filter(({ bed }) => bed === name).map((crop) => crop.name);
  const is = size === "" ? {} : { is: size };
  return [name, { ...is, ...(here.length === 0 ? {} : { crops: here }) }] as const;
}

function asNumber(said: string): number | string {
  const number = Number(said.replace(",", "."));
  return Number.isFinite(number) ? number : said;
}

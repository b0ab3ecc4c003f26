import * as v from "valibot";
import { WEATHER_SERVICES } from "../model/weather.ts";
import { NIGHT_KEYS } from "./nights.ts";

/*
 * What a plan file is made of, once: the reader checks a file against these definitions, and the editors'
 * JSON Schema is made from them. The message of each says what would be right; the description is what an
 * editor shows. Crops as phrases are turned into keys before they are checked.
 */

const words = (what: string, like: string) =>
  v.pipe(
    v.union([v.string(), v.number()], `Write ${what}, such as ${like}`),
    v.description(`${what}, such as ${like}`),
  );

const count = (what: string) =>
  v.pipe(
    v.number(`Write ${what} as a whole number, such as 6`),
    v.integer("Write a whole number"),
    v.minValue(1, "Write 1 or more"),
    v.maxValue(100_000, "Write a smaller number"),
    v.description(what),
  );

const severalWords = (what: string, like: string) =>
  v.union(
    [words(what, like), v.array(words(what, like))],
    `Write ${what}, such as ${like}, or a list of them`,
  );

const opt = v.optional;

/** A planting as keys, those of its phrase too. */
export const PLANTING_KEYS = {
  name: opt(words("its own name", "second garlic")),
  crop: words("a crop", "carrot"),
  like: opt(words("a crop in the facts that it is grown like", "dill")),
  variety: opt(words("a variety", "early red")),
  plants: opt(count("how many plants")),
  cloves: opt(count("how many cloves")),
  tubers: opt(count("how many tubers")),
  sets: opt(count("how many sets")),
  crowns: opt(count("how many crowns")),
  rows: opt(count("how many rows")),
  length: opt(words("a length of row", "10 ft")),
  from: opt(words("how it begins", "seed indoors")),
  "sprouted first": opt(
    v.pipe(v.boolean("Write true or false"), v.description("tubers set in light to sprout")),
  ),
  sow: opt(words("the day or month it is sown", "14 May")),
  plant: opt(words("the day or month it is planted", "this October")),
  "set out": opt(words("the day it is set out", "8 Jun")),
  days: opt(words("days to harvest from the packet", "72")),
  "harden off": opt(words("days of hardening off", "7 days")),
  "not before": opt(words("the first day it may go in", "8 Jun")),
  "in since": opt(words("since when it is in the ground", "14 Oct 2026")),
  every: opt(words("how often it is sown again", "14 days")),
  times: opt(count("how many times it is sown")),
  under: opt(severalWords("what lies over it", "a board")),
  has: opt(severalWords("what stands there or is at hand already", "a trellis")),
  mulch: opt(words("what its soil is mulched with", "straw")),
  "cut and come again": opt(
    v.pipe(v.boolean("Write true or false"), v.description("cut young, to grow again")),
  ),
  after: opt(words("the planting it follows in its place", "the garlic")),
  between: opt(words("the planting it stands between the rows of", "the carrot rows")),
  without: opt(severalWords("a practice to leave out", "weeding")),
  for: opt(words("whose it is", "Imre")),
  was: opt(words("the name it had before", "old name")),
};

/** The keys a planting may have, in the order they are documented. */
export const PLANTING_KEY_NAMES: readonly string[] = Object.keys(PLANTING_KEYS);

const PlantingSchema = v.strictObject(PLANTING_KEYS, "Write a crop, such as carrot: 3 rows");

/** A planting as it may be written: a word, a crop with its phrase, or keys. */
const WrittenPlantingSchema = v.union([
  v.string(),
  PlantingSchema,
  v.objectWithRest(
    { ...PLANTING_KEYS, crop: opt(v.never()) },
    v.union([v.string(), v.number(), v.null(), v.record(v.string(), v.unknown())]),
  ),
]);

const MeansSchema = v.array(
  v.number("Write a number for each month"),
  "Write twelve numbers, January first",
);

/** Dates of nights under each of the keys. */
function nightKeys<const Key extends string>(keys: Readonly<Record<number, Key>>, like: string) {
  const dates = opt(severalWords("early, usual and late date, or none", like));
  return Object.fromEntries(Object.values(keys).map((key) => [key, dates])) as Record<
    Key,
    typeof dates
  >;
}

const latitude = v.pipe(
  v.number("Write degrees as a number, south negative, such as 46.6"),
  v.minValue(-90, "Write degrees between -90 and 90"),
  v.maxValue(90, "Write degrees between -90 and 90"),
  v.description("degrees, south negative"),
);

const longitude = v.pipe(
  v.number("Write degrees as a number, west negative, such as -111.5"),
  v.minValue(-180, "Write degrees between -180 and 180"),
  v.maxValue(180, "Write degrees between -180 and 180"),
  v.description("degrees, west negative; needed for a forecast and for the years behind a place"),
);

const WEATHER_KEYS = {
  latitude: opt(latitude),
  longitude: opt(longitude),
  fetched: opt(words("the day it was asked for", "2027-01-20")),
  low: MeansSchema,
  high: MeansSchema,
  in: opt(words("the unit", "°C")),
  station: opt(words("where the figures come from", "Valley Station")),
  source: opt(words("who published them", "national normals")),
  years: opt(severalWords("which years they are the mean of", "1991 to 2020")),
  spread: opt(MeansSchema),
  rain: opt(MeansSchema),
  ...nightKeys(NIGHT_KEYS.last, "20 Apr, 6 May, 21 May"),
  ...nightKeys(NIGHT_KEYS.first, "17 Sep, 2 Oct, 17 Oct"),
};

/** A weather file, or the same keys in the plan. */
export const WeatherSchema = v.strictObject(
  WEATHER_KEYS,
  "Write low and high, twelve monthly means each, or the name of a file",
);

const GREENHOUSE = "Write trays and warmth, such as 20 trays, kept above 45 °F";

const PlaceSchema = v.strictObject(
  {
    clock: words("the time zone", "America/Denver"),
    latitude: opt(latitude),
    longitude: opt(longitude),
    forecast: opt(words("who is asked for the coming nights", WEATHER_SERVICES.join(" or "))),
    "last frost": opt(
      words("spring's last frost, or early, usual and late, or none", "about 6 May"),
    ),
    "first frost": opt(
      words("autumn's first frost, or early, usual and late, or none", "about 2 Oct"),
    ),
    "hottest afternoons": opt(words("how hot the hottest month's afternoons usually are", "28 °C")),
    "coldest nights": opt(words("how cold the coldest month's nights usually are", "-8 °C")),
    "colder than the forecast by": opt(words("a difference", "3 °F")),
    greenhouse: opt(v.pipe(v.string(GREENHOUSE), v.description("20 trays, kept above 45 °F"))),
    weather: opt(
      v.union(
        [v.string(), WeatherSchema],
        "Write from Open-Meteo, the name of a weather file, or low and high means",
      ),
    ),
  },
  "Write the place's keys below it: clock, last frost, first frost",
);

const RiskSchema = v.strictObject(
  {
    "plants we raised": opt(words("a chance of frost", "1 spring in 10")),
    "seed in the ground": opt(words("a chance of frost", "1 spring in 2")),
  },
  "Write plants we raised: 1 spring in 10",
);

const PersonSchema = v.strictObject(
  {
    gardens: opt(words("gardening hours", "Wed 18-19 and Sat 9-12")),
    home: opt(words("hours at home", "weekdays from 17:30 and weekends")),
    "leave out": opt(severalWords("work to leave out", "lifting")),
    was: opt(words("the name they had before", "old name")),
  },
  "Write gardens: Sat 9-12",
);

const bedSchema = <const Item extends v.GenericSchema>(item: Item) =>
  v.strictObject(
    {
      is: opt(words("size or kind", "12 x 4 ft")),
      "warmed by": opt(words("what warms the soil", "black film")),
      cover: opt(severalWords("what lies over all of it", "insect net")),
      mulch: opt(words("what its soil is mulched with", "straw")),
      has: opt(severalWords("what stands there or is at hand already", "a trellis")),
      drip: opt(words("what its drip lines give together", "12 gal an hour")),
      crops: opt(v.array(item, "Write a list of crops, each after a dash")),
      was: opt(words("the name it had before", "old name")),
    },
    "Write the bed's keys below it: is, crops",
  );

const DiaryLineSchema = v.union(
  [v.string(), v.record(v.string(), v.unknown())],
  "Write a day and what happened, such as 24 May: carrots up",
);

const planSchema = <const Item extends v.GenericSchema>(item: Item) =>
  v.strictObject(
    {
      garden: words("the garden's name", "Quarry Lane"),
      year: v.pipe(
        v.number("Write the year in four figures, such as 2027"),
        v.integer("Write a whole year"),
        v.minValue(1970, "Write a year from 1970 on"),
        v.maxValue(2199, "Write a year before 2200"),
        v.description("the season's year"),
      ),
      measures: opt(words("the household's units", "inches and °F, or metric")),
      place: PlaceSchema,
      risk: opt(RiskSchema),
      people: opt(v.record(v.string(), PersonSchema, "Write each person's name as a key")),
      away: opt(
        v.array(
          words("who is away and when", "Oda, 19 to 23 Jun"),
          "Write a list, each after a dash, such as - Oda, 19 to 23 Jun",
        ),
      ),
      beds: opt(v.record(v.string(), bedSchema(item), "Write each bed's name as a key")),
      crops: opt(v.array(item, "Write a list of crops, each after a dash")),
      diary: opt(
        v.union(
          [v.array(DiaryLineSchema), v.record(v.string(), v.unknown())],
          "Write a list, each after a dash, such as - 24 May: carrots up",
        ),
      ),
      assume: opt(
        v.picklist(["done", "open"], "Write done, or open to keep chores until they are told"),
      ),
    },
    "Write keys: garden, year, place",
  );

/** What is checked: every crop as keys. */
export const CheckedPlanSchema = planSchema(PlantingSchema);

/** What an editor shows of the schema as a whole. */
export const SCHEMA_TITLE = "A garden's plan for a year";

/**
 * What may be written: crops as words, phrases or keys. plans/plan.schema.json, from which editors complete, is made of
 * it by tests/garden/plan/schema.test.ts, which fails where the two differ.
 */
export const WrittenPlanSchema = planSchema(WrittenPlantingSchema);

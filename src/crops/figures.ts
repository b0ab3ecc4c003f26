import type { Crop, CropLimits, Figure, NumberRange, Outdoors, Source, Warmth } from "./facts.ts";

/** Centimetres of a range of inches. */
export const inchRange = (least: number, most: number): NumberRange => [least * 2.54, most * 2.54];

/** A figure read in a publication, or in a reprint of it. */
export const published = <T>(value: T, cite: string): Figure<T> => ({
  value,
  source: { kind: "published", cite },
});

/** A figure calculated from published ones; `how` gives the calculation. */
export const derived = <T>(value: T, cite: string, how: string): Figure<T> => ({
  value,
  source: { kind: "derived", cite, how },
});

/** A rule of thumb of the trade; it has no source. */
export const commonPractice = <T>(value: T): Figure<T> => ({
  value,
  source: { kind: "common practice" },
});

/** A rule of this project, with its reason. */
export const houseRule = <T>(value: T, why: string): Figure<T> => ({
  value,
  source: { kind: "house rule", why },
});

/** A figure remembered and not looked up; `of` says whose it is thought to be. */
export const fromMemory = <T>(value: T, of: string): Figure<T> => ({
  value,
  source: { kind: "memory", of },
});

/** A source as a reader of `why` sees it. */
export function saySource(source: Source): string {
  switch (source.kind) {
    case "published":
      return source.cite;
    case "derived":
      return `${source.how} (${source.cite})`;
    case "common practice":
      return "common practice";
    case "house rule":
      return `house rule: ${source.why}`;
    case "memory":
      return `from memory, unchecked: ${source.of}`;
  }
}

/** Days and nights in whose heat tomatoes, peppers and beans drop their flowers [°C]. */
export const SETS_BELOW = commonPractice({ dayC: 35, nightC: 24 });

/** Titles cited by more than one family, so that each is written once. */
export const CITE = {
  purdue: "Purdue University Extension HO-203, Vegetables: frost resistance",
  missouri:
    "Jett and Trinklein, University of Missouri Extension G6201, Vegetable Planting Calendar, Table 1, 2004 and 2015",
  colorado:
    "Colorado State University Extension, GardenNotes 720, Vegetable Planting Guide, Table 2",
  kansas: "Homan, Kansas State Research and Extension, Soil Temperature and Vegetables",
  nebraska: "Nebraska Extension, Vegetable garden beginner's tips",
  maryland:
    "University of Maryland Extension, Hardening Vegetable Seedlings for the Home Garden, 2023",
  beltrami: "University of Minnesota Extension Master Gardeners, Beltrami County, Hardening off",
  virginia: "Virginia Cooperative Extension, Starting Vegetable Transplants",
  minnesotaPotato:
    "Tong, University of Minnesota Extension, Growing potatoes in Minnesota home gardens",
  minnesotaHills: "University of Minnesota Extension, Growing potatoes in home gardens, 2024",
  utahPotato: "Drost, Utah State University Extension, Potatoes in the Garden, 2020",
  minnesotaGarlic: "University of Minnesota Extension, Growing garlic in home gardens, 2022",
  otterTail:
    "University of Minnesota Extension Master Gardeners, Otter Tail County, Growing garlic, 2025",
  florida: "Bolles, UF/IFAS Extension Escambia County, Thinning Vegetable Seedlings, 2014",
  peet: "Peet, NC State University, Sustainable Practices for Vegetable Production in the South, Appendix 2, Calculating Degree Days",
  wisconsin:
    "University of Wisconsin Extension, Waushara County, Calculating growing degree days, 2018",
  floridaRepeat: "UF/IFAS Gardening Solutions, Succession Planting of Vegetables",
  harrington:
    "Harrington and Minges, Vegetable Seed Germination, University of California, 1954; reprint",
  coloradoFrost:
    "Colorado State University Extension, GardenNotes 720, Vegetable Planting Guide, hardiness classes",
  coloradoBlocks:
    "Trujillo, Colorado State University Extension, Vegetable Garden Planting Guide, slides",
  northDakota:
    "North Dakota State University Extension, The importance of thinning garden vegetables, 2016",
  texas: "Parsons, Texas A&M AgriLife Extension, Check Soil Temperature",
  idaho: "University of Idaho Extension, Planting the Garden, 2012",
  newEngland:
    "New England Vegetable Management Guide, Insects That Can Be Controlled by Row Covers, extension services of the six New England state universities",
  virginiaDates:
    "Straw, Virginia Cooperative Extension 426-331, Vegetable Planting Guide and Recommended Planting Dates, 2006",
  iowaOnions:
    "Iowa State University Extension, Horticulture and Home Pest News, What is a long-day type onion variety",
  delaware: "Ernest, University of Delaware, Weekly Crop Update, Warm temperatures, May 2025",
} as const;

/** The height at which seedlings are thinned. */
export const THINNED_AT: Figure<NumberRange> = derived(
  inchRange(1, 2),
  CITE.florida,
  "given there for seedlings of every kind",
);

/** No limit is known. */
export const NO_LIMITS: CropLimits = { heatC: null, longDays: null, coldYoung: null };

/** Growth of a cool crop: base 40 °F, fastest up to 80 °F. */
export const COOL_WARMTH: Warmth = {
  baseC: derived((40 - 32) / 1.8, CITE.peet, "the base given there for pea, cabbage and turnip"),
  ceilingC: derived(
    (80 - 32) / 1.8,
    CITE.colorado,
    "the upper end of the growth range given there for cool crops",
  ),
  packetC: houseRule(
    (60 - 32) / 1.8,
    "packets do not say; the lower end of Colorado's growth range of cool crops, 60 °F",
  ),
};

/** Growth of a warm crop: base 50 °F, fastest up to 86 °F. */
export const WARM_WARMTH: Warmth = {
  baseC: derived((50 - 32) / 1.8, CITE.peet, "the base given there for corn and bean"),
  ceilingC: derived((86 - 32) / 1.8, CITE.wisconsin, "the ceiling given there for corn"),
  packetC: houseRule(
    (70 - 32) / 1.8,
    "packets do not say; the lower end of Colorado's growth range of warm crops, 70 °F",
  ),
};

/** The facts of a crop that needs nothing special; each crop's own facts replace some of them. */
export const CROP_DEFAULTS = {
  alsoCalled: [],
  kinds: [],
  slow: false,
  indoors: null,
  settingOut: null,
  outdoors: null,
  thinnings: [],
  hilling: null,
  covers: [],
  flowers: null,
  support: null,
  care: [],
  perennial: null,
  repeatEveryDays: null,
  overwinter: null,
  digInDays: null,
  bulbs: null,
  winter: null,
  warmth: null,
  limits: NO_LIMITS,
  eaten: "leaf",
  whenBegun: {},
  whenOld: null,
} as const satisfies Partial<Crop>;

/** A sowing outdoors that needs nothing special. */
export const OUTDOORS_DEFAULTS = {
  weeksFromLastFrost: null,
  soilMaxC: null,
  soakHours: null,
  how: null,
} as const satisfies Partial<Outdoors>;

/** A harvest that needs nothing special. */
export const HARVEST_DEFAULTS = {
  cuts: null,
  bearsDays: null,
  caution: null,
} as const satisfies Partial<Crop["harvest"]>;

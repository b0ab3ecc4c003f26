import type { Figure, Range, Source } from "./facts.ts";

/** Centimetres of a range of inches. */
export const inchRange = (least: number, most: number): Range => [least * 2.54, most * 2.54];

/** A figure read in a publication, or in a reprint of it. */
export const published = <T>(value: T, cite: string): Figure<T> => ({
  value,
  source: { kind: "published", cite },
});

/** A figure reckoned from published ones; `how` says the arithmetic. */
export const derived = <T>(value: T, cite: string, how: string): Figure<T> => ({
  value,
  source: { kind: "derived", cite, how },
});

/** A rule of thumb of the trade; it has no source. */
export const common = <T>(value: T): Figure<T> => ({ value, source: { kind: "common practice" } });

/** A rule of this house, and why. */
export const house = <T>(value: T, why: string): Figure<T> => ({
  value,
  source: { kind: "house rule", why },
});

/** A figure remembered and not looked up; `of` says whose it is said to be. */
export const memory = <T>(value: T, of: string): Figure<T> => ({
  value,
  source: { kind: "memory", of },
});

/** How a source is said to a reader of `why`. */
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
  floridaRepeat: "UF/IFAS Gardening Solutions, Succession Planting of Vegetables",
} as const;

import type { Day, DaySpan, Measures, Minute, Quantity, TextPosition } from "../../base/index.ts";
import type { FixtureName, PlantCoverName, Start } from "../../crops/index.ts";
import type { WeatherService } from "./weather.ts";

/**
 * A garden's year, complete and checked: it exists only when its file has no problem. Plain JSON, so it can be stored
 * as text and read back without the parser.
 */
export type Plan = {
  /** The garden's id: its folder's name, or a random one where it was made in the browser. */
  readonly garden: string;
  /** What `garden:` says; for display only. */
  readonly name: string;
  readonly year: number;
  readonly file: string;
  readonly measures: Measures;
  readonly site: Site;
  readonly risk: Risk;
  readonly people: readonly Person[];
  readonly away: readonly Absence[];
  readonly beds: readonly Bed[];
  readonly plantings: readonly Planting[];
  readonly diary: readonly DiaryLine[];
  /**
   * `assume: done` (the default) counts chores as done on their day; `assume: open` leaves them open until the diary
   * says so.
   */
  readonly assume: "done" | "open";
  /** Every default that was filled in, as `check` lists it. */
  readonly filled: readonly FilledDefault[];
};

/** Where the garden lies, and what its winters and summers are like. */
export type Site = {
  /** IANA zone. */
  readonly clock: string;
  /** Degrees, south negative; null where neither the plan nor its weather says. */
  readonly latitude: number | null;
  /** Degrees, west negative; null where the plan does not say. */
  readonly longitude: number | null;
  /** Who is asked for this year's weather; null: nobody, and no coordinates leave. */
  readonly forecast: WeatherService | null;
  /** 32 °F (0 °C) nights of spring and autumn, as days of this plan's own season; null for a place without frost. */
  readonly lastFrost: FrostDates | null;
  readonly firstFrost: FrostDates | null;
  /** The garden's own correction of forecasts and station figures [K]; never of dates the gardener wrote. */
  readonly colderBy: Quantity | null;
  readonly greenhouse: {
    readonly trays: number;
    readonly keptAbove: Quantity | null;
    readonly at: TextPosition;
  } | null;
  /** Nights of 28 °F (-2 °C) in autumn, from the station's own lows; null where the plan has none. */
  readonly killingFrost: FrostDates | null;
  /** Means of the hottest month's highs and the coldest month's lows; null where the plan does not say. */
  readonly hottestAfternoons: Quantity | null;
  readonly coldestNights: Quantity | null;
  /** What the station's years are like; null where the plan gives nothing of it. */
  readonly normals: Normals | null;
};

/** Twelve values each, January first; means of daily lows and highs [°C]. */
export type Normals = {
  readonly lowC: readonly number[];
  readonly highC: readonly number[];
  /** Standard deviation of the month's mean from year to year [K]; null where not known. */
  readonly spreadK: readonly number[] | null;
  /** Rain of the month [mm]; null where not known. */
  readonly rainMm: readonly number[] | null;
};

/** early ≤ usual ≤ late: 10, 50 and 90 % of years have had that frost by then. `given` counts the dates that the gardener wrote. */
export type FrostDates = {
  readonly early: Day;
  readonly usual: Day;
  readonly late: Day;
  readonly given: 1 | 3;
};

/** The chance of frost, 0 to 1, that is accepted for plants raised under cover and for seed in the ground. */
export type Risk = { readonly raised: number; readonly seed: number };

/** Hours of one weekday; `from` is inclusive, `to` exclusive. */
export type Hours = {
  readonly weekday: 1 | 2 | 3 | 4 | 5 | 6 | 7;
  readonly from: Minute;
  readonly to: Minute;
};

/** A member of the household. */
export type Person = {
  /** From the person's first name in any file (`was:`); part of ids and links, so it never changes. */
  readonly key: string;
  readonly name: string;
  /** Gardening hours in weekday order; empty: any day, no hours given. */
  readonly gardens: readonly Hours[];
  /** Hours at home in weekday order; empty: always. */
  readonly home: readonly Hours[];
  readonly leaveOut: readonly string[];
};

/** Both days inclusive. `person` null: everybody. */
export type Absence = DaySpan & { readonly person: string | null };

/** A place that plants stand in. */
export type Bed = {
  /** `root-bed`: the slug of its first name (`was:`), the same in every year. A planting's `bed` is this key. */
  readonly key: string;
  readonly name: string;
  readonly kind: "bed" | "bags" | "greenhouse";
  /** A greenhouse of glass, a tunnel of film or a cold frame, where it is one of these; else null. */
  readonly house: "glass" | "film" | "frame" | null;
  /** The night temperature that a greenhouse or tunnel is heated to; null where nothing heats it, and for other beds. */
  readonly keptAbove: Quantity | null;
  /** The longer side; rows run along it. */
  readonly lengthCm: Quantity | null;
  readonly widthCm: Quantity | null;
  readonly bags: {
    readonly count: number;
    readonly across: Quantity;
    readonly high: Quantity;
  } | null;
  /** Black film or fabric that warms the soil. */
  readonly warmed: boolean;
  /** What lies over the whole bed; its plantings' `under` name it too. */
  readonly covers: readonly PlantCoverName[];
  /** What its soil is mulched with, as written (`straw`); null where it lies bare. */
  readonly mulch: string | null;
  /** What stands in it or is at hand for it already; its plantings' `has` name it too. */
  readonly has: readonly FixtureName[];
  /** What all its drip lines give together in an hour, as a volume; null where it has none. */
  readonly drip: Quantity | null;
  readonly at: TextPosition;
};

/** How much of a crop: a number of plants (cloves, tubers), a number of rows, or a length of row. */
export type Amount =
  | { readonly kind: "plants"; readonly count: number }
  | { readonly kind: "rows"; readonly count: number }
  | { readonly kind: "length"; readonly length: Quantity };

/** One crop in its place for this year; days are of the garden's own calendar. */
export type Planting = {
  /** `2027/beet`: year and the slug of its first name, else of crop and variety. Unique in a garden. */
  readonly key: string;
  /** Key of the crop in the facts; where the facts have none, or it is one of the gardener's own, the slug of the name as written. */
  readonly crop: string;
  /** Whether the facts have the crop; a crop they don't have gets no tasks. */
  readonly known: boolean;
  /** For a crop of the gardener's own, the key of the one in the facts that it is grown like; else null. */
  readonly like: string | null;
  /** The crop's name as the gardener wrote it, singular or plural as written. */
  readonly written: string;
  readonly name: string | null;
  readonly variety: string | null;
  readonly bed: string | null;
  readonly amount: Amount | null;
  /** How it begins here; filled from the crop facts where the plan does not say. */
  readonly start: Start;
  /** Days to harvest from the packet; null: the crop facts'. */
  readonly days: number | null;
  /** Days of hardening off; null: the crop facts'. */
  readonly hardenDays: number | null;
  /** The gardener's own days. `start`: sown or planted on; `out`: set out on. */
  readonly fixed: { readonly start: Day | null; readonly out: Day | null };
  /** First and last day of a month or span the gardener named for the start (`plant: this October`). */
  readonly within: DaySpan | null;
  readonly notBefore: Day | null;
  /** In the ground since that day, and in no earlier file. */
  readonly inSince: Day | null;
  /** Sow again every so many days; `times` null: as long as the season lets it. */
  readonly repeat: { readonly everyDays: number; readonly times: number | null } | null;
  /** What lies over it, its bed's covers among them. */
  readonly under: readonly PlantCoverName[];
  /** What stands there or is at hand for it already, its bed's among them. */
  readonly has: readonly FixtureName[];
  /** What its soil is mulched with, its bed's where it has none of its own; null where it lies bare. */
  readonly mulch: string | null;
  /** Whether it is cut young and grows again, though its kind is usually taken whole. */
  readonly cutAgain: boolean;
  /** Whether tubers are set in light to sprout first. */
  readonly sproutedFirst: boolean;
  /**
   * Key of the planting that this one follows in its place; for one of an earlier year's file, the slug of its name.
   */
  readonly after: string | null;
  /** Names of practices that the gardener leaves out for it. */
  readonly without: readonly string[];
  /** Key of the person who looks after it; null: anybody. */
  readonly whose: string | null;
  readonly at: TextPosition;
};

/**
 * A line of the diary as written. `answers` is set where it is the answer to one task (its id), with the person (key)
 * who gave it where known.
 */
export type DiaryLine = {
  readonly day: Day;
  readonly text: string;
  readonly at: TextPosition;
  readonly answers?: { readonly task: string; readonly by: string | null };
};

/** A default that was filled in: what for (`carrot in Root bed`), its value, and the reason. */
export type FilledDefault = { readonly what: string; readonly value: string; readonly why: string };

/**
 * Where a figure comes from. `published` names author, year, title and the table or page; `derived` says from
 * which published figures it was reckoned and how; `common practice` is a rule of thumb of the trade without a
 * source; `house rule` is ours, with its reason; `memory` was not looked up and may be wrong.
 */
export type Source =
  | { readonly kind: "published"; readonly cite: string }
  | { readonly kind: "derived"; readonly cite: string; readonly how: string }
  | { readonly kind: "common practice" }
  | { readonly kind: "house rule"; readonly why: string }
  | { readonly kind: "memory"; readonly of: string };

/** A figure and where it comes from; the unit stands in the name of the field that holds it. */
export type Figure<T> = { readonly value: T; readonly source: Source };

/** Least and most, both inclusive. */
export type Range = readonly [least: number, most: number];

/**
 * How much frost a crop stands, in the classes of Purdue HO-203: very hardy (hard frosts for short
 * periods), frost tolerant (light frosts), tender (killed by frost), warm loving (no cold at all).
 */
export type FrostClass = "very hardy" | "frost tolerant" | "tender" | "warm loving";

/** What a gardener begins with. */
export type Start = "seed" | "plants" | "tubers" | "cloves";

/** The botanical family in the trade's words; pests and rotations go by it. */
export type Family =
  | "nightshades"
  | "carrot family"
  | "daisy family"
  | "beet family"
  | "onion family";

/** How seed comes up: a row of the days table, taken whole or from the crop that stands in for this one. */
export type Emergence = {
  /** Row name in crops/emergence.ts. */
  readonly row: string;
  /** Whether the row is another crop's that comes up alike. */
  readonly standsIn: boolean;
  readonly source: Source;
};

/** One thinning. `daysAfterUp` sets the day; the height is the sign the gardener looks for. */
export type Thinning = {
  readonly step: string;
  readonly daysAfterUp: Figure<Range>;
  readonly heightCm: Figure<Range>;
  readonly apartCm: Figure<Range>;
  /** What the thinnings are good for, or how to take them out: a short clause, or null. */
  readonly note: string | null;
};

/** Raising plants under cover, counted back from the day they go out. */
export type Indoors = {
  readonly weeksToSettingOut: Figure<Range>;
  readonly soilTempC: Figure<number>;
  readonly potOnDaysAfterUp: Figure<Range> | null;
  /** Days of hardening off; the gardener's plan may retune it. */
  readonly hardenDays: Figure<number>;
  /** Nights out only where they stay above this [°C]. */
  readonly nightFloorC: Figure<number>;
};

/** Sowing or planting where the crop is to grow. */
export type Outdoors = {
  readonly depthCm: Figure<Range>;
  readonly apartCm: Figure<Range>;
  readonly rowsCm: Figure<number>;
  /** Soil at planting depth on the day seed, tuber or clove goes in. */
  readonly soilMinC: Figure<number>;
  /** Earliest and latest weeks from the frost date of raised plants or seed; negative is before it. */
  readonly weeksFromLastFrost: Figure<Range>;
};

/** Setting raised plants out. */
export type SettingOut = {
  readonly weeksFromLastFrost: Figure<Range>;
  readonly soilMinC: Figure<number> | null;
  readonly apartCm: Figure<number>;
  readonly rowsCm: Figure<number>;
  /** What must be at hand in that hour: stakes, collars, net. */
  readonly things: readonly string[];
};

/** Filling a bag or earthing up a row. */
export type Hilling = {
  readonly shootCm: Figure<Range>;
  readonly daysFromPlanting: Figure<Range>;
  readonly daysBetween: Figure<Range>;
  readonly tops: Figure<Range>;
  readonly bagStartCm: Figure<Range>;
  readonly coverCm: Figure<Range>;
  readonly bagRimCm: Figure<number>;
  readonly rowTotalCm: Figure<Range>;
};

/** How a crop is brought in. */
export type Harvest = {
  /** Days from sowing outdoors, or from setting out, to the first harvest; the plan's own days replace it. */
  readonly days: Figure<Range> & { readonly from: "sowing" | "setting out" | "planting" };
  readonly kind: "once" | "again and again" | "cut and come again";
  /** Days between cuts, and how many; null for the other kinds. */
  readonly cuts: { readonly everyDays: Figure<Range>; readonly times: Figure<Range> } | null;
  /** The plant's own sign that it is time. */
  readonly sign: string;
  readonly how: string;
};

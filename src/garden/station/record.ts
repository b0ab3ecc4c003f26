import { type Day, dayOrThrow, partsOf, plus } from "../../base/index.ts";

/** A station's record of one day: lowest and highest [°C], rain [mm]; null where it has none. */
export type DailyRecord = {
  readonly day: Day;
  readonly lowC: number | null;
  readonly highC: number | null;
  readonly rainMm: number | null;
};

/**
 * What the search of one growing year found: the night as a number of its year's days (see `dayNumberOf`), none, or no
 * answer because too many nights are missing: within the record (`left out`), or because the winter goes beyond the
 * record's end or begins before its start (`cut off`). `year` is the one in which the growing year begins.
 */
export type SearchedYear = {
  readonly year: number;
  readonly night: number | "none" | "left out" | "cut off";
};

/** What a record is searched for: nights at or below that temperature [°C], in growing years of that hemisphere. */
export type NightSearch = { readonly atMostC: number; readonly south: boolean };

/**
 * The number of missing nights from which a year is left out. Source: Utah Climate Center, Utah State University, Help:
 * freeze dates table.
 */
export const MISSING_NIGHTS = 10;

/** How far above the temperature a night still counts [K]. Source: house rule: stations write tenths of °C, so 28 °F is written -2.2. */
const ROUNDING_K = 0.05;

/**
 * The value that this share (0 to 1) of all years is at or below, by plotting positions i / (n + 1); outside the
 * positions of the least and the most it is one of these. Values may be in any order. -Infinity and Infinity stand for
 * a year without such a night; null where the answer falls on one of them, or between one and a date, and where there
 * are no values.
 * Source: Hyndman and Fan, 1996, Sample quantiles in statistical packages, The American Statistician 50, definition 6.
 */
export function quantile(values: readonly number[], share: number): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  const position = Math.round((sorted.length + 1) * share * 1e9) / 1e9;
  const clamped = Math.min(Math.max(position, 1), sorted.length);
  const [below, above] = [sorted[Math.floor(clamped) - 1], sorted[Math.ceil(clamped) - 1]];
  if (below === undefined || above === undefined) return null;
  if (!Number.isFinite(below) || !Number.isFinite(above)) return null;
  return below + (clamped - Math.floor(clamped)) * (above - below);
}

/**
 * The number of a day in a year of 365: 1 for 1 January, 60 for 1 March and for 29 February too, 0 for 31 December
 * of the year before, above 365 in the year after.
 */
export function dayNumberOf(day: Day, year: number): number {
  const { year: own, month, date } = partsOf(day);
  if (month === 2 && date === 29) return 60 + 365 * (own - year);
  const plain = dayOrThrow(2027, month, date) - dayOrThrow(2027, 1, 1) + 1;
  return plain + 365 * (own - year);
}

/** The month and date of a number of a year's days, as a day of some year without a 29 February; rounded to a whole day. */
export function dayOfNumber(number: number): Day {
  return plus(dayOrThrow(2027, 1, 1), (((Math.round(number) - 1) % 365) + 365) % 365);
}

/**
 * How much warmer the highs of July are than those of January [K]; null where the record has only one of these months
 * or none.
 */
function julyWarmerK(series: readonly DailyRecord[]): number | null {
  const [january, july] = [1, 7].map((wanted) => {
    const of = series.filter(({ day }) => partsOf(day).month === wanted);
    const highs = of.flatMap(({ highC }) => (highC === null ? [] : [highC]));
    return highs.length === 0 ? null : highs.reduce((a, b) => a + b, 0) / highs.length;
  });
  return january == null || july == null ? null : july - january;
}

/**
 * Whether the record is of the southern hemisphere: by latitude [degrees], else by the warmer of January and July;
 * false where neither is known.
 */
export function isSouth(series: readonly DailyRecord[], latitude: number | null): boolean {
  return latitude === null ? (julyWarmerK(series) ?? 0) < 0 : latitude < 0;
}

/**
 * How far apart January and July must be to decide the hemisphere [K]. Source: house rule: near the equator, rains may
 * reverse a smaller difference.
 */
const DECISIVE_K = 5;

/**
 * Whether January and July contradict a latitude [degrees], because the month that is much the warmer is summer in the
 * other hemisphere.
 */
export function contradictsLatitude(series: readonly DailyRecord[], latitude: number): boolean {
  const warmerK = julyWarmerK(series) ?? 0;
  return Math.abs(warmerK) >= DECISIVE_K && warmerK < 0 !== latitude < 0;
}

/**
 * The day on which the growing year that begins in a year ends its midsummer: 31 July, in the south 31 January of the
 * year after.
 */
function midsummer(year: number, south: boolean): Day {
  return south ? dayOrThrow(year + 1, 1, 31) : dayOrThrow(year, 7, 31);
}

/** The most days from one midsummer to the next; the winter between them is searched as one. */
const WINTER_DAYS = 365;

type Direction = { readonly step: 1 | -1; readonly search: NightSearch };

function searchYears(
  series: readonly DailyRecord[],
  { step, search }: Direction,
): readonly SearchedYear[] {
  const [first, last] = [series[0]?.day, series.at(-1)?.day];
  if (first === undefined || last === undefined) return [];
  const lows = new Map(series.map(({ day, lowC }) => [day, lowC]));
  const record = { lows, first, last };
  const years: SearchedYear[] = [];
  for (let year = partsOf(first).year - 1; year <= partsOf(last).year; year++) {
    const from = plus(midsummer(year, search.south), step === 1 ? 1 : 0);
    const begins = step === 1 ? from > first - MISSING_NIGHTS : from > first;
    const ends = step === 1 ? from < last : from < last + MISSING_NIGHTS;
    if (begins && ends)
      years.push({ year, night: nightFrom(record, from, { step, search, year }) });
  }
  return years;
}

type RecordedLows = {
  readonly lows: ReadonlyMap<Day, number | null>;
  readonly first: Day;
  readonly last: Day;
};

function nightFrom(
  { lows, first, last }: RecordedLows,
  from: Day,
  { step, search, year }: Direction & { readonly year: number },
): SearchedYear["night"] {
  let [missing, beyond] = [0, 0];
  for (let off = 0; off < WINTER_DAYS; off++) {
    const day = plus(from, off * step);
    const low = lows.get(day) ?? null;
    if (day < first || day > last) beyond += 1;
    else if (low === null) missing += 1;
    if (missing >= MISSING_NIGHTS) return "left out";
    if (missing + beyond >= MISSING_NIGHTS) return "cut off";
    if (low !== null && low <= search.atMostC + ROUNDING_K) return dayNumberOf(day, year);
  }
  return "none";
}

/**
 * The last night at or below a temperature before the midsummer of each growing year, searched backward from midsummer
 * through the whole winter before it, so that it may be in December or earlier. `series` in day order, gaps allowed;
 * years whose midsummer is outside the record are not in the answer.
 * Source: NOAA NCEI and Utah Climate Center, which both count by the winter; the rule for missing nights is Utah's.
 */
export function lastNights(
  series: readonly DailyRecord[],
  search: NightSearch,
): readonly SearchedYear[] {
  return searchYears(series, { step: -1, search });
}

/**
 * The first such night from the day after midsummer through the whole winter; it may be in January or later. Otherwise
 * as lastNights.
 */
export function firstNights(
  series: readonly DailyRecord[],
  search: NightSearch,
): readonly SearchedYear[] {
  return searchYears(series, { step: 1, search });
}

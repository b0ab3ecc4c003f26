import { DAYS_IN_YEAR, dayOfYear } from "../../base/index.ts";
import type { Site } from "../../garden/model/index.ts";
import { type AirCurves, MIDDLES } from "./air.ts";
import { deviationOfSum, type Estimate, type KnownSum, knowing } from "./estimate.ts";
import { climateAt, seaSide } from "./station-climates.ts";
import { waveC } from "./wave.ts";

/** What a rough curve is made of. */
export type RoughSite = Pick<
  Site,
  "clock" | "latitude" | "lastFrost" | "firstFrost" | "hottestAfternoons" | "coldestNights"
>;

/** Lows and highs [°C] of each day of a year, and how far their mean may be off in each month, January first [K]. */
export type RoughAir = AirCurves & { readonly curveK: readonly number[] };

/**
 * The mean low on a usual frost date, and its standard deviation over stations [°C]. Source: measured on the 22 stations of
 * tests/sources/climate-normals.csv that have frost dates.
 */
export const LOW_ON_FROST_DATE = { meanC: 5.3, sdK: 1.3 } as const;

/** The coldest month's mean low of places without frost. Source: measured on the six such stations there. */
const COLDEST_WITHOUT_FROST = { meanC: 9.2, sdK: 3.3 } as const;

/** How well a gardener knows a mean [K]. Source: house rule. */
const SAID_SD_K = 0.5;

/**
 * How far a month of real stations is off one wave, and its soil off what the sun is thought to add, beside all that is estimated
 * [K]. Source: house rule, chosen of five so that four in five of the stations' months and sowings lie within it.
 */
const OFF_THE_WAVE_K = 1.25;

/** The month's mean at the top or foot of a wave of one year, as a part of its height. Source: the mean of a cosine over a twelfth. */
const MONTH_OF_TOP = Math.sin(Math.PI / 12) / (Math.PI / 12);

/** The hottest day of the year in the north, 0 to 364: inland, and later by the sea. Source: measured there. */
export const HOTTEST = { inland: 201, laterBySea: 6 } as const;

const HALF_A_YEAR = DAYS_IN_YEAR / 2;

/** Hottest day of the year, 0 to 364: midway between the frosts the more, the shorter their summer is. */
function hottestDay({ clock, latitude, lastFrost, firstFrost }: RoughSite): number {
  const usual = HOTTEST.inland + HOTTEST.laterBySea * seaSide(clock);
  const south = isSouthern(latitude, lastFrost && dayOfYear(lastFrost.usual));
  const here = south ? usual + HALF_A_YEAR : usual;
  if (!lastFrost || !firstFrost) return here;
  const days = firstFrost.usual - lastFrost.usual;
  const middle = dayOfYear(lastFrost.usual) + days / 2;
  const off = wrapped(middle - here);
  return here + (off * (1 + Math.cos((Math.PI * Math.min(days, DAYS_IN_YEAR)) / DAYS_IN_YEAR))) / 2;
}

/** South of the equator; without a latitude where the last frost comes in the second half of the year. */
function isSouthern(latitude: number | null, lastFrost: number | null): boolean {
  if (latitude !== null) return latitude < 0;
  return lastFrost !== null && lastFrost > HALF_A_YEAR && lastFrost < DAYS_IN_YEAR - 45;
}

/** Days between two days of the year, at most half a year either way. */
function wrapped(days: number): number {
  return ((((days + HALF_A_YEAR) % DAYS_IN_YEAR) + DAYS_IN_YEAR) % DAYS_IN_YEAR) - HALF_A_YEAR;
}

/** How high the year's wave stands on a day of the year, -1 to 1. */
const heightOn = (day: number, hottest: number): number =>
  Math.cos((2 * Math.PI * (day - hottest)) / DAYS_IN_YEAR);

/**
 * A rough year from frost dates, and the hottest month's afternoons and coldest month's nights where the plan has them:
 * what stations of such a place are like, given what is known of it. The curve is near 5 °C of a low on the frost dates and
 * passes through both temperatures; its width is what real stations leave open, least about the frost dates.
 * Source: house rule: normal distributions of 38 stations' yearly waves.
 */
export function roughAir(site: RoughSite): RoughAir {
  const hottest = hottestDay(site);
  const estimate = knownOf(site, hottest).reduce(knowing, climateAt(site.latitude, site.clock));
  const [lowMean = 0, lowRise = 0, highMean = 0, highRise = 0] = estimate.means;
  const coldest = hottest - HALF_A_YEAR - 0.5;
  const curve = (meanC: number, swingK: number) =>
    Float64Array.from({ length: DAYS_IN_YEAR }, (_, day) =>
      waveC({ meanC, swingK, coldest }, day, 0),
    );
  const lowC = curve(lowMean, lowRise);
  const highC = curve(highMean, highRise).map((high, day) => Math.max(high, (lowC[day] ?? 0) + 1));
  const curveK = MIDDLES.map((day) => curveKOn(estimate, heightOn(day, hottest)));
  return { lowC, highC, curveK };
}

function curveKOn(estimate: Estimate, height: number): number {
  const sd = deviationOfSum(estimate, [0.5, height / 2, 0.5, height / 2]);
  return Math.hypot(sd, OFF_THE_WAVE_K);
}

/** What the afternoons of the hottest month say of a year's wave, once their value is known [°C]. */
export const KNOWN_AFTERNOONS = { weights: [0, 0, 1, MONTH_OF_TOP], sd: SAID_SD_K } as const;

/** What the nights of the coldest month say of it. */
export const KNOWN_NIGHTS = { weights: [1, -MONTH_OF_TOP, 0, 0], sd: SAID_SD_K } as const;

function knownOf(site: RoughSite, hottest: number): readonly KnownSum[] {
  const { hottestAfternoons: hot, coldestNights: cold } = site;
  return [
    ...frostSums(site, hottest),
    ...(hot ? [{ ...KNOWN_AFTERNOONS, value: hot.si }] : []),
    ...(cold ? [{ ...KNOWN_NIGHTS, value: cold.si }] : []),
  ];
}

function frostSums({ lastFrost, firstFrost }: RoughSite, hottest: number): readonly KnownSum[] {
  if (!lastFrost || !firstFrost) {
    const { meanC, sdK } = COLDEST_WITHOUT_FROST;
    return [{ weights: [1, -MONTH_OF_TOP, 0, 0], value: meanC, sd: sdK }];
  }
  return [lastFrost, firstFrost].map(({ usual }) => ({
    weights: [1, heightOn(dayOfYear(usual), hottest), 0, 0],
    value: LOW_ON_FROST_DATE.meanC,
    sd: LOW_ON_FROST_DATE.sdK,
  }));
}

import { type Day, dayOrThrow, plus, sayDay } from "../../src/base/days/day.ts";
import { CROPS } from "../../src/crops/crops.ts";
import { chanceOf } from "../../src/engine/beds/chances.ts";
import type { SowingContext } from "../../src/engine/growth/sowing-context.ts";
import { plantingOutDay, settingOutDay } from "../../src/engine/growth/starting.ts";
import { growingOf } from "../engine/growth/growing.ts";
import { csvOf } from "./read.ts";

/** Means of a month's lows and highs [°F], January first. */
type MeansF = { readonly low: readonly number[]; readonly high: readonly number[] };

/** A place by what the published tables know of it: latitude [°], the usual last and first frost, and its normals where they are known. */
export type Place = {
  readonly latitude: number;
  readonly last: Day;
  readonly first: Day;
  readonly normals?: MeansF;
};

/** Monthly means of western Virginia, at Roanoke. Source: NOAA climate normals, from memory, unchecked; whole degrees. */
export const VIRGINIA_F: MeansF = {
  low: [27, 29, 36, 44, 53, 62, 66, 65, 57, 45, 37, 29],
  high: [46, 50, 59, 68, 76, 84, 88, 86, 79, 69, 59, 48],
};

/** A day of 2027 written `04-15` or `04/15`. */
export function on(text: string): Day {
  const [month = 0, date = 0] = text.split(/[-/]/).map(Number);
  return dayOrThrow(2027, month, date);
}

/** The stations whose freezes were published, each as a place, by rising last frost; those whose last one is in December left out. */
export const STATIONS: readonly (Place & { readonly name: string })[] = csvOf(
  "ncei-normals-1981-2010.csv",
)
  .filter(
    ({ last32_p50 = "", first32_p50 = "" }) =>
      last32_p50 !== "" && first32_p50 !== "" && !last32_p50.startsWith("12"),
  )
  .map(({ name = "", lat, last32_p50 = "", first32_p50 = "" }) => ({
    name,
    latitude: Number(lat),
    last: on(last32_p50),
    first: first32_p50.startsWith("01")
      ? dayOrThrow(2028, 1, Number(first32_p50.slice(3)))
      : on(first32_p50),
  }))
  .sort((a, b) => a.last - b.last);

/** The straight line of least squares through some points, as a function. */
function lineThrough(points: readonly (readonly [number, number])[]): (x: number) => number {
  const mean = (of: 0 | 1) => points.reduce((sum, point) => sum + point[of], 0) / points.length;
  const [x0, y0] = [mean(0), mean(1)];
  const across = points.reduce((sum, [x, y]) => sum + (x - x0) * (y - y0), 0);
  const along = points.reduce((sum, [x]) => sum + (x - x0) ** 2, 0);
  return (x) => y0 + (across / along) * (x - x0);
}

const latitudeBy = lineThrough(STATIONS.map(({ last, latitude }) => [last, latitude]));
const firstBy = lineThrough(STATIONS.map(({ last, first }) => [last, first]));

/** A place with that usual last frost and the latitude and first frost that go with it over all stations. */
export function placeWith(last: Day): Place {
  const first = plus(on("01-01"), Math.round(firstBy(last)) - on("01-01"));
  return { latitude: Number(latitudeBy(last).toFixed(1)), last, first };
}

/** A plan of that place with every crop of the facts once, and the average frost its measure, as the tables have it. */
export function growingAt({ latitude, last, first, normals }: Place, key: string): SowingContext {
  const weather = normals
    ? `  weather:\n    low: [${normals.low}]\n    high: [${normals.high}]\n`
    : "";
  const text = `garden: Source
year: 2027
measures: inches and °F
place:
  clock: America/New_York
  latitude: ${latitude}
  last frost: about ${sayDay(last)}
  first frost: about ${sayDay(first)}
${weather}risk:
  plants we raised: 1 spring in 2
  seed in the ground: 1 spring in 2
crops:
${CROPS.map(({ one }) => `  - ${one}`).join("\n")}
`;
  return growingOf(text, key);
}

/** The first day on which it is sown or set out there: seed where it may be sown, plants else, or as asked. */
export function opens(
  place: Place,
  key: string,
  way: "seed" | "plants" | "either" = "either",
): Day {
  const growing = growingAt(place, key);
  const { outdoors, settingOut } = growing.crop;
  if (outdoors && way !== "plants")
    return plantingOutDay(
      { ...growing, planting: { ...growing.planting, start: "seed outdoors" } },
      outdoors,
    ).day;
  const out = settingOut && settingOutDay(growing);
  if (!out) throw new Error(`${key} does not go out`);
  return out.day;
}

/** The last day on which seed sown there is ready in time in a usual season, and in a warm one; null where none is. */
export function closes(place: Place, key: string): readonly [Day | null, Day | null] {
  const growing = growingAt(place, key);
  const seed: SowingContext = {
    ...growing,
    planting: { ...growing.planting, start: "seed outdoors" },
  };
  const first = opens(place, key, "seed");
  let usual: Day | null = null;
  let warm: Day | null = null;
  for (let day = first; day < place.first; day = plus(day, 1)) {
    const { inTime } = chanceOf(seed, day) ?? { inTime: "none" };
    if (inTime === "any" || inTime === "usual") usual = day;
    if (inTime !== "none") warm = day;
  }
  return [usual, warm];
}

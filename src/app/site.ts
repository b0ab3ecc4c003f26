import type { Problem } from "../base/index.ts";
import {
  type FiguresSource,
  figuresOf,
  frozenThrough,
  monthsMissing,
  readStation,
  reportOn,
  type SiteFigures,
  type Station,
  type StationRequest,
  unlikelyIn,
  weatherFile,
  wrong,
} from "../garden/index.ts";

export type { RowFilter, StationRequest } from "../garden/index.ts";
export { fileUnitFrom, wrong } from "../garden/index.ts";

/**
 * The result of a station's file: a weather file, null with a problem; and what was used, guessed and left out, a line
 * each.
 */
export type SiteWeather = {
  readonly weather: string | null;
  readonly notes: readonly string[];
  /** Whether a note says of some figure that it is hardly possible. */
  readonly unlikely: boolean;
  readonly problems: readonly Problem[];
};

/** A weather file from the text of a station's days; the latitude is that given by hand, else null. */
export function siteWeather(
  text: string,
  request: StationRequest,
  { latitude, ...source }: FiguresSource & { readonly latitude: number | null },
): SiteWeather {
  const { station, problems } = readStation(text, request);
  if (!station) return { weather: null, notes: [], unlikely: false, problems };
  const figures = figuresOf(station, latitude);
  const stop = stopping(station, figures, request.file);
  const report = stop === null ? reportOn(station, figures, latitude) : [];
  const odd = stop?.code === "month-missing" ? [] : unlikelyIn(station, figures);
  const notes = [...report, ...odd];
  const unlikely = odd.length > 0;
  if (stop !== null) return { weather: null, notes, unlikely, problems: [stop] };
  return { weather: weatherFile(station, figures, source), notes, unlikely, problems: [] };
}

/** The problems that stop a station's figures from being written. */
function stopping(station: Station, { months }: SiteFigures, file: string): Problem | null {
  const missing = monthsMissing(months);
  if (missing.length === 0) return frozenThrough(station, file);
  const is = `No year has four days in five of ${missing.length === 12 ? "any month" : missing.join(", ")}`;
  const at = { file, line: 1, column: 1 };
  return wrong("month-missing", at, is, "Give a record with every month in it");
}

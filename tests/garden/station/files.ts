import { isoOf, partsOf, plus } from "../../../src/base/days/day.ts";
import {
  readStation,
  type Station,
  type StationRequest,
  type StationResult,
} from "../../../src/garden/station/station.ts";
import { isoDay } from "../../gardens.ts";

/** How a test asks for a station's file, where it says nothing else. */
export const PLAINLY: StationRequest = { file: "s.csv", columns: {}, where: [], unit: null };

/** A file of `date,low,high,rain` over two whole years, cold in January, in °C unless it is turned. */
export function plainFile(turn: (celsius: number) => number = (celsius) => celsius): string {
  const rows = Array.from({ length: 731 }, (_, i) => {
    const day = plus(isoDay("2020-01-01"), i);
    const low = 6 - Math.abs(partsOf(day).month - 7) * 2;
    return `${isoOf(day)},${turn(low)},${turn(low + 11)},1`;
  });
  return `date,low,high,rain\n${rows.join("\n")}\n`;
}

/** A few rows of NOAA's daily summaries, with a year of plain days behind them so that the file is long enough. */
export function dailySummaries(): string {
  const head =
    '"STATION","NAME","LATITUDE","LONGITUDE","ELEVATION","DATE","PRCP","PRCP_ATTRIBUTES","TMAX","TMAX_ATTRIBUTES","TMIN","TMIN_ATTRIBUTES"';
  const row = (date: string, rain: string, high: string, low: string) =>
    `"USC00000001","STONY POINT, NW US","46.6","-112.0","1180.5","${date}","${rain}",",,7,0700","${high}",",,7","${low}",",,7"`;
  const days = Array.from({ length: 400 }, (_, i) =>
    row(isoOf(plus(isoDay("2020-01-01"), i)), "0.10", i % 9 ? "61" : "", "33"),
  );
  return `${head}\n${days.join("\n")}\n`;
}

/** What a file is read as. */
export function readAs(text: string, asked: Partial<StationRequest> = {}): StationResult {
  return readStation(text, { ...PLAINLY, ...asked });
}

/** `code@line:column` of each problem of a file. */
export function wrongsOf(text: string, asked: Partial<StationRequest> = {}): readonly string[] {
  return readAs(text, asked).problems.map(({ code, at }) => `${code}@${at.line}:${at.column}`);
}

/** The station of a file that must have no problem. */
export function stationOf(text: string, asked: Partial<StationRequest> = {}): Station {
  const { station, problems } = readAs(text, asked);
  if (station === null) throw new Error(JSON.stringify(problems));
  return station;
}

import type { Problem } from "../../base/index.ts";
import {
  type ColumnNames,
  type Columns,
  columnLike,
  columnsOf,
  filterRows,
  type RowFilter,
} from "./columns.ts";
import type { DailyRecord } from "./record.ts";
import { type RawStationDay, readStationDays } from "./station-days.ts";
import { type TableRow, tableOf, wrong } from "./table.ts";
import { type FileUnit, inC, inMm, unitOfHead, unitOfHighs } from "./units.ts";

/** How a file is read: its name for problems, the named columns, the chosen rows and the given unit. */
export type StationRequest = {
  readonly file: string;
  readonly columns: ColumnNames;
  readonly where: readonly RowFilter[];
  readonly unit: FileUnit | null;
  /** The least length of the record [days]; left out: a year. */
  readonly leastDays?: number;
};

/** A station's days, in day order, with what was assumed in reading them. */
export type Station = {
  /** The name in the file; null where it has none. */
  readonly name: string | null;
  /** Degrees, south negative; null where the file has none. */
  readonly latitude: number | null;
  readonly days: readonly DailyRecord[];
  readonly unit: FileUnit;
  /** How the unit is known. */
  readonly unitBy: "said" | "head" | "values";
  /** The names of the columns that were read. */
  readonly columnsRead: {
    readonly low: string;
    readonly high: string;
    readonly rain: string | null;
  };
};

/** The least length of a record [days]. Source: house rule: a shorter one lacks a month. */
const LEAST_DAYS = 365;

/**
 * The most problems reported for one file's rows; the rest are counted. Source: house rule: twenty show what is wrong.
 */
const MOST_TOLD = 20;

/**
 * Air at a station was never outside this range [°C]. Source: from memory, unchecked: the coldest and warmest on record
 * are inside it.
 */
export const AIR_C = { least: -95, most: 60 } as const;

function daily(
  line: RawStationDay,
  {
    columns,
    unit,
    told: allProblems,
  }: { readonly columns: Columns; readonly unit: FileUnit; readonly told: Problem[] },
): DailyRecord {
  const air = (value: number | null, at: number) => {
    const found = value === null ? null : inC(value, unit);
    if (found === null || (found >= AIR_C.least && found <= AIR_C.most)) return found;
    allProblems.push(
      wrong(
        "no-such-air",
        line.row.at(at),
        `${value} can't be a day's ${unit === "tenths" ? "tenths of °C" : unit}`,
        "Leave the cell empty, or say the unit with --in",
      ),
    );
    return null;
  };
  const [lowC, highC] = [air(line.low, columns.low), air(line.high, columns.high)];
  if (lowC !== null && highC !== null && lowC > highC)
    allProblems.push(
      wrong(
        "low-above-high",
        line.row.at(columns.low),
        `The low ${line.low} is above the high ${line.high}`,
        "Swap the columns, or empty both cells",
      ),
    );
  if (line.rain !== null && line.rain < 0)
    allProblems.push(
      wrong(
        "no-such-rain",
        line.row.at(columns.rain ?? 0),
        `${line.rain} can't be a day's rain`,
        "Leave the cell empty where nothing was measured",
      ),
    );
  return { day: line.day, lowC, highC, rainMm: line.rain === null ? null : inMm(line.rain, unit) };
}

/** What a file gives: a station, or null exactly when there are problems. */
export type StationResult = {
  readonly station: Station | null;
  readonly problems: readonly Problem[];
};

const failed = (problems: readonly Problem[]): StationResult => {
  const more = problems.length - MOST_TOLD;
  const last = problems[MOST_TOLD - 1];
  if (more <= 0 || !last) return { station: null, problems };
  const rest = wrong(
    "and-more",
    last.at,
    `${more} more rows are wrong like these`,
    "Mend these first",
  );
  return { station: null, problems: [...problems.slice(0, MOST_TOLD), rest] };
};

/**
 * The days of a station's file: NOAA's daily summaries, or any rows of a date, a low and a high, with or without rain.
 * Never throws, whatever the text. Problems: `station-unreadable`, `no-column`, `nothing-left`, `several-stations`,
 * `no-day`, `not-a-number`, `day-twice`, `no-such-air`, `low-above-high`, `no-such-rain`, `under-a-year`.
 */
export function readStation(text: string, request: StationRequest): StationResult {
  const table = tableOf(text, request.file);
  if ("problem" in table) return failed([table.problem]);
  const { columns, problems } = columnsOf(table.head, request.columns);
  const chosen = filterRows(table, request.where);
  const wrongs = [...problems, ...chosen.problems];
  if (columns === null || wrongs.length > 0) return failed(wrongs);
  return ofRows({ head: table.head, rows: chosen.rows, columns, request });
}

type ChosenRows = {
  readonly head: TableRow;
  readonly rows: readonly TableRow[];
  readonly columns: Columns;
  readonly request: StationRequest;
};

function ofRows({ head, rows, columns, request }: ChosenRows): StationResult {
  const { lines, problems } = readStationDays(rows, columns);
  const headed = unitOfHead(head.cells[columns.high] ?? "");
  const unit = request.unit ?? headed ?? unitOfHighs(lines.flatMap(({ high }) => high ?? []));
  const allProblems = [...problems];
  const days = lines.map((line) => daily(line, { columns, unit, told: allProblems }));
  if (allProblems.length === 0) allProblems.push(...tooShort(head, days, request));
  if (allProblems.length > 0) return failed(allProblems);
  const first = (...names: readonly string[]) =>
    rows[0]?.cells[columnLike(head, names) ?? -1] || null;
  const latitude = Number(first("latitude", "lat") ?? Number.NaN);
  const named = (at: number | null) => (at === null ? null : (head.cells[at] ?? ""));
  return {
    station: {
      name: first("name", "stationname") ?? request.where.at(-1)?.value ?? first("station"),
      latitude: Math.abs(latitude) <= 90 ? latitude : null,
      days,
      unit,
      unitBy: request.unit ? "said" : headed ? "head" : "values",
      columnsRead: {
        low: named(columns.low) ?? "",
        high: named(columns.high) ?? "",
        rain: named(columns.rain),
      },
    },
    problems: [],
  };
}

function tooShort(
  head: TableRow,
  days: readonly DailyRecord[],
  { leastDays = LEAST_DAYS }: StationRequest,
): readonly Problem[] {
  const [first, last] = [days[0]?.day, days.at(-1)?.day];
  const run = first === undefined || last === undefined ? 0 : last - first + 1;
  if (run >= leastDays) return [];
  const is = `Its days run over ${run} days, under a year`;
  return [wrong("under-a-year", head.at(0), is, "Give a year or more; ten are better")];
}

import { nearest, type Problem } from "../../base/index.ts";
import { type Table, type TableRow, wrong } from "./table.ts";

/** What a column holds. */
export type ColumnRole = "date" | "low" | "high" | "rain";

/** Names of columns as the caller gave them; those left out are looked for. */
export type ColumnNames = { readonly [K in ColumnRole]?: string };

/** The index of each column in a row; null where the file has no rain. */
export type Columns = Readonly<Record<Exclude<ColumnRole, "rain">, number>> & {
  readonly rain: number | null;
};

/**
 * Names that stations give their columns, in lower case, without punctuation and units. Source: from memory, unchecked:
 * NOAA's, Canada's and common exports.
 */
const NAMES: Readonly<Record<ColumnRole, readonly string[]>> = {
  date: ["date", "datetime", "day", "time"],
  low: ["tmin", "low", "min", "tempmin", "mintemp", "minimumtemperature", "tn"],
  high: ["tmax", "high", "max", "tempmax", "maxtemp", "maximumtemperature", "tx"],
  rain: ["prcp", "rain", "precipitation", "precip", "totalprecip", "rr"],
};

/** Columns that distinguish stations, the most reliable first. */
const STATIONS = [
  "station",
  "stationid",
  "name",
  "stationname",
  "location",
  "place",
  "city",
  "site",
  "climateid",
];

/** A column's name as it is compared: `Min Temp (°C)` is mintemp. */
function plain(name: string): string {
  return name
    .toLowerCase()
    .replace(/[([].*$/, "")
    .replace(/[^a-z0-9]/g, "");
}

/** The index of a column: by its exact name, else ignoring case; null where there is none. */
export function columnNamed(head: TableRow, name: string): number | null {
  const exact = head.cells.indexOf(name);
  const small = head.cells.findIndex((cell) => cell.toLowerCase() === name.toLowerCase());
  return exact >= 0 ? exact : small >= 0 ? small : null;
}

/** `There is no column X`, with the nearest name or all there are. Problem: `no-column`. */
export function noColumn(head: TableRow, name: string): Problem {
  const near = nearest(name, head.cells);
  const all = head.cells.slice(0, 20).join(", ").slice(0, 300);
  const advice = near === null ? `Name one of ${all}` : `Did you mean ${near}`;
  return wrong("no-column", head.at(0), `There is no column ${name.slice(0, 60)}`, advice);
}

/**
 * The first column whose name is one of those, in lower case, without punctuation and units; null where there is none.
 */
export function columnLike(head: TableRow, names: readonly string[]): number | null {
  const plains = head.cells.map(plain);
  return names.map((name) => plains.indexOf(name)).find((at) => at >= 0) ?? null;
}

/**
 * The columns of a file; a column that the caller named must exist. Problem: `no-column`, one for each that is missing.
 */
export function columnsOf(
  head: TableRow,
  columnNames: ColumnNames,
): { readonly columns: Columns | null; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const find = (role: ColumnRole): number | null => {
    const name = columnNames[role];
    const at = name === undefined ? columnLike(head, NAMES[role]) : columnNamed(head, name);
    if (at !== null || (role === "rain" && name === undefined)) return at;
    problems.push(name === undefined ? unnamed(head, role) : noColumn(head, name));
    return null;
  };
  const [date, low, high, rain] = [find("date"), find("low"), find("high"), find("rain")];
  const columns = date === null || low === null || high === null ? null : { date, low, high, rain };
  return { columns: problems.length > 0 ? null : columns, problems };
}

function unnamed(head: TableRow, role: ColumnRole): Problem {
  const what = role === "date" ? "the day" : `the day's ${role}`;
  const all = head.cells.slice(0, 20).join(", ").slice(0, 300);
  const is = `No column is known to hold ${what}`;
  return wrong("no-column", head.at(0), is, `Say which with --${role}, one of ${all}`);
}

/** A column and the value that rows must have in it, such as location and Seattle. */
export type RowFilter = { readonly column: string; readonly value: string };

/**
 * The rows with all those values, which must be of one station. Problems: `no-column`, `nothing-left`,
 * `several-stations` with the stations there are.
 */
export function filterRows(
  { head, rows }: Extract<Table, { readonly head: TableRow }>,
  filters: readonly RowFilter[],
): { readonly rows: readonly TableRow[]; readonly problems: readonly Problem[] } {
  let left = rows;
  for (const { column, value } of filters) {
    const at = columnNamed(head, column);
    if (at === null) return { rows: [], problems: [noColumn(head, column)] };
    const values = valuesOf(left, at);
    left = left.filter(({ cells }) => cells[at] === value);
    if (left.length > 0) continue;
    const near = nearest(value, values);
    const advice = near ? `Did you mean ${near}` : `There are ${some(values)}`;
    const is = `No row has ${column} ${value.slice(0, 60)}`;
    return { rows: [], problems: [wrong("nothing-left", head.at(at), is, advice)] };
  }
  return { rows: left, problems: severalStations(head, left) };
}

const valuesOf = (rows: readonly TableRow[], at: number) => [
  ...new Set(rows.map(({ cells }) => cells[at] ?? "")),
];

const some = (values: readonly string[]) =>
  values.length > 8 ? `${values.slice(0, 8).join(", ")} and more` : values.join(", ");

/** The most reliable column decides, because a station may have changed its name. */
function severalStations(head: TableRow, rows: readonly TableRow[]): readonly Problem[] {
  const at = columnLike(head, STATIONS);
  const values = at === null ? [] : valuesOf(rows, at);
  if (at === null || values.length < 2) return [];
  const is = `Days of ${values.length} stations stand in it: ${some(values)}`;
  const advice = `Choose one with --where "${head.cells[at]}=${values[0]}"`;
  return [wrong("several-stations", head.at(at), is, advice)];
}

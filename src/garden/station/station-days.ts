import { type Day, dayFromIso, isoOf, type Problem } from "../../base/index.ts";
import type { Columns } from "./columns.ts";
import { type TableRow, wrong } from "./table.ts";

/** The row of one day as written, in the file's unit; null where nothing was measured. */
export type RawStationDay = {
  readonly day: Day;
  readonly low: number | null;
  readonly high: number | null;
  readonly rain: number | null;
  readonly row: TableRow;
};

/** What stations write for a missing value. Source: from memory, unchecked: NOAA's and Canada's files. */
const MISSING = /^(?:|na|n\/a|nan|null|none|m|-|--|-9999?(?:\.\d*)?|9999(?:\.\d*)?)$/i;
const TRACE = /^t(?:race)?$/i;

function parseIsoDay(text: string): Day | null {
  const packed = /^(\d{4})(\d{2})(\d{2})$/.exec(text);
  if (packed) return dayFromIso(`${packed[1]}-${packed[2]}-${packed[3]}`);
  const plain = /^(\d{4})[-/](\d{2})[-/](\d{2})(?:[T ].*)?$/.exec(text);
  return plain ? dayFromIso(`${plain[1]}-${plain[2]}-${plain[3]}`) : null;
}

/** A number, null for a missing value, or the text where it is neither. */
function numberIn(text: string): number | null | string {
  if (MISSING.test(text)) return null;
  if (TRACE.test(text)) return 0;
  return /^[-+]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/.test(text) ? Number(text.replace(",", ".")) : text;
}

function readStationDay(
  row: TableRow,
  columns: Columns,
  problems: Problem[],
): RawStationDay | null {
  const cell = (at: number | null) => (at === null ? "" : (row.cells[at] ?? ""));
  const date = cell(columns.date);
  const day = parseIsoDay(date);
  const number = (at: number | null) => {
    const found = numberIn(cell(at));
    if (typeof found !== "string") return found;
    problems.push(
      wrong(
        "not-a-number",
        row.at(at ?? 0),
        `${found.slice(0, 60)} is no number`,
        "Leave the cell empty where nothing was measured",
      ),
    );
    return null;
  };
  if (day === null)
    problems.push(
      wrong(
        "no-day",
        row.at(columns.date),
        `${date.slice(0, 60) || "An empty cell"} is no day`,
        "Write days as 2027-05-06",
      ),
    );
  const [low, high, rain] = [number(columns.low), number(columns.high), number(columns.rain)];
  return day === null ? null : { day, low, high, rain, row };
}

/** Each day once, in day order; reported where a day is there twice with different figures. */
function oncePerDay(
  lines: readonly RawStationDay[],
  columns: Columns,
  problems: Problem[],
): readonly RawStationDay[] {
  const byDay = new Map<Day, RawStationDay>();
  for (const line of lines) {
    const before = byDay.get(line.day);
    const same =
      before && before.low === line.low && before.high === line.high && before.rain === line.rain;
    if (!before) byDay.set(line.day, line);
    else if (!same)
      problems.push(
        wrong(
          "day-twice",
          line.row.at(columns.date),
          `${isoOf(line.day)} stands here with other figures than in line ${before.row.at(0).line}`,
          "Keep one of the two",
        ),
      );
  }
  return [...byDay.values()].sort((a, b) => a.day - b.day);
}

/**
 * The days of a file's rows, in day order, each once. Problems: `no-day`, `not-a-number`, and `day-twice` where a day
 * is there twice with different figures.
 */
export function readStationDays(
  rows: readonly TableRow[],
  columns: Columns,
): { readonly lines: readonly RawStationDay[]; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const lines = rows.flatMap((row) => readStationDay(row, columns, problems) ?? []);
  return { lines: oncePerDay(lines, columns, problems), problems: problems };
}

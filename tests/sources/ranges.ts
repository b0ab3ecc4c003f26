import { spanOf, yamlOf } from "./read.ts";

/** A row of a table, cell by cell in the order of its columns. */
type Row = readonly (string | number | null)[];
type Table = { readonly columns: readonly string[]; readonly rows: Readonly<Record<string, Row>> };
type Texas = {
  readonly realistic: Readonly<Record<string, number>>;
  readonly realistic_45_also: readonly string[];
  readonly optimum_group_95: readonly string[];
  readonly optimum_group_85: readonly string[];
  readonly optimum: Readonly<Record<string, number>>;
  readonly minimum_60: readonly string[];
  readonly minimum_40: readonly string[];
  readonly minimum_35: readonly string[];
};
type Ranges = {
  readonly knott_harrington: Table;
  readonly texas_realistic: Texas;
  readonly kansas_state: {
    readonly figures: Readonly<Record<string, number>>;
    readonly how_to_measure: { readonly depth_in: number };
  };
  readonly nebraska: { readonly figures: Readonly<Record<string, readonly number[]>> };
  readonly csu_gardennotes_720_table2: Table;
  readonly csu_gardennotes_720_table2_rest: Table;
};

/** The published soil for germination, whole. */
export const RANGES = yamlOf<Ranges>("germination-ranges.yaml");

/** Least and most of a figure, both [°F, in, days or weeks]. */
export type Span = readonly [number, number];

/** Rows that some comparison has read, `block.row`. */
export const READ = new Set<string>();

const COLORADO = [RANGES.csu_gardennotes_720_table2, RANGES.csu_gardennotes_720_table2_rest];

/** Knott's rows. */
export const KNOTT_ROWS = Object.keys(RANGES.knott_harrington.rows);

/** Colorado's rows of both blocks, the looked-up ones first. */
export const COLORADO_ROWS = COLORADO.flatMap(({ rows }) => Object.keys(rows));

const cellOf = ({ columns, rows }: Table, row: string, column: string) =>
  rows[row]?.[columns.indexOf(column)] ?? "";

/** A cell of Knott's [°F]; throws for a row that is not there. */
export function knott(row: string, column: string): Span {
  if (!KNOTT_ROWS.includes(row)) throw new RangeError(`no ${row} in Knott's`);
  READ.add(`knott.${row}`);
  return spanOf(cellOf(RANGES.knott_harrington, row, column));
}

/** A cell of Colorado's, or null where it is empty; throws for a row that is not there. */
export function colorado(row: string, column: string): Span | null {
  const table = COLORADO.find(({ rows }) => row in rows);
  if (!table) throw new RangeError(`no ${row} in Colorado's`);
  READ.add(`colorado.${row}`);
  const cell = cellOf(table, row, column);
  return cell === "" ? null : spanOf(cell);
}

/** What one line of Texas' says: which crop, which kind of figure, and the figure [°F]. */
export type Line = {
  readonly crop: string;
  readonly kind: "realistic" | "optimum" | "minimum";
  readonly atF: number;
};

const { texas_realistic: TEXAS } = RANGES;
const each = (kind: Line["kind"], atF: number, crops: readonly string[]) =>
  crops.map((crop): Line => ({ crop, kind, atF }));
const named = (kind: Line["kind"], figures: Readonly<Record<string, number>>) =>
  Object.entries(figures).map(([crop, atF]): Line => ({ crop, kind, atF }));

/** Every figure of Texas', a line for each crop it is given for. */
export const TEXAS_LINES: readonly Line[] = [
  ...named("realistic", TEXAS.realistic),
  ...each("realistic", 45, TEXAS.realistic_45_also),
  ...each("optimum", 95, TEXAS.optimum_group_95),
  ...each("optimum", 85, TEXAS.optimum_group_85),
  ...named("optimum", TEXAS.optimum),
  ...each("minimum", 60, TEXAS.minimum_60),
  ...each("minimum", 40, TEXAS.minimum_40),
  ...each("minimum", 35, TEXAS.minimum_35),
];

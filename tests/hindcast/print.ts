import { sayDay } from "../../src/base/days/day.ts";
import { type Case, hindcast, hindcastPublished, STAGES } from "./hindcast.ts";
import { isInside, measured } from "./measured.ts";

const COLUMNS = [
  "cases",
  "settled",
  "inside",
  "open in",
  "width",
  "open w",
  "error",
  "chart",
  "later",
];

const percent = (share: number) => (Number.isNaN(share) ? "-" : `${Math.round(share * 100)} %`);
const days = (value: number) => (Number.isNaN(value) ? "-" : value.toFixed(1));

function rowOf(name: string, cases: readonly Case[]): string {
  const of = measured(cases);
  const cells = [
    ...[String(of.cases), String(of.settled), percent(of.inside), percent(of.insideUnsettled)],
    ...[of.width, of.widthUnsettled, of.error, of.chartError, of.later].map(days),
  ];
  return line(name, cells);
}

const line = (name: string, cells: readonly string[]) =>
  name.padEnd(26) + cells.map((cell) => cell.padStart(9)).join("");

function groups(cases: readonly Case[], nameOf: (one: Case) => string): readonly string[] {
  const names = [...new Set(cases.map(nameOf))];
  return names.map((name) =>
    rowOf(
      name,
      cases.filter((each) => nameOf(each) === name),
    ),
  );
}

function missOf({ station, year, crop, stage, early, usual, late, came }: Case): string {
  const span = `${sayDay(early)} to ${sayDay(late)}, usually ${sayDay(usual)}`;
  const off = came === null ? "never came" : `came ${sayDay(came)}, ${offBy(came, early, late)}`;
  return `${station} ${year}  ${crop.padEnd(9)} ${stage.padEnd(14)} ${span}: ${off}`;
}

const offBy = (came: number, early: number, late: number) =>
  came < early ? `${early - came} early` : `${came - late} late`;

/** The whole table as text: by stage, station, year and crop, and each case outside its span. */
export function tableOf(cases: readonly Case[]): string {
  const misses = cases.filter((each) => !isInside(each));
  return [
    "It tests the weather and not the plant model: the same growth runs on other years' normals and on the year itself.",
    "Days. settled: frost dates alone decide and nothing can differ; open: the others. chart: a fixed offset's error.",
    "Eight station years: crops of one year share its weather, so a share inside is known to ten in a hundred or so.",
    ...["", line("", COLUMNS), rowOf("all", cases)],
    ...["", ...groups(cases, ({ stage }) => stage)],
    ...["", ...groups(cases, ({ station, stage }) => `${station}, ${stage}`)],
    ...["", ...groups(cases, ({ station, year }) => `${station} ${year}`)],
    ...STAGES.flatMap((stage) => [
      "",
      ...groups(
        cases.filter((each) => each.stage === stage),
        ({ crop }) => `${crop}, ${stage}`,
      ),
    ]),
    ...["", `Outside (${misses.length} of ${cases.length}):`, ...misses.map(missOf), ""],
  ].join("\n");
}

/** A table's row over all and one a stage, for those who tell less than monthly means. */
function toldRows(name: string, cases: readonly Case[]): string {
  const stages = STAGES.map((stage) =>
    rowOf(
      `  ${stage}`,
      cases.filter((each) => each.stage === stage),
    ),
  );
  return [rowOf(name, cases), ...stages].join("\n");
}

console.log(tableOf(hindcast()));
console.log(
  "Told less than monthly means; stations: of climate-normals.csv, against their own means.\n",
);
console.log(line("", COLUMNS));
console.log(toldRows("years, frost dates", hindcast("frost dates")));
console.log(toldRows("years, two numbers", hindcast("two numbers")));
console.log(toldRows("stations, frost dates", hindcastPublished("frost dates")));
console.log(toldRows("stations, two numbers", hindcastPublished("two numbers")));

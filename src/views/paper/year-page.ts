import { sayDay } from "../../base/days/day.ts";
import { element, escaped } from "../pictures/write.ts";
import { block, page, ruled, said } from "./page.ts";
import type { Kind, Remark } from "./remarks.ts";
import type { Sowing, Stage } from "./stages.ts";
import { keptTold, nightsTold, stageTold } from "./told.ts";
import type { BedLines, Line, YearReport } from "./year.ts";

/** The year looked back on as one page of HTML, to print on A4 or Letter or to read on a screen. */
export function yearPage(report: YearReport): string {
  const { plan, today, goesOn, beds, kept, untold } = report;
  const upTo = goesOn ? ` up to ${sayDay(today, true)}` : "";
  return page(
    `${plan.name}, the year ${plan.year}`,
    block(
      "header",
      "head",
      said("h1", "month", `The year ${plan.year}`),
      said("p", "of", `${plan.name}, looked back on${upTo}`),
      said("p", "facts", HONEST),
    ),
    bedsTable(beds, plan.year),
    linesBlock("Frost, lows and soil", [...nightsTold(report), ...remarksTold(report, "frost")]),
    linesBlock("What failed", remarksTold(report, "failed")),
    linesBlock("Left for this year", [
      ...remarksTold(report, "left"),
      ...untold.map((job) => `Nothing written: ${job}`),
    ]),
    linesBlock("Moved", remarksTold(report, "moved")),
    linesBlock("Notes by day", remarksTold(report, "plain")),
    keptBlock(kept.map(keptTold)),
  );
}

const HONEST =
  "Days in bold were written down. Days with “about” were not: they are what this garden’s weather and the plan lead one to suppose.";

const HEADS = ["Planting", "Sown or planted", "Up", "Set out", "First ripe or picked"];

function bedsTable(beds: readonly BedLines[], year: number): string {
  if (beds.length === 0) return said("p", "none", "Nothing was planned for this year.");
  const head = element("tr", {}, ...HEADS.map((text) => element("th", {}, escaped(text))));
  return element("table", {}, element("thead", {}, head), ...beds.map((bed) => bedBody(bed, year)));
}

function bedBody({ name, lines }: BedLines, year: number): string {
  const title = element(
    "th",
    { class: "bed", colspan: HEADS.length },
    escaped(name || "In no bed"),
  );
  return element(
    "tbody",
    {},
    element("tr", {}, title),
    ...lines.flatMap((line) => rowsOf(line, year)),
  );
}

function rowsOf({ name, known, sowings, also }: Line, year: number): readonly string[] {
  const tail = said("p", "also", also.length === 0 ? "" : `Also: ${also.join(", ")}.`);
  if (sowings.length === 0) {
    const why = known ? "no day for it this season" : "not known here, so nothing is supposed";
    return [element("tr", {}, nameCell(name, tail), element("td", { colspan: 4 }, escaped(why)))];
  }
  return sowings.map((sowing, i) =>
    element(
      "tr",
      {},
      i === 0
        ? nameCell(name, tail)
        : element("td", { class: "more" }, escaped(`sowing ${sowing.sowing}`)),
      ...stagesIn(sowing).map((stage, column) => stageCell(stage, HEADS[column + 1] ?? "", year)),
    ),
  );
}

const nameCell = (name: string, also: string) =>
  element("td", { class: "planting" }, element("b", {}, escaped(name)), also);

const stagesIn = ({ begun, up, out, picked }: Sowing): readonly (Stage | null)[] => [
  begun,
  up,
  out,
  picked,
];

function stageCell(stage: Stage | null, head: string, year: number): string {
  const { day, aside } = stageTold(stage, year);
  const look = stage?.known === "written" ? "written" : "supposed";
  return element("td", { "data-head": head }, said("p", look, day), said("p", "aside", aside));
}

function linesBlock(title: string, lines: readonly string[]): string {
  if (lines.length === 0) return "";
  return block(
    "section",
    "lines",
    said("h2", "name", title),
    ...lines.map((line) => said("p", "line", line)),
  );
}

function remarksTold(
  { remarks }: { readonly remarks: readonly Remark[] },
  kind: Kind,
): readonly string[] {
  return remarks
    .filter((remark) => remark.kind === kind)
    .map(({ day, text }) => `${sayDay(day)}: ${text}`);
}

/** What next year goes by already, and room for what only the gardener knows. */
function keptBlock(lines: readonly string[]): string {
  const none = "No first ripe day was written down, so next year goes by the packets again.";
  return block(
    "section",
    "notes",
    said("h2", "name", "Keep for next year"),
    ...(lines.length === 0 ? [none] : lines).map((line) => said("p", "line", line)),
    ruled(4),
  );
}

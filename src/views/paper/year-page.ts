import { sayDay } from "../../base/index.ts";
import { element, escapeXml } from "../pictures/svg.ts";
import { block, ruledLines, sheetHtml, textElement } from "./page.ts";
import type { SowingHistory, StageRecord } from "./planting-history.ts";
import type { RemarkKind, SheetRemark } from "./remarks.ts";
import type { BedLines, YearLine, YearReport } from "./year.ts";
import { nightLines, packetText, stageText } from "./year-text.ts";

/** The review of a year as one page of HTML, to print on A4 or Letter or to read on a screen. */
export function yearPage(report: YearReport): string {
  const { plan, today, goesOn, beds, packets, unreported } = report;
  const upTo = goesOn ? ` up to ${sayDay(today, true)}` : "";
  return sheetHtml(
    `${plan.name}, the year ${plan.year}`,
    block(
      "header",
      "head",
      textElement("h1", "month", `The year ${plan.year}`),
      textElement("p", "of", `${plan.name}, looked back on${upTo}`),
      textElement("p", "facts", LEGEND),
    ),
    bedsTable(beds, plan.year),
    linesBlock("Frost, lows and soil", [...nightLines(report), ...remarkLines(report, "frost")]),
    linesBlock("What failed", remarkLines(report, "failed")),
    linesBlock("Left for this year", [
      ...remarkLines(report, "left"),
      ...unreported.map((job) => `Nothing written: ${job}`),
    ]),
    linesBlock("Moved", remarkLines(report, "moved")),
    linesBlock("Notes by day", remarkLines(report, "plain")),
    packetBlock(packets.map(packetText)),
  );
}

const LEGEND =
  "Days in bold were written down. Days with “about” were not: they are what this garden’s weather and the plan lead one to suppose.";

const HEADS = ["Planting", "Sown or planted", "Up", "Set out", "First ripe or picked"];

function bedsTable(beds: readonly BedLines[], year: number): string {
  if (beds.length === 0) return textElement("p", "none", "Nothing was planned for this year.");
  const head = element("tr", {}, ...HEADS.map((text) => element("th", {}, escapeXml(text))));
  return element("table", {}, element("thead", {}, head), ...beds.map((bed) => bedBody(bed, year)));
}

function bedBody({ name, lines }: BedLines, year: number): string {
  const title = element(
    "th",
    { class: "bed", colspan: HEADS.length },
    escapeXml(name || "In no bed"),
  );
  return element(
    "tbody",
    {},
    element("tr", {}, title),
    ...lines.flatMap((line) => plantingRows(line, year)),
  );
}

function plantingRows({ name, known, sowings, also }: YearLine, year: number): readonly string[] {
  const tail = textElement("p", "also", also.length === 0 ? "" : `Also: ${also.join(", ")}.`);
  if (sowings.length === 0) {
    const why = known ? "no day for it this season" : "not known here, so nothing is supposed";
    return [element("tr", {}, nameCell(name, tail), element("td", { colspan: 4 }, escapeXml(why)))];
  }
  return sowings.map((sowing, i) =>
    element(
      "tr",
      {},
      i === 0
        ? nameCell(name, tail)
        : element("td", { class: "more" }, escapeXml(`sowing ${sowing.sowing}`)),
      ...stagesIn(sowing).map((stage, column) => stageCell(stage, HEADS[column + 1] ?? "", year)),
    ),
  );
}

const nameCell = (name: string, also: string) =>
  element("td", { class: "planting" }, element("b", {}, escapeXml(name)), also);

const stagesIn = ({ begun, up, out, picked }: SowingHistory): readonly (StageRecord | null)[] => [
  begun,
  up,
  out,
  picked,
];

function stageCell(stage: StageRecord | null, head: string, year: number): string {
  const { day, aside } = stageText(stage, year);
  const look = stage?.known === "written" ? "written" : "supposed";
  return element(
    "td",
    { "data-head": head },
    textElement("p", look, day),
    textElement("p", "aside", aside),
  );
}

function linesBlock(title: string, lines: readonly string[]): string {
  if (lines.length === 0) return "";
  return block(
    "section",
    "lines",
    textElement("h2", "name", title),
    ...lines.map((line) => textElement("p", "line", line)),
  );
}

function remarkLines(
  { remarks }: { readonly remarks: readonly SheetRemark[] },
  kind: RemarkKind,
): readonly string[] {
  return remarks
    .filter((remark) => remark.kind === kind)
    .map(({ day, text }) => `${sayDay(day)}: ${text}`);
}

/** What next year uses already, and room for what only the gardener knows. */
function packetBlock(lines: readonly string[]): string {
  const none = "No first ripe day was written down, so next year goes by the packets again.";
  return block(
    "section",
    "notes",
    textElement("h2", "name", "Keep for next year"),
    ...(lines.length === 0 ? [none] : lines).map((line) => textElement("p", "line", line)),
    ruledLines(4),
  );
}

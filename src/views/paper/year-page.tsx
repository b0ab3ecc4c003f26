/** @jsxRuntime automatic @jsxImportSource hono/jsx */
import { sayDay } from "../../base/index.ts";
import { Lines, RuledLines, renderSheet } from "./page.tsx";
import type { SowingHistory, StageRecord } from "./planting-history.ts";
import type { RemarkKind } from "./remarks.ts";
import type { BedLines, YearLine, YearReport } from "./year.ts";
import { nightLines, packetText, stageText } from "./year-text.ts";

/** The review of a year as one page of HTML, to print on A4 or Letter or to read on a screen. */
export function yearPage(report: YearReport): string {
  const { plan, beds, packets, unreported } = report;
  const remarks = (kind: RemarkKind) => remarkLines(report, kind);
  const left = [...remarks("left"), ...unreported.map((job) => `Nothing written: ${job}`)];
  return renderSheet({
    title: `${plan.name}, the year ${plan.year}`,
    children: (
      <>
        <YearHead report={report} />
        <BedsTable beds={beds} year={plan.year} />
        <LinesSection
          title="Frost, lows and soil"
          lines={[...nightLines(report), ...remarks("frost")]}
        />
        <LinesSection title="What failed" lines={remarks("failed")} />
        <LinesSection title="Left for this year" lines={left} />
        <LinesSection title="Moved" lines={remarks("moved")} />
        <LinesSection title="Notes by day" lines={remarks("plain")} />
        <NextYear lines={packets.map(packetText)} />
      </>
    ),
  });
}

const LEGEND =
  "Days in bold were written down. Days with “about” were not: they are what this garden’s weather and the plan lead one to suppose.";

function YearHead({ report: { plan, today, goesOn } }: { readonly report: YearReport }) {
  const upTo = goesOn ? ` up to ${sayDay(today, true)}` : "";
  return (
    <header class="head">
      <h1 class="month">The year {plan.year}</h1>
      <p class="of">
        {plan.name}, as it went{upTo}
      </p>
      <p class="facts">{LEGEND}</p>
    </header>
  );
}

const STAGE_HEADS = ["Sown or planted", "Up", "Set out", "First ripe or picked"];
const HEADS = ["Planting", ...STAGE_HEADS];

type OfYear = { readonly year: number };

function BedsTable({ beds, year }: OfYear & { readonly beds: readonly BedLines[] }) {
  if (beds.length === 0) return <p class="none">Nothing was planned for this year.</p>;
  return (
    <table>
      <thead>
        <tr>
          {HEADS.map((head) => (
            <th>{head}</th>
          ))}
        </tr>
      </thead>
      {beds.map((bed) => (
        <BedRows bed={bed} year={year} />
      ))}
    </table>
  );
}

function BedRows({ bed: { name, lines }, year }: OfYear & { readonly bed: BedLines }) {
  return (
    <tbody>
      <tr>
        <th class="bed" colspan={HEADS.length}>
          {name || "In no bed"}
        </th>
      </tr>
      {lines.map((line) => (
        <PlantingRows line={line} year={year} />
      ))}
    </tbody>
  );
}

function PlantingRows({ line, year }: OfYear & { readonly line: YearLine }) {
  if (line.sowings.length === 0) return <RowWithoutDays line={line} />;
  return (
    <>
      {line.sowings.map((sowing, i) => (
        <tr>
          {i === 0 ? <NameCell line={line} /> : <td class="more">sowing {sowing.sowing}</td>}
          {stagesIn(sowing).map((stage, column) => (
            <StageCell stage={stage} head={STAGE_HEADS[column] ?? ""} year={year} />
          ))}
        </tr>
      ))}
    </>
  );
}

function RowWithoutDays({ line }: { readonly line: YearLine }) {
  const why = line.known ? "no day for it this season" : "not known here, so nothing is supposed";
  return (
    <tr>
      <NameCell line={line} />
      <td colspan={STAGE_HEADS.length}>{why}</td>
    </tr>
  );
}

function NameCell({ line: { name, also } }: { readonly line: YearLine }) {
  return (
    <td class="planting">
      <b>{name}</b>
      {also.length > 0 && <p class="also">Also: {also.join(", ")}.</p>}
    </td>
  );
}

const stagesIn = ({ begun, up, out, picked }: SowingHistory): readonly (StageRecord | null)[] => [
  begun,
  up,
  out,
  picked,
];

function StageCell({
  stage,
  head,
  year,
}: OfYear & { readonly stage: StageRecord | null; readonly head: string }) {
  const { day, aside } = stageText(stage, year);
  return (
    <td data-head={head}>
      <Lines look={stage?.known === "written" ? "written" : "supposed"} lines={[day]} />
      <Lines look="aside" lines={[aside]} />
    </td>
  );
}

/** A part of the page under its heading; nothing where there are no lines. */
function LinesSection({
  title,
  lines,
}: {
  readonly title: string;
  readonly lines: readonly string[];
}) {
  if (lines.length === 0) return null;
  return (
    <section class="lines">
      <h2 class="name">{title}</h2>
      <Lines look="line" lines={lines} />
    </section>
  );
}

function remarkLines(
  { remarks }: Pick<YearReport, "remarks">,
  kind: RemarkKind,
): readonly string[] {
  return remarks
    .filter((remark) => remark.kind === kind)
    .map(({ day, text }) => `${sayDay(day)}: ${text}`);
}

/** What next year uses already, and room for what only the gardener knows. */
function NextYear({ lines }: { readonly lines: readonly string[] }) {
  const none = "No first ripe day was written down, so next year goes by the packets again.";
  return (
    <section class="notes">
      <h2 class="name">Keep for next year</h2>
      <Lines look="line" lines={lines.length === 0 ? [none] : lines} />
      <RuledLines count={4} />
    </section>
  );
}

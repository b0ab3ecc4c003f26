import type { FrostTonightText, RoomText } from "../../../app/index.ts";
import { ForecastNights, type ForecastShown } from "./forecast.tsx";
import { type Frame, renderPage } from "./frame.tsx";

/**
 * What the frost page shows: the household's unit, what was typed in, whether that was no temperature, the night told, and the
 * forecast where one is asked for.
 */
export type FrostPageProps = {
  readonly unit: string;
  readonly said: string;
  readonly wrong: boolean;
  readonly report: FrostTonightText | null;
  readonly forecast: ForecastShown | null;
};

/** Tonight's low typed in or as forecast, bed by bed what to do about it, and the nights after. */
export function frostPage(
  frame: Frame,
  { unit, said, wrong, report, forecast }: FrostPageProps,
): string {
  return renderPage({
    title: "Frost tonight",
    frame,
    place: "frost",
    children: (
      <>
        <form method="get">
          <label for="low">Tonight's low by the forecast, {unit}</label>
          <input
            id="low"
            name="low"
            value={said}
            inputmode="text"
            autocomplete="off"
            required
            aria-describedby={wrong ? "wrong" : undefined}
            aria-invalid={wrong ? "true" : undefined}
          />
          <button type="submit" class="fill">
            What to cover
          </button>
        </form>
        {wrong && <p id="wrong">That is no temperature. Write it like 29, 29 °F or -2 °C.</p>}
        {report && (
          <ReportSections head={report.head} sections={report.sections} foot={report.foot} />
        )}
        {forecast && <ForecastNights {...forecast} />}
      </>
    ),
  });
}

/** What the room page shows: the beds by key and name, and the one asked about told; null where none was. */
export type RoomPageProps = {
  readonly beds: readonly { readonly key: string; readonly name: string }[];
  readonly bed: string | null;
  readonly report: RoomText | null;
};

/** The beds to choose from, and of one what stands in it and what may still be begun. */
export function roomPage(frame: Frame, { beds, bed, report }: RoomPageProps): string {
  return renderPage({
    title: "Room in the beds",
    frame,
    place: "room",
    children: (
      <>
        {beds.length === 0 && <p>The plan names no beds.</p>}
        {beds.length > 0 && (
          <form method="get">
            <label for="bed">Which bed?</label>
            <select id="bed" name="bed">
              {beds.map(({ key, name }) => (
                <option value={key} selected={key === bed}>
                  {name}
                </option>
              ))}
            </select>
            <button type="submit" class="fill">
              What fits in it
            </button>
          </form>
        )}
        {report && <ReportSections head={report.head} sections={report.sections} foot={[]} />}
      </>
    ),
  });
}

type ReportSections = {
  readonly head: readonly string[];
  readonly sections: readonly { readonly name: string; readonly lines: readonly string[] }[];
  readonly foot: readonly string[];
};

function ReportSections({ head, sections, foot }: ReportSections) {
  return (
    <>
      <p class="text">{head.join("\n")}</p>
      {sections.map(({ name, lines }) => (
        <>
          <h2>{name.replace(/:$/, "")}</h2>
          <p class="text">{lines.join("\n")}</p>
        </>
      ))}
      {foot.length > 0 && <p class="text">{foot.join("\n")}</p>}
    </>
  );
}

const DRAWN: Readonly<Record<string, string>> = {
  "season.svg": "What grows when in each bed",
  "frost.svg": "When frost is still likely",
  "soil.svg": "How warm the soil is, and what waits for it",
  "weather.svg": "The season so far, and the days ahead",
};

/** The year's drawings, one under another; each is read out in words by its own description. */
export function picturesPage(frame: Frame, files: readonly string[]): string {
  return renderPage({
    title: "The season in pictures",
    frame,
    children: (
      <>
        {files.map((file) => (
          <>
            <h2>{DRAWN[file] ?? file}</h2>
            <a href={file}>
              <img src={file} alt={DRAWN[file] ?? file} />
            </a>
          </>
        ))}
      </>
    ),
  });
}

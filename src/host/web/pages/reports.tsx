import type { FrostTonightText, RoomText } from "../../../app/index.ts";
import type { BedsDrawing } from "../../../app/records.ts";
import { BedsFigure } from "./beds.tsx";
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
  readonly beds: BedsDrawing | null;
  readonly forecast: ForecastShown | null;
};

/** Tonight's low typed in or as forecast, bed by bed what to do about it, and the nights after. */
export function frostPage(
  frame: Frame,
  { unit, said, wrong, report, beds, forecast }: FrostPageProps,
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
        {beds && (
          <BedsFigure drawing={beds} caption="The same on the beds, as you walk past them" told />
        )}
        {forecast && <ForecastNights {...forecast} />}
      </>
    ),
  });
}

/**
 * What the room page shows: the beds by key and name, and the one asked about told, null where none was; `drawing` all of them
 * with what is free.
 */
export type RoomPageProps = {
  readonly beds: readonly { readonly key: string; readonly name: string }[];
  readonly bed: string | null;
  readonly report: RoomText | null;
  readonly drawing: BedsDrawing | null;
};

/** The beds to choose from, and of one what stands in it and what may still be begun. */
export function roomPage(frame: Frame, { beds, bed, report, drawing }: RoomPageProps): string {
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
        {drawing && (
          <BedsFigure
            drawing={drawing}
            caption="What stands in the beds, what is free, and from when"
          />
        )}
      </>
    ),
  });
}

type ReportSections = {
  readonly head: readonly string[];
  readonly sections: readonly { readonly name: string; readonly lines: readonly string[] }[];
  readonly foot: readonly string[];
};

/** What a report says first, place by place, and last; short places are rows as the days of a week are. */
function ReportSections({ head, sections, foot }: ReportSections) {
  return (
    <>
      <p class="text">{head.join("\n")}</p>
      <dl class="places">
        {sections.map(({ name, lines }) => (
          <div>
            <dt>{name.replace(/:$/, "")}</dt>
            <dd class="text">{lines.join("\n")}</dd>
          </div>
        ))}
      </dl>
      {foot.length > 0 && <p class="text">{foot.join("\n")}</p>}
    </>
  );
}

/** A drawing on its page: its file, what it is called, and about how high it is [px] where it is 390 px wide. */
type DrawnFile = {
  readonly name: string;
  readonly heightPx: number;
  /** What is to be seen, for who does not see it; the file itself says it day by day. */
  readonly alt: string;
};

const DRAWN: Readonly<Record<string, DrawnFile>> = {
  "beds.svg": {
    name: "The beds from above, today",
    heightPx: 1000,
    alt: "Every bed from above, to one scale, in the order of the walk, with rows and plants where they stand today and their names beside them",
  },
  "season.svg": {
    name: "What grows when in each bed",
    heightPx: 4200,
    alt: "Bed by bed, each planting as a leaf along the months: it grows from the day it goes in to its first harvest and fades at its end, with the frosty months in blue behind",
  },
  "frost.svg": {
    name: "When frost is still likely",
    heightPx: 596,
    alt: "Two curves over the year: the chance of a frost after each day of spring, falling, and before each day of autumn, rising, with the usual dates marked",
  },
  "soil.svg": {
    name: "How warm the soil is, and what waits for it",
    heightPx: 621,
    alt: "The soil's warmth as a curve over the year, and on it the days from which each crop's seed comes up",
  },
  "weather.svg": {
    name: "The season so far, and the days ahead",
    heightPx: 635,
    alt: "This year's highs and lows day by day against a usual year's, with rain below and the days ahead at the right",
  },
};

/** The year's drawings, one under another; each is read out in words by its own description. */
export function picturesPage(frame: Frame, files: readonly string[]): string {
  return renderPage({
    title: "The season in pictures",
    frame,
    children: (
      <>
        {files.map((file) => {
          const { name, heightPx, alt } = DRAWN[file] ?? { name: file, heightPx: 600, alt: file };
          return (
            <>
              <h2>{name}</h2>
              <a href={file}>
                <img src={file} alt={alt} width={390} height={heightPx} loading="lazy" />
              </a>
            </>
          );
        })}
      </>
    ),
  });
}

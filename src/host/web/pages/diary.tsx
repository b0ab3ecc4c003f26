import type { Measures } from "../../../base/index.ts";
import { type Frame, renderPage } from "./frame.tsx";

/** A line of the diary: its day in words, who said it (null: not known), what was said, or to which job an answer was given, and how it was understood. */
export type LineShown = {
  readonly day: string;
  readonly by: string | null;
  readonly text: string;
  readonly understood: readonly string[];
  /** Whether it was written last. */
  readonly isNewest: boolean;
};

/** The place on the page of what was written last. */
export const NEWEST = "newest";

/** What one person wrote in great number on a day: who (key, and name as it is shown), and the lines' numbers from first to last. */
export type ManyLines = {
  readonly person: string;
  readonly name: string;
  readonly lines: string;
  readonly count: number;
  readonly day: string;
  readonly isTakenBack: boolean;
};

/** The diary: a line to add, what was said, newest first, and what the owner may take back in one go. */
export type DiaryPageProps = {
  readonly measures: Measures;
  readonly today: string;
  readonly said: string;
  readonly wrong: string | null;
  readonly lines: readonly LineShown[];
  readonly many: readonly ManyLines[];
};

/** Something that happened said in plain words, and what was said before. */
export function diaryPage(
  frame: Frame,
  { measures, today, said, wrong, lines, many }: DiaryPageProps,
): string {
  return renderPage({
    title: "The diary",
    frame,
    place: "diary",
    children: (
      <>
        <p>
          What was done, seen or measured, in plain words: carrots up, beets thinned, soil in the
          South bed {measures === "us" ? "58 °F" : "14 °C"}, slugs ate the lettuce. The jobs that
          hang on it move.
        </p>
        <form method="post">
          <label for="say">What happened?</label>
          <input id="say" name="say" class="wide" value={said} maxlength={300} required />
          <label for="day">On which day?</label>
          <input id="day" name="day" type="date" value={today} max={today} required />
          <button type="submit" class="fill">
            Write it down
          </button>
        </form>
        {wrong !== null && <p role="alert">{wrong}</p>}
        {lines.length > 0 && (
          <dl class="entries">
            {lines.map(({ day, by, text, understood, isNewest }, i) => (
              <>
                {day !== lines[i - 1]?.day && <dt>{day}</dt>}
                <dd id={isNewest ? NEWEST : undefined}>
                  <p>
                    {text}
                    {by !== null && <span class="faint"> ({by})</span>}
                  </p>
                  {understood.map((each) => (
                    <p class="faint small">{each}</p>
                  ))}
                </dd>
              </>
            ))}
          </dl>
        )}
        {many.length > 0 && <h2>Many lines in a day</h2>}
        {many.map((each) => (
          <ManyLinesForm {...each} />
        ))}
      </>
    ),
  });
}

function ManyLinesForm({ person, name, lines, count, day, isTakenBack }: ManyLines) {
  return (
    <form method="post" action="diary/back">
      <p>
        {name}, {day}: {count} lines{isTakenBack ? ", taken back" : ""}
      </p>
      <input type="hidden" name="person" value={person} />
      <input type="hidden" name="lines" value={lines} />
      <button type="submit" name="do" value={isTakenBack ? "have back" : "take back"}>
        {isTakenBack ? "Count them again" : "Take them all back"}
      </button>
    </form>
  );
}

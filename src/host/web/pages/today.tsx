import { type BedsOfToday, BedsToday } from "./beds.tsx";
import { type DayAhead, Days } from "./days.tsx";
import { type Frame, renderPage } from "./frame.tsx";
import { JobRows, type JobShown } from "./job-row.tsx";
import { Quiet, type QuietTime } from "./quiet.tsx";

/** Jobs under a heading; `folded` for those of others, which are behind their number. */
export type JobSection = {
  readonly name: string;
  readonly folded: boolean;
  readonly jobs: readonly JobShown[];
  /** What is left out, in a sentence; empty where nothing is. */
  readonly rest: string;
};

/** Something to know today that is nobody's job: a frost, an absence, what must wait. */
export type Notice = {
  readonly title: string;
  readonly text: string;
  readonly look: "warning" | "note";
  readonly more: { readonly words: string; readonly href: string } | null;
};

/** What the garden's own page shows. Paths are whole. */
export type TodayPageProps = {
  /** The day in words. */
  readonly day: string;
  readonly notices: readonly Notice[];
  /** What today comes to, in a sentence or two. */
  readonly lead: readonly string[];
  readonly sections: readonly JobSection[];
  /** What was answered a while ago or written down as done today. */
  readonly answered: readonly JobShown[];
  /** The drawing of today's jobs on the beds; null where none is in a bed. */
  readonly beds: BedsOfToday | null;
  /** Tonight's low by the forecast; empty where none is asked for. */
  readonly tonight: string;
  readonly weeks: readonly (readonly DayAhead[])[];
  /** What there is to look at while nothing is to be done; null where something is. */
  readonly quiet: QuietTime | null;
  /** Where answers are sent. */
  readonly to: string;
  /** The way into a calendar, and what it is called. */
  readonly calendar: { readonly words: string; readonly href: string };
};

/** Today: what is to be done, by whom, what waits; then the days to come. */
export function todayPage(frame: Frame, shown: TodayPageProps): string {
  const { day, notices, lead, sections, answered, beds, tonight, weeks, quiet, to, calendar } =
    shown;
  return renderPage({
    title: frame.garden,
    under: day,
    frame,
    place: "",
    children: (
      <>
        <div class="today">
          <div>
            {notices.map((notice) => (
              <NoticeBox notice={notice} />
            ))}
            {lead.map((line, i) => (
              <p class={i === 0 ? "lead" : "faint"}>{line}</p>
            ))}
            {sections.map((section) => (
              <Section section={section} to={to} />
            ))}
            {answered.length > 0 && (
              <>
                <h2>Done today</h2>
                <JobRows jobs={answered} to={to} />
              </>
            )}
          </div>
          <aside aria-label="The garden today">
            {tonight !== "" && (
              <>
                <h2>Tonight</h2>
                <p>
                  {tonight} <a href={`${frame.base}frost`}>What to cover</a>
                </p>
              </>
            )}
            <p>
              <a class="do" href={calendar.href}>
                {calendar.words}
              </a>
            </p>
            {beds && <BedsToday {...beds} />}
          </aside>
        </div>
        {quiet && <Quiet quiet={quiet} to={to} />}
        {weeks.map((days, i) => (
          <>
            <h2>{i === 0 ? "The next seven days" : "The week after"}</h2>
            <Days days={days} />
          </>
        ))}
      </>
    ),
  });
}

function Section({ section, to }: { readonly section: JobSection; readonly to: string }) {
  const { name, folded, jobs, rest } = section;
  if (folded)
    return (
      <details class="others">
        <summary>
          {name}: {jobs.length}
        </summary>
        <JobRows jobs={jobs} to={to} />
      </details>
    );
  return (
    <>
      {name !== "" && <h2>{name}</h2>}
      <JobRows jobs={jobs} to={to} />
      {rest !== "" && <p class="faint">{rest}</p>}
    </>
  );
}

function NoticeBox({ notice: { title, text, look, more } }: { readonly notice: Notice }) {
  return (
    <section class={look} aria-label={title}>
      <p>
        <strong>{title}</strong>
      </p>
      {text !== "" && <p class="text">{text}</p>}
      {more && (
        <p>
          <a href={more.href}>{more.words}</a>
        </p>
      )}
    </section>
  );
}

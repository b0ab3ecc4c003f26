import { type DayAhead, Days } from "./days.tsx";
import { type Frame, renderPage } from "./frame.tsx";
import { JobRows, type JobShown } from "./job-row.tsx";

/** What an event's page shows: its jobs, when it is (empty where it is no more), its own text where it has several jobs or none, and where answers are sent. */
export type EventPageProps = {
  readonly title: string;
  readonly when: string;
  readonly jobs: readonly JobShown[];
  readonly text: string;
  readonly to: string;
};

/** One event's page, with each job in it; a job alone is unfolded. */
export function eventPage(frame: Frame, { title, when, jobs, text, to }: EventPageProps): string {
  return renderPage({
    title,
    ...(when === "" ? {} : { under: when }),
    frame,
    place: "",
    children: (
      <>
        <JobRows jobs={jobs} to={to} open={jobs.length === 1} />
        {text !== "" && jobs.length === 0 && <p class="text">{text}</p>}
        {text !== "" && jobs.length > 0 && (
          <details>
            <summary>All of it, as the calendar says it</summary>
            <p class="text">{text}</p>
          </details>
        )}
      </>
    ),
  });
}

/** The page of an event that is no more: what became of it, and what comes next. */
export function gonePage(frame: Frame, weeks: readonly (readonly DayAhead[])[]): string {
  return renderPage({
    title: "This one is off the list",
    frame,
    place: "",
    children: (
      <>
        <p>
          It was done, has moved into another visit, or the plan no longer needs it. Your calendar
          will catch up by itself.
        </p>
        <p>
          <a class="do" href={frame.base}>
            What is to be done today
          </a>
        </p>
        {weeks.slice(0, 1).map((days) => (
          <>
            <h2>The next seven days</h2>
            <Days days={days} />
          </>
        ))}
      </>
    ),
  });
}

import { type Frame, renderPage } from "./frame.tsx";

/** One event as a page tells it: `when` in words, `href` to its own page where there is one. */
export type JobSummary = {
  readonly title: string;
  readonly when: string;
  readonly text: string;
  readonly href: string | null;
};

/** What comes next: the jobs of this week and of the one after, or, where both are empty, the first one after them. */
export type ComingJobs = {
  readonly week: readonly JobSummary[];
  readonly weekAfter: readonly JobSummary[];
  readonly later: readonly JobSummary[];
};

/**
 * What a garden's own page shows; `calendar` is the path under the link where calendars are to be had; `told` what an owner is told of what
 * is stored, a sentence each.
 */
export type WeekPageProps = {
  readonly coming: ComingJobs;
  readonly calendar: string;
  readonly told: readonly string[];
};

/** A garden's own page: this week and the next as they are told today. */
export function weekPage(frame: Frame, { coming, calendar, told }: WeekPageProps): string {
  return renderPage({
    title: frame.garden,
    frame,
    place: "",
    children: (
      <>
        {told.map((line) => (
          <p role="status">{line}</p>
        ))}
        <p>
          <a href={`${frame.base}${calendar}`}>Put this in a phone's calendar</a>, and there is no
          need to look here.
        </p>
        <Jobs coming={coming} />
      </>
    ),
  });
}

/** The jobs of two weeks under their headings; what is empty says so. */
export function Jobs({ coming: { week, weekAfter, later } }: { readonly coming: ComingJobs }) {
  return (
    <>
      <h2>This week</h2>
      {week.length === 0 && <p>Nothing is due.</p>}
      <JobList jobs={week} />
      {weekAfter.length > 0 && <h2>The week after</h2>}
      <JobList jobs={weekAfter} />
      {later.length > 0 && <h2>Then</h2>}
      <JobList jobs={later} />
    </>
  );
}

function JobList({ jobs }: { readonly jobs: readonly JobSummary[] }) {
  return (
    <>
      {jobs.map(({ title, when, text, href }) => (
        <>
          <h3>{href === null ? title : <a href={href}>{title}</a>}</h3>
          <p class="faint">{when}</p>
          <p class="text">{text}</p>
        </>
      ))}
    </>
  );
}

import { html } from "hono/html";
import type { Taps } from "../taps.ts";
import { type Frame, renderPage } from "./frame.tsx";
import { type ComingJobs, type JobSummary, Jobs } from "./week.tsx";

/** One task of an event: its title, the days that do no harm (empty for what is done), and why then, a sentence each. */
export type TaskPart = {
  readonly title: string;
  /** Where it stands now, for a job that this event had before; else empty. */
  readonly now: string;
  readonly window: string;
  readonly why: readonly string[];
  /** What can be answered to it; null where nothing can. */
  readonly taps: Taps | null;
};

/** What moved because of what was last said here, a line each; `soon` where that is still to be worked out, null where nothing was said lately. */
export type MovedLines = readonly string[] | "soon" | null;

/** What an event's page shows; `job` is null where the event is no more, but the jobs it had are still there. */
export type JobPageProps = {
  readonly job: JobSummary | null;
  readonly parts: readonly TaskPart[];
  readonly moved: MovedLines;
  /** Where this very job was left this year, the way to have it back. */
  readonly left: Taps | null;
  /** That somebody took back what another had said, a sentence each. */
  readonly takenBack: readonly string[];
};

/** One event's page, with each task in it; a task alone needs no title of its own. */
export function jobPage(
  frame: Frame,
  { job, parts, moved, left, takenBack }: JobPageProps,
): string {
  const alone = parts.length === 1 ? parts[0] : undefined;
  return renderPage({
    title: job?.title ?? (alone ? alone.title : "These jobs have moved or are done"),
    frame,
    place: "",
    children: (
      <>
        {job && <p class="faint">{job.when}</p>}
        {left && <Answers to={left} />}
        {takenBack.map((line) => (
          <p>{line}</p>
        ))}
        <MovedBy moved={moved} />
        {job && <p class="text">{job.text}</p>}
        {parts.map(({ title, now, window, why, taps }) => (
          <>
            {!alone && <h2>{title}</h2>}
            {now !== "" && <p>{now}</p>}
            {taps && <Answers to={alreadySaid(taps, job) ? { ...taps, said: null } : taps} />}
            {window !== "" && <p>{window}</p>}
            {why.length > 0 && <p class="text">{["Why then:", ...why].join("\n")}</p>}
          </>
        ))}
      </>
    ),
  });
}

/** Whether an event's own text begins with what was said of its one task. */
function alreadySaid({ said }: Taps, job: JobSummary | null): boolean {
  return said !== null && (job?.text.startsWith(said) ?? false);
}

/**
 * A button an answer; without script, each sends itself and leads back here. Written as text, since a session has hundreds
 * of them and the writer takes each for one that may run script.
 */
function Answers({ to: { task, said, taps } }: { readonly to: Taps }) {
  const told = said === null ? "" : html`<p>${said}</p>`;
  const buttons = taps.map(
    ({ words, says }) => html`<button type="submit" name="say" value="${says}">${words}</button>`,
  );
  return html`<form method="post">${told}<input type="hidden" name="task" value="${task}"/>${buttons}</form>`;
}

function MovedBy({ moved }: { readonly moved: MovedLines }) {
  if (moved === null) return null;
  if (moved === "soon") return <p>Written down. What moves with it stands here in a moment.</p>;
  if (moved.length === 0) return <p>Written down. Nothing else moves.</p>;
  return (
    <section aria-labelledby="moved">
      <h2 id="moved">Written down, and so</h2>
      <ul>
        {moved.map((line) => (
          <li>{line}</li>
        ))}
      </ul>
    </section>
  );
}

/** What the page of an event that is no more shows: what comes next, and where it was left this year the way to have it back. */
export type GonePageProps = {
  readonly coming: ComingJobs;
  readonly left: Taps | null;
  readonly moved: MovedLines;
};

/** The page of an event that is no more. */
export function gonePage(frame: Frame, { coming, left, moved }: GonePageProps): string {
  return renderPage({
    title: "This one is off the list",
    frame,
    place: "",
    children: (
      <>
        {left && <Answers to={left} />}
        <MovedBy moved={moved} />
        <p>
          It was done, has moved into another visit, or the plan no longer needs it. Your calendar
          will catch up by itself.
        </p>
        <Jobs coming={coming} />
      </>
    ),
  });
}

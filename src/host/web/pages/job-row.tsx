import { html, raw } from "hono/html";
import { type Answer, UNDO } from "../../../app/records.ts";
import { sayCount } from "../../../base/index.ts";

/** The answers that are offered to some tasks at once: the one that is wanted most, and the rest. */
export type TapsOffered = {
  readonly tasks: readonly string[];
  readonly done: Answer | null;
  readonly others: readonly Answer[];
};

/** How long a job keeps: in words, and as days from today, the day itself counted. */
export type Keeping = { readonly words: string; readonly days: number };

/** One job that is open: a line, and what unfolds from it. */
export type OpenJob = {
  readonly kind: "open";
  /** Where on the page it stands, for an answer to lead back to. */
  readonly at: string;
  readonly title: string;
  /** Where, how long or when, and whose it is where that is not plain; a few words each. */
  readonly facts: readonly string[];
  readonly keeps: Keeping | null;
  /** How, the sign, the reason, the caution: a line each. */
  readonly text: string;
  /** Why on this day, a line each; empty where it stands on the job's page alone. */
  readonly why: readonly string[];
  /** That somebody took back what somebody else had said, in a sentence; empty where nobody did. */
  readonly takenBack: string;
  /** What moved because an answer to it was taken back. */
  readonly moved: MovedLines;
  /** Its own page; null where the reader has none. */
  readonly href: string | null;
  readonly taps: TapsOffered | null;
  /** Where several alike are one job: each with answers of its own. */
  readonly each: readonly EachTask[];
};

/** One of several tasks that are one job: its title, how it is done, and the answers to it alone. */
export type EachTask = {
  readonly title: string;
  readonly text: string;
  readonly taps: TapsOffered;
};

/** What moved because of an answer, a line each; `soon` where that is still to be worked out, null where it is not told. */
export type MovedLines = readonly string[] | "soon" | null;

/** A job that was answered: what was said of it, and the way to take that back. */
export type AnsweredJob = {
  readonly kind: "answered";
  readonly at: string;
  readonly title: string;
  readonly said: string;
  /** Whether it is done, and so struck through. */
  readonly done: boolean;
  readonly undo: TapsOffered | null;
  readonly moved: MovedLines;
};

/** A job as the pages show it. */
export type JobShown = OpenJob | AnsweredJob;

/** Jobs one under another; `to` is where their forms are sent, `open` whether they are unfolded. */
export function JobRows({
  jobs,
  to,
  open = false,
}: {
  readonly jobs: readonly JobShown[];
  readonly to: string;
  readonly open?: boolean;
}) {
  return (
    <ul class="jobs">
      {jobs.map((job) => (
        <li id={job.at} class={job.kind === "open" ? "job" : "job answered"}>
          {job.kind === "open" ? (
            <Open job={job} to={to} open={open} />
          ) : (
            <Answered job={job} to={to} />
          )}
        </li>
      ))}
    </ul>
  );
}

/** The same answers with none that stands out. */
const allAlike = ({ tasks, done, others }: TapsOffered): TapsOffered => {
  return { tasks, done: null, others: done === null ? others : [done, ...others] };
};

type ShownWith<Job> = { readonly job: Job; readonly to: string };

function Open({ job, to, open }: ShownWith<OpenJob> & { readonly open: boolean }) {
  const { title, facts, keeps, takenBack, text, why, moved, href, taps, each } = job;
  return (
    <>
      <details open={open}>
        <summary>
          <span class="line">
            <span class="what">{title}</span>
            {facts.length > 0 && <span class="facts">{facts.join(" · ")}</span>}
            {takenBack !== "" && <span class="facts">{takenBack}</span>}
            {keeps && (
              <span class="facts">
                <KeepingBar days={keeps.days} /> {keeps.words}
              </span>
            )}
          </span>
        </summary>
        {text !== "" && <p class="text">{text}</p>}
        <MovedBy moved={moved} />
        {each.length > 0 && (
          <ul class="each">
            {each.map((one) => (
              <li>
                <p class="what">{one.title}</p>
                {one.text !== "" && <p class="text">{one.text}</p>}
                <Taps taps={allAlike(one.taps)} to={to} of={one.title} />
              </li>
            ))}
          </ul>
        )}
        {taps && each.length === 0 && <Taps taps={{ ...taps, done: null }} to={to} of={title} />}
        {why.length > 0 && <p class="text faint">{why.join("\n")}</p>}
        {href !== null && (
          <p>
            <a href={href}>
              More about it<span class="unseen">: {title}</span>
            </a>
          </p>
        )}
      </details>
      {taps?.done && <Taps taps={{ ...taps, others: [] }} to={to} of={title} look="at-side" />}
    </>
  );
}

function Answered({ job, to }: ShownWith<AnsweredJob>) {
  const { title, said, done, undo, moved } = job;
  return (
    <>
      <div>
        <span class="line">
          {done ? <s class="what">{title}</s> : <span class="what">{title}</span>}
          <span class="facts">{said}</span>
        </span>
        <MovedBy moved={moved} />
      </div>
      {undo && <Taps taps={undo} to={to} of={title} look="at-side" />}
    </>
  );
}

/**
 * A form with a button an answer; without script, each sends itself and leads back to its job. Written as text, since a page
 * has hundreds of them and the writer takes each for one that may run script.
 */
function Taps({
  taps: { tasks, done, others },
  to,
  of,
  look = "",
}: {
  readonly taps: TapsOffered;
  readonly to: string;
  readonly of: string;
  readonly look?: string;
}) {
  if (done === null && others.length === 0) return null;
  const hidden = tasks.map((task) => html`<input type="hidden" name="task" value="${task}"/>`);
  const button = ({ words, says }: Answer, look: string) =>
    html`<button type="submit" class="${look}" name="say" value="${says}">${words}<span class="unseen">: ${of}</span></button>`;
  const wanted = done === null ? "" : button(done, isUndo(done) ? "" : "fill");
  const rest = others.map((other) => button(other, ""));
  return html`<form method="post" action="${to}" class="${look}">${hidden}${wanted}${rest}</form>`;
}

const isUndo = ({ says }: Answer) => says.startsWith(UNDO);

/** Notches of the bar that shows how long a job keeps [days], and how far they stand apart [px]. */
const [NOTCHES, APART] = [14, 6];

/** How long a job keeps as a row of notches, a day each, those that are left filled; two weeks and more fill it. */
function KeepingBar({ days }: { readonly days: number }) {
  const width = NOTCHES * APART;
  const left = APART * Math.max(0, Math.min(days, NOTCHES));
  return raw(
    `<svg class="keeps" width="${width}" height="10" aria-hidden="true"><path d="M0 5h${width}"/><path class="left" d="M0 5h${left}"/></svg>`,
  );
}

/** What moved because of an answer. */
export function MovedBy({ moved }: { readonly moved: MovedLines }) {
  if (moved === null) return null;
  if (moved.length === 0) return <p class="small">Nothing else moves.</p>;
  if (moved === "soon") return <p class="small">What moves with it stands here in a moment.</p>;
  return (
    <details class="small">
      <summary>{sayCount(moved.length, "job")} moved with it</summary>
      <ul>
        {moved.map((line) => (
          <li>{line}</li>
        ))}
      </ul>
    </details>
  );
}

/** What there is to do on a day to come: in a few words, its page where it has one, and at which hours and whose it is; empty where that is plain. */
export type DayJob = {
  readonly title: string;
  readonly href: string | null;
  readonly facts: readonly string[];
};

/** A day to come: its weekday and date in words, and what there is to do. */
export type DayAhead = {
  readonly weekday: string;
  readonly date: string;
  readonly jobs: readonly DayJob[];
};

/** Seven days, or how many there are: a row each on a phone, a column each on a desk. */
export function Days({ days }: { readonly days: readonly DayAhead[] }) {
  return (
    <ol class="week">
      {days.map(({ weekday, date, jobs }) => (
        <li>
          <p class="day">
            {weekday} <span>{date}</span>
          </p>
          {jobs.length === 0 ? (
            <p class="free">
              <span aria-hidden="true">–</span>
              <span class="unseen">nothing</span>
            </p>
          ) : (
            <ul>
              {jobs.map((job) => (
                <DayLine job={job} />
              ))}
            </ul>
          )}
        </li>
      ))}
    </ol>
  );
}

function DayLine({ job: { title, href, facts } }: { readonly job: DayJob }) {
  return (
    <li>
      {href === null ? title : <a href={href}>{title}</a>}
      {facts.length > 0 && <span class="facts">{facts.join(" · ")}</span>}
    </li>
  );
}

/** @jsxRuntime automatic @jsxImportSource hono/jsx */
import { type Day, partsOf, shortWeekday } from "../../base/index.ts";
import { sayDays } from "../events/sentences.ts";
import type { SheetJob } from "./job.ts";
import type { SheetLadder, SheetRung } from "./ladder.ts";
import { Box, Lines } from "./page.tsx";
import type { SheetPerson } from "./people.ts";
import type { SheetDay, SheetWeek } from "./weeks.ts";

type OfPeople = { readonly people: readonly SheetPerson[] };

/** A week of the sheet: its warnings, then its jobs day by day, then what is carried out and in. */
export function WeekSection({
  week: { from, to, ladders, days },
  people,
}: OfPeople & { readonly week: SheetWeek }) {
  return (
    <section class="week">
      <h2 class="name">{sayDays({ from, to })}</h2>
      {days.map(({ day, warnings }) =>
        warnings.map((warning) => <Warning warning={warning} day={day} />),
      )}
      {days.map((day) => (
        <DayJobs day={day} people={people} />
      ))}
      {ladders.map((ladder) => (
        <Ladder ladder={ladder} people={people} />
      ))}
    </section>
  );
}

/** `Sat 8`. */
function shortDay(day: Day): string {
  return `${shortWeekday(day)} ${partsOf(day).date}`;
}

function Warning({
  warning: { title, how },
  day,
}: {
  readonly warning: SheetJob;
  readonly day: Day;
}) {
  return (
    <div class="warning">
      <p class="what">
        {title} ({shortDay(day)})
      </p>
      <Lines look="how" lines={how} />
    </div>
  );
}

function DayJobs({ day: { day, jobs }, people }: OfPeople & { readonly day: SheetDay }) {
  return (
    <>
      {jobs.map((job, i) => (
        <div class="job">
          <p class={i === 0 ? "day" : "day again"}>{shortDay(day)}</p>
          <Box ticked={job.done !== ""} />
          <JobText job={job} people={people} />
          <div class="write">
            <Lines look="till" lines={[tillNote(job)]} />
          </div>
        </div>
      ))}
    </>
  );
}

/** What stands under the line to write on: when it was done, or else the last day that does no harm. */
function tillNote({ done, till }: SheetJob): string {
  if (done !== "") return done;
  return till === "" ? "" : `fine till ${till}`;
}

function JobText({ job, people }: OfPeople & { readonly job: SheetJob }) {
  const { title, who, minutes, hour, how, sign, caution } = job;
  const time = [hour, lengthText(minutes)].filter(Boolean).join(", ");
  return (
    <div class="told">
      <p class="what">
        {title}
        {time && <span class="time">{time}</span>}
        <WhoMark who={who} people={people} />
      </p>
      <Lines look="how" lines={how} />
      <Lines look="sign" lines={[sign]} />
      <Lines look="caution" lines={[caution]} />
    </div>
  );
}

/** `20 min`, `about 1.5 hours`; empty where it takes no time of its own. */
function lengthText(minutes: number | null): string {
  if (minutes === null) return "";
  return minutes <= 60 ? `${minutes} min` : `about ${Math.ceil(minutes / 30) / 2} hours`;
}

/** The letters of who does it, in a rim; none where it is anybody's. */
function WhoMark({ who, people }: OfPeople & { readonly who: readonly string[] }) {
  const letters = people.filter(({ key }) => who.includes(key)).map((each) => each.letters);
  return letters.length > 0 && <span class="who">{letters.join(" ")}</span>;
}

function Ladder({
  ladder: { title, how, rungs },
  people,
}: OfPeople & { readonly ladder: SheetLadder }) {
  return (
    <div class="ladder">
      <p class="what">{title}</p>
      <Lines look="how" lines={[how]} />
      <ul class="rungs">
        {rungs.map((rung) => (
          <Rung rung={rung} people={people} />
        ))}
      </ul>
    </div>
  );
}

function Rung({
  rung: { day, hours, who, how, done },
  people,
}: OfPeople & { readonly rung: SheetRung }) {
  return (
    <li class="rung">
      <Box ticked={done} />
      <p class="told">
        <b>{shortDay(day)}</b> {hours}
        <WhoMark who={who} people={people} /> {how}
      </p>
    </li>
  );
}

/** @jsxRuntime automatic @jsxImportSource hono/jsx */
import { sayDay } from "../../base/index.ts";
import type { MonthSheet } from "./month.ts";
import { Box, Lines, RuledLines, renderSheet } from "./page.tsx";
import type { SheetPerson } from "./people.ts";
import { WeekSection } from "./week-section.tsx";

/** The shed's sheet of a month as one page of HTML, to print on A4 or Letter or to read on a screen. */
export function monthPage(sheet: MonthSheet): string {
  const { garden, month, person, people, weeks, open } = sheet;
  const full = weeks.filter(({ days, ladders }) => days.length + ladders.length > 0);
  return renderSheet({
    title: `${garden}, ${month}${person ? `, ${person.name}` : ""}`,
    children: (
      <>
        <MonthHead sheet={sheet} />
        {open.length > 0 && <OpenJobs jobs={open} />}
        {full.length === 0 && <EmptyMonth sheet={sheet} />}
        {full.map((week) => (
          <WeekSection week={week} people={people} />
        ))}
        <Notes />
      </>
    ),
  });
}

type SheetProps = { readonly sheet: MonthSheet };

function MonthHead({ sheet: { garden, month, person, people, today, facts } }: SheetProps) {
  const stood = `As it stood on ${sayDay(today, true)}; days move with the season, so print it again now and then.`;
  return (
    <header class="head">
      <h1 class="month">{month}</h1>
      <p class="of">
        {person ? `${garden}, for ${person.name}` : garden}
        {people.map((each) => (
          <PersonKey person={each} />
        ))}
      </p>
      <Lines look="facts" lines={[...facts, stood]} />
    </header>
  );
}

/** What somebody's letters stand for. */
function PersonKey({ person: { letters, name } }: { readonly person: SheetPerson }) {
  return (
    <span class="whom">
      <span class="who key">{letters}</span>
      {letters !== name && ` ${name}`}
    </span>
  );
}

function OpenJobs({ jobs }: { readonly jobs: readonly string[] }) {
  return (
    <section class="open">
      <h2 class="name">Still open from before</h2>
      <ul class="lines">
        {jobs.map((job) => (
          <li class="still">
            <Box ticked={false} />
            <span class="what">{job}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function EmptyMonth({ sheet: { month, next } }: SheetProps) {
  return (
    <section class="week">
      <p class="none">
        Nothing to do in the garden in {month}.{next && ` The next job: ${next}.`}
      </p>
    </section>
  );
}

/** Room for what was really seen, and how to bring it back to the plan. */
function Notes() {
  return (
    <section class="notes">
      <h2 class="name">Seen and done</h2>
      <RuledLines count={4} />
      <p class="foot">
        First green, first ripe, a frost and how cold, what failed, each with its day. In the plan’s
        diary (“24 May: carrots up”) it moves what comes after.
      </p>
    </section>
  );
}

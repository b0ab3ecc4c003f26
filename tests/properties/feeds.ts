import { buildSchedule, type Garden, horizonAt, type Schedule } from "../../src/app/build.ts";
import { startOf } from "../../src/base/days/instants.ts";
import type { PublishedState } from "../../src/engine/schedule/scheduled-task.ts";
import { chooseEvents, type FeedChoice } from "../../src/views/calendar/choose-events.ts";
import type { Ledger } from "../../src/views/calendar/ledger.ts";
import { writeCalendar } from "../../src/views/calendar/write.ts";
import { gardenOf, isoDay } from "../gardens.ts";

/** The feeds that tests of bytes look at: each kind, of everybody and of one. */
export const CHOICES: readonly FeedChoice[] = [
  { of: "household", kind: "tasks", bed: null, quiet: false, reader: false },
  { of: "household", kind: "sessions", bed: null, quiet: true, reader: false },
  { of: { person: "imre" }, kind: "sessions", bed: null, quiet: false, reader: false },
  { of: "household", kind: "warnings", bed: null, quiet: false, reader: false },
  { of: "household", kind: "tasks", bed: "root-bed", quiet: false, reader: true },
];

/** The instant [ms] at which a day written `2027-05-06` begins in the garden of the tests. */
export const dawn = (on: string): number => startOf(isoDay(on), "America/Denver");

/** What stays between two writings of one feed. */
export type Kept = { readonly standing: PublishedState; readonly ledger: Ledger | null };

/** Nothing told and nothing written yet. */
export const NOTHING: Kept = { standing: {}, ledger: null };

/** A feed written from what was told; `cause` [ms] is the newest reason for a change. */
export function write(
  told: Pick<Schedule, "events">,
  choice: FeedChoice,
  cause: number,
  ledger: Ledger | null = null,
) {
  return writeCalendar({
    garden: "quarry-lane",
    name: "Quarry Lane",
    events: chooseEvents(told.events, choice),
    quiet: choice.quiet,
    reader: choice.reader,
    link: choice.reader ? null : (event) => `https://sowbell.example/a/b/c/event/${event.key}`,
    clock: "America/Denver",
    cause,
    now: cause,
    ledger,
  });
}

/** A garden told at an instant [ms]. */
export function toldAt(garden: Garden, instant: number, standing: PublishedState = {}): Schedule {
  return buildSchedule(garden, horizonAt(garden, instant), standing);
}

/** Every feed's bytes of a text told at an instant [ms], one after the other. */
export function bytesOf(text: string, instant: number, cause = dawn("2027-01-01")): string {
  const told = toldAt(gardenOf(text), instant);
  return CHOICES.map((choice) => write(told, choice, cause).text).join("");
}

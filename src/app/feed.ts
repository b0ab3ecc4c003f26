import type { Plan } from "../garden/model/index.ts";
import { type CalendarInput, writeCalendar } from "../views/index.ts";
import { chooseEvents, type FeedChoice } from "../views/records.ts";

export type { Event } from "../views/records.ts";
export {
  chooseEvents,
  type FeedChoice,
  type Ledger,
  readLedger,
  type StoredLedger,
} from "../views/records.ts";

/** What a feed's name is made of: the names of the garden, its people and its beds, from the newest plan first. */
export type FeedNames = readonly {
  readonly name: string;
  readonly people: readonly NamedByKey[];
  readonly beds: readonly NamedByKey[];
}[];

type NamedByKey = Pick<Plan["beds"][number], "key" | "name">;

const KIND_NAMES = { sessions: null, tasks: "all tasks", warnings: "warnings" } as const;

/**
 * The name a calendar shows for a feed: the garden's, then its person or bed, else what it has in place of sessions:
 * `Quarry Lane: Imre`, `Quarry Lane: Root bed`, `Quarry Lane: all tasks`.
 */
export function feedName(newestFirst: FeedNames, { of, bed, kind }: FeedChoice): string {
  const named = (all: readonly NamedByKey[], key: string | null) =>
    all.find((each) => each.key === key)?.name ?? null;
  const people = newestFirst.flatMap((plan) => plan.people);
  const beds = newestFirst.flatMap((plan) => plan.beds);
  const own = [of === "household" ? null : named(people, of.person), named(beds, bed)];
  const parts = own.filter((part) => part !== null);
  const rest = parts.length > 0 ? parts.join(", ") : KIND_NAMES[kind];
  const garden = newestFirst[0]?.name ?? "Garden";
  return rest === null ? garden : `${garden}: ${rest}`;
}

/** The input for a feed: all the garden's events, and which of them it shows. */
export type FeedInput = Omit<CalendarInput, "quiet" | "reader"> & { readonly choice: FeedChoice };

/** A feed as a calendar's text, with its new ledger: the events that its choice shows. */
export function writeFeed({
  choice,
  events,
  ...rest
}: FeedInput): ReturnType<typeof writeCalendar> {
  const { quiet, reader } = choice;
  return writeCalendar({ ...rest, events: chooseEvents(events, choice), quiet, reader });
}

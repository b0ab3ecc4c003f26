import { EVENING_BEFORE, type Event } from "../events/event.ts";

/**
 * Which of the garden's events a feed shows. `person` and `bed` are keys; `bed: null` means every bed.
 * `quiet` leaves reminders out, `reader` is a link for somebody outside the household; both change how
 * an event is written and not which are chosen.
 */
export type FeedChoice = {
  readonly of: "household" | { readonly person: string };
  readonly kind: "sessions" | "tasks" | "warnings";
  readonly bed: string | null;
  readonly quiet: boolean;
  readonly reader: boolean;
};

/**
 * The events of one feed, in the order they came. A feed filters one of the garden's two sets: sessions or tasks, with
 * what is in both; or only the warnings. A person gets their own and everybody's, a bed what touches it. A feed that
 * has nothing else has the season's own line, so that none is ever empty: GNOME keeps all its old events when a
 * calendar comes without one. A reader gets timed work as of its day, since an hour would tell who is at home when.
 * Throws where a reader is given sessions or one person's feed, which would tell who is at home when.
 */
export function chooseEvents(events: readonly Event[], choice: FeedChoice): readonly Event[] {
  if (choice.reader && (choice.kind === "sessions" || choice.of !== "household")) {
    throw new RangeError("a reader gets the household's tasks or warnings only");
  }
  const chosen = events.filter(
    (event) =>
      event.kind !== "season" &&
      isOfKind(event, choice.kind) &&
      isFor(event, choice.of) &&
      isIn(event, choice.bed),
  );
  if (chosen.length === 0) return events.filter((event) => event.kind === "season");
  return choice.reader ? chosen.map(withoutHours) : chosen;
}

function withoutHours(event: Event): Event {
  if (event.when.kind === "all day") return event;
  const when = { kind: "all day", day: event.day } as const;
  return { ...event, when, busy: false, remindMinutesBefore: EVENING_BEFORE };
}

function isOfKind(event: Event, kind: FeedChoice["kind"]): boolean {
  if (kind === "warnings") return event.kind === "warning";
  return event.set === "both" || event.set === kind;
}

function isFor(event: Event, of: FeedChoice["of"]): boolean {
  return of === "household" || event.people.length === 0 || event.people.includes(of.person);
}

function isIn(event: Event, bed: string | null): boolean {
  return bed === null || event.beds.includes(bed);
}

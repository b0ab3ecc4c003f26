import fc from "fast-check";
import { type Day, dayOrThrow } from "../../../src/base/days/day.ts";
import type { Event } from "../../../src/views/events/event.ts";

/** The day most tests begin on. */
export const MAY_8: Day = dayOrThrow(2027, 5, 8);

/** The instant most changes are caused by: 1 May 2027, 06:00 UTC, in ms. */
export const MAY_1 = Date.UTC(2027, 4, 1, 6);

/** A plain all-day task; what is given stands instead. */
export function eventOf(given: Partial<Event> = {}): Event {
  return {
    key: "2027/beet/thin/1",
    set: "tasks",
    kind: "task",
    tasks: ["2027/beet/thin/1"],
    people: [],
    beds: ["root-bed"],
    title: "Thin beets, Root bed",
    text: "Thin to one every 3 in.\nFine till 20 May.",
    readerText: "Thin to one every 3 in.",
    categories: ["thin"],
    when: { kind: "all day", day: MAY_8 },
    day: MAY_8,
    busy: false,
    remindMinutesBefore: 360,
    weight: 10,
    ...given,
  };
}

/** A rung from 16:00 to 17:00 UTC on 8 May 2027, busy; what is given stands instead. */
export function rungOf(given: Partial<Event> = {}): Event {
  const from = Date.UTC(2027, 4, 8, 16);
  return eventOf({
    key: "2027/garden/harden-off/out-1",
    kind: "rung",
    set: "both",
    title: "Carry the trays out",
    when: { kind: "timed", from, to: from + 3_600_000 },
    busy: true,
    remindMinutesBefore: 10,
    ...given,
  });
}

const HOSTILE = [
  "\r\nMETHOD:PUBLISH\r\n",
  "\nEND:VEVENT\n",
  "\r",
  ";",
  ",",
  "\\",
  "\\n",
  ":",
  '"',
  "\u0000",
  "\u0007",
  "\u001b",
  "\u007f",
  "\u0085",
  "\u2028",
  "\u2029",
  "\ufeff",
  "\ud800",
  "\udfff",
  "\t",
  " ",
  "\u05d2\u05d9\u05e0\u05d4",
  "\u202e",
  "\u{1f468}\u200d\u{1f469}\u200d\u{1f467}",
  "x".repeat(80),
  "\u00fc\u4e2d\u{1f955}",
] as const;

/** Text as nobody should write it: line ends, controls, half characters, right-to-left, families, long runs. */
export const hostileText: fc.Arbitrary<string> = fc
  .array(fc.oneof(fc.constantFrom(...HOSTILE), fc.string({ unit: "grapheme" })), { maxLength: 12 })
  .map((parts) => parts.join(""));

const anyWhen: fc.Arbitrary<Event["when"]> = fc.oneof(
  fc
    .integer({ min: -400, max: 800 })
    .map((n) => ({ kind: "all day" as const, day: (MAY_8 + n) as Day })),
  fc
    .record({ n: fc.integer({ min: 0, max: 1e10 }), lasts: fc.integer({ min: 1000, max: 1e8 }) })
    .map(({ n, lasts }) => ({ kind: "timed" as const, from: MAY_1 + n, to: MAY_1 + n + lasts })),
);

/** Any event, hostile in all its words; `busy` for timed ones only, reminders never at midnight. */
export const anyEvent: fc.Arbitrary<Event> = fc
  .record({
    key: fc.tuple(fc.uuid(), hostileText).map(([id, words]) => id + words),
    title: hostileText,
    text: hostileText,
    readerText: hostileText,
    categories: fc.array(hostileText, { maxLength: 3 }),
    when: anyWhen,
    remindMinutesBefore: fc.integer({ min: 1, max: 1439 }),
  })
  .map((given) => eventOf({ ...given, busy: given.when.kind === "timed" }));

/** One to thirty events, no two with one key. */
export const anyEvents: fc.Arbitrary<readonly Event[]> = fc.uniqueArray(anyEvent, {
  minLength: 1,
  maxLength: 30,
  selector: (event) => event.key,
});

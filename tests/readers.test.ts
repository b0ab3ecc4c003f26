import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Day, plus } from "../src/base/days/day.ts";
import { cleanText } from "../src/views/calendar/clean.ts";
import type { Ledger } from "../src/views/calendar/ledger.ts";
import { writeCalendar } from "../src/views/calendar/write.ts";
import type { Event } from "../src/views/events/event.ts";
import {
  type Answer,
  type Ask,
  byUid,
  dated,
  gnome,
  icsx5,
  type Kept,
  NOTHING_KEPT,
  READERS,
  type Reader,
} from "./readers.ts";
import type { StrictEvent } from "./strict.ts";
import { eventOf, MAY_1, MAY_8 } from "./views/calendar/events.ts";

const DAY_MS = 86_400_000;
const SECOND = 1000;

/** A feed as a server keeps it: `modified` [ms] is the instant its bytes last changed, strictly rising. */
type Kitchen = {
  readonly bytes: Uint8Array;
  readonly text: string;
  readonly modified: number;
  readonly ledger: Ledger;
};

function publish(events: readonly Event[], cause: number, old: Kitchen | null): Kitchen {
  const given = { garden: "g", name: "G", quiet: false, reader: false, link: null, clock: "UTC" };
  const written = writeCalendar({
    ...given,
    events,
    cause,
    now: cause,
    ledger: old?.ledger ?? null,
  });
  if (old?.text === written.text) return old;
  const modified = Math.max(Math.floor(cause / SECOND) * SECOND, (old?.modified ?? 0) + SECOND);
  return { ...written, bytes: new TextEncoder().encode(written.text), modified };
}

function answer(kitchen: Kitchen, ask: Ask): Answer {
  const etag = `"${kitchen.text.length}-${kitchen.modified}"`;
  const lastModified = new Date(kitchen.modified).toUTCString();
  const since = ask["if-modified-since"];
  const same =
    ask["if-none-match"] === undefined
      ? since !== undefined && kitchen.modified <= Date.parse(since)
      : ask["if-none-match"] === etag;
  return {
    status: same ? 304 : 200,
    etag,
    lastModified,
    bytes: same ? new Uint8Array() : kitchen.bytes,
  };
}

const reading = (reader: Reader, kept: Kept, kitchen: Kitchen) =>
  reader.take(kept, answer(kitchen, reader.ask(kept)));

/** What happens to the garden's events: each takes the events and gives them anew. */
type Edit = (events: readonly Event[]) => readonly Event[];
const at =
  (index: number, edit: (event: Event) => Event[]): Edit =>
  (events) =>
    events.flatMap((event, place) =>
      event.kind !== "season" && place === index % events.length ? edit(event) : [event],
    );
const reword = (index: number, words: string) => at(index, (event) => [{ ...event, text: words }]);
const move = (index: number, days: number) =>
  at(index, (event) => {
    if (event.when.kind !== "all day") return [event];
    return [{ ...event, when: { kind: "all day", day: plus(event.when.day, days) } }];
  });
const remove = (index: number) => at(index, () => []);
const bringBack =
  (index: number): Edit =>
  (events) => {
    const all = garden();
    const gone = all.filter((event) => !events.some((other) => other.key === event.key));
    const back = gone[index % Math.max(gone.length, 1)];
    return back === undefined ? events : [...events, back];
  };
const deploy =
  (word: string): Edit =>
  (events) =>
    events.map((event) => ({ ...event, text: event.text.replace(/^\w+/, word) }));

function garden(): readonly Event[] {
  const season = eventOf({ key: "season", kind: "season", title: "Nothing due until March" });
  const tasks = Array.from({ length: 12 }, (_, n) =>
    eventOf({
      key: `2027/beet-${n}/thin/1`,
      title: `Thin beets ${n}`,
      when: { kind: "all day", day: plus(MAY_8, n) as Day },
    }),
  );
  return [season, ...tasks];
}

const anyEdit: fc.Arbitrary<Edit> = fc.oneof(
  { weight: 4, arbitrary: fc.constant<Edit>((events) => events) },
  fc.tuple(fc.nat(20), fc.string()).map(([index, words]) => reword(index, words)),
  fc.tuple(fc.nat(20), fc.integer({ min: -9, max: 9 })).map(([index, days]) => move(index, days)),
  fc.nat(20).map(remove),
  { weight: 2, arbitrary: fc.nat(20).map(bringBack) },
  fc.constantFrom("Thin", "Single", "Space").map(deploy),
);
/** A day's edits with the milliseconds between each and the one before, often none. */
const anyDay = fc.array(fc.tuple(anyEdit, fc.constantFrom(0, 0, 1, 400, 999, 5000)), {
  maxLength: 3,
});

describe("the readers over a year", () => {
  test("after each reading show exactly what the feed tells", { timeout: 60_000 }, () => {
    const year = fc.array(anyDay, { minLength: 366, maxLength: 366 });
    fc.assert(
      fc.property(year, (days) => replay(days)),
      { numRuns: 3, endOnFailure: true },
    );
  });

  test("follow each kind of change, one after the other, within one second", () => {
    const edits = [
      reword(1, "Other words"),
      reword(1, "Yet other words"),
      move(2, 3),
      move(2, -3),
      remove(3),
      bringBack(0),
      remove(4),
      deploy("Single"),
      bringBack(0),
    ];
    replay([edits.map((edit): [Edit, number] => [edit, 50])]);
  });
});

/** Plays the days; one set of readers reads after every edit, one at each day's end, one every fifth day. */
function replay(days: readonly (readonly (readonly [Edit, number])[])[]): void {
  let events = garden();
  let kitchen = publish(events, MAY_1, null);
  const kept = new Map<string, Kept>();
  const readAll = (pace: string) => {
    for (const reader of READERS) {
      const name = `${reader.name}, ${pace}`;
      const now = reading(reader, kept.get(name) ?? NOTHING_KEPT, kitchen);
      expect([...now.shown].sort(), name).toEqual([...byUid(kitchen.bytes)].sort());
      expect([...now.shown.values()].map(toldOf).sort(), name).toEqual(events.map(meantOf).sort());
      kept.set(name, now);
    }
  };
  days.forEach((edits, index) => {
    let cause = MAY_1 + (index + 1) * DAY_MS;
    for (const [edit, later] of edits) {
      cause += later;
      events = edit(events);
      kitchen = publish(events, cause, kitchen);
      readAll("at every edit");
    }
    readAll("every day");
    if (index % 5 === 0) readAll("every fifth day");
  });
}

/** What a reader shows of an event, and what the garden means by one, as one line each. */
const toldOf = ({ start, summary, description }: StrictEvent) =>
  `${start.kind === "date" ? start.day : "timed"} ${summary}: ${description}`;
const meantOf = ({ when, title, text }: Event) =>
  `${when.kind === "all day" ? when.day : "timed"} ${title}: ${cleanText(text).trim()}`;

describe("a return", () => {
  test("with other words within the second of its change is seen by a reader that missed its going", () => {
    const changed = reword(1, "Other words")(garden());
    const one = publish(changed, MAY_1, null);
    const gone = publish(remove(1)(changed), MAY_1 + 100, one);
    const back = publish(reword(1, "Yet other words")(changed), MAY_1 + 200, gone);
    for (const reader of READERS) {
      const kept = reading(reader, reading(reader, NOTHING_KEPT, one), back);
      expect(kept.shown, reader.name).toEqual(byUid(back.bytes));
    }
  });
});

describe("the models bite as the programs do", () => {
  const first = publish(garden(), MAY_1, null);
  const unstamped = (): Kitchen => {
    const text = first.text.replace("Thin beets 1", "Weed beets 1");
    return {
      ...first,
      text,
      bytes: new TextEncoder().encode(text),
      modified: first.modified + SECOND,
    };
  };
  const titles = (kept: Kept) => [...kept.shown.values()].map((event) => event.summary);
  const answering = (body: string): Answer => ({
    status: 200,
    etag: '"other"',
    lastModified: new Date(MAY_1 + DAY_MS).toUTCString(),
    bytes: new TextEncoder().encode(body),
  });
  const start = (reader: Reader) => reading(reader, NOTHING_KEPT, first);

  test("GNOME and ICSx5 miss a change whose stamp stayed; the dated reader sees it", () => {
    for (const reader of [gnome, icsx5]) {
      expect(titles(reading(reader, start(reader), unstamped()))).toContain("Thin beets 1");
    }
    expect(titles(reading(dated, start(dated), unstamped()))).toContain("Weed beets 1");
  });

  test("the dated reader misses a change within the same second of the feed's own date", () => {
    const same = { ...unstamped(), modified: first.modified };
    expect(titles(reading(dated, start(dated), same))).toContain("Thin beets 1");
  });

  test("GNOME keeps everything when a calendar has no event left; the others clear", () => {
    const empty = answering(first.text.replace(/BEGIN:VEVENT[\s\S]*END:VEVENT\r\n/, ""));
    expect(gnome.take(start(gnome), empty).shown.size).toBe(13);
    expect(icsx5.take(start(icsx5), empty).shown.size).toBe(0);
    expect(dated.take(start(dated), empty).shown.size).toBe(0);
  });

  test("an error page with status 200 empties GNOME until the ETag changes", () => {
    const kept = gnome.take(start(gnome), answering("<html>Oops</html>"));
    expect(kept.shown.size).toBe(0);
    expect(reading(gnome, kept, first).shown.size).toBe(0);
    expect(reading(gnome, kept, { ...first, modified: first.modified + SECOND }).shown.size).toBe(
      13,
    );
  });

  test("errors and 304 change nothing", () => {
    for (const reader of READERS) {
      for (const status of [304, 404, 503]) {
        expect(reader.take(start(reader), { ...answering(""), status })).toEqual(start(reader));
      }
    }
  });
});

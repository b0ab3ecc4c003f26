import { beforeAll, describe, expect, test } from "vitest";
import { buildSchedule, type Garden, horizonAt } from "../src/app/build.ts";
import type { PublishedState } from "../src/engine/schedule/scheduled-task.ts";
import { chooseEvents, type FeedChoice } from "../src/views/calendar/choose-events.ts";
import { cleanText } from "../src/views/calendar/clean.ts";
import { uidOf } from "../src/views/calendar/uid.ts";
import type { Event } from "../src/views/events/event.ts";
import { gardenOf, QUARRY } from "./gardens.ts";
import { CHOICES, dawn, type Kept as Told, write } from "./properties/feeds.ts";
import { type Answer, type Ask, byUid, type Kept, NOTHING_KEPT, READERS } from "./readers.ts";
import { faultsOf, type StrictEvent } from "./strict.ts";

const DAY_MS = 86_400_000;
const SECOND = 1000;

/** What the gardener writes in the year: the day, and the text after it. Several on one day come within a second. */
const EDITS: readonly (readonly [day: string, edit: (text: string) => string])[] = [
  ["2027-02-11", (text) => text.replace("18 plants", "12 plants")],
  ["2027-03-02", (text) => text.replace("beds:\n", "away:\n  - Oda, 1 to 12 May\nbeds:\n")],
  ["2027-03-20", moved("      - beet: 2 rows\n", "  Salad bed:\n    is: 8 x 4 ft\n    crops:\n")],
  ["2027-04-04", (text) => text.replace("beet: 2 rows", "beet: 2 rows, sown 12 May")],
  ["2027-04-04", (text) => text.replace("sown 12 May", "sown 16 May")],
  ["2027-04-25", (text) => text.replace("      - carrot: 3 rows, under a board\n", "")],
  [
    "2027-04-29",
    (text) =>
      text.replace(
        "  Root bed:\n    is: 12 x 4 ft\n    crops:\n",
        (bed) => `${bed}      - carrot: 3 rows, under a board\n`,
      ),
  ],
  ["2027-05-16", (text) => `${text}diary:\n  - 16 May: beets sown by Imre\n`],
  ["2027-05-27", (text) => `${text}  - 27 May: carrots up\n  - 27 May: a hare in the lettuce\n`],
  ["2027-05-27", (text) => text.replace("carrots up", "carrots seen")],
  ["2027-05-27", (text) => text.replace("carrots seen", "carrots up")],
  ["2027-06-20", (text) => `${text}  - 19 Jun: thinned carrots by Oda\n`],
  ["2027-07-08", (text) => text.replace("Sat 9-12", "Fri 9-12")],
  [
    "2027-08-01",
    (text) =>
      text.replace(
        "beds:\n",
        "beds:\n  Far bed:\n    is: 4 x 4 ft\n    crops:\n      - lettuce: ruby, 1 row\n",
      ),
  ],
  ["2027-10-09", (text) => text.replace("60 cloves", "80 cloves")],
];

function moved(line: string, under: string): (text: string) => string {
  return (text) => text.replace(line, "").replace(under, `${under}${line}`);
}

/** All tasks, one person's sessions, and what a reader gets of one bed. */
const FOLLOWED = CHOICES.filter(
  ({ of, kind, reader }) => kind === "tasks" || (of !== "household" && !reader),
);

/** From this day on the code says one word of one event otherwise. */
const DEPLOY = "2027-06-02";
const reworded = (events: readonly Event[]): readonly Event[] =>
  events.map((event) =>
    event.key === "2027/tomato/set-out/1"
      ? { ...event, text: event.text.replace("deep", "deeply") }
      : event,
  );

/** A feed as a server keeps it; `modified` [ms] is the instant its bytes last changed. */
type Kitchen = {
  readonly bytes: Uint8Array;
  readonly text: string;
  readonly modified: number;
  readonly kept: Told["ledger"];
  readonly events: readonly Event[];
};

function cooked(events: readonly Event[], choice: FeedChoice, cause: number, old: Kitchen | null) {
  const { text, ledger } = write({ events }, choice, cause, old?.kept ?? null);
  const shown = chooseEvents(events, choice);
  if (old?.text === text) return { ...old, kept: ledger, events: shown };
  const whole = Math.floor(cause / SECOND) * SECOND;
  const modified = old === null ? whole : Math.max(whole, old.modified + SECOND);
  return { bytes: new TextEncoder().encode(text), text, modified, kept: ledger, events: shown };
}

function answer(kitchen: Kitchen, ask: Ask): Answer {
  const etag = `"${kitchen.text.length}-${kitchen.modified}"`;
  const since = ask["if-modified-since"];
  const same =
    ask["if-none-match"] === undefined
      ? since !== undefined && kitchen.modified <= Date.parse(since)
      : ask["if-none-match"] === etag;
  const lastModified = new Date(kitchen.modified).toUTCString();
  return {
    status: same ? 304 : 200,
    etag,
    lastModified,
    bytes: same ? new Uint8Array() : kitchen.bytes,
  };
}

/** What a reader shows of an event and what the garden means by one, as one line each. */
const shownOf = ({ uid, start, summary, description }: StrictEvent, choice: FeedChoice) =>
  `${uid} ${start.kind === "date" ? start.day : start.at} ${summary}: ${choice.reader ? description : description.replace(/\n\nhttps:.*$/, "")}`;
const meantOf = ({ key, when, title, text, readerText }: Event, choice: FeedChoice) =>
  `${uidOf("quarry-lane", key)} ${when.kind === "all day" ? when.day : when.from} ${title}: ${cleanText(choice.reader ? readerText : text).trim()}`;

type Feed = {
  readonly choice: FeedChoice;
  readonly kept: Map<string, Kept>;
  kitchen: Kitchen | null;
};

/** Every reader reads the feed; what it shows must be what the feed tells. */
function readAll({ choice, kitchen, kept }: Feed, pace: string): void {
  if (kitchen === null) throw new Error("nothing cooked");
  const means = kitchen.events.map((event) => meantOf(event, choice)).sort();
  for (const reader of READERS) {
    const name = `${reader.name}, ${pace}`;
    const had = kept.get(name) ?? NOTHING_KEPT;
    const now = reader.take(had, answer(kitchen, reader.ask(had)));
    kept.set(name, now);
    if (now.shown === had.shown && now.etag === had.etag) continue;
    expect(now.shown, name).toEqual(byUid(kitchen.bytes));
    expect([...now.shown.values()].map((event) => shownOf(event, choice)).sort(), name).toEqual(
      means,
    );
  }
}

/** A year lived through; what it saw on the way. */
function live() {
  const saw = { changed: 0, same: 0, faults: [] as string[], sequences: 0, most: 0 };
  const feeds: Feed[] = FOLLOWED.map((choice) => ({ choice, kept: new Map(), kitchen: null }));
  let text = `${QUARRY}assume: open\n`;
  let garden: Garden = gardenOf(text);
  let standing: PublishedState = {};
  let until = 0;
  const cook = (cause: number, now: number, deployed: boolean) => {
    const horizon = horizonAt(garden, now);
    const told = buildSchedule(garden, horizon, standing);
    standing = told.publishedState;
    until = horizon.until;
    const events = deployed ? reworded(told.events) : told.events;
    for (const feed of feeds) {
      const before = feed.kitchen?.text;
      feed.kitchen = cooked(events, feed.choice, cause, feed.kitchen);
      if (feed.kitchen.text === before) {
        saw.same += 1;
        continue;
      }
      saw.changed += 1;
      saw.most = Math.max(saw.most, feed.kitchen.events.length);
      saw.faults.push(...faultsOf(feed.kitchen.bytes).map(({ code }) => code));
    }
  };
  for (let day = 0; day < 366; day++) {
    const morning = dawn("2027-01-01") + day * DAY_MS + DAY_MS / 4;
    const date = new Date(morning).toISOString().slice(0, 10);
    const deployed = date >= DEPLOY;
    if (morning >= until || date === DEPLOY)
      cook(date === DEPLOY ? morning : Math.max(until, dawn("2027-01-01")), morning, deployed);
    const edits = EDITS.filter(([on]) => on === date);
    for (const [nth, [, edit]] of edits.entries()) {
      const before = text;
      text = edit(text);
      if (text === before) throw new Error(`nothing to edit on ${date}`);
      garden = gardenOf(text);
      const at = morning + 3_600_000 + nth * 300;
      cook(at, at, deployed);
      for (const feed of feeds) readAll(feed, "at every edit");
    }
    for (const feed of feeds) {
      readAll(feed, "every day");
      if (day % 5 === 0) readAll(feed, "every fifth day");
    }
  }
  for (const { kitchen } of feeds)
    for (const { sequence } of Object.values(kitchen?.kept?.entries ?? {}))
      saw.sequences = Math.max(saw.sequences, sequence);
  return saw;
}

describe("a year of the canonical garden, told, written and read", () => {
  let saw: ReturnType<typeof live>;
  beforeAll(() => {
    saw = live();
  }, 180_000);

  test("shows every reader, after each reading, exactly what the feed tells", () => {
    expect(saw.changed).toBeGreaterThan(100);
  });

  test("has no fault in any feed of it", () => {
    expect(saw.faults).toEqual([]);
  });

  test("leaves feeds as they are when a horizon passes and nothing told has changed", () => {
    expect(saw.same).toBeGreaterThan(saw.changed);
  });

  test("moves events and counts how often", () => {
    expect(saw.sequences).toBeGreaterThan(3);
  });

  test("stays small", () => {
    expect(saw.most).toBeLessThan(300);
  });
});

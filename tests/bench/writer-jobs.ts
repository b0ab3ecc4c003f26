import { writeEvent } from "../../src/views/calendar/event-text.ts";
import { headAndFoot } from "../../src/views/calendar/head.ts";
import type { Ledger } from "../../src/views/calendar/ledger.ts";
import { uidOf } from "../../src/views/calendar/uid.ts";
import { writeCalendar } from "../../src/views/calendar/write.ts";
import type { Event } from "../../src/views/events/event.ts";
import { plainEvent } from "./floor.ts";
import { season } from "./season.ts";

const STAMP = Date.UTC(2027, 4, 6, 12);
const GARDEN = "quarry-lane";
const NAME = "Quarry Lane";
const linkOf = (event: Event) => `https://sowbell.example/quarry-lane/${event.key}`;

/** So many events written by the plainest writer. */
export function plainWriterJob(count: number): () => unknown {
  const events = season(count);
  return () => plainly(events);
}

/** The same events written by ours. Throws where a byte differs from the plainest writer's. */
export function writerJob(count: number): () => unknown {
  const events = season(count);
  if (ours(events) !== plainly(events)) throw new Error("the two writers differ");
  return () => ours(events);
}

/** A whole feed of so many events, every one of them new. */
export function newFeedJob(count: number): () => unknown {
  const events = season(count);
  return () => feed(events, null);
}

/** The same feed written again, nothing changed. */
export function sameFeedJob(count: number): () => unknown {
  const events = season(count);
  const { ledger } = feed(events, null);
  return () => feed(events, ledger);
}

function plainly(events: readonly Event[]): string {
  const { head, foot } = headAndFoot(NAME);
  return head + events.map((e) => plainEvent(GARDEN, e, linkOf(e), STAMP)).join("") + foot;
}

function ours(events: readonly Event[]): string {
  const { head, foot } = headAndFoot(NAME);
  const revision = { sequence: 0, stamp: STAMP };
  const write = (e: Event) =>
    writeEvent({ ...e, uid: uidOf(GARDEN, e.key), link: linkOf(e), clock: "UTC" }, revision);
  return head + events.map(write).join("") + foot;
}

function feed(events: readonly Event[], ledger: Ledger | null) {
  const common = { garden: GARDEN, name: NAME, quiet: false, reader: false, link: linkOf };
  return writeCalendar({ ...common, events, clock: "UTC", cause: STAMP, now: STAMP, ledger });
}

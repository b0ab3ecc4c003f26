import { expect, test } from "vitest";
import { writeEvent } from "../../src/views/calendar/event-text.ts";
import { headAndFoot } from "../../src/views/calendar/head.ts";
import { uidOf } from "../../src/views/calendar/uid.ts";
import { writeCalendar } from "../../src/views/calendar/write.ts";
import type { Event } from "../../src/views/events/event.ts";
import { medians } from "./clock.ts";
import { plainEvent } from "./floor.ts";
import { season } from "./season.ts";

const STAMP = Date.UTC(2027, 4, 6, 12);
const GARDEN = "quarry-lane";
const linkOf = (event: Event) => `https://sowbell.example/quarry-lane/${event.key}`;
const { head, foot } = headAndFoot("Quarry Lane");

function floor(events: readonly Event[]): string {
  return head + events.map((e) => plainEvent(GARDEN, e, linkOf(e), STAMP)).join("") + foot;
}

function ours(events: readonly Event[]): string {
  const { head, foot } = headAndFoot("Quarry Lane");
  const revision = { sequence: 0, stamp: STAMP };
  const write = (e: Event) =>
    writeEvent({ ...e, uid: uidOf(GARDEN, e.key), link: linkOf(e) }, revision);
  return head + events.map(write).join("") + foot;
}

function told(events: readonly Event[]) {
  const common = { garden: GARDEN, name: "Quarry Lane", quiet: false, reader: false, link: linkOf };
  return (ledger: Parameters<typeof writeCalendar>[0]["ledger"]) =>
    writeCalendar({ ...common, events, cause: STAMP, ledger });
}

async function priced(count: number) {
  const events = season(count);
  expect(ours(events)).toBe(floor(events));
  const write = told(events);
  const { ledger } = write(null);
  const [plain = 0, bare = 0, fresh = 0, kept = 0] = await medians([
    () => floor(events),
    () => ours(events),
    () => write(null),
    () => write(ledger),
  ]);
  return { events: count, plain, bare, ratio: bare / plain, fresh, kept };
}

test("serialising costs little more than the plainest hand, and no more an event in a great feed", async () => {
  const small = await priced(250);
  const great = await priced(2500);
  const growth = great.bare / great.events / (small.bare / small.events);
  console.log(table([small, great]), `an event at 2,500 against one at 250: ${growth.toFixed(2)}`);
  expect(small.ratio).toBeLessThanOrEqual(2.5);
  expect(great.ratio).toBeLessThanOrEqual(2.2);
  expect(growth).toBeLessThanOrEqual(1.25);
});

function table(rows: readonly Awaited<ReturnType<typeof priced>>[]): string {
  const head = "events  plainest  serialised  ratio  with new ledger  all kept  [ms]";
  const line = (r: (typeof rows)[number]) =>
    [
      String(r.events).padStart(6),
      r.plain.toFixed(2).padStart(9),
      r.bare.toFixed(2).padStart(11),
      r.ratio.toFixed(2).padStart(6),
      r.fresh.toFixed(2).padStart(16),
      r.kept.toFixed(2).padStart(9),
    ].join(" ");
  return `\n${[head, ...rows.map(line)].join("\n")}\n`;
}

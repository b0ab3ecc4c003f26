import fc from "fast-check";
import ICAL from "ical.js";
import { foldLines, ICalCalendar } from "ical-generator";
import { afterEach, describe, expect, test } from "vitest";
import { type Day, plus } from "../../../src/base/days/day.ts";
import { repairEvent } from "../../../src/views/calendar/repair.ts";
import { type CalendarInput, writeCalendar } from "../../../src/views/calendar/write.ts";
import type { Event } from "../../../src/views/events/event.ts";
import { faultsOf, readStrictly } from "../../strict.ts";
import { anyEvents, eventOf, hostileText, MAY_1, MAY_8, rungOf } from "./events.ts";

const bytesOf = (text: string) => new TextEncoder().encode(text);
const linkOf = (event: Event) =>
  `https://sowbell.example/g/${encodeURIComponent(event.key.replace(/\p{Cs}/gu, "?"))},a;b`;
const writing = (given: Partial<CalendarInput> = {}): CalendarInput => ({
  garden: "quarry-lane",
  name: "Quarry Lane",
  events: [eventOf(), rungOf()],
  quiet: false,
  reader: false,
  link: linkOf,
  clock: "America/Denver",
  cause: MAY_1,
  now: 0,
  ledger: null,
  ...given,
});
const read = (given: Partial<CalendarInput>) =>
  readStrictly(bytesOf(writeCalendar(writing(given)).text));

describe("a written calendar", () => {
  test("is without a fault, whatever the words", () => {
    fc.assert(
      fc.property(
        anyEvents,
        hostileText,
        fc.boolean(),
        fc.boolean(),
        (events, name, quiet, reader) => {
          const { text } = writeCalendar(writing({ events, name, quiet, reader }));
          expect(faultsOf(bytesOf(text))).toEqual([]);
        },
      ),
      { numRuns: 300 },
    );
  });

  test("says back every word that was cleaned, its link last", () => {
    const text = "\u05d2\u05d9\u05e0\u05d4; a, b\\n\r\nEND:VEVENT\u2028\u{1f955}";
    const { events } = read({ events: [eventOf({ text, title: "a, b; c\\" })] });
    expect(events[0]?.summary).toBe("a, b; c\\");
    expect(events[0]?.description).toBe(
      `\u05d2\u05d9\u05e0\u05d4; a, b\\n\nEND:VEVENT\n\u{1f955}\n\n${linkOf(eventOf())}`,
    );
  });

  test("holds ten thousand letters of text whole", () => {
    const text = "Thin, then water; wait.\n".repeat(420).trim();
    const { events } = read({ events: [eventOf({ text })], link: null });
    expect(events[0]?.description).toBe(text);
  });

  test("stands in order of start day, then key, in whatever order the events came", () => {
    const events = [
      rungOf({ key: "b" }),
      eventOf({ key: "c", when: { kind: "all day", day: plus(MAY_8, -1) } }),
      eventOf({ key: "a" }),
    ];
    const { text } = writeCalendar(writing({ events }));
    expect(text).toBe(writeCalendar(writing({ events: events.toReversed() })).text);
    const uidsOf = (one: Event[]) => read({ events: one }).events.map((event) => event.uid);
    expect(read({ events }).events.map((event) => event.uid)).toEqual(
      ["c", "a", "b"].flatMap((key) => uidsOf(events.filter((event) => event.key === key))),
    );
  });

  test("gives a reader the reader's text and nothing of the household's", () => {
    const events = [eventOf({ text: "Imre is away", readerText: "Thin" })];
    const { text } = writeCalendar(writing({ events, reader: true, link: null }));
    expect(text).toContain("DESCRIPTION:Thin\r\n");
    expect(text).not.toContain("Imre");
  });

  test("has one alarm an event, and none when quiet", () => {
    expect(read({}).events.map((event) => event.alarm)).toEqual([6 * 3600, 600]);
    expect(read({ quiet: true }).events.map((event) => event.alarm)).toEqual([null, null]);
  });

  test("tells no key: a person's name in one is nowhere in the feed", () => {
    const events = [eventOf({ key: "imre/2027-05-08" })];
    expect(writeCalendar(writing({ events, link: null })).text).not.toMatch(/imre/i);
  });

  test("without an event, or with two of one key, throws", () => {
    expect(() => writeCalendar(writing({ events: [] }))).toThrow("needs an event");
    expect(() =>
      writeCalendar(writing({ events: [eventOf(), rungOf({ key: eventOf().key })] })),
    ).toThrow("two events with one key");
  });
});

describe("written one by one", () => {
  test("gives the bytes of writing all at once", () => {
    fc.assert(
      fc.property(anyEvents, (events) => {
        const { text } = writeCalendar(writing({ events }));
        expect(text).toBe(allAtOnce(text));
      }),
      { numRuns: 50 },
    );
  });
});

/** The same calendar out of one call of the library: its unfolded events read back, put in together, mended, folded. */
function allAtOnce(text: string): string {
  const { events } = readStrictly(bytesOf(text));
  const calendar = new ICalCalendar();
  for (const event of events) calendar.createEvent(dataOf(event));
  const written = calendar.toString().replaceAll("\r\n ", "");
  const blocks = written.match(/BEGIN:VEVENT\r\n[\s\S]*?\r\nEND:VEVENT\r\n/g) ?? [];
  const [head = ""] = text.split(/(?<=\r\n)BEGIN:VEVENT\r\n/);
  const body = blocks.map((block) => {
    const [alarm = ""] = block.match(/(?<=\r\n)BEGIN:VALARM\r\n[\s\S]*?\r\nEND:VALARM\r\n/) ?? [];
    return repairEvent(
      block.replace(alarm, () => ""),
      { alarm, clock: "America/Denver" },
    );
  });
  return `${head}${foldLines(body.join(""))}END:VCALENDAR\r\n`;
}

function dataOf(event: ReturnType<typeof readStrictly>["events"][number]) {
  const dateOf = (moment: typeof event.start) =>
    new Date(moment.kind === "date" ? moment.day * 86_400_000 : moment.at);
  return {
    id: event.uid,
    sequence: event.sequence,
    stamp: new Date(event.stamp),
    lastModified: new Date(event.stamp),
    start: dateOf(event.start),
    end: dateOf(event.end),
    allDay: event.start.kind === "date",
    summary: event.summary,
    transparency: (event.busy ? "OPAQUE" : "TRANSPARENT") as never,
    description: event.description,
    categories: event.categories.map((name) => ({ name })),
    alarms: (event.alarm === null
      ? []
      : [{ type: "display", trigger: event.alarm, description: event.summary }]) as never,
  };
}

describe("an independent parser", () => {
  test("agrees on ids, days, times and alarms", () => {
    fc.assert(
      fc.property(anyEvents, (events) => {
        const { text } = writeCalendar(writing({ events }));
        const parsed = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent");
        expect(parsed.map(asTheirs)).toEqual(readStrictly(bytesOf(text)).events.map(asOurs));
      }),
      { numRuns: 100 },
    );
  });
});

function asTheirs(component: InstanceType<typeof ICAL.Component>) {
  const event = new ICAL.Event(component);
  const at = (time: typeof event.startDate) =>
    time.isDate ? time.toString() : time.toJSDate().toISOString();
  const trigger = component.getFirstSubcomponent("valarm")?.getFirstPropertyValue("trigger");
  return {
    uid: event.uid,
    start: at(event.startDate),
    end: at(event.endDate),
    alarm: trigger instanceof ICAL.Duration ? -trigger.toSeconds() : null,
    summary: event.summary,
  };
}

function asOurs(event: ReturnType<typeof readStrictly>["events"][number]) {
  const at = (moment: typeof event.start) =>
    moment.kind === "date"
      ? new Date(moment.day * 86_400_000).toISOString().slice(0, 10)
      : new Date(moment.at).toISOString();
  const { uid, start, end, alarm, summary } = event;
  return { uid, start: at(start), end: at(end), alarm, summary };
}

describe("with a ledger", () => {
  test("writing again with its own ledger gives the same text and ledger", () => {
    fc.assert(
      fc.property(anyEvents, fc.integer({ min: 0, max: 1e11 }), (events, later) => {
        const first = writeCalendar(writing({ events }));
        const cause = MAY_1 + later;
        const again = writeCalendar(writing({ events, ledger: first.ledger, cause }));
        expect(again).toEqual(first);
      }),
      { numRuns: 60 },
    );
  });

  test("a ledger that was kept as JSON is as good", () => {
    const first = writeCalendar(writing());
    const ledger = JSON.parse(JSON.stringify(first.ledger));
    expect(writeCalendar(writing({ ledger, cause: MAY_1 + 5000 }))).toEqual(first);
  });

  test("a change of anything told gives a later stamp, and only for that event", () => {
    const first = writeCalendar(writing());
    const changes: Partial<Event>[] = [
      { title: "Thin the beets" },
      { text: "Other" },
      { categories: ["weed"] },
      { when: { kind: "all day", day: plus(MAY_8, 1) as Day } },
      { remindMinutesBefore: 300 },
    ];
    for (const change of changes) {
      const events = [eventOf(change), rungOf()];
      const { text, ledger } = writeCalendar(writing({ events, ledger: first.ledger }));
      expect(ledger.entries[eventOf().key]?.stamp).toBe(MAY_1 + 1000);
      expect(ledger.entries[rungOf().key]).toEqual(first.ledger.entries[rungOf().key]);
      expect(text).not.toBe(first.text);
    }
  });

  test("a change of the link, or to quiet, is a change of every event", () => {
    const { ledger } = writeCalendar(writing());
    for (const change of [{ link: null }, { quiet: true }]) {
      const { entries } = writeCalendar(writing({ ...change, ledger })).ledger;
      expect(Object.values(entries).map((entry) => entry.stamp)).toEqual([
        MAY_1 + 1000,
        MAY_1 + 1000,
      ]);
    }
  });

  test("a change of what the feed doesn't tell is none", () => {
    const first = writeCalendar(writing());
    const events = [eventOf({ readerText: "Other", people: ["oda"], tasks: [] }), rungOf()];
    expect(writeCalendar(writing({ events, ledger: first.ledger, cause: MAY_1 + 9000 }))).toEqual(
      first,
    );
  });

  test("sequence rises when the day moves and not when the text does", () => {
    const { ledger } = writeCalendar(writing());
    const told = { text: "Other" };
    const moved = { ...told, when: { kind: "all day", day: plus(MAY_8, 1) } as const };
    const second = writeCalendar(writing({ events: [eventOf(told)], ledger }));
    const third = writeCalendar(writing({ events: [eventOf(moved)], ledger: second.ledger }));
    expect(second.ledger.entries[eventOf().key]?.sequence).toBe(0);
    expect(third.ledger.entries[eventOf().key]?.sequence).toBe(1);
    expect(third.text).toContain("SEQUENCE:1\r\n");
  });
});

describe("in another time zone", () => {
  const home = process.env.TZ;
  afterEach(() => {
    if (home === undefined) delete process.env.TZ;
    else process.env.TZ = home;
  });

  test.for(["UTC", "America/Los_Angeles", "Asia/Tokyo", "Pacific/Apia"])(
    "%s, the bytes are the same",
    (zone) => {
      const before = writeCalendar(writing());
      process.env.TZ = zone;
      expect(Intl.DateTimeFormat().resolvedOptions().timeZone).toBe(zone);
      expect(writeCalendar(writing())).toEqual(before);
    },
  );
});

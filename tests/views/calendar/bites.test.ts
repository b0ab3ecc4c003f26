import { ICalAlarmRelatesTo, ICalCalendar, type ICalEventData } from "ical-generator";
import { describe, expect, test } from "vitest";
import { headAndFoot } from "../../../src/views/calendar/head.ts";
import { writeCalendar } from "../../../src/views/calendar/write.ts";
import { eventOf, MAY_1, rungOf } from "./events.ts";

const START = new Date(Date.UTC(2027, 4, 8));
const raw = (data: Partial<ICalEventData> = {}, calendar = {}) =>
  new ICalCalendar({
    ...calendar,
    events: [{ id: "x", stamp: START, start: START, summary: "Thin", ...data }],
  }).toString();
const ours = (given = {}, name = "Quarry Lane") =>
  writeCalendar({
    garden: "quarry-lane",
    name,
    events: [eventOf(given)],
    quiet: false,
    reader: false,
    link: () => "https://a.example/b,c",
    clock: "America/Denver",
    cause: MAY_1,
    now: MAY_1,
    ledger: null,
  }).text;

/** Each says first what the library does by itself, so that a version that mends it is noticed, then what we do. */
describe("where the library bites, and what stands in our feeds", () => {
  test("an alarm after the start hangs on the end; ours are all before the start", () => {
    const alarms = [{ triggerAfter: 25_200, relatesTo: ICalAlarmRelatesTo.start }];
    expect(raw({ alarms } as Partial<ICalEventData>)).toContain("TRIGGER;RELATED=END:PT7H");
    expect(ours()).toMatch(/TRIGGER:-PT6H/);
    expect(() => ours({ remindMinutesBefore: -420 })).toThrow(RangeError);
  });

  test("a zone on the calendar strips the Z from stamps; ours stand beside one", () => {
    expect(raw({}, { timezone: "America/Denver" })).not.toMatch(/DTSTAMP:\d{8}T\d{6}Z/);
    const timed = ours({ when: rungOf().when });
    expect(timed).toMatch(/DTSTAMP:\d{8}T\d{6}Z\r\n/);
    expect(timed).toContain("DTSTART;TZID=America/Denver:20270508T100000\r\n");
  });

  test("rules of whole days end in date-times; ours repeat nothing", () => {
    const repeating = { freq: "DAILY", until: START } as ICalEventData["repeating"];
    expect(raw({ allDay: true, repeating: repeating ?? null })).toContain("UNTIL=20270508T000000Z");
    expect(ours()).not.toMatch(/RRULE|RECURRENCE-ID|EXDATE/);
  });

  test("a name, an id and a product are not escaped; ours are clean", () => {
    expect(raw({ id: "x\r\nCLASS:PUBLIC" })).toContain("\r\nCLASS:PUBLIC\r\n");
    expect(raw({}, { name: "A\r\nMETHOD:PUBLISH" })).toContain("\r\nMETHOD:PUBLISH\r\n");
    expect(raw({}, { name: "A,B;C" })).toContain("NAME:A,B;C");
    const hostile = ours({ key: "x\r\nCLASS:PUBLIC" }, "A,B\r\nMETHOD:PUBLISH");
    expect(hostile).not.toMatch(/\r\n(CLASS|METHOD):/);
    expect(hostile).toContain("NAME:A\\,B METHOD:PUBLISH\r\n");
  });

  test("a product given as text gets a dash too many; ours has the one", () => {
    expect(raw({}, { prodId: "-//A//B//EN" })).toContain("PRODID:--//");
    expect(ours()).toContain("PRODID:-//Sowbell//");
  });

  test("a URL is escaped as text; ours stands in the text, once", () => {
    expect(raw({ url: "https://a.example/b,c" })).toContain(
      "URL;VALUE=URI:https://a.example/b\\,c",
    );
    expect(ours()).not.toContain("URL;");
    expect(ours().replaceAll("\r\n ", "")).toContain("\\n\\nhttps://a.example/b\\,c\r\n");
  });

  test("the last line stays open; ours is closed", () => {
    expect(raw()).toMatch(/END:VCALENDAR$/);
    expect(ours()).toMatch(/END:VCALENDAR\r\n$/);
  });

  test("control characters and half characters pass; ours are gone", () => {
    expect(raw({ summary: "a\u0007\ud800" })).toContain("a\u0007\ud800");
    expect(ours({ title: "a\u0007\ud800" })).toContain("SUMMARY:a\ufffd\r\n");
  });

  test("a calendar's further properties come after its events; ours before", () => {
    const text = raw({}, { x: [["COLOR", "olivedrab"]] });
    expect(text.indexOf("COLOR:")).toBeGreaterThan(text.indexOf("END:VEVENT"));
    expect(ours().indexOf("\r\nCOLOR:olivedrab")).toBeLessThan(ours().indexOf("BEGIN:VEVENT"));
  });

  test("an alarm stands amid the properties; ours after them", () => {
    const text = raw({ alarms: [{ trigger: 600 }], categories: [{ name: "thin" }] } as never);
    expect(text.indexOf("CATEGORIES")).toBeGreaterThan(text.indexOf("END:VALARM"));
    expect(ours()).toContain("END:VALARM\r\nEND:VEVENT\r\n");
  });

  test("an end at the start, a shared id and no component are taken; ours throw", () => {
    expect(raw({ end: START })).toContain("DTEND:20270508T000000Z");
    expect(new ICalCalendar().toString()).not.toContain("BEGIN:VEVENT");
    const { when } = rungOf();
    const still = when.kind === "timed" ? { ...when, to: when.from } : when;
    expect(() => ours({ when: still })).toThrow(RangeError);
    const twice = { name: "", events: [eventOf(), eventOf()], cause: MAY_1, ledger: null };
    const rest = { garden: "g", quiet: false, reader: false, link: null, clock: "UTC", now: 0 };
    expect(() => writeCalendar({ ...twice, ...rest })).toThrow(RangeError);
    expect(() => writeCalendar({ ...twice, ...rest, events: [] })).toThrow(RangeError);
  });

  test("whole days carry two Microsoft properties; ours none", () => {
    expect(raw({ allDay: true })).toContain("X-MICROSOFT-CDO-ALLDAYEVENT:TRUE");
    expect(ours()).not.toContain("X-MICROSOFT");
  });

  test("without an id and a stamp both are new each time; ours never", () => {
    const text = () => new ICalCalendar({ events: [{ start: START }] }).toString();
    expect(text()).not.toBe(text());
    expect(ours()).toBe(ours());
    expect(headAndFoot("a")).toEqual(headAndFoot("a"));
  });
});

import { describe, expect, test } from "vitest";
import { type EventWording, writeEvent } from "../../../src/views/calendar/event-text.ts";
import { eventOf, MAY_1, rungOf } from "./events.ts";

const REVISION = { sequence: 3, stamp: MAY_1 };
const LINK = "https://sowbell.example/a,b;c/1";
const worded = (given: Partial<EventWording> = {}): EventWording => ({
  ...eventOf(),
  uid: "0b7f3c1a-5d2e-8a41-9c3b-1f2e3d4c5b6a",
  link: LINK,
  clock: "America/Denver",
  ...given,
});
const lines = (given: Partial<EventWording> = {}) =>
  writeEvent(worded(given), REVISION).replaceAll("\r\n ", "").split("\r\n");
const named = (name: string, given: Partial<EventWording> = {}) =>
  lines(given).filter((line) => line.startsWith(name));

describe("one event", () => {
  test("all-day is exactly this", () => {
    expect(lines()).toEqual([
      "BEGIN:VEVENT",
      "UID:0b7f3c1a-5d2e-8a41-9c3b-1f2e3d4c5b6a",
      "SEQUENCE:3",
      "DTSTAMP:20270501T060000Z",
      "DTSTART;VALUE=DATE:20270508",
      "DTEND;VALUE=DATE:20270509",
      "SUMMARY:Thin beets\\, Root bed",
      "TRANSP:TRANSPARENT",
      `DESCRIPTION:Thin to one every 3 in.\\nFine till 20 May.\\n\\nhttps://sowbell.example/a\\,b\\;c/1`,
      "CATEGORIES:thin",
      "LAST-MODIFIED:20270501T060000Z",
      "BEGIN:VALARM",
      "ACTION:DISPLAY",
      "TRIGGER:-PT6H",
      "DESCRIPTION:Thin beets\\, Root bed",
      "END:VALARM",
      "END:VEVENT",
      "",
    ]);
  });

  test("timed is told on the garden's clock, busy where it keeps somebody busy", () => {
    const { when } = rungOf();
    expect(named("DT", { when, busy: true }).slice(1)).toEqual([
      "DTSTART;TZID=America/Denver:20270508T100000",
      "DTEND;TZID=America/Denver:20270508T110000",
    ]);
    expect(named("TRANSP", { when, busy: true })).toEqual(["TRANSP:OPAQUE"]);
    expect(named("TRANSP", { when, busy: false })).toEqual(["TRANSP:TRANSPARENT"]);
  });

  test("a whole day is never busy", () => {
    expect(named("TRANSP", { busy: true })).toEqual(["TRANSP:TRANSPARENT"]);
  });

  test("half seconds are cut", () => {
    const when = { kind: "timed", from: MAY_1 + 999, to: MAY_1 + 61_999 } as const;
    expect(named("DTSTART", { when })).toEqual(["DTSTART;TZID=America/Denver:20270501T000000"]);
    expect(named("DTEND", { when })).toEqual(["DTEND;TZID=America/Denver:20270501T000101"]);
  });

  test("a reminder is one alarm so long before", () => {
    const { when } = rungOf();
    expect(named("TRIGGER", { when, remindMinutesBefore: 10 })).toEqual(["TRIGGER:-PT10M"]);
    expect(named("TRIGGER", { when, remindMinutesBefore: 90 })).toEqual(["TRIGGER:-PT1H30M"]);
    expect(named("TRIGGER", { remindMinutesBefore: 1800 })).toEqual(["TRIGGER:-P1DT6H"]);
  });

  test("none is none", () => {
    expect(named("BEGIN", { remindMinutesBefore: null })).toEqual(["BEGIN:VEVENT"]);
  });

  test("a reminder at midnight, at the start, after it or at no time throws", () => {
    for (const remindMinutesBefore of [1440, 0, -30, 1.5, Number.NaN]) {
      expect(() => lines({ remindMinutesBefore })).toThrow(RangeError);
    }
    expect(() => lines({ when: rungOf().when, remindMinutesBefore: 1440 })).not.toThrow();
  });

  test("a timed event that doesn't end after it starts throws", () => {
    for (const to of [MAY_1, MAY_1 - 1000, MAY_1 + 900, Number.NaN]) {
      expect(() => lines({ when: { kind: "timed", from: MAY_1, to } })).toThrow(RangeError);
    }
  });

  test("without a link the text stands alone, without text the link, without both nothing", () => {
    expect(named("DESCRIPTION", { link: null })[0]).toBe(
      "DESCRIPTION:Thin to one every 3 in.\\nFine till 20 May.",
    );
    const none = { remindMinutesBefore: null, text: "\r\n" };
    expect(named("DESCRIPTION", { ...none, link: "https://a.example/1" })).toEqual([
      "DESCRIPTION:https://a.example/1",
    ]);
    expect(named("DESCRIPTION", { ...none, link: null })).toEqual([]);
  });

  test("a title is one line of at most sixty characters, and never empty", () => {
    expect(named("SUMMARY", { title: "Thin\r\nbeets" })).toEqual(["SUMMARY:Thin beets"]);
    expect(named("SUMMARY", { title: "x".repeat(10_000) })[0]).toHaveLength(8 + 60);
    expect(named("SUMMARY", { title: "\u0000" })).toEqual(["SUMMARY:Garden"]);
  });

  test("categories that are empty once cleaned are left out", () => {
    expect(named("CATEGORIES", { categories: ["a,b", "\r\n", "c"] })).toEqual([
      "CATEGORIES:a\\,b,c",
    ]);
    expect(named("CATEGORIES", { categories: ["\u0007"] })).toEqual([]);
  });

  test("no line is longer than 75 octets and no fold cuts a character", () => {
    const text = "R\u00fcben \u4e2d\u6587 \u{1f955} ".repeat(700);
    for (const line of writeEvent(worded({ text }), REVISION).split("\r\n")) {
      const octets = new TextEncoder().encode(line);
      expect(octets.length).toBeLessThanOrEqual(75);
      expect(line).not.toMatch(/\ufffd/);
    }
  });
});

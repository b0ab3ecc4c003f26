import { describe, expect, test } from "vitest";
import { chooseEvents, type FeedChoice } from "../../../src/views/calendar/choose-events.ts";
import { EVENING_BEFORE } from "../../../src/views/events/event.ts";
import { eventOf } from "./events.ts";

const HOUSEHOLD: FeedChoice = {
  of: "household",
  kind: "tasks",
  bed: null,
  quiet: false,
  reader: false,
};
const EVENTS = [
  eventOf({ key: "session", set: "sessions", kind: "session", people: ["imre"], beds: ["a", "b"] }),
  eventOf({ key: "task", set: "tasks", people: ["imre"], beds: ["a"] }),
  eventOf({ key: "hers", set: "tasks", people: ["oda"], beds: ["b"] }),
  eventOf({ key: "rung", set: "both", kind: "rung", people: ["oda", "imre"], beds: [] }),
  eventOf({ key: "warning", set: "both", kind: "warning", beds: ["a"] }),
  eventOf({ key: "season", set: "both", kind: "season", beds: [], tasks: [] }),
];
const keys = (choice: Partial<FeedChoice>) =>
  chooseEvents(EVENTS, { ...HOUSEHOLD, ...choice }).map((event) => event.key);

describe("choosing a feed's events", () => {
  test("sessions are the events of the sessions' set and of both", () => {
    expect(keys({ kind: "sessions" })).toEqual(["session", "rung", "warning"]);
  });

  test("tasks are the events of the tasks' set and of both", () => {
    expect(keys({})).toEqual(["task", "hers", "rung", "warning"]);
  });

  test("warnings come alone", () => {
    expect(keys({ kind: "warnings" })).toEqual(["warning"]);
  });

  test("a person gets their own and everybody's", () => {
    expect(keys({ of: { person: "oda" } })).toEqual(["hers", "rung", "warning"]);
  });

  test("a person nobody knows still gets what is everybody's", () => {
    expect(keys({ of: { person: "nobody" } })).toEqual(["warning"]);
  });

  test("a bed gets what touches it", () => {
    expect(keys({ bed: "a" })).toEqual(["task", "warning"]);
    expect(keys({ bed: "a", kind: "sessions" })).toEqual(["session", "warning"]);
  });

  test("the season's own line stands alone where there is nothing else", () => {
    const season = EVENTS.filter((event) => event.kind === "season" || event.key === "hers");
    const none = chooseEvents(season, { ...HOUSEHOLD, bed: "a" });
    expect(none.map((event) => event.key)).toEqual(["season"]);
    expect(chooseEvents(season, HOUSEHOLD).map((event) => event.key)).toEqual(["hers"]);
  });

  test("a reader gets a rung as of its day, without the hour somebody is at home", () => {
    const rungs = eventOf({ key: "rung", set: "both", kind: "rung", remindMinutesBefore: 10 });
    const timed = { ...rungs, busy: true };
    const when = { kind: "timed", from: 1_800_000_000_000, to: 1_800_000_900_000 } as const;
    const [rung] = chooseEvents([{ ...timed, when }], { ...HOUSEHOLD, reader: true });
    expect(rung?.when).toEqual({ kind: "all day", day: timed.day });
    expect(rung?.busy).toBe(false);
    expect(rung?.remindMinutesBefore).toBe(EVENING_BEFORE);
  });

  test("quiet and reader change how events are written and not which", () => {
    expect(keys({ quiet: true, reader: true })).toEqual(keys({}));
  });

  test("a reader is never given sessions or one person's feed", () => {
    expect(() => keys({ reader: true, kind: "sessions" })).toThrow(RangeError);
    expect(() => keys({ reader: true, of: { person: "oda" } })).toThrow(RangeError);
  });
});

import { describe, expect, test } from "vitest";
import type { Event } from "../../src/views/events/event.ts";
import { random } from "../garden/plan/random.ts";
import { gardenOf, QUARRY } from "../gardens.ts";
import { dawn, toldAt } from "./feeds.ts";
import { anyPlan, CANARIES } from "./plans.ts";

const MACHINERY =
  /\b(emergence|window|rung|threshold|degree.days?|milestone|anchor|overdue|undefined|null|NaN)\b|\[object/i;
const MINUTES = ["5", "10", "15", "20", "30", "45", "60"];
const NAMES = new RegExp([...CANARIES, "Imre", "Oda"].join("|"));
const roll = random(11);
const PLANS = [QUARRY, ...Array.from({ length: 200 }, () => anyPlan(roll))];
const EVENTS: readonly Event[] = PLANS.flatMap(
  (text) => toldAt(gardenOf(text), dawn("2027-06-03")).events,
);
const LONG: readonly string[] = ["session", "open", "away"];

/** What is told that breaks a rule, each once. */
const breaking = (rule: (event: Event) => boolean, told = (event: Event) => event.text) => [
  ...new Set(
    EVENTS.filter((event) => !rule(event)).map((event) => `${event.title}: ${told(event)}`),
  ),
];

describe("the words of the canonical garden and of two hundred others", () => {
  test("are many", () => {
    expect(EVENTS.length).toBeGreaterThan(5000);
    expect(new Set(EVENTS.map((event) => event.kind)).size).toBe(8);
  });

  test("have titles of one line and at most fifty characters", () => {
    expect(
      breaking(
        ({ title }) => [...title].length <= 50 && !title.includes("\n") && title.trim() === title,
      ),
    ).toEqual([]);
  });

  test("have texts of at most 450 characters, sessions 900", () => {
    expect(
      breaking(({ kind, text, readerText }) => {
        const most = LONG.includes(kind) ? 900 : 450;
        return text.length <= most && readerText.length <= most;
      }),
    ).toEqual([]);
  });

  test("have something to say, a sentence at least", () => {
    expect(breaking(({ text }) => /[.!?…]$/.test(text.trim()))).toEqual([]);
  });

  test("know no machinery, and nothing is ever overdue", () => {
    expect(breaking(({ title, text }) => !MACHINERY.test(`${title} ${text}`))).toEqual([]);
  });

  test("say minutes only as one says them", () => {
    expect(
      breaking(({ text }) =>
        [...text.matchAll(/(\d+) min\b/g)].every(([, minutes]) => MINUTES.includes(minutes ?? "")),
      ),
    ).toEqual([]);
  });

  test("have no line or sentence that is empty or doubled", () => {
    expect(breaking(({ text }) => !/\n\n|^\n|\n$| {2}|\.\.|,,|\. \./.test(text))).toEqual([]);
  });

  test("have days told with their month, and no bare numbers of digits", () => {
    expect(breaking(({ text }) => !/\d{5,}|\d\.\d{3,}/.test(text))).toEqual([]);
  });
});

describe("what a reader is told", () => {
  const reader = (event: Event) => event.readerText;

  test("names no person", () => {
    expect(
      breaking(({ title, readerText }) => !NAMES.test(`${title} ${readerText}`), reader),
    ).toEqual([]);
  });

  test("the household is told them, so they would have been found", () => {
    expect(EVENTS.filter(({ text }) => NAMES.test(text)).length).toBeGreaterThan(50);
  });

  test("tells no absence", () => {
    expect(
      breaking(({ readerText }) => !/\baway till\b|nobody|neighbour/i.test(readerText), reader),
    ).toEqual([]);
  });

  test("tells no hour", () => {
    expect(breaking(({ readerText }) => !/\b\d{1,2}:\d\d\b/.test(readerText), reader)).toEqual([]);
  });

  test("is nothing of sessions and open work", () => {
    expect(
      breaking(({ kind, readerText }) => !LONG.includes(kind) || readerText === "", reader),
    ).toEqual([]);
  });
});

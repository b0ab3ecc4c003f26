import { describe, expect, test } from "vitest";
import type { Event } from "../../src/views/events/event.ts";
import { drawnFor, samples } from "../depth.ts";
import { gardenOf, QUARRY } from "../gardens.ts";
import { once } from "../once.ts";
import { dawn, toldAt } from "./feeds.ts";
import { anyPlan, CANARIES } from "./plans.ts";

const MACHINERY =
  /\b(emergence|window|rung|threshold|degree.days?|milestone|anchor|overdue|undefined|null|NaN)\b|\[object/i;
const MINUTES = ["5", "10", "15", "20", "30", "45", "60"];
const NAMES = new RegExp([...CANARIES, "Imre", "Oda"].join("|"));
const OTHERS = samples(200, 40);
const events = once((): readonly Event[] => {
  const roll = drawnFor(11);
  const plans = [QUARRY, ...Array.from({ length: OTHERS }, () => anyPlan(roll))];
  return plans.flatMap((text) => toldAt(gardenOf(text), dawn("2027-06-03")).events);
});
const LONG: readonly string[] = ["session", "open", "away"];

/** What is told that breaks a rule, each once. */
const breaking = (rule: (event: Event) => boolean, told = (event: Event) => event.text) => [
  ...new Set(
    events()
      .filter((event) => !rule(event))
      .map((event) => `${event.title}: ${told(event)}`),
  ),
];

describe(`the words of the canonical garden and of ${OTHERS} others`, () => {
  test("are many", () => {
    expect(events().length).toBeGreaterThan(OTHERS * 25);
    expect(new Set(events().map((event) => event.kind)).size).toBe(8);
  });

  test("have titles of one line and under fifty characters", () => {
    expect(
      breaking(
        ({ title }) => [...title].length < 50 && !title.includes("\n") && title.trim() === title,
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

  test("have no line or sentence that is empty or doubled, but for one between the jobs of a visit", () => {
    expect(breaking(({ kind, text }) => LONG.includes(kind) || !text.includes("\n\n"))).toEqual([]);
    expect(breaking(({ text }) => !/\n\n\n|^\n|\n$| {2}|\.\.|,,|\. \./.test(text))).toEqual([]);
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
    expect(events().filter(({ text }) => NAMES.test(text)).length).toBeGreaterThan(OTHERS / 4);
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

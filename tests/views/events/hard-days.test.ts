import { expect, test } from "vitest";
import { hardDayEvents } from "../../../src/views/events/hard-days.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";

const DAY = isoDay("2027-07-02");
const METRIC = { ...planOf(QUARRY), measures: "metric" as const };

test("a hot day says what to do before it is hot, in the household's degrees", () => {
  const heat = {
    kind: "heat",
    day: DAY,
    highC: 34,
    suffering: ["lettuce"],
    houses: ["Glass"],
  } as const;
  const [us] = hardDayEvents([planOf(QUARRY)], [heat]);
  expect(us).toMatchObject({
    key: "2027/garden/heat/2027-07-02",
    kind: "warning",
    title: "93 °F today: water early and shade",
    when: { kind: "all day", day: DAY },
  });
  expect(us?.text).toContain("shade lettuce from noon");
  expect(us?.text).toContain("Open Glass wide by nine");
  const [glass] = hardDayEvents([METRIC], [{ ...heat, suffering: [] }]);
  expect(glass?.title).toBe("34 °C today: air under glass");
  expect(glass?.text).not.toContain("shade");
});

test("a gale says what to weigh down and what to keep in, its gusts as the household says them", () => {
  const gale = {
    kind: "gale",
    day: DAY,
    gustMps: 20,
    covered: ["beets"],
    hardening: ["tomatoes"],
  } as const;
  const [us] = hardDayEvents([planOf(QUARRY)], [gale]);
  expect(us?.title).toBe("Gusts to 45 mph: make covers fast");
  expect(us?.text).toContain("what lies over beets");
  expect(us?.text).toContain("Keep tomatoes in");
  const [metric] = hardDayEvents([METRIC], [{ ...gale, hardening: [] }]);
  expect(metric?.title).toBe("Gusts to 70 km/h: make covers fast");
  expect(metric?.text).not.toContain("Keep");
});

test("no title is longer than a lock screen shows, no text than a phone reads", () => {
  const many = Array.from({ length: 30 }, (_, i) => `crop ${i}`);
  const events = hardDayEvents(
    [METRIC],
    [
      { kind: "heat", day: DAY, highC: 34, suffering: many, houses: many.slice(0, 3) },
      { kind: "gale", day: DAY, gustMps: 30, covered: many, hardening: many },
    ],
  );
  for (const { title, text } of events) {
    expect(title.length).toBeLessThan(50);
    expect(text.length).toBeLessThan(450);
  }
});

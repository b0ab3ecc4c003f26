import { describe, expect, test } from "vitest";
import {
  type Day,
  dayFromIso,
  dayOf,
  isoOf,
  partsOf,
  plus,
  weekdayOf,
} from "../../src/base/days/day.ts";
import { dayAt, instantOf, startOf, zoneNames } from "../../src/base/days/instants.ts";
import { drawnFor, samples } from "../depth.ts";
import { oneOf } from "../garden/plan/random.ts";

const roll = drawnFor(365);
const DAYS = samples(10_000, 2_500);
const anyDay = (): Day => plus(0 as Day, -20_000 + Math.floor(roll() * 60_000));

describe(`${DAYS} days`, () => {
  test("are each told by year, month and date, and found again", () => {
    for (let run = 0; run < DAYS; run++) {
      const day = anyDay();
      const { year, month, date } = partsOf(day);
      expect(dayOf(year, month, date)).toBe(day);
      expect(dayFromIso(isoOf(day))).toBe(day);
      expect(weekdayOf(plus(day, 7))).toBe(weekdayOf(day));
    }
  });
});

describe(`${DAYS} hours in every zone there is`, () => {
  const zones = zoneNames();
  const clocks = new Map(
    zones.map((timeZone) => [
      timeZone,
      new Intl.DateTimeFormat("en-CA", {
        timeZone,
        dateStyle: "short",
        timeStyle: "short",
        hourCycle: "h23",
      }),
    ]),
  );
  /** The zone's clock by another route than ours: `2027-05-08, 10:30`. */
  const shown = (instant: number, zone: string) => clocks.get(zone)?.format(instant) ?? "";

  test("fall on their own day, and at their own hour but where the clock skips it", () => {
    let skipped = 0;
    for (let run = 0; run < DAYS; run++) {
      const zone = oneOf(zones, roll);
      const day = plus(15_000 as Day, Math.floor(roll() * 10_000));
      const minute = 360 + Math.floor(roll() * 960);
      const instant = instantOf(day, minute, zone);
      const hour = `${String(Math.floor(minute / 60)).padStart(2, "0")}:${String(minute % 60).padStart(2, "0")}`;
      if (shown(instant, zone) !== `${isoOf(day)}, ${hour}`) skipped += 1;
      else expect(dayAt(instant, zone)).toBe(day);
    }
    expect(skipped).toBeLessThan(5);
  });

  test("follow each other: a day starts before the next one does", () => {
    for (let run = 0; run < DAYS / 5; run++) {
      const zone = oneOf(zones, roll);
      const day = plus(15_000 as Day, Math.floor(roll() * 10_000));
      expect(startOf(plus(day, 1), zone)).toBeGreaterThan(startOf(day, zone));
    }
  });
});

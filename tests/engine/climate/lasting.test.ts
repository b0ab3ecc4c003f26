import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/days/day.ts";
import { climateOf } from "../../../src/engine/climate/climate.ts";
import { lastingShare } from "../../../src/engine/climate/lasting.ts";
import { isoDay } from "../../gardens.ts";
import { planBefore } from "../../hindcast/hindcast.ts";
import { knownBefore, observedIn, STATIONS, YEARS } from "../../hindcast/station.ts";

describe("how much of a difference from the usual soil lasts", () => {
  test("is half where the curve is the site's own", () => {
    expect(lastingShare(1.5, 0)).toBe(0.5);
    expect(lastingShare(0, 0)).toBe(0.5);
  });

  test("is the more, the less the curve is known, for its own error lasts whole", () => {
    expect(lastingShare(1.5, 1.5)).toBe(0.75);
    expect(lastingShare(0, 2)).toBe(1);
    expect(lastingShare(1.5, 4)).toBeGreaterThan(0.9);
  });

  test.each(STATIONS)(
    "is about what $name's years show over four weeks, each against the others",
    (station) => {
      let [both, own] = [0, 0];
      for (const year of YEARS) {
        const plan = planBefore(station, year, knownBefore(station, year));
        const [usual, real] = [climateOf(plan, []), climateOf(plan, [], observedIn(station, year))];
        const off = (day: number) =>
          real.soilC(plus(isoDay(`${year}-01-01`), day), null) -
          usual.soilC(plus(isoDay(`${year}-01-01`), day), null);
        for (let day = 15; day < 334; day++) {
          let next = 0;
          for (let on = 1; on <= 28; on++) next += off(day + on) / 28;
          both += off(day) * next;
          own += off(day) ** 2;
        }
      }
      expect(both / own).toBeGreaterThan(0.4);
      expect(both / own).toBeLessThan(0.6);
    },
  );
});

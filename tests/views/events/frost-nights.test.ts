import { describe, expect, test } from "vitest";
import { buildSchedule, horizonAt } from "../../../src/app/build.ts";
import { startOf } from "../../../src/base/index.ts";
import type { KnownWeather } from "../../../src/garden/model/weather.ts";
import type { Event } from "../../../src/views/events/event.ts";
import { gardenOf, isoDay, QUARRY } from "../../gardens.ts";

const PLACE = "  latitude: 46.6\n";
const WITH_FORECAST = QUARRY.replace(
  PLACE,
  `${PLACE}  longitude: -111.5\n  forecast: Open-Meteo\n  colder than the forecast by: 3 °F\n`,
);

type Said = KnownWeather["saidColder"];

/** The warnings of cold nights on a day, with these lows [°C] forecast from that day on. */
function nights(on: string, lows: readonly number[], saidColder: Said = []): readonly Event[] {
  const today = isoDay(on);
  const days = lows.map((lowC, i) => ({
    day: isoDay(new Date((today + i) * 86_400_000).toISOString().slice(0, 10)),
    ...{ lowC, highC: lowC + 12, rainMm: null, gustMps: null },
  }));
  const weather: KnownWeather = { source: "Open-Meteo", asOf: today, days, saidColder };
  const garden = { ...gardenOf(WITH_FORECAST), weather };
  const horizon = horizonAt(garden, startOf(today, "America/Denver"));
  return buildSchedule(garden, horizon, {}).events.filter(({ key }) => /frost-tonight/.test(key));
}

describe("cold nights ahead", () => {
  test("are none where nobody is asked for the weather", () => {
    const garden = gardenOf(WITH_FORECAST);
    const { events } = buildSchedule(garden, horizonAt(garden, Date.UTC(2027, 5, 20)), {});
    expect(events.filter(({ key }) => /frost-tonight/.test(key))).toEqual([]);
  });

  test("are warned of on the day before the night, at the hour to cover, once each", () => {
    const [tonight, ...others] = nights("2027-06-20", [8, 1, 9, 9]);
    expect(others).toEqual([]);
    expect(tonight).toMatchObject({
      key: "2027/garden/frost-tonight/2027-06-20",
      kind: "warning",
      set: "both",
      title: expect.stringMatching(/^34 °F tonight: cover \d beds$/),
      beds: expect.arrayContaining(["bags", "south-bed"]),
      people: [],
    });
    const { when } = tonight ?? {};
    expect(when?.kind === "timed" && new Date(when.from).toISOString()).toBe(
      "2027-06-21T01:30:00.000Z",
    );
  });

  test("are told with what to do bed by bed, and nothing of what is left alone", () => {
    const [tonight] = nights("2027-06-20", [8, 1, 9, 9]);
    expect(tonight?.text).toContain(
      "The night after 20 June: 34 °F by the forecast, 31 °F here. Bed by bed:",
    );
    expect(tonight?.text).toContain("South bed: Cover tomatoes");
    expect(tonight?.text).not.toContain("Leave");
    expect(tonight?.text).toContain("uncover by mid-morning");
    expect(tonight?.text.length).toBeLessThanOrEqual(900);
  });

  test("are warned of up to two days ahead, and no farther", () => {
    const [last, ...more] = nights("2027-06-20", [8, 8, 8, -2, -2, -2]);
    expect(last?.text).toContain("and it may be 2 °F colder");
    const days = [last, ...more].map((event) => event?.day);
    expect(days).toEqual([isoDay("2027-06-22")]);
  });

  test("count as colder the farther ahead they are", () => {
    const lows = Array.from({ length: 50 }, (_, i) => i / 4);
    const mild = lows.find((low) => nights("2027-06-20", [20, low, 20, 20]).length === 0);
    expect(mild).toBeGreaterThan(1);
    expect(nights("2027-06-20", [20, 20, 20, mild ?? 20])).toHaveLength(1);
  });

  test("that freeze when nothing stands that minds are no news", () => {
    expect(nights("2027-02-10", [-8, -15, -12, -9])).toEqual([]);
  });

  test("are taken back where the forecast has turned milder", () => {
    const said = [{ day: isoDay("2027-06-21"), lowC: -1 }];
    const [back, ...others] = nights("2027-06-20", [8, 9, 9, 9], said);
    expect(others).toEqual([]);
    expect(back).toMatchObject({
      key: "2027/garden/frost-tonight/2027-06-20",
      title: "No frost tonight after all",
    });
    expect(back?.text).toContain("48 °F now, 30 °F before");
  });

  test("are not taken back where they were never warned of", () => {
    expect(nights("2027-06-20", [8, 9, 9, 9], [{ day: isoDay("2027-06-21"), lowC: 7 }])).toEqual(
      [],
    );
  });
});

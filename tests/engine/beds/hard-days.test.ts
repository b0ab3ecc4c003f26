import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/index.ts";
import { hardDaysIn } from "../../../src/engine/beds/hard-days.ts";
import type { KnownWeather } from "../../../src/garden/model/weather.ts";
import { isoDay, QUARRY, tellOf } from "../../gardens.ts";

const GLASS = `${QUARRY}  Glass:\n    is: greenhouse, 3 x 2 m\n    crops:\n      - cucumber: 2 plants, from seed indoors\n`;

/** Highs [°C] and gusts [m/s] from a day on. */
function known(from: string, days: readonly (readonly [highC: number, gustMps: number | null])[]) {
  const asOf = isoDay(from);
  return {
    ...{ source: "Open-Meteo", asOf, saidColder: [] },
    days: days.map(([highC, gustMps], i) => ({
      day: plus(asOf, i),
      ...{ lowC: 10, highC, rainMm: null, gustMps },
    })),
  } satisfies KnownWeather;
}

const on = (from: string, ...days: readonly (readonly [number, number | null])[]) =>
  hardDaysIn(tellOf(GLASS, { on: from }).year, known(from, days));

describe("hot days ahead", () => {
  test("name what suffers in the open, and the greenhouses that want air", () => {
    const [hot, ...more] = on("2027-07-01", [20, null], [34, null]);
    expect(more).toEqual([]);
    expect(hot).toMatchObject({ kind: "heat", day: isoDay("2027-07-02"), houses: ["Glass"] });
    expect(hot?.kind === "heat" && hot.suffering).toContain("lettuce");
    expect(hot?.kind === "heat" && hot.suffering).not.toContain("cucumbers");
  });

  test("are those of 32 °C and more, today and the next two, and told once a spell", () => {
    const days = (...highs: readonly number[]) =>
      on("2027-07-01", ...highs.map((high) => [high, null] as const)).map(({ day }) => day);
    expect(days(31.9)).toEqual([]);
    expect(days(20, 20, 33, 40)).toEqual([isoDay("2027-07-03")]);
    expect(days(32, 20, 33, 40)).toEqual([isoDay("2027-07-01")]);
  });

  test("are no matter before anything stands", () => {
    expect(on("2027-02-01", [34, null])).toEqual([]);
  });
});

describe("gales ahead", () => {
  const covered = QUARRY.replace("lettuce: 2 rows", "lettuce: 2 rows, under a net");
  const gale = (text: string, from: string, gust: number | null) =>
    hardDaysIn(tellOf(text, { on: from }).year, known(from, [[15, gust]]));

  test("name what is under covers, and what stands out to harden off", () => {
    const { scheduled } = tellOf(covered, { on: "2027-05-01" });
    const out = scheduled.find(({ task }) => task.id === "2027/tomato/harden-off/out-3");
    const iso = new Date((out?.day ?? 0) * 86_400_000).toISOString().slice(0, 10);
    const [day] = gale(covered, iso, 20);
    expect(day).toMatchObject({ kind: "gale", gustMps: 20, hardening: ["tomatoes"] });
    expect(day?.kind === "gale" && day.covered).toContain("lettuce");
  });

  test("are none below Beaufort 8, none where nothing can be torn, none where nothing is known of wind", () => {
    expect(gale(covered, "2027-06-15", 17.1)).toEqual([]);
    expect(gale(covered, "2027-06-15", null)).toEqual([]);
    expect(gale(covered, "2027-02-01", 30)).toEqual([]);
  });
});

test("nothing is ahead where nothing is known", () => {
  expect(hardDaysIn(tellOf(QUARRY, { on: "2027-07-01" }).year, null)).toEqual([]);
});

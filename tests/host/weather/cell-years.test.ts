import { runInDurableObject } from "cloudflare:test";
import { env } from "cloudflare:workers";
import { describe, expect, test } from "vitest";
import { readWeather } from "../../../src/app/weather.ts";
import { readYears } from "../../../src/app/years.ts";
import { sqlStoreOf } from "../../../src/host/store/sql.ts";
import { yearsOfCell } from "../../../src/host/weather/cell-years.ts";
import { networkSource } from "../../../src/host/weather/network-source.ts";
import { archiveAnswer } from "../../garden/forecast/answers.ts";

const MINUTE = 60_000;
const DAY = 1440 * MINUTE;
const NOW = Date.UTC(2027, 4, 10, 12);
const PLACE = { latitude: 46.6, longitude: -111.5, clock: "America/Denver" };

/** Asks a cell of its own at those times after noon [ms], each time with the next answer; gives what it said and how often it asked. */
async function asked(name: string, at: readonly number[], answers: readonly (() => Response)[]) {
  let asked = 0;
  const fetch = async () => answers[asked++]?.() ?? new Response("", { status: 503 });
  const cell = env.WEATHER?.getByName(name);
  if (cell === undefined) throw new Error("no cells");
  const said = await runInDurableObject(cell, async (_, { storage }) => {
    const all = [];
    for (const after of at) {
      const now = NOW + after;
      const ports = { fetch, now, contact: null, readWeather, readYears };
      const source = networkSource("Open-Meteo", ports);
      all.push(await yearsOfCell({ sql: sqlStoreOf(storage), now, source }, PLACE));
    }
    return all;
  });
  return { said, asked };
}

const good = () => new Response(archiveAnswer(46.6, -111.5));
const bad = () => new Response("", { status: 500 });

describe("the years behind a cell", () => {
  test("are asked for once, for all gardens and months", async () => {
    const { said, asked: often } = await asked("years-once", [0, 1, 200 * DAY], [good]);
    expect(often).toBe(1);
    expect(said[2]).toEqual(said[0]);
    expect(said[0]?.file).toContain("longitude: -111.5");
  });

  test("are asked for anew once another year is whole, and stay where that fails", async () => {
    const { said, asked: often } = await asked("years-anew", [0, 300 * DAY], [good, bad]);
    expect(often).toBe(2);
    expect(said[1]).toEqual(said[0]);
  });

  test("are asked for again after pauses that grow", async () => {
    const at = [0, 0.5, 1, 2, 3, 4].map((minutes) => minutes * MINUTE);
    const { said, asked: often } = await asked("years-fail", at, [bad, bad, good]);
    expect(often).toBe(3);
    expect(said.map(({ fault }) => fault)).toEqual([...Array(4).fill("answered 500"), null, null]);
  });

  test("store nothing that can't be used", async () => {
    const elsewhere = () => new Response(archiveAnswer(10, 10));
    const { said } = await asked("years-far", [0], [elsewhere]);
    expect(said[0]).toEqual({ file: null, fault: "not of the documented form" });
  });
});

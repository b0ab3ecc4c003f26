import { runInDurableObject } from "cloudflare:test";
import { env } from "cloudflare:workers";
import { describe, expect, test } from "vitest";
import { mergeWeather, readWeather, type WeatherService } from "../../../src/app/weather.ts";
import { readYears } from "../../../src/app/years.ts";
import { sqlStoreOf } from "../../../src/host/store/sql.ts";
import { answerCell } from "../../../src/host/weather/cell.ts";
import type { Fetch } from "../../../src/host/weather/fetch-answer.ts";
import { type NetworkPorts, networkSource } from "../../../src/host/weather/network-source.ts";
import { openMeteoAnswer, QUESTION } from "../../garden/forecast/answers.ts";

const HOUR = 3_600_000;
const NOW = Date.UTC(2027, 4, 10, 12);
const GOOD = openMeteoAnswer("2027-05-10", [
  [2, 14],
  [-1, 12],
  [4, 17],
]);

/** Asks a cell of its own at those hours after noon, each time with the next answer; gives what it knew and what went out. */
async function asked(
  name: string,
  at: readonly number[],
  answers: readonly (() => Response)[],
  over: Pick<Partial<NetworkPorts>, "contact"> & { readonly service?: WeatherService } = {},
) {
  const requests: RequestInit[] = [];
  const fetch: Fetch = async (_, init) => {
    requests.push(init);
    const answer = answers[requests.length - 1];
    if (answer === undefined) throw new TypeError("not reached");
    return answer();
  };
  const cell = env.WEATHER?.getByName(name);
  if (cell === undefined) throw new Error("no cells");
  const known = await runInDurableObject(cell, async (_, { storage }) => {
    const all = [];
    for (const hours of at) {
      const { service = "Open-Meteo", contact = null } = over;
      const now = NOW + hours * HOUR;
      const source = networkSource(service, { fetch, now, contact, readWeather, readYears });
      const question = { ...QUESTION, source: service };
      all.push(await answerCell({ now, sql: sqlStoreOf(storage), source }, question));
    }
    return all;
  });
  return { known, requests };
}

const good = () => new Response(GOOD, { headers: { "Last-Modified": "then" } });
const bad = () => new Response("<html>", { status: 500 });

describe("a cell", () => {
  test("asks again at once where a clock that ran ahead has put it off for years", async () => {
    const { requests } = await asked("ahead", [87_600, 0], [good, good]);
    expect(requests).toHaveLength(2);
  });

  test("asks once for all who come within six hours", async () => {
    const { known, requests } = await asked("six", [0, 0, 5.9], [good]);
    expect(requests).toHaveLength(1);
    expect(known[2]).toEqual(known[0]);
    expect(known[0]).toMatchObject({ fetchedAt: NOW, nextAt: NOW + 6 * HOUR, fault: null });
    expect(known[0]?.weather?.days).toHaveLength(3);
  });

  test("asks four times a day at the most, whatever goes wrong", async () => {
    const quarters = Array.from({ length: 24 * 4 }, (_, i) => i / 4);
    expect((await asked("well", quarters, Array(20).fill(good))).requests).toHaveLength(4);
    const badly = await asked("badly", quarters, Array(20).fill(bad));
    expect(badly.requests.length).toBeLessThanOrEqual(4);
  });

  test("keeps what it knows while the service fails, with pauses that grow", async () => {
    const { known } = await asked("fails", [0, 6, 8, 12], [good, bad, bad]);
    expect(known.map(({ nextAt }) => (nextAt - NOW) / HOUR)).toEqual([6, 8, 12, 20]);
    expect(known[3]?.weather).toEqual(known[0]?.weather);
    expect(known[3]).toMatchObject({ fetchedAt: NOW, fault: "not reached" });
  });

  test("comes again when the service says, if that is later", async () => {
    const busy = () => new Response("", { status: 429, headers: { "Retry-After": "86400" } });
    const { known } = await asked("busy", [0], [busy]);
    expect(known[0]).toMatchObject({ nextAt: NOW + 24 * HOUR, fault: "answered 429" });
  });

  test("stores nothing of an answer that can't be true, and says what was wrong", async () => {
    const nonsense = () => new Response(GOOD.replace("[2,-1,4]", "[2,400,4]"));
    const { known } = await asked("nonsense", [0, 6], [good, nonsense]);
    expect(known[1]).toMatchObject({ weather: known[0]?.weather, fault: "nonsense" });
  });

  test("asks only for what is new, and holds what it has for another six hours where nothing is", async () => {
    const unchanged = () => new Response(null, { status: 304 });
    const { known, requests } = await asked("new", [0, 6], [good, unchanged]);
    expect(requests[1]?.headers).toMatchObject({ "If-Modified-Since": "then" });
    expect(known[1]).toMatchObject({ weather: known[0]?.weather, fetchedAt: NOW + 6 * HOUR });
  });

  test("does not ask who wants to know who asks, unless that is said", async () => {
    const silent = await asked("silent", [0], [good], { service: "MET Norway" });
    expect(silent.requests).toEqual([]);
    expect(silent.known[0]?.fault).toContain("CONTACT");
    const said = await asked("said", [0], [good], {
      ...{ service: "MET Norway", contact: "https://garden.example" },
    });
    expect(said.requests[0]?.headers).toMatchObject({
      "User-Agent": "Sowbell/0.1 https://garden.example",
    });
  });

  test("gives weather that a garden can add to what it knows", async () => {
    const { known } = await asked("merge", [0], [good]);
    const [answer] = known;
    expect(answer?.weather && mergeWeather(answer.weather, answer.weather).days).toEqual(
      answer?.weather?.days,
    );
  });
});

import { createServer, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { afterAll, beforeAll, expect, test } from "vitest";
import { readWeather } from "../../../src/app/weather.ts";
import { readYears } from "../../../src/app/years.ts";
import { networkSource } from "../../../src/host/weather/network-source.ts";
import {
  metNorwayAnswer,
  openMeteoAnswer,
  QUESTION,
  type Told,
} from "../../garden/forecast/answers.ts";

/*
 * A local server in the services' place, which answers as they document it and in every way that they must not; the real ones are
 * asked by `npm run weather:live`.
 */
const FOUR: readonly Told[] = [
  [2, 14],
  [1, 12],
  [4, 17],
  [6, 20],
];
const GOOD = openMeteoAnswer("2027-05-10", FOUR);
const MET_GOOD = metNorwayAnswer(
  Array.from({ length: 16 }, (_, i) => ({
    time: new Date(Date.UTC(2027, 4, 10, 6 + 6 * i)).toISOString(),
    air: 10,
  })),
);

type Answer = (response: ServerResponse) => void;
const text = (body: string) => (response: ServerResponse) => void response.end(body);
const status =
  (code: number): Answer =>
  (response) =>
    void response.writeHead(code, { "Retry-After": "7200" }).end("<html>");
const daily = (change: Readonly<Record<string, unknown>>) =>
  openMeteoAnswer("2027-05-10", FOUR, (all) => ({
    ...all,
    daily: { ...(all.daily as object), ...change },
  }));

let answer: Answer = text(GOOD);
let server: Server;
let origin = "";

beforeAll(async () => {
  server = createServer((_, response) => answer(response));
  await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
  origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
});

afterAll(() => {
  server.closeAllConnections();
  server.close();
});

/** What the season is by a service whose host is the local server; it is waited for a short while only. */
async function ask(service: "Open-Meteo" | "MET Norway", given: Answer) {
  answer = given;
  const source = networkSource(service, {
    ...{
      now: Date.UTC(2027, 4, 10, 12),
      contact: "https://garden.example",
      readWeather,
      readYears,
    },
    fetch: (url, init) => {
      const { pathname, search } = new URL(url);
      const signal = AbortSignal.any([
        init.signal ?? AbortSignal.timeout(300),
        AbortSignal.timeout(300),
      ]);
      return fetch(`${origin}${pathname}${search}`, { ...init, signal });
    },
  });
  return source.seasonSoFar(QUESTION, null);
}

test("a good answer of either service is days", async () => {
  expect(await ask("Open-Meteo", text(GOOD))).toMatchObject({ kind: "good" });
  expect(await ask("MET Norway", text(MET_GOOD))).toMatchObject({ kind: "good" });
});

test.each<readonly [name: string, given: Answer, fault: string]>([
  ["silent", (response) => void response.destroy(), "not reached"],
  ["slow", () => undefined, "no answer in time"],
  ["late", text(openMeteoAnswer("2027-05-01", FOUR)), "of another time"],
  ["in wrong units", text(GOOD.replace("°C", "°F")), "in other units"],
  ["with gaps", text(daily({ temperature_2m_min: [2, null, 4, 6] })), "days missing in between"],
  ["nonsense", text(daily({ temperature_2m_max: [14, 900, 17, 20] })), "nonsense"],
  [
    "of another place",
    text(openMeteoAnswer("2027-05-10", FOUR, (all) => ({ ...all, latitude: 12 }))),
    "of another place",
  ],
  ["HTML", text("<html>busy</html>"), "no JSON"],
  ["429", status(429), "answered 429"],
  ["500", status(500), "answered 500"],
  [
    "moved elsewhere",
    (response) => void response.writeHead(302, { Location: "/" }).end(),
    "answered 302",
  ],
  ["five megabytes", text("x".repeat(5 * 1024 * 1024)), "too long"],
  ["cut short", text(GOOD.slice(0, 200)), "no JSON"],
])("a service that is %s gives nothing, and says so", async (_, given, fault) => {
  expect(await ask("Open-Meteo", given)).toMatchObject({ kind: "failed", fault });
});

test("one that says when to come again is heard", async () => {
  const { retryAt } = await ask("Open-Meteo", status(429));
  expect(retryAt).toBe(Date.UTC(2027, 4, 10, 14));
});

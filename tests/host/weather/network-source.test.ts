import { describe, expect, test } from "vitest";
import { readWeather, type WeatherService } from "../../../src/app/weather.ts";
import { readYears } from "../../../src/app/years.ts";
import { networkSource } from "../../../src/host/weather/network-source.ts";
import {
  archiveAnswer,
  metNorwayAnswer,
  openMeteoAnswer,
  QUESTION,
} from "../../garden/forecast/answers.ts";

const NOW = Date.UTC(2027, 4, 10, 12);

/** A source whose service gives that answer, and what was asked of it. */
function sourceOf(service: WeatherService, answer: () => Response, contact: string | null = null) {
  const asked: { readonly url: string; readonly headers: Record<string, string> }[] = [];
  const fetch = async (url: string, init: RequestInit) => {
    asked.push({ url, headers: init.headers as Record<string, string> });
    return answer();
  };
  const source = networkSource(service, { fetch, now: NOW, contact, readWeather, readYears });
  return { source, asked };
}

describe("Open-Meteo as a source", () => {
  test("answers both questions, and keeps what the service says of its answer", async () => {
    const text = openMeteoAnswer("2027-05-10", [
      [1, 9],
      [2, 9],
      [3, 9],
    ]);
    const headers = { "Last-Modified": "then", Expires: "Mon, 10 May 2027 18:00:00 GMT" };
    const { source, asked } = sourceOf("Open-Meteo", () => new Response(text, { headers }));
    const season = await source.seasonSoFar(QUESTION, "before");
    expect(season).toMatchObject({
      ...{ kind: "good", lastModified: "then", expiresAt: NOW + 6 * 3_600_000 },
      value: { source: "Open-Meteo", asOf: QUESTION.today },
    });
    expect(asked[0]?.headers).toMatchObject({
      "If-Modified-Since": "before",
      "User-Agent": "Sowbell/0.1 (a garden's calendar)",
    });
    const years = sourceOf("Open-Meteo", () => new Response(archiveAnswer(46.6, -111.5)));
    const behind = await years.source.yearsBehind(QUESTION);
    expect(behind).toMatchObject({
      ...{ kind: "good" },
      value: { file: expect.stringContaining("fetched: 2027-05-10") },
    });
    expect(years.asked[0]?.url).toContain("archive-api.open-meteo.com");
  });

  test.each([
    ["HTML", () => new Response("<html>"), "no JSON"],
    ["429", () => new Response("", { status: 429 }), "answered 429"],
    ["500", () => new Response("", { status: 500 }), "answered 500"],
    ["5 MB", () => new Response("x".repeat(5 * 1024 * 1024)), "too long"],
  ])("gives nothing of %s, and says so", async (_, answer, fault) => {
    const { source } = sourceOf("Open-Meteo", answer);
    expect(await source.seasonSoFar(QUESTION, null)).toMatchObject({ kind: "failed", fault });
    expect(await source.yearsBehind(QUESTION)).toMatchObject({ kind: "failed" });
  });
});

describe("MET Norway as a source", () => {
  const text = metNorwayAnswer(
    [10, 11, 12].flatMap((date) =>
      [6, 12, 18, 23].map((hour) => ({
        time: `2027-05-${date}T${String(hour).padStart(2, "0")}:00:00Z`,
        air: hour / 2,
      })),
    ),
  );

  test("says who asks, and asks nothing where nobody said", async () => {
    const { source, asked } = sourceOf("MET Norway", () => new Response(text));
    expect(await source.seasonSoFar(QUESTION, null)).toMatchObject({
      ...{ kind: "failed", fault: "wants to know who asks: set CONTACT" },
    });
    expect(asked).toEqual([]);
    const known = sourceOf("MET Norway", () => new Response(text), "https://garden.example");
    await known.source.seasonSoFar(QUESTION, null);
    expect(known.asked[0]?.headers["User-Agent"]).toContain("https://garden.example");
  });

  test("has no years behind, and is not asked for any", async () => {
    const { source, asked } = sourceOf("MET Norway", () => new Response(text), "a contact");
    expect(await source.yearsBehind(QUESTION)).toMatchObject({ kind: "failed" });
    expect(asked).toEqual([]);
  });
});

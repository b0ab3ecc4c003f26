import { expect, test } from "vitest";
import { archiveAnswer, metNorwayAnswer, openMeteoAnswer } from "../garden/forecast/answers.ts";
import { askLive } from "./ask.ts";

const NOW = Date.UTC(2027, 4, 10, 12);

test("without a network every question says so, and none is counted as answered", async () => {
  const { lines, good } = await askLive(() => Promise.reject(new TypeError("no network")), {
    ...{ now: NOW, contact: "https://garden.example" },
  });
  expect(good).toBe(0);
  expect(lines.slice(0, 3).every((line) => line.endsWith(": not reached"))).toBe(true);
});

test("answers in the documented form are read by the code that the worker runs", async () => {
  const steps = Array.from({ length: 16 }, (_, i) => ({
    time: new Date(NOW + i * 6 * 3_600_000).toISOString(),
    air: 10 + i,
  }));
  const told = Array.from({ length: 4 }, () => [1, 9] as const);
  const { lines, good } = await askLive(
    async (url) =>
      new Response(
        url.includes("met.no")
          ? metNorwayAnswer(steps)
          : url.includes("archive")
            ? archiveAnswer(46.6, -111.5)
            : openMeteoAnswer("2027-05-10", told),
      ),
    { now: NOW, contact: "https://garden.example" },
  );
  expect(good).toBe(3);
  expect(lines[0]).toContain("0 days behind, 4 ahead");
  expect(lines[1]).toContain("2024 to 2026");
  expect(lines[3]).toContain("has no years behind");
});

import { env } from "cloudflare:workers";
import { expect, test } from "vitest";
import type { Prices } from "./renderer.ts";

/** What a whole render of 60 plantings may take, warm [ms]. */
const MOST_MS = 10;
/** The work [ms] that the platform's free plan gives one call. */
const FREE_CALL_MS = 10;

/** What placing the jobs of 600 plantings may take [ms]. */
const MOST_PLACING_MS = 50;

type Bindings = { readonly RENDERER: { fetch(url: string): Promise<Response> } };

let asked: Promise<Prices> | null = null;

/** The renderer's prices, asked for once: only its first call stands in a fresh isolate. */
function pricesOf(): Promise<Prices> {
  const { RENDERER } = env as unknown as Bindings;
  asked ??= RENDERER.fetch("http://renderer/").then((answer) => answer.json());
  return asked;
}

test("a whole render of sixty plantings is done within ten milliseconds once warm", async () => {
  const prices = await pricesOf();
  const rows: readonly (readonly [string, number])[] = [
    ["first call in a fresh isolate", prices.first],
    ["reading the plan's text, when it is saved", prices.reading],
    ["the usual year, once when a plan is saved", prices.usual],
    ["a person's feed, never told before", prices.fresh],
    [`then all ${prices.events} tasks, from what was told`, prices.tasks],
    ["a person's feed, nothing changed", prices.again],
    ["all tasks, a month later", prices.month],
  ];
  const table = rows.map(([what, ms]) => `${what.padEnd(40)}${ms.toFixed(1).padStart(6)}`);
  console.log(
    `\n${prices.plantings} plantings, whole render [ms]; a free call may work ${FREE_CALL_MS}\n${table.join("\n")}\n`,
  );
  expect(prices).toMatchObject({ plantings: 60, same: true });
  expect(prices.events).toBeGreaterThan(100);
  for (const [what, ms] of rows.slice(1)) expect(ms, what).toBeLessThanOrEqual(MOST_MS);
});

test("the jobs of six hundred plantings are fitted to people within fifty milliseconds", async () => {
  const { placing } = await pricesOf();
  console.log(`fitting the jobs of 600 plantings: ${placing.toFixed(1)} ms\n`);
  expect(placing).toBeLessThanOrEqual(MOST_PLACING_MS);
});

import { runDurableObjectAlarm, runInDurableObject } from "cloudflare:test";
import { env } from "cloudflare:workers";
import { afterEach, describe, expect, test, vi } from "vitest";
import { engine as core } from "../../../src/host/edge/core.ts";
import { weatherRecord } from "../../../src/host/store/weather.ts";
import { openMeteoAnswer, type Told } from "../../garden/forecast/answers.ts";
import { QUARRY } from "../../gardens.ts";
import { ports } from "../ports.ts";
import { ask, inStore, linkTo, publish, settled, shellWith } from "../web/garden.ts";

const HOUR = 3_600_000;
/** Nine in the morning in the garden. */
const NOW = Date.UTC(2027, 5, 20, 15);
const PLAN = QUARRY.replace(
  "  latitude: 46.6\n",
  "  latitude: 46.6\n  longitude: -111.5\n  forecast: Open-Meteo\n",
);

afterEach(() => {
  vi.restoreAllMocks();
  ports.fetch = () => Promise.reject(new TypeError("not reached"));
});

/** A garden whose forecast says these lows from that day on, once its alarm has rung; each place is a cell of its own. */
async function gardenAt(name: string, latitude: number, now = NOW) {
  const shell = shellWith({ engine: core, now: () => now });
  await publish(shell, name, PLAN.replace("46.6", String(latitude)));
  await settled(name);
  return shell;
}

const answering = (from: string, told: readonly Told[], latitude: number) => {
  const text = openMeteoAnswer(from, told, (answer) => ({ ...answer, latitude }));
  ports.fetch = vi.fn(async () => new Response(text));
  return ports.fetch;
};

async function ring(name: string): Promise<void> {
  await runDurableObjectAlarm(env.GARDENS.getByName(name));
  await settled(name);
}

async function warnings(shell: Parameters<typeof ask>[0], name: string): Promise<string> {
  const response = await ask(shell, `${await linkTo(name, "owner")}warnings.ics`);
  return response.text();
}

const MILD: readonly Told[] = [
  [9, 20],
  [9, 20],
  [9, 20],
  [9, 20],
];
const COLD: readonly Told[] = [
  [9, 20],
  [0, 14],
  [9, 20],
  [9, 20],
];

describe("a garden whose plan asks for a forecast", () => {
  test("asks when its alarm rings, soon after it was saved, and warns of a frost night", async () => {
    const asked = answering("2027-06-20", COLD, 46.6);
    const shell = await gardenAt("frost", 46.6);
    expect(asked).not.toHaveBeenCalled();
    expect(await warnings(shell, "frost")).not.toContain("tonight");
    await ring("frost");
    expect(asked).toHaveBeenCalledTimes(1);
    const feed = await warnings(shell, "frost");
    expect(feed).toContain("SUMMARY:32 °F tonight: cover");
    expect(feed).toContain("DTSTART;TZID=America/Denver:20270620T");
  });

  test("never has a feed wait for it: what is stored is answered while nobody answers", async () => {
    ports.fetch = () => new Promise(() => undefined);
    const shell = await gardenAt("waits", 41);
    expect(await warnings(shell, "waits")).toContain("BEGIN:VEVENT");
  });

  test("takes the warning back when the forecast turns", async () => {
    answering("2027-06-20", COLD, 42);
    const shell = await gardenAt("turns-mild", 42);
    await ring("turns-mild");
    answering("2027-06-20", MILD, 42);
    const later = { ...shell, now: () => NOW + 7 * HOUR };
    ports.now = later.now;
    await ring("turns-mild");
    const feed = await warnings(later, "turns-mild");
    expect(feed).toContain("SUMMARY:No frost tonight after all");
    expect(feed).not.toContain("tonight: cover");
  });

  test("rings again when an answer is worth asking for", async () => {
    answering("2027-06-20", MILD, 43);
    await gardenAt("again", 43);
    await ring("again");
    const alarm = await runInDurableObject(env.GARDENS.getByName("again"), (_, { storage }) =>
      storage.getAlarm(),
    );
    expect(alarm).toBe(NOW + 6 * HOUR);
    const record = await inStore("again", weatherRecord);
    expect(record).toMatchObject({ fetchedAt: NOW, nextAt: NOW + 6 * HOUR, fault: null });
  });

  test("builds nothing where the weather is what it was", async () => {
    answering("2027-06-20", MILD, 44);
    await gardenAt("same", 44);
    await ring("same");
    const built = () => inStore("same", (sql) => sql.rows("SELECT number FROM build"));
    const before = await built();
    ports.now = () => NOW + 6 * HOUR;
    await ring("same");
    expect((await inStore("same", weatherRecord))?.fetchedAt).toBe(NOW + 6 * HOUR);
    expect(await built()).toEqual(before);
  });

  test("keeps its feeds where no cell can be asked, and tries again later", async () => {
    vi.spyOn(console, "error").mockImplementation(() => undefined);
    const shell = await gardenAt("no-cell", 45);
    const { askCell } = ports;
    ports.askCell = () => () => Promise.reject(new Error("overloaded"));
    await ring("no-cell");
    ports.askCell = askCell;
    expect(await inStore("no-cell", weatherRecord)).toMatchObject({
      fault: "not reached",
      nextAt: NOW + 2 * HOUR,
    });
    expect(await warnings(shell, "no-cell")).toContain("BEGIN:VEVENT");
  });
});

describe("the page of frost tonight", () => {
  const page = async (shell: Parameters<typeof ask>[0], name: string, query = "") =>
    (await ask(shell, `${await linkTo(name, "owner")}frost${query}`)).text();

  test("says what to do at the low that is forecast, what the nights after bring, and whose figures they are", async () => {
    answering("2027-06-20", COLD, 51);
    const shell = await gardenAt("page", 51);
    await ring("page");
    const html = await page(shell, "page");
    for (const part of [
      "32 °F by the forecast",
      "Tonight: 32 °F. Bags: ",
      "Open-Meteo.com, CC BY 4.0",
    ])
      expect(html).toContain(part);
    expect(html).not.toMatch(/days? old/);
    expect(await page(shell, "page", "?low=50")).toContain("50 °F by the forecast");
  });

  test("says how old the forecast is once the service has been silent for a day", async () => {
    answering("2027-06-20", COLD, 52);
    const shell = await gardenAt("old", 52);
    await ring("old");
    ports.fetch = () => Promise.reject(new TypeError("not reached"));
    const later = { ...shell, now: () => NOW + 50 * HOUR };
    ports.now = later.now;
    await ring("old");
    expect(await page(later, "old")).toContain("This forecast is 2 days old");
  });

  test("says that the forecast is still to come before it was ever asked", async () => {
    const shell = await gardenAt("yet", 53);
    expect(await page(shell, "yet")).toContain("has not been asked for yet");
  });
});

test("a garden whose plan asks for none never asks", async () => {
  const asked = answering("2027-06-20", COLD, 46.6);
  const shell = shellWith({ engine: core, now: () => NOW });
  await publish(shell, "none", QUARRY);
  await settled("none");
  await ring("none");
  expect(asked).not.toHaveBeenCalled();
  expect(await inStore("none", weatherRecord)).toBeNull();
});

import { afterEach, describe, expect, test, vi } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";
import { savedPlan } from "../../../src/host/store/plans.ts";
import { sayYears } from "../../../src/host/web/place-years.ts";
import { archiveAnswer } from "../../garden/forecast/answers.ts";
import { ports } from "../ports.ts";
import { ask, inStore, linkTo, publish, settled, shellWith } from "./garden.ts";

const NOW = Date.UTC(2027, 0, 20, 12);
const shell = shellWith({ engine, now: () => NOW });
const planAt = (latitude: number, more = "") => `garden: Lane
year: 2027
measures: metric
place:
  clock: America/Denver
  latitude: ${latitude}
  longitude: -111.5
  weather: from Open-Meteo
${more}crops:
  - beet
`;
const FROSTS = "  last frost: about 6 May\n  first frost: about 2 Oct\n";

afterEach(() => {
  vi.restoreAllMocks();
  ports.fetch = () => Promise.reject(new TypeError("not reached"));
});

const answering = (latitude: number) => {
  ports.fetch = vi.fn(async () => new Response(archiveAnswer(latitude, -111.5)));
  return ports.fetch;
};
const besideOf = (name: string) => inStore(name, (sql) => savedPlan(sql, 2027)?.beside);

describe("a garden with a place and no frost dates", () => {
  test("asks once when it is saved, keeps what it got, and has a calendar by it", async () => {
    const asked = answering(36.1);
    await publish(shell, "years-place", planAt(36.1));
    await settled("years-place");
    expect(asked).toHaveBeenCalledTimes(1);
    const beside = await besideOf("years-place");
    expect(beside?.["open-meteo.yaml"]).toContain("fetched: 2027-01-20");
    const feed = await ask(shell, `${await linkTo("years-place", "owner")}tasks.ics`);
    expect(await feed.text()).toContain("Sow beets");
  });

  test("shares the years of its cell with every garden there", async () => {
    const asked = answering(36.3);
    await publish(shell, "years-one", planAt(36.3));
    await publish(shell, "years-two", planAt(36.34));
    expect(asked).toHaveBeenCalledTimes(1);
    expect(await besideOf("years-two")).toEqual(await besideOf("years-one"));
  });

  test("is not saved where the service does not answer, and is told why and what to do", async () => {
    const response = await publish(shell, "years-silent", planAt(36.5));
    expect(response.status).toBe(422);
    expect(await response.text()).toMatch(/not reached.*last frost: and first frost:/);
  });

  test("is saved with its own frost dates all the same", async () => {
    const response = await publish(shell, "years-own", planAt(36.7, FROSTS));
    expect(await response.text()).toContain("not reached");
    expect(await besideOf("years-own")).toEqual({});
  });

  test("asks again once its place is another, and keeps the years in between", async () => {
    answering(37.1);
    await publish(shell, "years-moved", planAt(37.1));
    const asked = answering(37.3);
    await publish(shell, "years-moved", planAt(37.1, FROSTS), 1);
    expect(await besideOf("years-moved")).toMatchObject({
      "open-meteo.yaml": expect.stringContaining("latitude: 37.1\n"),
    });
    await publish(shell, "years-moved", planAt(37.3), 2);
    expect(asked).toHaveBeenCalledTimes(1);
    expect((await besideOf("years-moved"))?.["open-meteo.yaml"]).toContain("latitude: 37.3\n");
  });

  test("comes from an invitation as well, which waits for the years", async () => {
    const link = await linkTo("years-first", "invitation");
    const form = (text: string) => ({
      method: "POST",
      body: new URLSearchParams([
        ["step", "save-text"],
        ["base", "0"],
        ["text", text],
      ]).toString(),
      headers: { "content-type": "application/x-www-form-urlencoded" },
    });
    const silent = await ask(shell, link, form(planAt(37.5)));
    expect(silent.status).toBe(422);
    const page = await silent.text();
    expect(page).toContain(
      "Open-Meteo could not be asked for the years behind this place: not reached",
    );
    expect(page).toContain("weather: from Open-Meteo");
    answering(37.7);
    expect((await ask(shell, link, form(planAt(37.7)))).status).toBe(200);
    expect((await besideOf("years-first"))?.["open-meteo.yaml"]).toContain("latitude: 37.7\n");
  });

  test("asks for no more than eight places a day", async () => {
    const asked = vi.fn(async () => new Response("", { status: 500 }));
    ports.fetch = asked;
    for (let i = 0; i < 12; i++) await publish(shell, "years-many", planAt(20 + i / 2));
    expect(asked).toHaveBeenCalledTimes(8);
  });
});

test("while a text is written, years that are not there are no mistake", () => {
  const at = { file: "plan", line: 8, column: 3 };
  const missing = { code: "years-missing", weight: "problem", at, is: "", shouldBe: "" } as const;
  expect(sayYears([missing], null)[0]).toMatchObject({ weight: "doubt", at });
  expect(sayYears([missing], "answered 500")[0]).toMatchObject({
    ...{ weight: "problem", is: expect.stringContaining("answered 500") },
  });
});

import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/index.ts";
import { openMeteoAnswer, type Told } from "../../garden/forecast/answers.ts";
import { isoDay } from "../../gardens.ts";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

const WITH = PLAN.replace(
  "  latitude: 51\n",
  "  latitude: 51\n  longitude: 13\n  forecast: Open-Meteo\n",
);
const planIn = (text: string, files: Readonly<Record<string, string>> = {}) =>
  folderOf({ "2027.yaml": text, ...files });

const answering = (from: string, told: readonly Told[]) => async () =>
  new Response(openMeteoAnswer(from, told, (all) => ({ ...all, latitude: 51, longitude: 13 })));

describe("weather", () => {
  test("gives the season so far and the nights ahead as a table that other commands read", async () => {
    const told: readonly Told[] = [
      [1, 9, 2],
      [-2, 8],
      [0.5, 7],
    ];
    const { exit, out, err } = await sowbell(
      ["weather", planIn(WITH)],
      answering("2027-03-01", told),
    );
    expect(exit).toBe(0);
    expect(err).toContain("Open-Meteo.com, CC BY 4.0");
    expect(out).toBe(
      "date,low (°C),high (°C),rain (mm)\n2027-03-01,1,9,2\n2027-03-02,-2,8,\n2027-03-03,0.5,7,\n",
    );
  });

  test("says who was not asked, and why", async () => {
    const none = await sowbell(["weather", planIn(PLAN)]);
    expect([none.exit, none.err]).toEqual([1, expect.stringContaining("asks nobody")]);
    const silent = await sowbell(["weather", planIn(WITH)]);
    expect([silent.exit, silent.err]).toEqual([1, expect.stringContaining("not reached")]);
    const wrong = await sowbell(["weather", planIn(WITH)], answering("2020-03-01", [[1, 2]]));
    expect([wrong.exit, wrong.err]).toEqual([1, expect.stringContaining("of another time")]);
    const met = await sowbell(["weather", planIn(WITH.replace("Open-Meteo", "MET Norway"))]);
    expect([met.exit, met.err]).toEqual([2, expect.stringContaining("--contact")]);
  });
});

describe("--weather FILE", () => {
  const days = (warmerC: number) =>
    Array.from({ length: 100 }, (_, i) => {
      const day = plus(isoDay("2027-03-01"), i);
      const iso = new Date(day * 86_400_000).toISOString().slice(0, 10);
      return `${iso},${4 + i / 12 + warmerC},${13 + i / 12 + warmerC}`;
    });
  const file = (warmerC: number) => ["date,low,high", ...days(warmerC)].join("\n");

  test("moves the dates that wait for warmth by a file of days, warm or cold", async () => {
    const folder = planIn(WITH, { "warm.csv": file(4), "cold.csv": file(-4) });
    const due = async (name: string) => {
      const args = ["tasks", folder, "--json", "--on", "2027-05-30"];
      const { out, exit } = await sowbell([...args, "--weather", join(folder, name)]);
      expect(exit).toBe(0);
      const all = JSON.parse(out) as readonly { readonly id: string; readonly due: string }[];
      return all.find(({ id }) => id === "2027/beet/harvest/1")?.due ?? "";
    };
    expect((await due("warm.csv")) < (await due("cold.csv"))).toBe(true);
  });

  test("that is not there or no table of days is a mistake of use, with its place", async () => {
    const folder = planIn(WITH, { "bad.csv": "date,low,high\n2027-03-01,x,9\n" });
    const missing = await sowbell(["tasks", folder, "--weather", join(folder, "no.csv")]);
    expect([missing.exit, missing.err]).toEqual([2, expect.stringContaining("no such file")]);
    const bad = await sowbell(["tasks", folder, "--weather", join(folder, "bad.csv")]);
    expect([bad.exit, bad.err]).toEqual([2, expect.stringContaining("bad.csv:2:12")]);
  });
});

import { describe, expect, test } from "vitest";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

const garden = (text = PLAN) => folderOf({ "2027.yaml": text });
const frost = (folder: string, low: string, on = "2027-09-20") =>
  sowbell(["frost", folder, "--low", low, "--on", on]);

describe("frost", () => {
  test("tells the night, the bed, and when to uncover", async () => {
    const { exit, out, err } = await frost(garden(), "0");
    expect([exit, err]).toEqual([0, ""]);
    expect(out).toMatch(
      /^The night to Tuesday 21 Sep: 0 °C by the forecast, colder still at the leaves\./,
    );
    expect(out).toContain("\nLong bed\n  Cover tomatoes with heavy fabric.");
    expect(out).toContain("Tomorrow uncover by mid-morning");
  });

  test("takes a bare low in the household's measures, and one with its unit as it is said", async () => {
    const folder = garden();
    const { out } = await frost(folder, "-2");
    for (const said of ["-2 °C", "−2", "-2C", "28.4 °F"])
      expect((await frost(folder, said)).out).toBe(out);
    expect((await frost(garden(PLAN.replace("metric", "inches and °F")), "28.4")).out).toContain(
      "28 °F",
    );
  });

  test("gives the report as JSON, its day ISO", async () => {
    const { out } = await sowbell([
      "frost",
      garden(),
      "--low",
      "0",
      "--on",
      "2027-09-20",
      "--json",
    ]);
    expect(JSON.parse(out)).toMatchObject({ day: "2027-09-20", forecastC: 0, lowC: 0 });
  });
});

test("a low that is missing or no temperature is wrong usage, with what would be right", async () => {
  for (const args of [[], ["--low", "cold"], ["--low", "29 in"]]) {
    const { exit, out, err } = await sowbell(["frost", garden(), ...args]);
    expect([exit, out]).toEqual([2, ""]);
    expect(err).toContain("like 29, 29 °F or -2 °C");
  }
});

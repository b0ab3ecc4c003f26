import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { archiveAnswer } from "../../garden/forecast/answers.ts";
import { plainFile } from "../../garden/station/files.ts";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

const [head = "", ...rows] = plainFile().trim().split("\n");
const TWO = [`place,${head}`, ...rows.flatMap((row) => [`Mill,${row}`, `Quay,${row}`])].join("\n");
const site = (text: string, ...args: readonly string[]) =>
  sowbell(["site", join(folderOf({ "station.csv": text }), "station.csv"), ...args]);

describe("site", () => {
  test("writes a weather file on standard output and what it took for granted on standard error", async () => {
    const { exit, out, err } = await site(plainFile());
    expect(exit).toBe(0);
    expect(out).toMatch(/^source: station\.csv\nyears: 2020 to 2021\nin: °C\nlow: \[/m);
    expect(err).toMatch(/^Read low as the low, .*\n1 Jan 2020 to 31 Dec 2021: none missing\.\n/);
  });

  test("writes what a plan beside it can name instead of frost dates", async () => {
    const { out } = await site(plainFile());
    const plan = PLAN.replace(
      / {2}last frost.*\n {2}first frost.*\n {2}weather.*\n/,
      "  weather: weather.yaml\n",
    );
    const checked = await sowbell(["check", folderOf({ "2027.yaml": plan, "weather.yaml": out })]);
    expect(checked.exit).toBe(0);
    expect(checked.out).toMatch(/last frost: early .*weather\.yaml, 2020 to 2021; 2 years are few/);
  });

  test("hands its latitude to a plan that gives none, which then has day length", async () => {
    const { out } = await site(plainFile(), "--latitude", "47.45");
    expect(out).toContain("\nlatitude: 47.45\n");
    const plan = PLAN.replace(
      / {2}latitude.*\n {2}last frost.*\n {2}first frost.*\n {2}weather.*\n/,
      "  weather: weather.yaml\n",
    );
    const checked = await sowbell(["check", folderOf({ "2027.yaml": plan, "weather.yaml": out })]);
    expect(checked.exit).toBe(0);
    expect(checked.out).toContain("  latitude: 47.45 (weather.yaml)\n");
    expect(checked.out).not.toContain("day length is left out");
  });

  test("takes columns, rows, the unit and a latitude, south with its dash", async () => {
    const named = TWO.replace("low,high", "cold,warm");
    const { exit, out, err } = await site(
      named,
      ...[
        "--low",
        "cold",
        "--high",
        "warm",
        "--where",
        "place=Quay",
        "--in",
        "C",
        "--latitude",
        "-33",
      ],
    );
    expect(exit).toBe(0);
    expect(out).toContain("station: Quay\n");
    expect(err).toMatch(/cold as the low, warm as the high.*as you said/);
    expect(err).toMatch(/south of the equator \(as you said\)/);
  });

  test("takes more than one row rule", async () => {
    const both = await site(TWO, "--where", "place=Quay", "--where", "rain=1");
    expect(both.exit).toBe(0);
    expect((await site(TWO, "--where", "place=Quay", "--where", "rain=2")).err).toMatch(
      /No row has rain 2/,
    );
  });

  test("tells what is wrong in a file with its place, exit 1, nothing on standard output", async () => {
    for (const [text, wrong] of [
      [plainFile().replace("2020-01-02,", "2 Jan,"), /station\.csv:3:1: 2 Jan is no day\. /],
      [
        TWO,
        /1:1: Days of 2 stations stand in it: Mill, Quay\. Choose one with --where "place=Mill"\.\n$/,
      ],
      [plainFile().replaceAll(/^202.-02-.*\n/gm, ""), /No year has four days in five of February/],
      [plainFile().replaceAll(/^.*-[012]5,.*\n|^.*-[012][1379],.*\n/gm, ""), /five of any month\./],
      ["PK\u0003\u0004\u0000\u001b[31m", /station\.csv:1:1: This is no text\. /],
    ] as const) {
      const { exit, out, err } = await site(text);
      expect([exit, out]).toEqual([1, ""]);
      expect(err).toMatch(wrong);
    }
    const missing = await sowbell(["site", join(folderOf({}), "none.csv")]);
    expect([missing.exit, missing.out]).toEqual([1, ""]);
    expect(missing.err).toMatch(/none\.csv:1:1: There is no such file\./);
    const folder = await sowbell(["site", folderOf({})]);
    expect(folder.exit).toBe(1);
    expect(folder.err).toMatch(/:1:1: It is a folder, not a station's file\. /);
  });

  test("says what can't be and that the unit looks wrong, exit 1 where frost lies at midsummer", async () => {
    const inF = await site(plainFile().replaceAll(/,1$/gm, ",4"), "--in", "°F");
    expect([inF.exit, inF.out]).toEqual([1, ""]);
    expect(inF.err).toMatch(/January has 124 in of rain/);
    expect(inF.err).toMatch(/station\.csv:1:1: Every year's last and first frost lie at midsummer/);
    const wet = await site(plainFile().replaceAll(/,1$/gm, ",40"));
    expect(wet.exit).toBe(0);
    expect(wet.err).toMatch(/January has 1240 mm of rain.*\nThe unit looks wrong: .* in °C;/);
  });

  test("says where January and July contradict the latitude, exit 0", async () => {
    const { exit, err } = await site(plainFile(), "--latitude", "-33");
    expect(exit).toBe(0);
    expect(err).toMatch(/Latitude -33 lies south of the equator, but July is much the warmer/);
    expect((await site(plainFile(), "--latitude", "33")).err).not.toMatch(/check which/);
  });

  test("is told wrong usage, exit 2", async () => {
    const cases = [
      [["site"], /which station's file\?/],
      [["site", "a.csv", "b.csv"], /what is b\.csv\?/],
      [["site", "a.csv", "--in", "kelvin"], /--in kelvin: °F, °C or tenths/],
      [["site", "a.csv", "--latitude", "south"], /--latitude south: degrees/],
      [["site", "a.csv", "--latitude", "91"], /--latitude 91/],
      [["site", "a.csv", "--where", "Quay"], /--where Quay: a column and its value/],
      [["site", "a.csv", "--on", "2027-05-08"], /site takes no --on/],
      [["check", "--low", "x"], /check takes no --low/],
    ] as const;
    for (const [args, wrong] of cases) {
      const { exit, out, err } = await sowbell(args);
      expect([exit, out], args.join(" ")).toEqual([2, ""]);
      expect(err).toMatch(wrong);
    }
  });
});

describe("site --at", () => {
  const archive = (latitude: number) => archiveAnswer(latitude, -112);

  test("asks the archive for thirty whole years and writes the same weather file", async () => {
    const asked: string[] = [];
    const { exit, out, err } = await sowbell(["site", "--at", "46.59,-112.04"], async (url) => {
      asked.push(url);
      return new Response(archive(46.6));
    });
    expect(exit).toBe(0);
    expect(asked).toHaveLength(1);
    expect(asked[0]).toContain("start_date=1997-01-01&end_date=2026-12-31");
    expect(asked[0]).toContain("latitude=46.6&longitude=-112.0");
    expect(err).toContain("CC BY 4.0");
    expect(out).toMatch(/^source: Open-Meteo\n/m);
    expect(out).toContain("\nlast frost: [13 Mar");
    const plan = PLAN.replace(
      / {2}last frost.*\n {2}first frost.*\n {2}weather.*\n/,
      "  weather: weather.yaml\n",
    );
    const checked = await sowbell(["check", folderOf({ "2027.yaml": plan, "weather.yaml": out })]);
    expect(checked.exit).toBe(0);
  });

  test.each([
    ["46.6", "latitude and longitude"],
    ["46.6,-200", "latitude and longitude"],
    ["46.6,-112,3", "latitude and longitude"],
  ])("of no place, %s, is a mistake of use", async (at, said) => {
    const { exit, err } = await sowbell(["site", "--at", at]);
    expect([exit, err]).toEqual([2, expect.stringContaining(said)]);
  });

  test("says what was wrong with the answer, and writes nothing", async () => {
    const far = async () => new Response(archive(12));
    const { exit, out, err } = await sowbell(["site", "--at", "46.6,-112"], far);
    expect([exit, out]).toEqual([1, ""]);
    expect(err).toContain("could not be read");
    const silent = await sowbell(["site", "--at", "46.6,-112"]);
    expect([silent.exit, silent.err]).toEqual([1, expect.stringContaining("not reached")]);
  });
});

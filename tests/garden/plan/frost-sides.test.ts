import { describe, expect, it } from "vitest";
import { isoOf, plus, sayDay } from "../../../src/base/days/day.ts";
import type { FrostDates } from "../../../src/garden/model/plan.ts";
import { NIGHT_KEYS } from "../../../src/garden/plan/nights.ts";
import { drawnFor, samples } from "../../depth.ts";
import { on, read, told } from "./canonical.ts";
import { oneOf } from "./random.ts";

const twelve = (value: number) => `[${Array.from({ length: 12 }, () => value).join(", ")}]`;
const MEANS =
  "low: [-9, -8, -5, -2, 3, 7, 9, 8, 4, 0, -5, -8]\nhigh: [-1, 2, 7, 13, 18, 23, 28, 27, 22, 14, 5, 0]\nin: °C\n";
const DATES = `${MEANS}years: 1991 to 2020
last night at 36 °F: [1 May, 17 May, 2 Jun]
last frost: [19 Apr, 5 May, 21 May]
last night at 28 °F: [7 Apr, 23 Apr, 9 May]
first night at 36 °F: [10 Sep, 20 Sep, 30 Sep]
first frost: [18 Sep, 28 Sep, 8 Oct]
first night at 28 °F: [30 Sep, 10 Oct, 20 Oct]
`;

const place = (lines: readonly string[]) =>
  `garden: Small\nyear: 2027\nplace:\n  clock: America/Denver\n${lines.map((line) => `  ${line}\n`).join("")}`;
const withFile = (...lines: readonly string[]) => place([...lines, "weather: w.yaml"]);
const siteOf = (text: string, weather = DATES) => {
  const { plan, problems } = read(text, { "w.yaml": weather });
  if (plan === null) throw new Error(JSON.stringify(problems));
  return plan;
};
const iso = (dates: FrostDates | null) =>
  dates && [dates.early, dates.usual, dates.late].map((day) => isoOf(day)).join(" ");

describe("a plan that leaves its frost dates out", () => {
  it("has those of its weather file, and lists them with the file and its years", () => {
    const { site, filled } = siteOf(withFile());
    expect(iso(site.lastFrost)).toBe("2027-04-19 2027-05-05 2027-05-21");
    expect(iso(site.firstFrost)).toBe("2027-09-18 2027-09-28 2027-10-08");
    expect(iso(site.killingFrost)).toBe("2027-09-30 2027-10-10 2027-10-20");
    expect(filled.find(({ what }) => what === "last frost")).toEqual({
      what: "last frost",
      value: "early 19 Apr, usual 5 May, late 21 May",
      why: "w.yaml, 1991 to 2020",
    });
  });

  it("has them moved for a garden that is colder than the forecast", () => {
    const { site, filled } = siteOf(withFile("colder than the forecast by: 3 °F"));
    expect(iso(site.lastFrost)).toBe("2027-04-28 2027-05-14 2027-05-30");
    expect(iso(site.killingFrost)).toBe("2027-09-21 2027-10-01 2027-10-11");
    expect(filled.find(({ what }) => what === "first frost")?.why).toContain("that much colder");
  });

  it("may have one side of its own, which is never moved", () => {
    const { site } = siteOf(
      withFile("last frost: 20 Apr, 6 May, 21 May", "colder than the forecast by: 3 °F"),
    );
    expect(iso(site.lastFrost)).toBe("2027-04-20 2027-05-06 2027-05-21");
    expect(iso(site.firstFrost)).toBe("2027-09-12 2027-09-22 2027-10-02");
  });

  it("may give its weather and the dates in it in the plan itself", () => {
    const inside = DATES.trim().replaceAll("\n", "\n    ");
    const { site } = siteOf(place([`weather:\n    ${inside}`]));
    expect(iso(site.lastFrost)).toBe("2027-04-19 2027-05-05 2027-05-21");
  });

  it("needs them where its weather has none, or it has no weather", () => {
    expect(told(withFile(), { "w.yaml": MEANS })).toEqual(["missing@5:12", "missing@5:12"]);
    expect(told(place([]))).toEqual(["missing@3:1", "missing@3:1"]);
    expect(read(withFile(), { "w.yaml": MEANS }).problems[0]).toMatchObject({
      is: "last frost is missing, and w.yaml has none",
      shouldBe: "Write last frost: about 6 May, or none",
    });
  });

  it("has a mistake in its weather reported and nothing besides", () => {
    expect(told(withFile(), { "w.yaml": DATES.replace("5 May", "35 May") })).toEqual([
      "no-such-day@6:22",
    ]);
    expect(told(withFile(), { "w.yaml": DATES.replace("low:", "lwo:") })).toHaveLength(2);
    expect(told(withFile(), {})).toEqual(["weather-missing@5:12"]);
  });
});

describe("a weather file of the other half of the world", () => {
  it("is reported where the plan names it", () => {
    expect(told(withFile("latitude: -38"), { "w.yaml": DATES })).toEqual(["frosts-crossed@6:12"]);
    expect(told(withFile("latitude: 46"), { "w.yaml": DATES })).toEqual([]);
  });
});

describe("a station that sees frost in some years", () => {
  const warm = `low: ${twelve(9)}\nhigh: ${twelve(20)}\nin: °C\n`;

  it("and in none makes a place without frost", () => {
    const { site, filled } = siteOf(withFile(), `${warm}last frost: none\nfirst frost: none\n`);
    expect([site.lastFrost, site.firstFrost, site.killingFrost]).toEqual([null, null, null]);
    expect(filled.filter(({ value }) => value === "none").map(({ what }) => what)).toEqual(
      expect.arrayContaining(["last frost", "first frost"]),
    );
  });

  it("in fewer than half gives the careful date, and says so", () => {
    const some = `${warm}last frost: [none, none, 3 Feb]\nfirst frost: [12 Dec, none, none]\n`;
    const { site, filled } = siteOf(withFile(), some);
    expect(iso(site.lastFrost)).toBe("2027-02-03 2027-02-03 2027-02-03");
    expect(iso(site.firstFrost)).toBe("2027-12-12 2027-12-12 2027-12-12");
    expect(filled.find(({ what }) => what === "last frost")?.why).toContain("go without");
  });

  it("on one side of the winter alone takes that night for the other side too", () => {
    const last = siteOf(withFile(), `${warm}last frost: [none, none, 3 Feb]\nfirst frost: none\n`);
    expect(iso(last.site.firstFrost)).toBe("2028-02-03 2028-02-03 2028-02-03");
    const first = siteOf(
      withFile(),
      `${warm}last frost: none\nfirst frost: [12 Dec, none, none]\n`,
    );
    expect(iso(first.site.lastFrost)).toBe("2026-12-12 2026-12-12 2026-12-12");
    expect(first.filled.map(({ why }) => why).join()).toContain("other date stands in");
  });

  it("in none, against a gardener who has dated one side, is half a frost", () => {
    const none = `${warm}last frost: none\nfirst frost: none\n`;
    expect(told(withFile("last frost: 6 May"), { "w.yaml": none })).toEqual(["frost-half@6:12"]);
    expect(told(withFile("last frost: none"), { "w.yaml": DATES })).toEqual(["frost-half@5:15"]);
  });
});

describe("a weather file nobody would write", () => {
  const PIECES = [
    "none",
    "29 Feb",
    "31 Dec",
    "1 Aug",
    "[",
    "]",
    ", ",
    ": ",
    "\n",
    "[]",
    "{}",
    "9e9",
    "-1",
    "°",
  ];

  it("is read or has problems, and never throws, whatever is in it", () => {
    const roll = drawnFor(7);
    for (let n = 0; n < samples(1500, 300); n++) {
      let text = DATES;
      for (let cuts = 1 + Math.floor(roll() * 4); cuts > 0; cuts--) {
        const at = Math.floor(roll() * text.length);
        text = text.slice(0, at) + oneOf(PIECES, roll) + text.slice(at + Math.floor(roll() * 9));
      }
      const colder = roll() < 0.5 ? [] : ["colder than the forecast by: 9 °F"];
      const { plan, problems } = read(withFile(...colder), { "w.yaml": text });
      expect(plan === null, text).toBe(problems.some(({ weight }) => weight === "problem"));
    }
  });

  it("of any nights in order makes dates in order, the first frost after the last", () => {
    const roll = drawnFor(11);
    const three = (from: number, side: "last" | "first") => {
      const days = [0, 0, 0].map(() => from + Math.floor(roll() * 90)).sort((a, b) => a - b);
      const nones = Math.floor(roll() * 4);
      const said = days.map((day) => sayDay(plus(on(1, 1), day)));
      const none = (i: number) => (side === "last" ? i < nones : i >= 3 - nones);
      return `[${said.map((day, i) => (none(i) ? "none" : day)).join(", ")}]`;
    };
    for (let n = 0; n < samples(500, 150); n++) {
      const nights = [36, 32, 28].flatMap((_, i) => [
        `${Object.values(NIGHT_KEYS.last).reverse()[i]}: ${three(40 - i * 20, "last")}`,
        `${Object.values(NIGHT_KEYS.first).reverse()[i]}: ${three(240 + i * 20, "first")}`,
      ]);
      const text = `${MEANS}${nights.join("\n")}\n`;
      const { plan } = read(withFile("latitude: 46"), { "w.yaml": text });
      if (plan === null) continue;
      const { lastFrost, firstFrost, killingFrost } = plan.site;
      expect(lastFrost === null, text).toBe(firstFrost === null);
      for (const dates of [lastFrost, firstFrost, killingFrost].flatMap((each) => each ?? []))
        expect(dates.early <= dates.usual && dates.usual <= dates.late, text).toBe(true);
      if (lastFrost && firstFrost) expect(lastFrost.usual, text).toBeLessThan(firstFrost.usual);
      if (killingFrost && firstFrost)
        expect(killingFrost.usual).toBeGreaterThanOrEqual(firstFrost.usual);
    }
  });
});

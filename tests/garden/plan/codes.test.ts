import { describe, expect, it } from "vitest";
import { buildYear } from "../../../src/engine/build.ts";
import { bedDoubts } from "../../../src/engine/doubts/beds.ts";
import { doubtsOf } from "../../../src/engine/doubts/doubts.ts";
import { familyDoubts } from "../../../src/engine/doubts/families.ts";
import { horizonOf } from "../../../src/engine/schedule/horizon.ts";

import { orphanDoubts } from "../../../src/garden/diary/orphans.ts";
import { CODES, type Code, diagnostic } from "../../../src/garden/plan/codes.ts";
import { problemsBetweenYears } from "../../../src/garden/plan/years.ts";
import { least, on, planOf, read, TEXT } from "./canonical.ts";

const NO_FROST = "last frost: none\n  first frost: none";
const at = { file: "f", line: 1, column: 1 };
const weather = (low: string, high: string) =>
  TEXT.replace(/low: .*/, `low: [${low}]`).replace(/high: .*/, `high: [${high}]`);
const twelve = (value: number) => Array.from({ length: 12 }, () => value).join(", ");

/** A text that raises each code of a single plan. */
const EXAMPLES: Readonly<Record<string, string>> = {
  "too-long": "#".repeat(300_000),
  "too-many": least(`crops:\n${"  - carrot\n".repeat(501)}`),
  "too-deep": "[".repeat(500),
  "too-many-aliases": "garden: &a [*a]",
  tab: "garden: x\nplace:\n\tclock: y",
  indent: TEXT.replace("    high:", "   high:"),
  colon: "garden: x\nyear 2027",
  unclosed: 'garden: "x',
  unreadable: "garden: @x",
  "not-a-plan": "",
  "said-twice": "garden: x\ngarden: y",
  "unknown-key": least("crosp: []"),
  missing: "garden: x",
  "wrong-type": least("crops: carrot"),
  "out-of-range": least("crops:\n  - {crop: carrot, rows: 0}"),
  "mulch-unknown": least("crops:\n  - carrot: mulched with strwa"),
  "year-unlike-file": TEXT.replace("year: 2027", "year: 2028"),
  "unknown-word": least("crops:\n  - carrot: 3 rows, with love"),
  "two-readings": least("crops:\n  - carrot: sow 05-06"),
  "no-such-day": least("crops:\n  - carrot: sow 31 Jun"),
  "day-unclear": least("crops:\n  - carrot: sow soon"),
  "span-backwards": least("away:\n  - everybody, 9 Jun to 2 Jun"),
  "hours-unclear": least("people:\n  Oda: {gardens: often}"),
  "zone-unknown": TEXT.replace("America/Denver", "Denver"),
  "quantity-unclear": TEXT.replace("3 °F", "3"),
  "frost-order": TEXT.replace("20 Apr, 6 May, 21 May", "6 May, 21 May"),
  "frost-half": least("", "last frost: none\n  first frost: 2 Oct"),
  "frosts-crossed": least("", "last frost: 6 May\n  first frost: 2 Apr"),
  "weather-missing": least("", `${NO_FROST}\n  weather: w.yaml`),
  "forecast-nowhere": least("", `${NO_FROST}\n  forecast: Open-Meteo`),
  "years-missing": least("", "latitude: 46.6\n  longitude: -111.5\n  weather: from Open-Meteo"),
  "years-awaited": least(
    "",
    `${NO_FROST}\n  latitude: 46.6\n  longitude: -111.5\n  weather: from Open-Meteo`,
  ),
  "calendar-missing": least("people:\n  Oda:\naway:\n  - Oda, oda.ics"),
  "weather-wrong": weather("1, 2, 3", twelve(50)),
  alike: least("crops:\n  - carrot\n  - carrots"),
  "name-unfit": least("crops:\n  - carrot: called ..."),
  "nobody-called": least("crops:\n  - carrot: for Oda"),
  "no-planting-called": least("crops:\n  - tomato\n  - carrot: after the tomatto"),
  "fits-several": least(
    "crops:\n  - tomato: red, 1 plants\n  - tomato: gold, 1 plants\n  - carrot: after tomatoes",
  ),
  "after-circle": least("crops:\n  - carrot: after beet\n  - beet: after carrot"),
  "practice-unknown": least("crops:\n  - carrot: without singing"),
  "crop-unknown": least("crops:\n  - moonflower"),
  "start-unknown": least("crops:\n  - carrot: bought"),
  "frost-unlike-weather": weather(twelve(60), twelve(80)),
  "outside-season": least("crops:\n  - carrot: sow 3 May 2031"),
  "not-cut-again": least("crops:\n  - carrot: cut and come again"),
  "left-out-unknown": least("people:\n  Oda: {leave out: singing}"),
};

const SOUTH = "beds:\n  South bed:\n    is: 12 x 4 ft\n    crops:\n      - ";
const year = (crops: string, y: number) => planOf(least(crops).replace("2027", String(y)));

/** A plan that raises each code a grower would doubt. */
const DOUBTED: Readonly<Record<string, string>> = {
  "bed-too-full": TEXT.replace("18 plants", "90 plants"),
  "too-many-sowings": least("crops:\n  - lettuce: every 1 days, 200 times"),
  "not-sown-again": least("crops:\n  - tomato: bought, every 14 days"),
  "will-not-bulb": TEXT.replace("latitude: 46.6", "latitude: 20").replace(
    "- beet: 10 ft",
    "- onion: long-day, 10 sets\n      - beet: 10 ft",
  ),
  "greenhouse-too-full": TEXT.replace("20 trays", "0 trays"),
  "will-not-ripen": TEXT.replace("72 days", "140 days"),
  "bad-season": least(
    "crops:\n  - lettuce: sow 15 Jul",
    "latitude: 46.6\n  last frost: about 6 May\n  first frost: about 2 Oct\n  weather: { low: [11, 14, 21, 28, 36, 43, 70, 46, 38, 29, 20, 12], high: [30, 35, 45, 55, 64, 73, 100, 81, 71, 57, 41, 31] }",
  ),
};

/** Years that raise each code of several plans. */
const YEARS = {
  "key-clash": [year("", 2027), year("", 2027)],
  "family-too-soon": [year(`${SOUTH}potato`, 2026), year(`${SOUTH}tomato`, 2027)],
  "in-twice": [
    year(`${SOUTH}garlic`, 2026),
    year(`${SOUTH}{ crop: garlic, in since: 14 Oct 2026 }`, 2027),
  ],
  "after-unknown": [year("crops:\n  - carrot: after the moonflower", 2027)],
};

/** Files beside the plan that raise each code. */
const BESIDE: Readonly<Record<string, string>> = {
  "calendar-wrong": "no calendar",
  "calendar-too-large": `BEGIN:VCALENDAR\r\n${"BEGIN:VEVENT\r\nUID:a\r\nDTSTART;VALUE=DATE:18000101\r\nRRULE:FREQ=DAILY;COUNT=99999\r\nEND:VEVENT\r\n".repeat(2)}END:VCALENDAR\r\n`,
  "calendar-unread":
    "BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nUID:a\r\nDTSTART;VALUE=DATE:20270601\r\nRRULE:FREQ=YEARLY;BYWEEKNO=30\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n",
};

/** Answered tasks that raise each code. */
const ANSWERED = { "answers-orphaned": "2027/early-beets/thin/1" };

const HERE = TEXT.slice(0, TEXT.indexOf("beds:"));

/** Years whose beds raise each code once they are placed. */
const BEDS: Readonly<Record<string, readonly string[]>> = {
  "bed-crowded": [`${HERE}${SOUTH}carrot: 10 rows\n      - parsnip: 6 rows\n`],
  "net-over-hosts": [
    `${HERE}${SOUTH}carrot: 3 rows\n`.replace("2027", "2026"),
    `${HERE}${SOUTH}parsnip: 2 rows, under a net\n`,
  ],
};

describe("codes of problems", () => {
  for (const [code, text] of Object.entries(EXAMPLES))
    it(`raises ${code}, with the weight of the table and no code that is not in it`, () => {
      const { problems } = read(text);
      expect(problems.map((problem) => problem.code)).toContain(code);
      for (const problem of problems) {
        expect(Object.keys(CODES)).toContain(problem.code);
        expect(problem.weight).toBe(CODES[problem.code as Code][0]);
      }
    });

  for (const [code, plans] of Object.entries(YEARS))
    it(`raises ${code} between years`, () => {
      const found = [...problemsBetweenYears(plans), ...familyDoubts(plans)];
      expect(found.map((problem) => problem.code)).toEqual([code]);
    });

  for (const [code, text] of Object.entries(DOUBTED))
    it(`raises ${code} once a grower looks at it`, () => {
      expect(doubtsOf([planOf(text)]).map((problem) => problem.code)).toContain(code);
    });

  for (const [code, texts] of Object.entries(BEDS))
    it(`raises ${code} once the beds are filled`, () => {
      const plans = texts.map((text) => planOf(text));
      const garden = { id: "quarry-lane", plans, baseline: {} };
      const found = bedDoubts(buildYear(garden, horizonOf(plans, 0), {}));
      expect(found.map((problem) => problem.code)).toEqual([code]);
    });

  for (const [code, text] of Object.entries(BESIDE))
    it(`raises ${code} for a file beside the plan`, () => {
      const plan = least("people:\n  Oda:\naway:\n  - Oda, oda.ics");
      expect(read(plan, { "oda.ics": text }).problems.map((problem) => problem.code)).toEqual([
        code,
      ]);
    });

  for (const [code, task] of Object.entries(ANSWERED))
    it(`raises ${code} for an answer that was given`, () => {
      const line = { day: on(5, 9), text: "done", at, answers: { task, by: null } };
      expect(orphanDoubts([line], [planOf(TEXT)]).map((problem) => problem.code)).toEqual([code]);
    });

  it("has an example here for every code", () => {
    const shown = [EXAMPLES, DOUBTED, YEARS, BEDS, BESIDE, ANSWERED].flatMap(Object.keys).sort();
    expect(shown).toEqual(Object.keys(CODES).sort());
  });

  it("explains every code in a few words", () => {
    for (const [weight, when] of Object.values(CODES)) {
      expect(["problem", "doubt"]).toContain(weight);
      expect(when.length).toBeGreaterThan(15);
    }
  });

  it("takes the weight of a problem from the table", () => {
    expect(diagnostic("alike", at, "x", "y").weight).toBe("problem");
    expect(diagnostic("bed-too-full", at, "x", "y").weight).toBe("doubt");
  });
});

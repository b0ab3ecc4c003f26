import { describe, expect, it } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { takeDiary } from "../../../src/garden/plan/diary.ts";
import { least, planOf, told } from "./canonical.ts";

const lines = (diary: string) =>
  planOf(least(`diary:\n${diary}`)).diary.map(
    ({ day, text, at }) => `${isoOf(day)} ${text} @${at.line}`,
  );

describe("a plan's diary", () => {
  it("is a day and what was written, in the order of the file", () => {
    expect(
      lines("  - 24 May: carrots up\n  - May 25, 2027: low 29 °F\n  - 2027-05-26: rain"),
    ).toEqual(["2027-05-24 carrots up @8", "2027-05-25 low 29 °F @9", "2027-05-26 rain @10"]);
  });

  it("may have colons, quotes, brackets, stars and whatever else prose has", () => {
    const prose = [
      'Oda: thinned the "beets" [well',
      "*lots* of rain & wind",
      "it's 5: not 4",
      "{half",
      "- dash",
      "bought #2 pots",
      "a `tick` @ noon",
    ];
    expect(lines(prose.map((text) => `  - 24 May: ${text}`).join("\n"))).toEqual(
      prose.map((text, index) => `2027-05-24 ${text} @${index + 8}`),
    );
  });

  it("may go on in the next line and have comments between", () => {
    expect(
      lines("  # spring\n  - 24 May: carrots up,\n    all of them\n\n  - 25 May: rain # at last"),
    ).toEqual(["2027-05-24 carrots up, all of them @9", "2027-05-25 rain @12"]);
  });

  it("may be written in quotes, without colon, or without dashes", () => {
    expect(lines('  - "24 May: carrots up"\n  - 25 May: "rain"\n  - 26 May sun')).toEqual([
      "2027-05-24 carrots up @8",
      "2027-05-25 rain @9",
      "2027-05-26 sun @10",
    ]);
    expect(lines("  24 May: carrots up\n  25 May: rain")).toEqual([
      "2027-05-24 carrots up @8",
      "2027-05-25 rain @9",
    ]);
  });

  it("needs a day that is one, and nothing else", () => {
    expect(told(least("diary:\n  - 05-06: carrots up"))).toEqual(["two-readings@8:5"]);
    expect(told(least("diary:\n  - 31 Jun: carrots up"))).toEqual(["no-such-day@8:5"]);
    expect(told(least("diary:\n  - carrots up"))).toEqual(["day-unclear@8:5"]);
    expect(told(least("diary:\n  - 24 May: the cat ate it"))).toEqual([]);
    expect(told(least("diary:\n"))).toEqual([]);
  });

  it("ends where the next key begins", () => {
    const { rest, lines: taken } = takeDiary("a: 1\ndiary:\n- 24 May: x\n- 25 May: y\nb: 2", "f");
    expect(taken.map(({ text, at }) => `${text}@${at.line}:${at.column}`)).toEqual([
      "24 May: x@3:3",
      "25 May: y@4:3",
    ]);
    expect(rest).toBe("a: 1\ndiary:\n\n\nb: 2");
  });

  it("stays with the rest where it is no plain list", () => {
    for (const text of ["diary: []", "diary:\n\t- 24 May: x", "a: 1"])
      expect(takeDiary(text, "f")).toEqual({ rest: text, lines: [] });
  });
});

describe("days without a year at the head of a diary", () => {
  const south = (diary: string) =>
    planOf(
      least(`diary:\n${diary}`)
        .replace(/latitude: .*/, "latitude: -41.5")
        .replace(/last frost: .*/, "last frost: 12 Oct")
        .replace(/first frost: .*/, "first frost: 8 May"),
    ).diary.map(({ day, text }) => `${isoOf(day)} ${text}`);

  it("lie before the season where the lines behind them lie in it", () => {
    expect(
      south("  - 1 Jul: garlic up\n  - 20 Jul: rain\n  - 1 Aug: sun\n  - 5 Jul: late"),
    ).toEqual(["2027-07-01 garlic up", "2027-07-20 rain", "2027-08-01 sun", "2028-07-05 late"]);
  });

  it("do so with the newest line first, too", () => {
    expect(south("  - 1 Sep: sun\n  - 1 Aug: rain\n  - 10 Jul: garlic up")).toEqual([
      "2027-09-01 sun",
      "2027-08-01 rain",
      "2027-07-10 garlic up",
    ]);
  });

  it("stay where nothing follows, or where they have their year", () => {
    expect(south("  - 1 Jul: garlic up")).toEqual(["2028-07-01 garlic up"]);
    expect(south("  - 1 Jul 2028: garlic up\n  - 1 Aug 2027: rain")).toEqual([
      "2028-07-01 garlic up",
      "2027-08-01 rain",
    ]);
  });
});

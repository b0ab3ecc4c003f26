import { describe, expect, test } from "vitest";
import { degreesC, inches } from "../../../src/base/quantities/quantity.ts";
import {
  householdOnly,
  how,
  lengthRange,
  sign,
  why,
} from "../../../src/engine/practices/sentence.ts";
import {
  sayDays,
  sayPart,
  sayPieces,
  type Voice,
  voiceOf,
} from "../../../src/views/events/sentences.ts";
import { SATURDAY } from "../../engine/schedule/given.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";

const PLAN = planOf(QUARRY);
const HOUSEHOLD = voiceOf(PLAN, "household");
const READER = voiceOf(PLAN, "reader");
const METRIC: Voice = { ...HOUSEHOLD, measures: "metric" };

describe("pieces in words", () => {
  test("text stays text, joined without more", () => {
    expect(sayPieces(["Sow", " beets", "."], HOUSEHOLD)).toBe("Sow beets.");
  });

  test("a quantity is told in the household's units", () => {
    expect(sayPieces([{ quantity: inches(3) }], HOUSEHOLD)).toBe("3 in");
    expect(sayPieces([{ quantity: degreesC(10) }], METRIC)).toBe("10 °C");
    expect(sayPieces([{ quantity: degreesC(10) }], HOUSEHOLD)).toBe("50 °F");
  });

  test("a range names its unit once", () => {
    expect(sayPieces([lengthRange([15, 20])], METRIC)).toBe("15 to 20 cm");
  });

  test("a range whose ends read alike is one length", () => {
    expect(sayPieces([lengthRange([15, 15.1])], METRIC)).toBe("15 cm");
  });

  test("a range across two units names both", () => {
    expect(sayPieces([lengthRange([60, 120])], HOUSEHOLD)).toBe("24 in to 4 ft");
  });

  test("a day is told as one says it, with its weekday where asked", () => {
    expect(sayPieces([{ day: SATURDAY }], HOUSEHOLD)).toBe("8 May");
    expect(sayPieces([{ day: SATURDAY, weekday: true }], HOUSEHOLD)).toBe("Saturday 8 May");
  });

  test("an hour is told on a 24-hour clock", () => {
    expect(sayPieces([{ at: 1050 }], HOUSEHOLD)).toBe("17:30");
  });

  test("a person is told by name, and by key where nobody has it", () => {
    expect(sayPieces([{ person: "oda" }], HOUSEHOLD)).toBe("Oda");
    expect(sayPieces([{ person: "grandma" }], HOUSEHOLD)).toBe("grandma");
  });
});

test("a length that begins in millimetres is said in them to its end", () => {
  expect(sayPieces([lengthRange([0.635, 1.27])], { ...HOUSEHOLD, measures: "metric" })).toBe(
    "5 to 15 mm",
  );
});

describe("one part of what is said", () => {
  const say = [how("Thin."), sign("Tall."), householdOnly(how("Oda is away.")), how("Water.")];

  test("is its sentences in order, joined by spaces", () => {
    expect(sayPart(say, "how", HOUSEHOLD)).toBe("Thin. Oda is away. Water.");
  });

  test("keeps from a reader what is for the household", () => {
    expect(sayPart(say, "how", READER)).toBe("Thin. Water.");
  });

  test("is empty where nothing is said", () => {
    expect(sayPart([why("Because.")], "caution", HOUSEHOLD)).toBe("");
  });
});

describe("days from one to another", () => {
  const said = (from: string, to: string) => sayDays({ from: isoDay(from), to: isoDay(to) });

  test("are said with their month once where it is one", () => {
    expect(said("2027-05-03", "2027-05-09")).toBe("3 to 9 May");
    expect(said("2027-06-19", "2027-06-23")).toBe("19 to 23 June");
    expect(said("2027-05-30", "2027-06-02")).toBe("30 May to 2 June");
    expect(said("2027-07-30", "2027-08-03")).toBe("30 July to 3 Aug");
  });

  test("are the one day where they are no more", () => {
    expect(said("2027-05-31", "2027-05-31")).toBe("31 May");
    expect(said("2027-07-03", "2027-07-03")).toBe("3 July");
  });
});

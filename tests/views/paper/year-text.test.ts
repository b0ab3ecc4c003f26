import { describe, expect, test } from "vitest";
import { nightLines, packetText, stageText } from "../../../src/views/paper/year-text.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { LIVED, reportOf } from "./paper-year.ts";

const day = isoDay("2027-05-12");

describe("a stage is told", () => {
  test("as written, against the plan and a usual year", () => {
    const planned = isoDay("2027-05-09");
    expect(
      stageText({ day, known: "written", planned, usual: isoDay("2027-05-02") }, 2027),
    ).toEqual({
      day: "12 May",
      aside: "3 days later than planned; usual 2 May",
    });
    expect(stageText({ day, known: "written", planned: day, usual: day }, 2027).aside).toBe(
      "as planned",
    );
  });

  test("as supposed or still to come, never as a fact", () => {
    const stage = { day, planned: null, usual: null };
    expect(stageText({ ...stage, known: "supposed" }, 2027)).toEqual({
      day: "about 12 May",
      aside: "supposed",
    });
    expect(stageText({ ...stage, known: "ahead" }, 2026)).toEqual({
      day: "about 12 May 2027",
      aside: "still to come",
    });
    expect(stageText(null, 2027)).toEqual({ day: "", aside: "" });
  });
});

test("frosts are told beside the usual ones, and silence as silence", () => {
  expect(nightLines(reportOf(LIVED, "2027-11-15"))).toEqual([
    "The last spring frost measured: 22 May; the usual one is 6 May.",
    "The first autumn frost measured: 30 Sep; the usual one is 2 Oct.",
    "Lows: 12 May 30 °F, 22 May 29 °F, 30 Sep 27 °F.",
    "Soil: 25 May 58 °F in South bed.",
  ]);
  expect(nightLines(reportOf(QUARRY, "2027-11-15"))).toEqual([
    "No night was measured, so how cold it was is not known. The usual frosts here: 6 May and 2 Oct.",
  ]);
});

test("the garden's own days are told beside the packet's", () => {
  const told = (packet: number, took: number) => packetText({ name: "Peas", packet, took });
  expect(told(60, 64)).toBe(
    "Peas: 4 days longer than the packet, 64 for 60. Next year goes by that.",
  );
  expect(told(60, 59)).toBe("Peas: 1 day less than the packet, 59 for 60. Next year goes by that.");
  expect(told(60, 60)).toMatch(/^Peas: just what the packet says, 60 days\./);
});

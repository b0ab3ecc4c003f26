import { describe, expect, it } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { least, planOf, read, told } from "./canonical.ts";

const away = (line: string) => {
  const plan = planOf(least(`people:\n  Oda:\n  Imre:\naway:\n  - ${line}`));
  return plan.away.map(({ person, from, to }) => `${person} ${isoOf(from)} ${isoOf(to)}`)[0];
};

describe("absences", () => {
  it("are of one person or of everybody, both days inclusive", () => {
    expect(away("Oda, 19 to 23 Jun")).toBe("oda 2027-06-19 2027-06-23");
    expect(away("everybody, 1 Aug to 14 Aug")).toBe("null 2027-08-01 2027-08-14");
    expect(away("imre, 3 May")).toBe("imre 2027-05-03 2027-05-03");
    expect(away("Oda, in July")).toBe("oda 2027-07-01 2027-07-31");
  });

  it("are refused for nobody known and without days", () => {
    const { problems } = read(least("people:\n  Oda:\naway:\n  - Odo, 3 May\n  - Oda"));
    expect(problems.map(({ code, at, shouldBe }) => [code, at.line, shouldBe])).toEqual([
      ["nobody-called", 10, "Did you mean Oda"],
      ["day-unclear", 11, "Write who and when: Oda, 19 to 23 Jun"],
    ]);
  });

  it("outside the season are a doubt", () => {
    expect(told(least("people:\n  Oda:\naway:\n  - Oda, 3 May 2029"))).toEqual([
      "outside-season@10:10",
    ]);
  });
});

/** A calendar with these lines as its events, each from `BEGIN` to `END`. */
const calendar = (...events: readonly (readonly string[])[]) =>
  [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:x",
    ...events.flatMap((lines, i) => ["BEGIN:VEVENT", `UID:${i}`, ...lines, "END:VEVENT"]),
    "END:VCALENDAR",
    "",
  ].join("\r\n");

describe("absences from a calendar beside the plan", () => {
  const from = (...events: readonly (readonly string[])[]) => {
    const { plan } = read(least("people:\n  Oda:\naway:\n  - Oda, oda.ics"), {
      "oda.ics": calendar(...events),
    });
    return plan?.away.map((span) => `${span.person} ${isoOf(span.from)} ${isoOf(span.to)}`);
  };

  it("are the days of its events, whoever reads the plan, and nothing of what they say", () => {
    expect(
      from(["DTSTART;VALUE=DATE:20270619", "DTEND;VALUE=DATE:20270624", "SUMMARY:Secret trip"]),
    ).toEqual(["oda 2027-06-19 2027-06-23"]);
    const { plan } = read(least("people:\n  Oda:\naway:\n  - Oda, oda.ics"), {
      "oda.ics": calendar(["DTSTART;VALUE=DATE:20270619", "SUMMARY:Secret trip"]),
    });
    expect(JSON.stringify(plan)).not.toContain("Secret");
  });

  it("are none where the calendar has none in the season", () => {
    expect(from()).toEqual([]);
    expect(from(["DTSTART;VALUE=DATE:20310619", "SUMMARY:x"])).toEqual([]);
  });

  it("offer the nearest file where it is not there", () => {
    const { problems } = read(least("people:\n  Oda:\naway:\n  - Oda, odo.ics"), {
      "oda.ics": calendar(),
    });
    expect(problems.map(({ code, shouldBe }) => [code, shouldBe])).toEqual([
      ["calendar-missing", "Did you mean oda.ics"],
    ]);
  });
});

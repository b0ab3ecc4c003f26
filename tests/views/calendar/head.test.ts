import { describe, expect, test } from "vitest";
import { headAndFoot } from "../../../src/views/calendar/head.ts";

describe("what stands around the events", () => {
  test("is exactly this", () => {
    expect(headAndFoot("Quarry Lane")).toEqual({
      head: [
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        "PRODID:-//Sowbell//Garden calendar//EN",
        "NAME:Quarry Lane",
        "X-WR-CALNAME:Quarry Lane",
        "REFRESH-INTERVAL;VALUE=DURATION:PT4H",
        "X-PUBLISHED-TTL:PT4H",
        "X-APPLE-CALENDAR-COLOR:#6B8E23",
        "COLOR:olivedrab",
        "",
      ].join("\r\n"),
      foot: "END:VCALENDAR\r\n",
    });
  });

  test("a name with line ends, commas and semicolons adds no property", () => {
    const { head } = headAndFoot("Lane\r\nMETHOD:PUBLISH\u2028X;a,b\\");
    expect(head).toContain("\r\nNAME:Lane METHOD:PUBLISH X\\;a\\,b\\\\\r\n");
    expect(head.split("\r\n")).toHaveLength(10);
  });

  test("a long name is cut to sixty characters, a name of nothing gets one", () => {
    expect(headAndFoot("x".repeat(10_000)).head).toContain(`\r\nNAME:${"x".repeat(59)}\u2026\r\n`);
    expect(headAndFoot("\u0000\r\n").head).toContain("\r\nNAME:Garden\r\n");
  });
});

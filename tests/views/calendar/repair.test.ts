import { describe, expect, test } from "vitest";
import { repairEvent } from "../../../src/views/calendar/repair.ts";

const event = (...lines: string[]) => ["BEGIN:VEVENT", ...lines, "END:VEVENT", ""].join("\r\n");
const AS_IT_IS = { alarm: "", clock: "UTC" };
const ALARM = "BEGIN:VALARM\r\nACTION:DISPLAY\r\nEND:VALARM\r\n";

describe("mending what the library writes", () => {
  test("the two Microsoft properties go", () => {
    const written = event(
      "DTEND;VALUE=DATE:20270509",
      "X-MICROSOFT-CDO-ALLDAYEVENT:TRUE",
      "X-MICROSOFT-MSNCALENDAR-ALLDAYEVENT:TRUE",
      "SUMMARY:Thin",
    );
    expect(repairEvent(written, AS_IT_IS)).toBe(event("DTEND;VALUE=DATE:20270509", "SUMMARY:Thin"));
  });

  test("hours stand on the garden's clock, and stamps stay as they are", () => {
    const written = event(
      "DTSTAMP:20270501T060000Z",
      "DTSTART:20270508T160000Z",
      "SUMMARY:DTEND:1",
    );
    expect(repairEvent(written, { alarm: "", clock: "America/Denver" })).toBe(
      event(
        "DTSTAMP:20270501T060000Z",
        "DTSTART;TZID=America/Denver:20270508T100000",
        "SUMMARY:DTEND:1",
      ),
    );
    expect(repairEvent(written, AS_IT_IS)).toBe(written);
  });

  test("an event with an hour that the clock shows again stays in UTC, both its ends", () => {
    const written = event("DTSTART:20271107T070000Z", "DTEND:20271107T083000Z");
    expect(repairEvent(written, { alarm: "", clock: "America/Denver" })).toBe(written);
  });

  test("the alarm stands after the properties", () => {
    expect(
      repairEvent(event("SUMMARY:Thin", "LAST-MODIFIED:x"), { alarm: ALARM, clock: "UTC" }),
    ).toBe(`BEGIN:VEVENT\r\nSUMMARY:Thin\r\nLAST-MODIFIED:x\r\n${ALARM}END:VEVENT\r\n`);
  });

  test("text that names a property is left alone", () => {
    const written = event("SUMMARY:URL;VALUE=URI:a\\,b\\nX-MICROSOFT-CDO-ALLDAYEVENT:TRUE");
    expect(repairEvent(written, AS_IT_IS)).toBe(written);
  });
});

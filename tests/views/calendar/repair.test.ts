import { describe, expect, test } from "vitest";
import { repairEvent } from "../../../src/views/calendar/repair.ts";

const event = (...lines: string[]) => ["BEGIN:VEVENT", ...lines, "END:VEVENT", ""].join("\r\n");
const ALARM = "BEGIN:VALARM\r\nACTION:DISPLAY\r\nEND:VALARM\r\n";

describe("mending what the library writes", () => {
  test("the two Microsoft properties go", () => {
    const written = event(
      "DTEND;VALUE=DATE:20270509",
      "X-MICROSOFT-CDO-ALLDAYEVENT:TRUE",
      "X-MICROSOFT-MSNCALENDAR-ALLDAYEVENT:TRUE",
      "SUMMARY:Thin",
    );
    expect(repairEvent(written, "")).toBe(event("DTEND;VALUE=DATE:20270509", "SUMMARY:Thin"));
  });

  test("the URL is a URI and its commas, semicolons and backslashes stand bare", () => {
    const written = event("SUMMARY:a\\,b", "URL;VALUE=URI:https://a.example/b\\,c\\;d", "CLASS:X");
    expect(repairEvent(written, "")).toBe(
      event("SUMMARY:a\\,b", "URL;VALUE=URI:https://a.example/b,c;d", "CLASS:X"),
    );
  });

  test("the alarm stands after the properties", () => {
    expect(repairEvent(event("SUMMARY:Thin", "LAST-MODIFIED:x"), ALARM)).toBe(
      `BEGIN:VEVENT\r\nSUMMARY:Thin\r\nLAST-MODIFIED:x\r\n${ALARM}END:VEVENT\r\n`,
    );
  });

  test("text that names a property is left alone", () => {
    const written = event("SUMMARY:URL;VALUE=URI:a\\,b\\nX-MICROSOFT-CDO-ALLDAYEVENT:TRUE");
    expect(repairEvent(written, "")).toBe(written);
  });
});

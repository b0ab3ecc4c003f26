import { expect, test } from "vitest";
import { answerCalendar, deviceOf } from "../../../src/host/web/calendar.ts";
import type { GardenRequest } from "../../../src/host/web/garden-request.ts";

test("a phone says what it is, and whatever else is no phone", () => {
  expect(deviceOf("Mozilla/5.0 (iPhone; CPU iPhone OS 18_0 like Mac OS X)")).toBe("apple");
  expect(deviceOf("Mozilla/5.0 (Linux; Android 15)")).toBe("android");
  expect(deviceOf("Mozilla/5.0 (X11; Linux x86_64)")).toBe("other");
  expect(deviceOf("")).toBe("other");
});

test("an owner is led to the links to hand on, since what opens everything belongs in no calendar", () => {
  const visit = {
    link: { role: "owner" },
    base: "/g/owner-1/m/",
    shell: {},
  } as unknown as GardenRequest;
  const answer = answerCalendar(visit);
  expect([answer.status, answer.headers.get("location")]).toEqual([303, "/g/owner-1/m/links"]);
});

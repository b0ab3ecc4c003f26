import { expect, test } from "vitest";
import { answerCalendar, answerCalendarCode, deviceOf } from "../../../src/host/web/calendar.ts";
import type { GardenRequest } from "../../../src/host/web/garden-request.ts";
import { qrPicture } from "../../../src/host/web/pages/qr.tsx";

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

test("the code for a camera is a picture of the page's own address, and no owner has one", async () => {
  const coded = (role: string) =>
    answerCalendarCode({
      ...{ link: { role }, base: "/g/l/m/", origin: "https://garden.example" },
    } as unknown as GardenRequest);
  const answer = coded("reader");
  expect(answer.headers.get("content-type")).toBe("image/svg+xml; charset=utf-8");
  expect(await answer.text()).toBe(qrPicture("https://garden.example/g/l/m/calendar"));
  expect(coded("owner").status).toBe(404);
});

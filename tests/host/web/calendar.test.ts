import { describe, expect, test } from "vitest";
import { answerCalendar, answerCalendarCode, deviceOf } from "../../../src/host/web/calendar.ts";
import type { GardenRequest } from "../../../src/host/web/garden-request.ts";
import { qrPicture } from "../../../src/host/web/pages/qr.tsx";
import { ask, linkTo, publish, shellWith } from "./garden.ts";

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

const BROWSER = "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8";

describe("a feed's own address opened in a browser", () => {
  const opened = async (rest: string, headers: Record<string, string> = { accept: BROWSER }) => {
    const shell = shellWith();
    await publish(shell, "opened");
    return ask(shell, `${await linkTo("opened", "helper", "imre")}${rest}`, { headers });
  };

  test("is the page that subscribes to it, by a status that no calendar program takes for a calendar, never kept", async () => {
    const answer = await opened("tasks.ics");
    expect([answer.status, answer.headers.get("content-type")]).toEqual([
      300,
      "text/html; charset=utf-8",
    ]);
    expect(answer.headers.get("cache-control")).toBe("no-store");
    expect(answer.headers.get("vary")).toBe("Accept, Accept-Encoding");
    const [first] = (await answer.text()).match(/href="webcal:[^"]+"/g) ?? [];
    expect(first).toMatch(/\/tasks\.ics"$/);
  });

  test.each([
    ["says that anything goes", { accept: "*/*" }],
    ["says nothing", {}],
    ["is Thunderbird", { accept: "text/calendar,text/plain;q=0.8,*/*;q=0.5" }],
    ["is Java's own", { accept: "text/html, image/gif, image/jpeg, *; q=.2, */*; q=.2" }],
    ["holds a copy", { accept: BROWSER, "if-none-match": '"x"' }],
  ])("is the calendar for a program that %s", async (_, headers) => {
    const answer = await opened("sessions.ics", headers as Record<string, string>);
    expect([answer.status, answer.headers.get("content-type")]).toEqual([
      200,
      "text/calendar; charset=utf-8",
    ]);
    expect(answer.headers.get("vary")).toBe("Accept, Accept-Encoding");
  });

  test("that is no feed, or under a link that opens nothing, is one page, the same for all", async () => {
    const shell = shellWith();
    await publish(shell, "opened");
    const good = await linkTo("opened", "helper", "imre");
    const forged = good.replace(/[^/]+\/$/, `${"A".repeat(43)}/`);
    const paths = [
      `${good}nothing.ics`,
      `${forged}sessions.ics`,
      `${forged}`,
      "/no/such/place/x.ics",
    ];
    const answers = await Promise.all(
      paths.map(async (path) => {
        const answer = await ask(shell, path, { headers: { accept: BROWSER } });
        return [answer.status, [...answer.headers], await answer.text()];
      }),
    );
    expect(answers[0]?.[0]).toBe(404);
    for (const answer of answers) expect(answer).toEqual(answers[0]);
  });
});

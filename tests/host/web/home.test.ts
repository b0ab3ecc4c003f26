import { beforeAll, describe, expect, test } from "vitest";
import type { AppContext } from "../../../src/host/web/app-context.ts";
import { ask, core, linkTo, MORNING, PLAN, publish, shellWith } from "./garden.ts";

let shell: AppContext;

beforeAll(async () => {
  shell = await shellWith();
  await publish(shell, "quarry-lane");
});

async function pageOf(path: string, over: Partial<AppContext> = {}): Promise<string> {
  const answer = await ask({ ...shell, ...over }, path);
  expect(answer.headers.get("content-type")).toBe("text/html; charset=utf-8");
  return answer.text();
}

describe("a garden's own page", () => {
  test("leads into a calendar: a helper to their own, an owner to the links to hand on", async () => {
    const imre = await linkTo("quarry-lane", "helper", "imre");
    expect(await pageOf(imre)).toContain(`href="${imre}calendar"`);
    const owner = await linkTo("quarry-lane", "owner");
    expect(await pageOf(owner)).toContain(`href="${owner}links"`);
  });

  test("never shows another link than the one in hand", async () => {
    for (const [role, person] of [
      ["helper", "imre"],
      ["owner", null],
      ["reader", null],
    ] as const) {
      const link = await linkTo("quarry-lane", role, person);
      const html = (await pageOf(link)).replaceAll(link, "");
      expect(html).not.toMatch(/(?:owner|helper|reader|admin)-/);
    }
  });

  test("shows a reader no people, no hours and no page to open", async () => {
    const html = await pageOf(await linkTo("quarry-lane", "reader"));
    expect(html).toContain("Thin beets. Anybody reads this.");
    expect(html).not.toMatch(/imre|oda|household|09:00|\/on\//i);
  });

  test("tells what comes next", async () => {
    const html = await pageOf(await linkTo("quarry-lane", "owner"));
    expect(html).toContain("Saturday 8 May, 09:00 to 10:00");
    expect(html).toContain("Cover squash");
  });

  test("is no feed and no secret kept by a cache, and runs no script", async () => {
    const { headers } = await ask(shell, await linkTo("quarry-lane", "owner"));
    expect(headers.get("cache-control")).toBe("private, no-cache");
    expect(headers.get("referrer-policy")).toBe("no-referrer");
    expect(headers.get("x-robots-tag")).toBe("noindex");
    expect(headers.get("content-security-policy")).toMatch(
      /^default-src 'none'; style-src 'self';(?!.*script-src)/,
    );
  });

  test("escapes whatever a plan calls things", async () => {
    const hostile = PLAN.replace("name Quarry Lane", "name <script>alert(1)</script>")
      .replace("bed South bed", `bed "><img src=x onerror=alert(1)>`)
      .replace("Thin beets", "<b onclick='x'>Thin</b> & beets");
    await publish(shell, "hostile", hostile);
    const html = await pageOf(await linkTo("hostile", "owner"));
    expect(html).not.toMatch(/<script|<img|<b /);
    expect(html).toContain("&lt;script&gt;");
  });
});

describe("an event's page", () => {
  test("tells what the event tells, on its day", async () => {
    const imre = await linkTo("quarry-lane", "helper", "imre");
    const html = await pageOf(`${imre}on/imre/2027-05-08`);
    expect(html).toContain("<h1>Thin beets</h1>");
    expect(html).toContain("Saturday 8 May, 09:00 to 10:00");
    expect(html).toContain("Thin beets. The household reads this.");
    expect(html).toContain(`href="${imre}"`);
    expect(html).not.toContain("<button");
  });

  test("tells the days that do no harm for each task in it", async () => {
    const tell: typeof core.tell = (garden, horizon, standing) => {
      const told = core.tell(garden, horizon, standing);
      const day = MORNING / 86_400_000;
      const window = { earliest: Math.floor(day), latest: Math.floor(day) + 9 };
      const title = { verb: "Thin", object: "beets" };
      const placed = [{ task: { id: "2027/thin-beets/do/1", title, because: [] }, window }];
      return { ...told, scheduled: placed as unknown as typeof told.scheduled };
    };
    const owner = await linkTo("quarry-lane", "owner");
    const path = `${owner}on/2027/thin-beets/do/1`;
    expect(await pageOf(path, { core: { ...core, tell } })).toContain(
      "Any day from 7 May to 16 May does no harm.",
    );
  });

  test("of a task that is now told within another event is that event's", async () => {
    const tell: typeof core.tell = (garden, horizon, standing) => {
      const told = core.tell(garden, horizon, standing);
      const events = told.events
        .filter(({ key }) => !key.startsWith("2027/hill"))
        .map((event) =>
          event.key === "2027/thin-beets/do/1"
            ? { ...event, tasks: [...event.tasks, "2027/hill-potatoes/do/1"] }
            : event,
        )
        .filter(({ set }) => set === "tasks");
      return { ...told, events };
    };
    const path = `${await linkTo("quarry-lane", "owner")}on/2027/hill-potatoes/do/1`;
    expect(await pageOf(path, { core: { ...core, tell } })).toContain("<h1>Thin beets</h1>");
  });

  test("of an event that is no more says so and tells what comes next", async () => {
    const imre = await linkTo("quarry-lane", "helper", "imre");
    const answer = await ask(shell, `${imre}on/2027/long-gone/do/1`);
    expect(answer.status).toBe(404);
    const html = await answer.text();
    expect(html).toContain("off the list");
    expect(html).toContain("Thin beets");
  });

  test("that has lost jobs since a phone last looked still has them, each with its day", async () => {
    await publish(shell, "dell");
    const imre = await linkTo("dell", "helper", "imre");
    await ask(shell, `${imre}sessions.ics`);
    const later = PLAN.replace("2027-05-08 Thin beets", "2027-05-15 Thin beets");
    await publish(shell, "dell", later, 1);
    const tell: typeof core.tell = (garden, horizon, standing) => {
      const told = core.tell(garden, horizon, standing);
      const title = { verb: "Thin", object: "beets" };
      const task = { id: "2027/thin-beets/do/1", title, because: [], rhythm: "session" };
      const window = { earliest: 20950, latest: 20960 };
      const placed = [{ task, window, day: 20953, done: null }];
      return { ...told, scheduled: placed as unknown as typeof told.scheduled };
    };
    const html = await pageOf(`${imre}on/imre/2027-05-08`, { core: { ...core, tell } });
    expect(html).toContain("<h1>Thin beets</h1>");
    expect(html).toContain("Now on Saturday 15 May.");
    expect(html).toContain('value="done"');
  });

  test("is not a reader's, and not there over a revoked link", async () => {
    const reader = await linkTo("quarry-lane", "reader");
    expect((await ask(shell, `${reader}on/imre/2027-05-08`)).status).toBe(404);
    const owner = await linkTo("quarry-lane", "owner");
    await ask(shell, `${owner}links/helper-oda-1`, { method: "DELETE" });
    const oda = await linkTo("quarry-lane", "helper", "oda");
    const answer = await ask(shell, `${oda}on/imre/2027-05-08`);
    expect(answer.headers.get("content-type")).toBe("text/plain; charset=utf-8");
  });
});

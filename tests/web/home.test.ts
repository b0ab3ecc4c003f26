import { beforeAll, describe, expect, test } from "vitest";
import type { Shell } from "../../src/web/shell.ts";
import { ask, core, linkTo, MORNING, ORIGIN, PLAN, publish, shellWith } from "./garden.ts";

let shell: Shell;

beforeAll(async () => {
  shell = await shellWith();
  await publish(shell, "quarry-lane");
});

async function pageOf(path: string, over: Partial<Shell> = {}): Promise<string> {
  const answer = await ask({ ...shell, ...over }, path);
  expect(answer.headers.get("content-type")).toBe("text/html; charset=utf-8");
  return answer.text();
}

describe("a garden's own page", () => {
  test("gives a helper their own calendar first, for one tap and for copying", async () => {
    const imre = await linkTo("quarry-lane", "helper", "imre");
    const html = await pageOf(imre);
    const [before = "", more = ""] = html.split("<summary>More calendars");
    expect(before).toContain(`href="webcal://garden.example${imre}sessions.ics"`);
    expect(before).toContain(`${ORIGIN}${imre}sessions.ics`);
    for (const feed of ["tasks", "household", "bed/south-bed", "warnings", "quiet/sessions"]) {
      expect(more).toContain(`${imre}${feed}.ics`);
    }
  });

  test("never shows a helper another link than their own", async () => {
    const html = await pageOf(await linkTo("quarry-lane", "helper", "imre"));
    expect(html).not.toContain("owner-");
    expect(html).not.toContain("helper-oda");
    expect(html).not.toContain("reader-");
  });

  test("gives an owner each person's calendar first, and links to hand on", async () => {
    const html = await pageOf(await linkTo("quarry-lane", "owner"));
    for (const person of ["imre", "oda"]) {
      const path = await linkTo("quarry-lane", "helper", person);
      expect(html).toContain(`webcal://garden.example${path}sessions.ics`);
      expect(html).toContain(`href="${path}"`);
    }
    expect(html).toContain(`href="${await linkTo("quarry-lane", "reader")}"`);
  });

  test("gives the next link where one was revoked", async () => {
    await publish(shell, "brook");
    const owner = await linkTo("brook", "owner");
    await ask(shell, `${owner}links/helper-oda-1`, { method: "DELETE" });
    const html = await pageOf(owner);
    expect(html).toContain(`href="${await linkTo("brook", "helper", "oda", 2)}"`);
    expect(html).not.toContain("helper-oda-1");
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
      /^default-src 'none'; style-src 'self';/,
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
      const placed = [{ task: { id: "2027/thin-beets/do/1", title, because: () => [] }, window }];
      return { ...told, placed: placed as unknown as typeof told.placed };
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

describe("the links a keeper hands out", () => {
  test("are the owner's page, the household's calendar and each person's own", async () => {
    await publish(shell, "lea");
    const path = `${await linkTo("lea", "keeper")}links`;
    expect(await (await ask(shell, path)).json()).toEqual({
      garden: "lea",
      name: "Quarry Lane",
      owner: await linkTo("lea", "owner"),
      household: `${await linkTo("lea", "owner")}household.ics`,
      people: [
        { key: "imre", name: "Imre", path: `${await linkTo("lea", "helper", "imre")}sessions.ics` },
        { key: "oda", name: "Oda", path: `${await linkTo("lea", "helper", "oda")}sessions.ics` },
      ],
    });
  });

  test("are nobody else's to ask for, and of no garden that is not there", async () => {
    expect((await ask(shell, `${await linkTo("nowhere", "keeper")}links`)).status).toBe(404);
    for (const role of ["owner", "reader"] as const) {
      expect((await ask(shell, `${await linkTo("quarry-lane", role)}links`)).status).toBe(404);
    }
  });
});

import { beforeAll, describe, expect, test, vi } from "vitest";

import { ask, DOWN, linkTo, publish, type Shell, shellWith } from "./garden.ts";

let shell: Shell;
let owner: string;

beforeAll(async () => {
  shell = shellWith();
  owner = await linkTo("quarry-lane", "owner");
  await publish(shell, "quarry-lane");
});

describe("the open pages", () => {
  test("the front page says what this is and names no garden", async () => {
    const html = await (await ask(shell, "/")).text();
    expect(html).toContain("Sowbell");
    expect(html).not.toContain("Quarry Lane");
  });

  test("the health check needs no garden", async () => {
    const answer = await ask({ ...shell, gardenOf: DOWN }, "/healthz");
    expect(answer.status).toBe(200);
    expect(await answer.text()).toBe("ok\n");
  });

  test("robots are kept from nothing, since some feed fetchers obey them", async () => {
    expect(await (await ask(shell, "/robots.txt")).text()).not.toMatch(/Disallow: *\S/);
  });

  test("the stylesheet is served to pages of the same address", async () => {
    const answer = await ask(shell, "/paper.css");
    expect(answer.headers.get("content-type")).toBe("text/css; charset=utf-8");
  });
});

describe("methods", () => {
  test.each(["PROPFIND", "OPTIONS", "POST", "PUT", "DELETE", "REPORT", "PATCH"])(
    "%s is refused for a feed, alike for a good link and a forged one",
    async (method) => {
      const forged = `/quarry-lane/owner-1/${"A".repeat(43)}/`;
      const [good, bad] = await Promise.all(
        [owner, forged].map((link) => ask(shell, `${link}tasks.ics`, { method })),
      );
      expect(good?.status).toBe(405);
      expect(good?.headers.get("allow")).toBe("GET, HEAD");
      expect(good?.headers.get("content-type")).toBe("text/plain; charset=utf-8");
      expect([...(bad?.headers ?? [])]).toEqual([...(good?.headers ?? [])]);
      expect(bad?.status).toBe(405);
    },
  );

  test("a plan's path says that it may be put, a link's that it may be deleted", async () => {
    const plan = await ask(shell, `${owner}plans/2027`, { method: "POST" });
    expect(plan.headers.get("allow")).toBe("GET, HEAD, PUT");
    expect((await ask(shell, `${owner}links/reader-1`)).headers.get("allow")).toBe("DELETE");
  });
});

describe("the address", () => {
  test.each([
    ["a feed as webcal:// asks for it", "http", "tasks.ics"],
    ["a feed behind a proxy that took it in the clear", "https", "tasks.ics"],
    ["a page, with what follows it", "http", "?from=mail"],
  ])("in the clear leads to the same one, secured: %s", async (_, scheme, rest) => {
    const init = scheme === "https" ? { headers: { "x-forwarded-proto": "http" } } : {};
    const answer = await ask(shell, `${scheme}://garden.example${owner}${rest}`, init);
    expect(answer.status).toBe(308);
    expect(answer.headers.get("location")).toBe(`https://garden.example${owner}${rest}`);
  });

  test.each(["127.0.0.1:8787", "localhost:8787", "[::1]:8787"])(
    "on this machine answers in the clear: %s",
    async (host) => {
      const answer = await ask(shell, `http://${host}${owner}tasks.ics`);
      expect(answer.status).toBe(200);
      expect(answer.headers.has("strict-transport-security")).toBe(false);
    },
  );

  test("behind a proxy that took it secured answers, and asks to stay secured", async () => {
    const headers = { "x-forwarded-proto": "https" };
    const answer = await ask(shell, `http://garden.example${owner}tasks.ics`, { headers });
    expect(answer.status).toBe(200);
    expect(answer.headers.get("strict-transport-security")).toBe("max-age=31536000");
  });

  test("answers directly, with or without something after the feed's name", async () => {
    for (const rest of ["tasks.ics", "tasks.ics?", "tasks.ics?x=1", ""]) {
      expect((await ask(shell, `${owner}${rest}`)).status).toBe(200);
    }
    expect((await ask(shell, owner.slice(0, -1))).status).toBe(200);
    expect((await ask(shell, `${owner}tasks.ics/`)).status).toBe(404);
    expect((await ask(shell, `${owner}/tasks.ics`)).status).toBe(404);
  });
});

test.each([
  "/%E0%A4%A/x/y/z",
  "/%00/a/b/c",
  "/a/b/c/%zz",
  "/../../etc/passwd/x",
  "//evil.example/a/b",
  `/${"a".repeat(4000)}/b/c/d`,
  "/__proto__/constructor/toString/tasks.ics",
  "/quarry-lane/owner-1/\u{1f955}/tasks.ics",
])("a path that is no path of ours is nothing here: %s", async (path) => {
  const answer = await ask(shell, `https://garden.example${path}`);
  expect(answer.status).toBe(404);
  expect(answer.headers.get("content-type")).toBe("text/plain; charset=utf-8");
});

describe("revoking", () => {
  test("closes a link at once, and only for who keeps the garden", async () => {
    const reader = await linkTo("quarry-lane", "reader");
    const close = { method: "DELETE" };
    expect((await ask(shell, `${reader}tasks.ics`)).status).toBe(200);
    expect((await ask(shell, `${reader}links/owner-1`, close)).status).toBe(404);
    expect((await ask(shell, `${owner}links/reader-1`, close)).status).toBe(200);
    expect((await ask(shell, `${reader}tasks.ics`)).status).toBe(404);
  });

  test("closes nothing that is no link, and not the deployment's own key", async () => {
    for (const segment of ["nonsense", "admin-1", "helper-"]) {
      const init = { method: "DELETE" };
      expect((await ask(shell, `${owner}links/${segment}`, init)).status).toBe(404);
    }
  });
});

test("a page with its object down is a short 503, and the log has no link", async () => {
  const said = vi.spyOn(console, "error").mockReturnValue();
  const answer = await ask({ ...shell, gardenOf: DOWN }, owner);
  expect(answer.status).toBe(503);
  expect(answer.headers.get("content-type")).toBe("text/plain; charset=utf-8");
  expect(String(said.mock.calls[0])).not.toContain(owner.split("/")[3]);
  said.mockRestore();
});

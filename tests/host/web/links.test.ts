import { beforeAll, describe, expect, test } from "vitest";

import { ask, linkTo, ORIGIN, PLAN, publish, type Shell, shellWith } from "./garden.ts";

let shell: Shell;
let owner: string;

beforeAll(async () => {
  shell = shellWith();
  await publish(shell, "quarry-lane");
  owner = await linkTo("quarry-lane", "owner");
});

const form = (link: string, say: string): RequestInit => ({
  method: "POST",
  body: new URLSearchParams({ link, do: say }).toString(),
  headers: { "content-type": "application/x-www-form-urlencoded" },
});

const page = async (path = `${owner}links`) => (await ask(shell, path)).text();

describe("an owner's links", () => {
  test("are shown one at a time, as text and a code, and kept by nothing on the way", async () => {
    expect(await page()).not.toContain("/helper-imre-1/");
    const answer = await ask(shell, `${owner}links`, form("helper-imre-1", "show"));
    const html = await answer.text();
    expect(html).toContain(
      `<code>${ORIGIN}${await linkTo("quarry-lane", "helper", "imre")}</code>`,
    );
    expect(html).toContain('<svg class="qr"');
    expect(answer.headers.get("cache-control")).toBe("no-store");
  });

  test("are revoked one by one, and the next takes the place", async () => {
    const first = await linkTo("quarry-lane", "helper", "oda");
    expect((await ask(shell, `${first}sessions.ics`)).status).toBe(200);
    const answer = await ask(shell, `${owner}links`, form("helper-oda-1", "revoke"));
    expect(answer.headers.get("location")).toBe(`${owner}links?revoked=helper-oda-1`);
    expect((await ask(shell, `${first}sessions.ics`)).status).toBe(404);
    const html = await page();
    expect(html).toContain('value="helper-oda-2"');
    expect(html).toContain("helper-oda-1, 7 May 2027");
    expect((await ask(shell, `${owner}links`, form("helper-oda-1", "show"))).status).toBe(400);
    const second = await linkTo("quarry-lane", "helper", "oda", 2);
    expect((await ask(shell, `${second}sessions.ics`)).status).toBe(200);
    const imre = await linkTo("quarry-lane", "helper", "imre");
    expect((await ask(shell, imre)).status).toBe(200);
  });

  test("say which of them a calendar uses", async () => {
    await ask(shell, `${await linkTo("quarry-lane", "helper", "imre")}sessions.ics`);
    expect(await page()).toMatch(/Imre<\/h3><p class="faint">A calendar uses it\./);
  });

  test("of somebody no plan names any more can still be seen and revoked", async () => {
    await publish(shell, "brook");
    const imre = await linkTo("brook", "helper", "imre");
    expect((await ask(shell, imre)).status).toBe(200);
    await publish(shell, "brook", PLAN.replace("person Imre\n", ""), 1);
    const links = `${await linkTo("brook", "owner")}links`;
    expect(await page(links)).toMatch(/nobody in the plan[\s\S]*value="helper-imre-1"/);
    await ask(shell, links, form("helper-imre-1", "revoke"));
    expect((await ask(shell, imre)).status).toBe(404);
  });
});

describe("an owner's own link", () => {
  const shownIn = (html: string) =>
    /<code>https:\/\/garden\.example([^<]+)<\/code>/.exec(html)?.[1] ?? "";
  const next = async (path: string) =>
    shownIn(await (await ask(shell, `${path}links`, form("", "next"))).text());

  test("shows the next, two at once too, from which every other is closed, whoever made it", async () => {
    await publish(shell, "weir");
    const first = await linkTo("weir", "owner");
    const second = await next(first);
    expect(second).toMatch(/^\/weir\/owner-[1-9]\d{5}\//);
    expect([(await ask(shell, first)).status, (await ask(shell, second)).status]).toEqual([
      200, 200,
    ]);
    const [intruders, third] = await Promise.all([next(first), next(first)]);
    for (const path of [second, intruders, third])
      expect((await ask(shell, path)).status).toBe(200);
    expect(await page(`${third}links`)).toContain('value="close"');
    const closed = await ask(shell, `${third}links`, form("", "close"));
    expect(closed.headers.get("location")).toBe(`${third}links`);
    for (const path of [first, second, intruders, await linkTo("weir", "owner", null, 2)]) {
      expect((await ask(shell, path)).status).toBe(404);
      expect((await ask(shell, `${path}tasks.ics`)).status).toBe(404);
    }
    expect((await ask(shell, third)).status).toBe(200);
    const admins = await ask(shell, `${await linkTo("weir", "admin")}links`);
    expect(await admins.json()).toMatchObject({ owner: third });
  });

  test("is revoked by nobody one by one: it is replaced", async () => {
    for (const path of [owner, await linkTo("quarry-lane", "admin")])
      expect((await ask(shell, `${path}links/owner-1`, { method: "DELETE" })).status).toBe(404);
    expect((await ask(shell, `${owner}links`, form("owner-1", "revoke"))).status).toBe(400);
  });
});

test.each([
  ["nothing", "", "show"],
  ["no link", "helper-", "show"],
  ["the deployment's", "admin-1", "show"],
  ["the deployment's, to revoke", "admin-1", "revoke"],
  ["an invitation", "invitation-1", "show"],
  ["somebody's whom no plan names", "helper-cy-1", "show"],
  ["an owner's far ahead", "owner-7", "show"],
  ["something else with it", "reader-1", "delete"],
])("a form that asks for %s gets nothing", async (_, link, say) => {
  const answer = await ask(shell, `${owner}links`, form(link, say));
  expect(answer.status).toBe(400);
  expect(await answer.text()).not.toContain("/");
});

describe("the links an admin hands out", () => {
  test("are the owner's page, the household's calendar and each person's own", async () => {
    await publish(shell, "lea");
    const path = `${await linkTo("lea", "admin")}links`;
    expect(await (await ask(shell, path)).json()).toEqual({
      garden: "lea",
      name: "Quarry Lane",
      owner: await linkTo("lea", "owner"),
      household: `${await linkTo("lea", "helper")}household.ics`,
      people: [
        { key: "imre", name: "Imre", path: `${await linkTo("lea", "helper", "imre")}sessions.ics` },
        { key: "oda", name: "Oda", path: `${await linkTo("lea", "helper", "oda")}sessions.ics` },
      ],
    });
  });

  test("are of no garden that is not there", async () => {
    expect((await ask(shell, `${await linkTo("nowhere", "admin")}links`)).status).toBe(404);
  });
});

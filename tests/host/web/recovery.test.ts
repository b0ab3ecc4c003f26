import { beforeAll, describe, expect, test } from "vitest";
import type { Day } from "../../../src/base/days/day.ts";
import { engine as core } from "../../../src/host/edge/core.ts";
import type { Engine } from "../../../src/host/edge/engine.ts";
import { typed } from "./forms.ts";
import { ask, inStore, linkTo, ORIGIN, publish, type Shell, shellWith } from "./garden.ts";

let shell: Shell;
beforeAll(() => {
  shell = shellWith();
});

const post = (path: string, form: Record<string, string>, over: Partial<Shell> = {}) =>
  ask({ ...shell, ...over }, path, {
    method: "POST",
    body: new URLSearchParams(form).toString(),
    headers: { "content-type": "application/x-www-form-urlencoded" },
  });

const phraseIn = (html: string) => /(?:[a-z2-7]{4} ){5}[a-z2-7]{4}/.exec(html)?.[0] ?? "";
const linkIn = (html: string) =>
  /<code>https:\/\/garden\.example([^<]+)<\/code>/.exec(html)?.[1] ?? "";

/** The phrase that an owner makes on the page of links. */
async function madeBy(owner: string): Promise<string> {
  const made = await post(`${owner}links`, { do: "phrase" });
  expect(made.headers.get("cache-control")).toBe("no-store");
  return phraseIn(await made.text());
}

describe("an owner shut out by whoever has their link", () => {
  test("comes back by the phrase, everybody else is out, and the phrase is used up", async () => {
    await publish(shell, "lane");
    const owner = await linkTo("lane", "owner");
    const phrase = await madeBy(owner);
    // The intruder takes the next link, and closes the owner's.
    const intruder = linkIn(await (await post(`${owner}links`, { do: "next" })).text());
    await post(`${intruder}links`, { do: "close" });
    expect((await ask(shell, owner)).status).toBe(404);
    // They can't make a phrase of their own, since there is one.
    expect((await post(`${intruder}links`, { do: "phrase" })).status).toBe(403);
    expect((await post(`${intruder}links`, { do: "phrase", phrase: "a" })).status).toBe(403);

    const back = await post("/recover", { garden: "lane", phrase: ` ${phrase.toUpperCase()} ` });
    expect([back.status, back.headers.get("cache-control")]).toEqual([200, "no-store"]);
    const html = await back.text();
    const again = linkIn(html);
    expect((await ask(shell, again)).status).toBe(200);
    expect((await ask(shell, intruder)).status).toBe(404);
    expect((await post("/recover", { garden: "lane", phrase })).status).toBe(403);
    const next = phraseIn(html);
    expect(next).not.toBe(phrase);
    expect((await post("/recover", { garden: "lane", phrase: next })).status).toBe(200);
  });

  test("comes back by the deployment's key, and a phrase that the intruder made is void", async () => {
    await publish(shell, "mill");
    const owner = await linkTo("mill", "owner");
    const phrase = await madeBy(owner);
    const answer = await ask(shell, `${await linkTo("mill", "admin")}links/owner`, {
      method: "DELETE",
    });
    const { owner: next } = (await answer.json()) as { owner: string };
    expect((await ask(shell, owner)).status).toBe(404);
    expect((await ask(shell, next)).status).toBe(200);
    expect((await post("/recover", { garden: "mill", phrase })).status).toBe(403);
    for (const path of [next, await linkTo("mill", "helper", "imre")])
      expect((await ask(shell, `${path}links/owner`, { method: "DELETE" })).status).toBe(404);
    const nowhere = `${await linkTo("nowhere", "admin")}links/owner`;
    expect((await ask(shell, nowhere, { method: "DELETE" })).status).toBe(404);
  });
});

describe("a phrase", () => {
  test("is used by one of two who come with it at once", async () => {
    await publish(shell, "twice");
    const phrase = await madeBy(await linkTo("twice", "owner"));
    const both = await Promise.all([1, 2].map(() => post("/recover", { garden: "twice", phrase })));
    expect(both.map(({ status }) => status).sort()).toEqual([200, 403]);
  });

  test("is made anew by whoever has it, told by its day, and stands in no page and no store", async () => {
    await publish(shell, "told");
    const owner = await linkTo("told", "owner");
    const phrase = await madeBy(owner);
    const page = await (await ask(shell, `${owner}links`)).text();
    expect(page).toContain("A recovery phrase was made on 7 May 2027.");
    expect(page).not.toContain(phrase);
    const stored = await inStore("told", (sql) =>
      JSON.stringify(sql.rows("SELECT * FROM recovery")),
    );
    expect(stored).not.toContain(phrase.slice(0, 9));
    const next = phraseIn(await (await post(`${owner}links`, { do: "phrase", phrase })).text());
    expect((await post("/recover", { garden: "told", phrase })).status).toBe(403);
    expect((await post("/recover", { garden: "told", phrase: next })).status).toBe(200);
  });
});

test("a garden's first owner gets the phrase with the link, and the used invitation shows neither once another link is in force", async () => {
  const link = await linkTo("k7dq2mxw", "invitation");
  const form = Object.fromEntries(typed({ at: "look", step: "next" }));
  const real = { engine: core };
  const html = await (await post(link, form, real)).text();
  const owner = await linkTo("k7dq2mxw", "owner");
  expect(html).toContain(`${ORIGIN}${owner}`);
  expect(phraseIn(html)).not.toBe("");
  expect((await post(link, form, real)).status).toBe(200);
  const next = linkIn(await (await post(`${owner}links`, { do: "next" }, real)).text());
  await post(`${next}links`, { do: "close" }, real);
  expect((await post(link, form, real)).status).toBe(404);
});

test("a helper's undoing of another's answer says who did it, on the job's page and in the diary", async () => {
  await publish(shell, "undone");
  const task = "2027/thin-beets/do/1";
  const imre = await linkTo("undone", "helper", "imre");
  const oda = await linkTo("undone", "helper", "oda");
  await post(`${imre}on/${task}`, { task, say: "done" });
  await post(`${oda}on/${task}`, { task, say: "undo: done" });
  const said = "On 7 May Oda took back what Imre had said: done.";
  expect(await (await ask(shell, `${imre}on/${task}`)).text()).toContain(said);
  const line = { line: 3, day: 20_944 as Day, text: "carrots up", understood: [] };
  const { engine } = shell;
  const build: Engine["build"] = (input) => ({ ...engine.build(input), diary: [line] });
  const told = { engine: { ...engine, build } };
  await post(`${oda}diary`, { say: "carrots up", day: "2027-05-06" }, told);
  expect(await (await ask(shell, `${imre}diary`)).text()).toMatch(
    /6 May 2027<\/dt><dd(?: id="newest")?><p>carrots up<span class="faint"> \(Oda\)<\/span>/,
  );
  await post(`${imre}on/${task}`, { task, say: "done" });
  expect(await (await ask(shell, `${imre}on/${task}`)).text()).not.toContain("took back");
  await post(`${imre}on/${task}`, { task, say: "undo: done" });
  expect(await (await ask(shell, `${imre}on/${task}`)).text()).not.toContain("took back");
});

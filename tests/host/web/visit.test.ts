import { afterEach, expect, test, vi } from "vitest";
import { sqlStoreOf } from "../../../src/host/store/sql.ts";
import { ports } from "../ports.ts";
import { ask, inStore, linkTo, publish, shellWith } from "./garden.ts";

afterEach(() => vi.restoreAllMocks());

test("a visit that fails inside its object is a short 503, and the log has the garden and no link", async () => {
  const shell = shellWith();
  await publish(shell, "brook");
  const said = vi.spyOn(console, "error").mockReturnValue();
  await inStore("brook", (sql) => sql.rows("DROP TABLE revoked"));
  const owner = await linkTo("brook", "owner");
  const answer = await ask(shell, owner);
  expect([answer.status, answer.headers.get("retry-after")]).toEqual([503, "600"]);
  expect(said.mock.calls.flat().map(String).join("\n")).toContain('"garden":"brook"');
  expect(said.mock.calls.flat().map(String).join("\n")).not.toContain(owner.split("/")[3]);
});

test("a year that can't be built is no page, and its plan can still be mended", async () => {
  vi.spyOn(console, "error").mockReturnValue();
  const shell = shellWith();
  const build = () => {
    throw new Error("no such crop");
  };
  const broken = { ...shell, engine: { ...shell.engine, build } };
  await publish(broken, "weir");
  const owner = await linkTo("weir", "owner");
  expect((await ask(broken, owner)).status).toBe(503);
  for (const rest of ["plan/2027", "links", "leaving"])
    expect((await ask(broken, `${owner}${rest}`)).status, rest).toBe(200);
  expect((await ask(shell, owner)).status).toBe(200);
});

test("the number that a visitor is shown is the one in the log", async () => {
  const said = vi.spyOn(console, "error").mockReturnValue();
  const shell = shellWith();
  await publish(shell, "ford");
  await inStore("ford", (sql) => sql.rows("DROP TABLE revoked"));
  const text = await (await ask(shell, await linkTo("ford", "owner"))).text();
  const number = /[a-z2-7]{4}-[a-z2-7]{4}/.exec(text)?.[0] ?? "none";
  expect(said.mock.calls.flat().map(String).join("\n")).toContain(`"number":"${number}"`);
});

const SAYS: RequestInit = {
  method: "POST",
  body: new URLSearchParams({ say: "carrots up", task: "2027/thin-beets/do/1" }).toString(),
  headers: { "content-type": "application/x-www-form-urlencoded" },
};

test("what is stored is said to be stored, though all that comes behind it fails", async () => {
  vi.spyOn(console, "error").mockReturnValue();
  const shell = shellWith();
  let down = false;
  ports.sqlOf = (storage) => {
    const { rows, transaction } = sqlStoreOf(storage);
    const failing: typeof rows = (query, ...bound) => {
      if (down && query.includes("AS owed")) throw new Error("the store went away");
      return rows(query, ...bound);
    };
    return { rows: failing, transaction };
  };
  await publish(shell, "mill");
  ports.sqlOf = sqlStoreOf;
  down = true;
  const owner = await linkTo("mill", "owner");
  const build = () => {
    throw new Error("nothing can be built");
  };
  const broken = { ...shell, engine: { ...shell.engine, build } };
  expect((await ask(broken, `${owner}diary`, SAYS)).status).toBe(303);
  const form = { base: "1", text: "name Quarry Lane\nyear 2027\n" };
  const body = new URLSearchParams(form).toString();
  const saved = await ask(broken, `${owner}plan/2027`, { ...SAYS, body });
  expect([saved.status, saved.headers.get("location")]).toEqual([303, `${owner}plan/2027?saved=2`]);
  const checkPlan = () => {
    throw new Error("no such crop");
  };
  const shown = await ask(
    { ...broken, engine: { ...broken.engine, checkPlan } },
    `${owner}plan/2027?saved=2`,
  );
  expect(await shown.text()).toContain("Saved as version 2.");
  expect(await inStore("mill", (sql) => sql.rows("SELECT text FROM diary"))).toEqual([
    { text: "carrots up" },
  ]);
});

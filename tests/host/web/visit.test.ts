import { afterEach, expect, test, vi } from "vitest";
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
  expect(said.mock.calls.flat().map(String).join("\n")).toContain("garden brook");
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

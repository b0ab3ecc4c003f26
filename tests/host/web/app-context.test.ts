import { expect, test } from "vitest";
import { appContextOf, type Core } from "../../../src/host/web/app-context.ts";

const bindings = {
  DB: {} as D1Database,
  VERSION: { id: "version 1" },
  SECRET: "a secret for tests, of more than 32 characters",
};
const core = {} as Core;
const now = () => 0;

test("what is not bound has its plain meaning: no address of its own, the first epoch", async () => {
  const shell = await appContextOf(bindings, core, now);
  expect(shell).toMatchObject({ origin: null, epoch: "0", code: "version 1" });
});

test("an address is cut to its origin, and another address is other code, since links change", async () => {
  const shell = await appContextOf({ ...bindings, ORIGIN: "https://garden.example/x" }, core, now);
  expect(shell.origin).toBe("https://garden.example");
  expect(shell.code).not.toBe("version 1");
});

test("without a secret nothing is served", async () => {
  const { SECRET, ...rest } = bindings;
  expect(SECRET).toBeDefined();
  await expect(appContextOf(rest, core, now)).rejects.toThrow("32 characters");
});

import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { migrate, runLocally } from "../../src/host/local.ts";
import { freePort } from "../port.ts";

test("the worker answers on this machine with what it is bound to, its store up to date, till it is ended", async () => {
  const state = mkdtempSync(join(tmpdir(), "sowbell-local-"));
  onTestFinished(() => rmSync(state, { recursive: true, force: true }));
  await migrate(state);
  const port = await freePort();
  const bindings = { SECRET: "a secret of this test, long enough for it" };
  const end = await runLocally({ port, bindings, state });
  const here = `http://127.0.0.1:${port}`;
  expect((await fetch(`${here}/healthz`)).status).toBe(200);
  // A link that was never given is looked up nowhere; the cron's run asks the store.
  expect(await (await fetch(`${here}/cdn-cgi/handler/scheduled`)).text()).toBe("ok");
  await end();
  await expect(fetch(`${here}/healthz`)).rejects.toThrow();
}, 90_000);

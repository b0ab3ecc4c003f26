import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { keyFrom, pathOf } from "../../src/host/links/mac.ts";
import { lockFolder, runLocally } from "../../src/host/local.ts";
import { freePort } from "../port.ts";

function freshFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "sowbell-local-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

const SECRET = "a secret of this test, long enough for it";
const PLAN =
  "garden: Lane\nyear: 2027\nplace: { clock: UTC, last frost: about 6 May, first frost: about 2 Oct }\ncrops: [leek]\n";

test("the worker answers on this machine with what it is bound to, and keeps its gardens when it is ended", async () => {
  const state = freshFolder();
  const port = await freePort();
  const here = `http://127.0.0.1:${port}`;
  const link = { garden: "lane", role: "admin", person: null, serial: 1 } as const;
  const plan = `${here}${await pathOf(link, await keyFrom(SECRET))}plans/2027`;
  const end = await runLocally({ port, bindings: { SECRET }, state });
  expect((await fetch(`${here}/healthz`)).status).toBe(200);
  const body = JSON.stringify({ text: PLAN, file: "lane/2027.yaml" });
  const put = { method: "PUT", body, headers: { "if-none-match": "*" } };
  expect((await fetch(plan, put)).status).toBe(201);
  await end();
  await expect(fetch(`${here}/healthz`)).rejects.toThrow();

  const again = await runLocally({ port, bindings: { SECRET }, state });
  expect(await (await fetch(plan)).json()).toMatchObject({ version: 1, text: PLAN });
  await again();
}, 120_000);

test("a folder is one process's alone; one that died lets it go", () => {
  const folder = freshFolder();
  const unlock = lockFolder(folder);
  unlock();
  // The first process of any machine runs, and is not this one.
  writeFileSync(join(folder, "lock"), "1");
  expect(() => lockFolder(folder)).toThrow("process 1 runs Sowbell");
  writeFileSync(join(folder, "lock"), "999999999");
  lockFolder(folder)();
  lockFolder(folder)();
});

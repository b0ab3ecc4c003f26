import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { secretIn } from "../../src/host/cli/secrets.ts";
import { start } from "../../src/host/start.ts";
import { freePort } from "../port.ts";
import { CHROMIUM, NO_CHROMIUM } from "./found.ts";
import { layOut } from "./gardens.ts";

/** The Sowbell of a run: its address, and the secret its links are made with. */
export type Up = { readonly server: string; readonly secret: string };

declare module "vitest" {
  interface ProvidedContext {
    readonly sowbell: Up;
  }
}

/** Starts one Sowbell of its own for all files, with nothing of the gardener's, and ends it behind them. */
export default async function once(project: TestProject): Promise<() => Promise<void>> {
  if (CHROMIUM === null) {
    console.log(NO_CHROMIUM);
    return async () => undefined;
  }
  const folder = mkdtempSync(join(tmpdir(), "sowbell-browser-"));
  const [plans, secrets] = [join(folder, "plans"), join(folder, ".dev.vars")];
  mkdirSync(plans);
  layOut(plans);
  const heard: string[] = [];
  const say = (line: string) => heard.push(line);
  const state = join(folder, "state");
  const running = await start({ port: await freePort(), plans, secrets, state, say });
  const refused = heard.filter((line) => line.includes("not published"));
  if (refused.length > 0) throw new Error(heard.join("\n"));
  project.provide("sowbell", { server: running.server, secret: secretIn(secrets) ?? "" });
  return async () => {
    await running.stop();
    rmSync(folder, { recursive: true, force: true });
  };
}

import { type ChildProcess, execFileSync } from "node:child_process";
import { subscribe, unsubscribe } from "node:diagnostics_channel";
import { once } from "node:events";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { readD1Migrations } from "@cloudflare/vitest-pool-workers";
import { Miniflare, type WorkerOptions } from "miniflare";
import { unstable_getMiniflareWorkerOptions } from "wrangler";
import { call, textOf } from "./calls.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));

/** The secret of every rough runtime, in letters that are looked for in its answers. */
export const SECRET = "rough-secret-that-nobody-may-ever-read";

/** A folder that is new and empty; `remove` takes it away with what is in it. */
export function freshFolder(): { readonly path: string; readonly remove: () => void } {
  const path = mkdtempSync(join(tmpdir(), "sowbell-rough-"));
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) };
}

/** The worker in one piece as a deploy puts it together, in that folder; made without the network. Gives its path. */
export function bundled(folder: string): string {
  const program = join(ROOT, "node_modules", "wrangler", "bin", "wrangler.js");
  const how = ["--dry-run", "--outdir", folder, "--config", join(ROOT, "wrangler.toml")];
  const env = { ...process.env, WRANGLER_HIDE_BANNER: "true", WRANGLER_SEND_METRICS: "false" };
  execFileSync(process.execPath, [program, "deploy", ...how], { cwd: tmpdir(), env });
  return join(folder, "worker.js");
}

/** The platform's own runtime as a process of its own, answering at `origin` on this machine alone. */
export type Runtime = {
  readonly origin: string;
  readonly pid: number;
  readonly ask: Ask;
  /** Ends the process at once, in the midst of whatever it does, and waits until it is gone. */
  readonly kill: () => Promise<void>;
  readonly stop: () => Promise<void>;
};

/** Nothing is looked up elsewhere and no request is logged, which would take longer than to answer it. */
const QUIET = { logRequests: false, cf: false, host: "127.0.0.1", port: 0 } as const;

/** What the runtime says on its own: kept out of the way, for a thousand refused polls say a thousand things. */
const UNHEARD = {
  handleRuntimeStdio: (out: NodeJS.ReadableStream, err: NodeJS.ReadableStream) => {
    out.resume();
    err.resume();
  },
};

/** Asks the store beside our worker: statements with what is bound to them, run together. Not through the worker. */
export type Ask = (
  ...statements: readonly (readonly [query: string, ...bound: (string | number)[]])[]
) => Promise<readonly (readonly Readonly<Record<string, string | number | null>>[])[]>;

const STORE = `export default {
  async fetch(request, { DB }) {
    const said = await request.json();
    const all = said.map(([query, ...bound]) => DB.prepare(query).bind(...bound));
    const done = await DB.batch(all);
    return Response.json(done.map(({ results }) => results));
  },
};`;

const FROM_WRANGLER = unstable_getMiniflareWorkerOptions(join(ROOT, "wrangler.toml")).workerOptions;
const { compatibilityDate, compatibilityFlags, d1Databases } = FROM_WRANGLER;
const DIRECT = [{ host: "127.0.0.1", port: 0 }];

/** Starts our worker over the store in a folder, which is kept when it ends; brings the store up to date unless told not to. */
export async function startOurs(
  { script, state }: { readonly script: string; readonly state: string },
  { migrated = true }: { readonly migrated?: boolean } = {},
): Promise<Runtime> {
  // Nothing of a gardener's own `.dev.vars`.
  const bindings = { SECRET };
  const text = readFileSync(script, "utf8");
  const running = await startWorker({ ...FROM_WRANGLER, bindings, script: text }, state);
  if (migrated) await migrate(running.ask);
  return running;
}

/** Starts any other worker of one module under the very same settings. */
export function startOther(script: string, state: string): Promise<Runtime> {
  return startWorker({ compatibilityDate, compatibilityFlags, d1Databases, script }, state);
}

async function startWorker(
  worker: Partial<WorkerOptions> & { readonly script: string },
  state: string,
): Promise<Runtime> {
  const runtime = { compatibilityDate, compatibilityFlags, d1Databases, modules: true };
  const store = { ...runtime, name: "store", script: STORE, unsafeDirectSockets: DIRECT };
  const workers = [{ ...worker, name: "worker", modules: true }, store] as WorkerOptions[];
  const settings = { ...QUIET, ...UNHEARD, workers, d1Persist: state };
  const { made, child, pid } = await withProcess(() => new Miniflare(settings));
  const { origin } = await made.ready;
  const ask = askingAt(await made.unsafeGetDirectURL("store"));
  return { origin, pid, ask, kill: () => killed(child), stop: () => made.dispose() };
}

function askingAt(address: URL): Ask {
  return async (...statements) => {
    const body = JSON.stringify(statements);
    const answer = await call(address.href, { method: "POST", body });
    if (answer.status !== 200) throw new Error(`the store answered ${answer.status}`);
    return JSON.parse(textOf(answer));
  };
}

/** What a start gives, and the process of the runtime that it begins, once it is ready. */
export async function withProcess<Made extends { readonly ready: Promise<unknown> }>(
  make: () => Made,
) {
  const spawned: ChildProcess[] = [];
  const note = (said: unknown) => {
    spawned.push((said as { readonly process: ChildProcess }).process);
  };
  subscribe("child_process", note);
  const made = make();
  await made.ready;
  unsubscribe("child_process", note);
  const child = spawned.find(({ spawnfile }) => spawnfile.includes("workerd"));
  if (child?.pid === undefined) throw new Error("the runtime has no process");
  return { made, child, pid: child.pid };
}

async function killed(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = once(child, "exit");
  child.kill("SIGKILL");
  await gone;
}

/** As `wrangler d1 migrations apply` does, told by a table of what was applied. */
async function migrate(ask: Ask): Promise<void> {
  await ask(["CREATE TABLE IF NOT EXISTS applied (name TEXT PRIMARY KEY) WITHOUT ROWID"]);
  const [done = []] = await ask(["SELECT name FROM applied"]);
  const names = new Set(done.map(({ name }) => name));
  for (const { name, queries } of await readD1Migrations(join(ROOT, "src/host/store/migrations"))) {
    if (names.has(name)) continue;
    await ask(...queries.map((query) => [query] as const), [
      "INSERT INTO applied (name) VALUES (?1)",
      name,
    ]);
  }
}

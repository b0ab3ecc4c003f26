import { type ChildProcess, execFileSync } from "node:child_process";
import { subscribe, unsubscribe } from "node:diagnostics_channel";
import { once } from "node:events";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
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
  return join(folder, "deployed.js");
}

/** The platform's own runtime as a process of its own, answering at `origin` on this machine alone. */
export type Runtime = {
  readonly origin: string;
  /** Where a second isolate of the worker answers, over the same gardens. */
  readonly second: string;
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

/** Asks a garden's own store: statements with what is bound to them, in turn. Not through the worker. */
export type Ask = (
  garden: string,
  ...statements: readonly (readonly [query: string, ...bound: (string | number)[]])[]
) => Promise<readonly (readonly Readonly<Record<string, string | number | null>>[])[]>;

/** Stands in front of our script: the garden's object, which can also be asked with statements of ours. */
const ASKABLE = `
import worker, { GardenObject } from "./deployed.js";
export default worker;
export class AskableGarden extends GardenObject {
  ask(said) {
    return said.map(([query, ...bound]) => this.ctx.storage.sql.exec(query, ...bound).toArray());
  }
}`;

const ASKING = `export default {
  async fetch(request, { GARDENS }) {
    const { garden, said } = await request.json();
    return Response.json(await GARDENS.getByName(garden).ask(said));
  },
};`;

const FROM_WRANGLER = unstable_getMiniflareWorkerOptions(join(ROOT, "wrangler.toml")).workerOptions;
const { compatibilityDate, compatibilityFlags } = FROM_WRANGLER;
const DIRECT = [{ host: "127.0.0.1", port: 0 }];
const RUNTIME = { compatibilityDate, compatibilityFlags, unsafeDirectSockets: DIRECT };

/** Gardens that live in the worker of that name, or in the one that they are bound to. */
const gardens = (scriptName?: string) => ({
  GARDENS: { className: "AskableGarden", useSQLite: true, ...(scriptName && { scriptName }) },
});

const moduleOf = (contents: string, path = "worker.js") =>
  [{ type: "ESModule", path, contents }] as const;

/** Starts our worker over the stores in a folder, which is kept when it ends; beside it a second isolate of it over the same gardens. */
export async function startOurs({
  script,
  state,
}: {
  readonly script: string;
  readonly state: string;
}): Promise<Runtime> {
  const ours = moduleOf(readFileSync(script, "utf8"), "deployed.js");
  const modules = [...moduleOf(ASKABLE), ...ours];
  // Nothing of a gardener's own `.dev.vars`.
  const worker = { ...FROM_WRANGLER, ...RUNTIME, bindings: { SECRET }, modules };
  return startWorkers(
    [
      { ...worker, name: "worker", durableObjects: gardens() },
      { ...worker, name: "second", durableObjects: gardens("worker") },
      { ...RUNTIME, name: "asking", modules: moduleOf(ASKING), durableObjects: gardens("worker") },
    ],
    state,
  );
}

/** Starts any other worker of one module under the very same settings, with the classes of its own objects. */
export function startOther(
  script: string,
  state: string,
  durableObjects: WorkerOptions["durableObjects"] = {},
): Promise<Runtime> {
  const worker = { ...RUNTIME, name: "worker", modules: moduleOf(script), durableObjects };
  return startWorkers([worker], state);
}

async function startWorkers(workers: readonly object[], state: string): Promise<Runtime> {
  const settings = { ...QUIET, ...UNHEARD, workers: workers as WorkerOptions[] };
  const { made, child, pid } = await withProcess(
    () => new Miniflare({ ...settings, durableObjectsPersist: state }),
  );
  const { origin } = await made.ready;
  const at = async (name: string) => (await made.unsafeGetDirectURL(name)).origin;
  const isOurs = workers.length > 1;
  return {
    ...{ origin, pid, second: isOurs ? await at("second") : origin },
    ask: isOurs ? askingAt(await at("asking")) : () => Promise.reject(new Error("no gardens")),
    kill: () => killed(child),
    stop: () => made.dispose(),
  };
}

function askingAt(address: string): Ask {
  return async (garden, ...said) => {
    const body = JSON.stringify({ garden, said });
    const answer = await call(address, { method: "POST", body });
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

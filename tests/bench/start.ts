import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, parse } from "node:path";
import { fileURLToPath } from "node:url";
import { Miniflare, type WorkerOptions } from "miniflare";
import { unstable_getMiniflareWorkerOptions } from "wrangler";
import { withProcess } from "../rough/runtime.ts";
import { restingCpuMsOf } from "./cpu.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const CONFIG = join(ROOT, "wrangler.toml");

const {
  versionMetadata: _,
  durableObjects = {},
  ...PLATFORM
} = unstable_getMiniflareWorkerOptions(CONFIG).workerOptions;

/** The secret of every link here. */
export const SECRET = "a secret of the bench that opens nothing else";

/** One workerd process with several workers, each in an isolate of its own and at an address of its own. */
export type Runtime = {
  readonly pid: number;
  /** CPU time [ms] until every worker was loaded. */
  readonly startCpuMs: number;
  readonly addressOf: (worker: string) => Promise<string>;
  readonly stop: () => Promise<void>;
};

/** Two scripts, each in one piece: worker.ts here, and our worker as it is deployed. */
export type Scripts = { readonly jobs: string; readonly deployed: string };

/** Puts both together as a deploy does: module by module each call across files would cost more. Without the network. */
export function bundledScripts(folder: string): Scripts {
  const jobs = bundled("tests/bench/worker.ts", join(folder, "jobs"), jobsConfig(folder));
  return { jobs, deployed: bundled("src/host/deployed.ts", join(folder, "deployed"), CONFIG) };
}

/** The settings of the deploy without what it binds, since wrangler asks every script for the classes of its objects. */
function jobsConfig(folder: string): string {
  const config = join(folder, "wrangler.json");
  const { compatibilityDate, compatibilityFlags } = PLATFORM;
  const compatibility = {
    compatibility_date: compatibilityDate,
    compatibility_flags: compatibilityFlags,
  };
  writeFileSync(config, JSON.stringify({ name: "jobs", ...compatibility, keep_names: false }));
  return config;
}

function bundled(entry: string, folder: string, config: string): string {
  const program = join(ROOT, "node_modules", "wrangler", "bin", "wrangler.js");
  const how = ["--dry-run", "--outdir", folder, "--config", config];
  const env = { ...process.env, WRANGLER_HIDE_BANNER: "true", WRANGLER_SEND_METRICS: "false" };
  const words = [program, "deploy", join(ROOT, entry), ...how];
  execFileSync(process.execPath, words, { cwd: tmpdir(), env });
  return readFileSync(join(folder, `${parse(entry).name}.js`), "utf8");
}

/** Nothing is looked up elsewhere, no request is logged, and what the runtime prints is dropped. */
const QUIET = {
  ...{ logRequests: false, cf: false as const, host: "127.0.0.1", port: 0 },
  handleRuntimeStdio: (out: NodeJS.ReadableStream, err: NodeJS.ReadableStream) => {
    out.resume();
    err.resume();
  },
};

/** Starts workers in one process. Each is asked at its own address, without the proxy that otherwise stands in front. */
export async function startRuntime(workers: readonly WorkerOptions[]): Promise<Runtime> {
  const settings = { ...QUIET, workers: [...workers] };
  const { made, pid } = await withProcess(() => new Miniflare(settings));
  const startCpuMs = await restingCpuMsOf(pid);
  const addressOf = async (worker: string) => (await made.unsafeGetDirectURL(worker)).href;
  return { pid, startCpuMs, addressOf, stop: () => made.dispose() };
}

const OBJECTS = Object.entries(durableObjects as Readonly<Record<string, ObjectClass>>);

/** A class of durable objects that is bound to a worker. */
type ObjectClass = { readonly className: string; readonly useSQLite?: boolean };

/** A worker of that script with nothing bound to it. */
export function plainWorker(name: string, script: string): WorkerOptions {
  const { compatibilityDate, compatibilityFlags } = PLATFORM;
  return workerOf(name, script, { compatibilityDate, compatibilityFlags });
}

/**
 * Our worker as it is deployed, in a fresh isolate, with a clock that is ahead by so much [ms]. All of one process share
 * one store and pass for one version, so that what one of them has stored the next one finds.
 */
export function deployedWorker(name: string, script: string, aheadMs: number): WorkerOptions {
  return workerOf(name, `${clockAhead(aheadMs)}\n${script}`, bound());
}

/** A worker with the same bindings that does nothing but answer. */
export function constantWorker(name: string): WorkerOptions {
  const answer = `export default { fetch: () => new Response("ok\\n") };`;
  const classes = OBJECTS.map(([, { className }]) => `export class ${className} {}`);
  return workerOf(name, [answer, ...classes].join("\n"), bound());
}

function bound() {
  const objects = OBJECTS.map(([binding, object]) => {
    return [binding, { ...object, unsafeUniqueKey: `bench-${object.className}` }] as const;
  });
  const bindings = { SECRET, VERSION: { id: "bench", tag: "", timestamp: "" } };
  return { ...PLATFORM, bindings, durableObjects: Object.fromEntries(objects) };
}

function clockAhead(ms: number): string {
  return `{ const now = Date.now.bind(Date); Date.now = () => now() + ${ms}; }`;
}

function workerOf(name: string, script: string, options: object): WorkerOptions {
  return {
    ...options,
    name,
    modules: [{ type: "ESModule", path: `${name}.js`, contents: script }],
    unsafeDirectSockets: [{ host: "127.0.0.1", port: 0 }],
  } as WorkerOptions;
}

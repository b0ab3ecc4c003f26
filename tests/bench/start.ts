import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { Miniflare, type WorkerOptions } from "miniflare";
import { unstable_getMiniflareWorkerOptions } from "wrangler";
import { withProcess } from "../rough/runtime.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const CONFIG = join(ROOT, "wrangler.toml");
const { compatibilityDate, compatibilityFlags } =
  unstable_getMiniflareWorkerOptions(CONFIG).workerOptions;

/** One workerd process with several workers, each in an isolate of its own and at an address of its own. */
export type Runtime = {
  readonly pid: number;
  readonly addressOf: (worker: string) => Promise<string>;
  readonly stop: () => Promise<void>;
};

/** A worker to start: its name and its whole script. */
export type Script = { readonly name: string; readonly script: string };

/** A script in one piece, as a deploy puts it together: module by module each call across files would cost more. Without the network. */
export function bundle(entry: string, folder: string): string {
  const program = join(ROOT, "node_modules", "wrangler", "bin", "wrangler.js");
  const how = ["--dry-run", "--outdir", folder, "--config", CONFIG];
  const env = { ...process.env, WRANGLER_HIDE_BANNER: "true", WRANGLER_SEND_METRICS: "false" };
  const words = [program, "deploy", join(ROOT, entry), ...how];
  execFileSync(process.execPath, words, { cwd: tmpdir(), env });
  return readFileSync(join(folder, "worker.js"), "utf8");
}

/** Starts workers in one process, without the proxy that stands in front of them otherwise. */
export async function startRuntime(scripts: readonly Script[]): Promise<Runtime> {
  const workers = scripts.map(workerOf);
  const { made, pid } = await withProcess(() => new Miniflare({ ...QUIET, workers }));
  const addressOf = async (worker: string) => (await made.unsafeGetDirectURL(worker)).href;
  return { pid, addressOf, stop: () => made.dispose() };
}

/** Nothing is looked up elsewhere, no request is logged, and what the runtime prints is dropped. */
const QUIET = {
  ...{ logRequests: false, cf: false as const, host: "127.0.0.1", port: 0 },
  handleRuntimeStdio: (out: NodeJS.ReadableStream, err: NodeJS.ReadableStream) => {
    out.resume();
    err.resume();
  },
};

function workerOf({ name, script }: Script): WorkerOptions {
  return {
    name,
    modules: [{ type: "ESModule", path: `${name}.js`, contents: script }],
    ...{ compatibilityDate, compatibilityFlags: [...(compatibilityFlags ?? [])] },
    unsafeDirectSockets: [{ host: "127.0.0.1", port: 0 }],
  } as WorkerOptions;
}

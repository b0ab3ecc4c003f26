import { execFile } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { Log, LogLevel, Miniflare } from "miniflare";
import { unstable_getMiniflareWorkerOptions, unstable_readConfig } from "wrangler";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const CONFIG = join(ROOT, "wrangler.toml");
const WRANGLER_FOLDER = join(ROOT, ".wrangler");

/** Nothing leaves the machine: no figures of use, no banner's look for news, no place looked up. */
const OFFLINE_ENV = {
  WRANGLER_SEND_METRICS: "false",
  WRANGLER_HIDE_BANNER: "true",
  WRANGLER_LOG: "error",
  CLOUDFLARE_CF_FETCH_ENABLED: "false",
};

/** What the worker is started with: its port, what it is bound to (secrets too), and the folder of its stores, null for the usual one. */
export type LocalOptions = {
  readonly port: number;
  readonly bindings: Readonly<Record<string, string>>;
  readonly state: string | null;
};

/**
 * The worker in the platform's own runtime, on this machine alone, put together as a deploy does it. Without wrangler's own
 * server in between, which keeps something of every page and falls over after some thousands. Gives what ends it. Throws where
 * another process has the folder.
 */
export async function runLocally({
  port,
  bindings,
  state,
}: LocalOptions): Promise<() => Promise<void>> {
  const stores = join(state ?? join(WRANGLER_FOLDER, "state"), "v3");
  const unlock = lockFolder(stores);
  try {
    const modules = await bundleIn(join(state ?? WRANGLER_FOLDER, "bundle"));
    const runtime = new Miniflare({
      ...{ ...platform(stores), bindings: { ...bindings } },
      // Every module by name; the runtime would else look through the script's text for some.
      modules: [...modules],
      ...{ host: "127.0.0.1", port, cf: false },
      // Requests are not logged, since a link is a key; and stdout is for links alone.
      ...{ logRequests: false, log: new Log(LogLevel.NONE) },
      handleRuntimeStdio: (out, err) => {
        out.pipe(process.stderr);
        err.pipe(process.stderr);
      },
    });
    await runtime.ready;
    return async () => {
      await runtime.dispose();
      unlock();
    };
  } catch (error) {
    unlock();
    throw error;
  }
}

/**
 * Keeps a folder to this process, since two runtimes over the same stores would each keep a garden of their own in memory.
 * Gives what lets it go; a process that died lets it go too. Throws where another one has it.
 */
export function lockFolder(folder: string): () => void {
  mkdirSync(folder, { recursive: true });
  const file = join(folder, "lock");
  const holder = existsSync(file) ? Number(readFileSync(file, "utf8")) : 0;
  if (holder > 0 && holder !== process.pid && isRunning(holder))
    throw new Error(`process ${holder} runs Sowbell over ${folder} already`);
  rmSync(file, { force: true });
  writeFileSync(file, String(process.pid), { flag: "wx" });
  return () => rmSync(file, { force: true });
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}

/** What a deploy would send: the worker's script, and the texts that lie beside it. */
async function bundleIn(folder: string) {
  await wrangler("deploy", "--dry-run", "--outdir", folder, "--config", CONFIG);
  const read = (file: string) => readFileSync(join(folder, file), "utf8");
  const script = read("deployed.js");
  // Texts of earlier bundles may lie there still.
  const texts = readdirSync(folder).filter((file) => /\.txt$/.test(file) && script.includes(file));
  return [
    { type: "ESModule", path: "worker.js", contents: script },
    ...texts.map((file) => ({ type: "Text", path: file, contents: read(file) }) as const),
  ] as const;
}

/** The id that the former store of this machine had in wrangler.toml. */
const FORMER_ID = "00000000-0000-0000-0000-000000000000";

/** What wrangler.toml asks of the platform, as the runtime takes it, with the stores in a folder. */
function platform(stores: string) {
  const { name } = unstable_readConfig({ config: CONFIG });
  const { workerOptions } = unstable_getMiniflareWorkerOptions(CONFIG);
  const former = join(stores, "d1");
  return {
    ...workerOptions,
    // Objects are found again by the worker's name and their class.
    ...{ name: name ?? "sowbell", durableObjectsPersist: join(stores, "do") },
    ...(existsSync(former) && { d1Databases: { DB: FORMER_ID }, d1Persist: former }),
  };
}

/** Runs wrangler once; throws with what it said where it fails. */
async function wrangler(...words: readonly string[]): Promise<void> {
  const program = join(ROOT, "node_modules", "wrangler", "bin", "wrangler.js");
  const env = { ...process.env, ...OFFLINE_ENV };
  await promisify(execFile)(process.execPath, [program, ...words], { cwd: ROOT, env });
}

import { execFile } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { Log, LogLevel, Miniflare } from "miniflare";
import { unstable_readConfig } from "wrangler";

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

/** What the worker is started with: its port, what it is bound to (secrets too), and where its store lies, null for the usual folder. */
export type LocalOptions = {
  readonly port: number;
  readonly bindings: Readonly<Record<string, string>>;
  readonly state: string | null;
};

/** Brings the store on this machine up to date. Throws where it can't be. */
export async function migrate(state: string | null): Promise<void> {
  const persistArgs = state === null ? [] : ["--persist-to", state];
  await wrangler("d1", "migrations", "apply", "sowbell", "--local", ...persistArgs);
}

/**
 * The worker in the platform's own runtime, on this machine alone, put together as a deploy does it. Without wrangler's own
 * server in between, which keeps something of every page and falls over after some thousands. Gives what ends it.
 */
export async function runLocally({
  port,
  bindings,
  state,
}: LocalOptions): Promise<() => Promise<void>> {
  const bundle = join(state ?? WRANGLER_FOLDER, "bundle");
  await wrangler("deploy", "--dry-run", "--outdir", bundle, "--config", CONFIG);
  const script = readFileSync(join(bundle, "worker.js"), "utf8");
  const runtime = new Miniflare({
    ...{ ...platform(), modules: true, script, bindings: { ...bindings } },
    ...{ host: "127.0.0.1", port, cf: false, unsafeTriggerHandlers: true },
    d1Persist: join(state ?? join(WRANGLER_FOLDER, "state"), "v3", "d1"),
    // Requests are not logged, since a link is a key; and stdout is for links alone.
    ...{ logRequests: false, log: new Log(LogLevel.NONE) },
    handleRuntimeStdio: (out, err) => {
      out.pipe(process.stderr);
      err.pipe(process.stderr);
    },
  });
  await runtime.ready;
  return () => runtime.dispose();
}

/** What of wrangler.toml is read here; wrangler gives it without a type. */
type Config = {
  readonly compatibility_date?: string;
  readonly compatibility_flags: string[];
  readonly d1_databases: readonly { readonly binding: string; readonly database_id?: string }[];
  readonly ratelimits: readonly { readonly name: string; readonly simple: Limit }[];
  readonly version_metadata?: { readonly binding: string };
};

type Limit = { readonly limit: number; readonly period: 10 | 60 };

/** What wrangler.toml asks of the platform, as the runtime takes it. */
function platform() {
  const config: Config = unstable_readConfig({ config: CONFIG });
  return {
    compatibilityDate: config.compatibility_date ?? "",
    compatibilityFlags: config.compatibility_flags,
    d1Databases: Object.fromEntries(
      config.d1_databases.map(({ binding, database_id }) => [binding, database_id ?? binding]),
    ),
    ratelimits: Object.fromEntries(config.ratelimits.map(({ name, simple }) => [name, { simple }])),
    versionMetadata: config.version_metadata?.binding ?? "VERSION",
  };
}

/** Runs wrangler once; throws with what it said where it fails. */
async function wrangler(...words: readonly string[]): Promise<void> {
  const program = join(ROOT, "node_modules", "wrangler", "bin", "wrangler.js");
  const env = { ...process.env, ...OFFLINE_ENV };
  await promisify(execFile)(process.execPath, [program, ...words], { cwd: ROOT, env });
}

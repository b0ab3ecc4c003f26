import { type ChildProcess, spawn } from "node:child_process";
import { randomBytes } from "node:crypto";
import { once } from "node:events";
import { appendFileSync, existsSync, readdirSync } from "node:fs";
import { join, relative } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { fileURLToPath, pathToFileURL } from "node:url";
import {
  linksOf,
  publishFolder,
  type Server,
  sayLinks,
  sayPublished,
  secretIn,
} from "./publish.ts";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const READY_WITHIN_MS = 60_000;
const RING_MS = 600_000;

/** Nothing leaves the machine: no figures of use, no banner's look for news, no place looked up. */
const ALONE = {
  WRANGLER_SEND_METRICS: "false",
  WRANGLER_HIDE_BANNER: "true",
  WRANGLER_LOG: "error",
  CLOUDFLARE_CF_FETCH_ENABLED: "false",
};

/** Where a start finds and keeps its things. `state` null: where wrangler keeps it, in `.wrangler`. */
export type Starting = {
  readonly port: number;
  readonly plans: string;
  readonly secrets: string;
  readonly state: string | null;
  /** Prints a line for the gardener. */
  readonly say: (line: string) => void;
};

/** A running Sowbell: its address, and a way to end it that waits until it has. */
export type Running = {
  readonly server: string;
  readonly ended: Promise<number>;
  readonly stop: () => Promise<void>;
};

/**
 * Starts Sowbell on this machine alone: makes its secret where there is none, brings the store up to date, starts the
 * worker, publishes every garden in the plans' folder and prints its links. A garden with problems is told by line
 * and keeps no other from starting. Throws where the worker does not come up.
 */
export async function start(starting: Starting): Promise<Running> {
  const { port, secrets, say } = starting;
  const secret = secretFor(secrets, say);
  const server = `http://127.0.0.1:${port}`;
  if (await answers(server)) throw new Error(`something answers at ${server} already`);
  await migrate(starting);
  const running = run(starting, server);
  try {
    await ready(server, running.ended);
    await publishAll(starting, { server, secret, fetch });
    ring(server, running.ended);
  } catch (error) {
    await running.stop();
    throw error;
  }
  return running;
}

/** The secret in that file, made there where there is none; says so when it makes one. */
export function secretFor(file: string, say: (line: string) => void): string {
  const known = secretIn(file);
  if (known !== null) return known;
  const made = randomBytes(32).toString("base64url");
  appendFileSync(file, `SECRET=${made}\n`, { mode: 0o600 });
  say(
    `Made a secret in ${relative(process.cwd(), file)}. Every link hangs on it: keep it, and keep it to yourself.`,
  );
  return made;
}

/** Publishes each garden's folder and prints its links; what goes wrong with one is told and the rest goes on. */
export async function publishAll({ plans, say }: Starting, server: Server): Promise<void> {
  for (const garden of gardensIn(plans)) {
    try {
      const folder = join(plans, garden);
      const done = await publishFolder({ ...server, folder });
      for (const file of done) say(sayPublished(file));
      const links = await linksOf({ ...server, garden });
      if (links) say(sayLinks(links));
    } catch (error) {
      say(`${garden}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
}

function gardensIn(plans: string): readonly string[] {
  if (!existsSync(plans)) return [];
  const entries = readdirSync(plans, { withFileTypes: true });
  return entries.filter((entry) => entry.isDirectory()).map((entry) => entry.name);
}

function wrangler({ state }: Starting, ...rest: readonly string[]): ChildProcess {
  const program = join(ROOT, "node_modules", "wrangler", "bin", "wrangler.js");
  const kept = state === null ? [] : ["--persist-to", state];
  return spawn(process.execPath, [program, ...rest, ...kept], {
    cwd: ROOT,
    env: { ...process.env, ...ALONE },
    // Stdout is for links alone.
    stdio: ["ignore", 2, 2],
  });
}

async function migrate(starting: Starting): Promise<void> {
  const applying = wrangler(starting, "d1", "migrations", "apply", "sowbell", "--local");
  const [code] = await once(applying, "exit");
  if (code !== 0) throw new Error("the store could not be brought up to date");
}

/** Requests are not logged, since a link is a key. */
function run(starting: Starting, server: string): Running {
  const { port, secrets } = starting;
  const where = ["--ip", "127.0.0.1", "--port", String(port), "--var", `ORIGIN:${server}`];
  const how = [
    "--env-file",
    secrets,
    "--log-level",
    "warn",
    "--show-interactive-dev-session=false",
  ];
  const worker = wrangler(starting, "dev", ...where, ...how);
  const ended = once(worker, "exit").then(([code]) => (typeof code === "number" ? code : 0));
  const stop = async () => {
    worker.kill("SIGTERM");
    await ended;
  };
  return { server, ended, stop };
}

/** Rings the cron every ten minutes, since on this machine nothing else does. */
function ring(server: string, ended: Promise<number>): void {
  const ringing = setInterval(() => {
    fetch(`${server}/cdn-cgi/handler/scheduled`).catch(() => undefined);
  }, RING_MS);
  ended.then(() => clearInterval(ringing));
}

async function ready(server: string, ended: Promise<number>): Promise<void> {
  let gone = false;
  ended.then(() => {
    gone = true;
  });
  for (const until = Date.now() + READY_WITHIN_MS; Date.now() < until && !gone; ) {
    if (await answers(server)) return;
    await wait(100);
  }
  throw new Error(gone ? "the worker ended" : "the worker did not answer");
}

async function answers(server: string): Promise<boolean> {
  try {
    return (await fetch(`${server}/healthz`)).ok;
  } catch {
    return false;
  }
}

async function main(): Promise<void> {
  const port = Number(process.env.PORT ?? 8787);
  const [plans, secrets] = [relative(process.cwd(), join(ROOT, "plans")), join(ROOT, ".dev.vars")];
  const running = await start({ port, plans, secrets, state: null, say: console.log });
  for (const signal of ["SIGINT", "SIGTERM"] as const) process.on(signal, () => running.stop());
  console.log(`\nSowbell is up at ${running.server}. Stop it with Ctrl-C.`);
  process.exitCode = await running.ended;
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  main().catch((error: unknown) => {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  });
}

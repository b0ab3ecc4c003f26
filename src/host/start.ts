import { randomBytes } from "node:crypto";
import { existsSync, readdirSync } from "node:fs";
import { join, relative } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { fileURLToPath, pathToFileURL } from "node:url";
import {
  linksOf,
  publishFolder,
  type Server,
  sayLinks,
  sayPublishResult,
} from "./cli/publish-folder.ts";
import { addBinding, bindingsIn, othersCanRead, secretIn } from "./cli/secrets.ts";
import { runLocally } from "./local.ts";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));

/** How long a start waits for its own worker [ms], and between its looks; a busy machine takes its time. */
const WAIT = { most: 60_000, each: 200 } as const;

/** How often a garden's publishing is tried where the worker can't be reached. */
const TRIES = 5;

/** Where a start finds and keeps its things. `state` null: in `.wrangler`. */
export type StartOptions = {
  readonly port: number;
  readonly plans: string;
  readonly secrets: string;
  readonly state: string | null;
  /** Prints a line for the gardener. */
  readonly say: (line: string) => void;
};

/** A running Sowbell: its address, and a way to end it that waits until it has. */
export type RunningServer = { readonly server: string; readonly stop: () => Promise<void> };

/**
 * Starts Sowbell on this machine alone: makes its secret where there is none, starts the worker, waits until that answers,
 * publishes every garden in the plans' folder and prints its links. A garden with problems is told by line and keeps no other
 * from starting. Throws where the worker does not come up.
 */
export async function start(options: StartOptions): Promise<RunningServer> {
  const { port, secrets, state, say } = options;
  const secret = secretFor(secrets, say);
  const server = `http://127.0.0.1:${port}`;
  if (await answers(server)) throw new Error(`something answers at ${server} already`);
  const bindings = { ...bindingsIn(secrets), ORIGIN: server };
  const end = await runLocally({ port, bindings, state });
  let ending: Promise<void> | null = null;
  // Signals may come twice, and the second must not cut the first one's work short.
  const stop = () => {
    ending ??= end();
    return ending;
  };
  try {
    await answering(server);
    await publishAll(options, { server, secret, fetch });
  } catch (error) {
    await stop();
    throw error;
  }
  return { server, stop };
}

/** The secret in that file, made there where there is none; says so when it makes one, and where others can read the file. */
export function secretFor(file: string, say: (line: string) => void): string {
  const shown = relative(process.cwd(), file);
  const warning = othersCanRead(file);
  if (warning !== null) say(warning.replaceAll(file, shown));
  const known = secretIn(file);
  if (known !== null) return known;
  const made = randomBytes(32).toString("base64url");
  addBinding(file, "SECRET", made);
  say(`Made a secret in ${shown}. Every link hangs on it: keep it, and keep it to yourself.`);
  return made;
}

/** Publishes each garden's folder and prints its links; what goes wrong with one is told and the rest goes on. */
export async function publishAll({ plans, say }: StartOptions, server: Server): Promise<void> {
  for (const garden of gardensIn(plans)) {
    try {
      const folder = join(plans, garden);
      const done = await tried(() => publishFolder({ ...server, folder }));
      for (const file of done) say(sayPublishResult(file));
      const links = await tried(() => linksOf({ ...server, garden }));
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

/** Waits until a server answers. Throws where it does not in good time. */
async function answering(server: string): Promise<void> {
  const begun = Date.now();
  while (!(await answers(server))) {
    if (Date.now() - begun > WAIT.most) throw new Error(`nothing answers at ${server}`);
    await wait(WAIT.each);
  }
}

async function answers(server: string): Promise<boolean> {
  try {
    return (await fetch(`${server}/healthz`)).ok;
  } catch {
    return false;
  }
}

/** Does what asks the server, again where that throws, for on a busy machine a line may break. Publishing twice is no mistake. */
async function tried<Result>(asking: () => Promise<Result>): Promise<Result> {
  for (let tries = 1; ; tries += 1)
    try {
      return await asking();
    } catch (error) {
      if (tries === TRIES) throw error;
      await wait(WAIT.each);
    }
}

async function main(): Promise<void> {
  const port = Number(process.env.PORT ?? 8787);
  const [plans, secrets] = [relative(process.cwd(), join(ROOT, "plans")), join(ROOT, ".dev.vars")];
  const running = await start({ port, plans, secrets, state: null, say: console.log });
  for (const signal of ["SIGINT", "SIGTERM"] as const) process.on(signal, () => running.stop());
  console.log(`\nSowbell is up at ${running.server}. Stop it with Ctrl-C.`);
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  main().catch((error: unknown) => {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  });
}

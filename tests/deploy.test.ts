import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";

const ROOT = new URL("..", import.meta.url).pathname;
const README = readFileSync(join(ROOT, "README.md"), "utf8");

/** The commands of the three steps, in their order. */
const STEPS = README.slice(
  README.indexOf("\n1. Let the tool in"),
  README.indexOf("\nAfter an update:"),
);
const COMMANDS = [...STEPS.matchAll(/`((?:npx|npm) [^`]+)`/g)].map(([, command]) => command ?? "");

/** A fresh copy of what a deploy needs, so that nothing is written into the tree. */
let folder: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "sowbell-deploy-"));
  for (const name of ["src", "plans", "package.json", "tsconfig.json", "wrangler.toml"])
    cpSync(join(ROOT, name), join(folder, name), { recursive: true });
  symlinkSync(join(ROOT, "node_modules"), join(folder, "node_modules"));
  writeFileSync(join(folder, ".dev.vars"), "SECRET=a secret of this test, long enough for it\n");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Nobody is let in here, and nothing leaves the machine. */
const ENV = {
  ...process.env,
  HOME: tmpdir(),
  WRANGLER_SEND_METRICS: "false",
  WRANGLER_HIDE_BANNER: "true",
  CLOUDFLARE_API_TOKEN: undefined,
};

function run(command: string, ...more: readonly string[]) {
  const [program = "", ...args] = [...command.split(" "), ...more];
  const ran = spawnSync(program, args, {
    cwd: folder,
    env: ENV,
    encoding: "utf8",
    timeout: 60_000,
  });
  return { status: ran.status, said: `${ran.stdout}${ran.stderr}` };
}

/** The libraries that a host needs. */
const NEEDED = [
  ...["csv-parse", "date-fns-tz", "diff", "fflate", "hono", "ical-generator", "ical.js"],
  ...["suncalc", "uqr", "valibot", "yaml"],
];

/** The packages that lie in what a deploy sends. */
function bundledPackages(): readonly string[] {
  const map = JSON.parse(readFileSync(join(folder, "out", "deployed.js.map"), "utf8")) as {
    readonly sources: readonly string[];
  };
  const names = map.sources.flatMap(
    (source) => /.*node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(source)?.[1] ?? [],
  );
  return [...new Set(names)].sort();
}

/** The most that can be seen of each command without the platform. */
const OFFLINE: Readonly<Record<string, (command: string) => void>> = {
  "npx wrangler login": (command) => {
    expect(run(command, "--help").status).toBe(0);
  },
  "npx wrangler deploy": (command) => {
    const { status, said } = run(command, "--dry-run", "--outdir", join(folder, "out"));
    expect(status).toBe(0);
    const kib = Number(/gzip: ([\d.]+) KiB/.exec(said)?.[1]);
    expect(kib).toBeGreaterThan(50);
    expect(kib, "the platform takes 3 MB").toBeLessThan(3 * 1024);
    expect(bundledPackages()).toEqual(NEEDED);
  },
  "npx wrangler secret bulk .dev.vars": (command) => {
    expect(run(command).said, "it gets as far as asking who one is").toContain(
      "CLOUDFLARE_API_TOKEN",
    );
    expect(run(command, "--help").said, "it takes lines of NAME=value").toMatch(/KEY=VALUE/i);
  },
  "npm run -s sowbell -- publish plans/quarry-lane --server https://sowbell.MY-NAME.workers.dev": (
    command,
  ) => {
    const { status, said } = run(
      command.replace("https://sowbell.MY-NAME.workers.dev", "http://127.0.0.1:9"),
    );
    expect([status, said]).toEqual([
      1,
      expect.stringContaining("nothing to be had from http://127.0.0.1:9"),
    ]);
  },
  "npm run -s sowbell -- links quarry-lane --server https://sowbell.MY-NAME.workers.dev": (
    command,
  ) => {
    const { status, said } = run(
      command.replace("https://sowbell.MY-NAME.workers.dev", "http://127.0.0.1:9"),
    );
    expect([status, said]).toEqual([1, expect.stringContaining("nothing to be had")]);
  },
};

describe("the way from nothing to a hosted garden", () => {
  test("is three steps, and every command in them is one that is tried here", () => {
    expect(STEPS.match(/^\d\. /gm)).toHaveLength(3);
    expect(COMMANDS).toEqual(Object.keys(OFFLINE));
  });

  test.each(COMMANDS)("goes as far as it can without the platform: %s", (command) => {
    OFFLINE[command]?.(command);
  });
});

import { execFileSync } from "node:child_process";
import { cloudflareTest, readD1Migrations } from "@cloudflare/vitest-pool-workers";
import { defineConfig } from "vitest/config";
import { depthFrom } from "./depth.ts";

const root = new URL("..", import.meta.url).pathname;

/** These want the platform's own runtime and store; everything else is pure and runs in plain Node. */
const inWorker = [
  "tests/canaries.test.ts",
  "tests/host/worker.test.ts",
  "tests/host/backup/{archive-files,restore,take-snapshot}.test.ts",
  "tests/host/edge/{copy-nightly,large,object,build-year,building,poll,refresh-weather,weather-cell,write-feeds}.test.ts",
  "tests/host/store/**/*.test.ts",
  "tests/host/weather/{cell,cell-years}.test.ts",
  "tests/host/web/{answer-changes,app,begin,begin-place,begin-save,calendar,days-ahead,diary,event-page,feed,garden-context,installing,job-rows,kept-year,leaving,links,place-years,plan-page,plan-picture,plans,quiet,recovery,recovery-page,restoring,routes,taken-back,tapped,today,visit}.test.ts",
  "tests/host/web/beds.test.ts",
];

/**
 * A number for the files as they were last committed, so that every change draws other samples and one state of the files
 * draws the same ones everywhere; the clock's [ms] where there is no repository.
 */
function numberOfTree(): number {
  try {
    const tree = execFileSync("git", ["rev-parse", "HEAD^{tree}"], { cwd: root, encoding: "utf8" });
    return Number.parseInt(tree.slice(0, 8), 16);
  } catch {
    return Date.now();
  }
}

const DEPTH = depthFrom(process.env, numberOfTree());

console.error(`Samples: DEPTH=${DEPTH.full ? "full" : "usual"} SEED=${DEPTH.seed}`);

export default defineConfig({
  root,
  test: {
    // By itself it leaves a core idle; on two cores that is half of all there is.
    maxWorkers: "100%",
    projects: [
      {
        test: {
          name: "core",
          environment: "node",
          // Nothing in the core keeps a state, so files may share what is loaded: half a minute instead of one and a half.
          isolate: false,
          env: { SEED: String(DEPTH.seed) },
          setupFiles: ["tests/depth-of-fast-check.ts"],
          // Some start processes or tell hundreds of gardens; a busy machine must not fail them.
          testTimeout: DEPTH.full ? 900_000 : 90_000,
          hookTimeout: DEPTH.full ? 900_000 : 90_000,
          include: ["tests/**/*.test.{ts,tsx}"],
          exclude: inWorker,
        },
      },
      {
        plugins: [
          cloudflareTest(async () => ({
            main: `${root}tests/host/main.ts`,
            wrangler: { configPath: `${root}wrangler.toml` },
            miniflare: {
              cf: false,
              d1Databases: ["FORMER"],
              r2Buckets: ["BACKUPS"],
              bindings: {
                SECRET: "a secret for tests, of more than 32 characters",
                DEPTH: DEPTH.full ? "full" : "usual",
                MIGRATIONS: await readD1Migrations(`${root}src/host/store/old/migrations`),
              },
            },
          })),
        ],
        test: {
          name: "worker",
          // Files share one runtime, and the app is loaded once; what they store is kept apart by file.
          isolate: false,
          setupFiles: ["tests/host/each-file.ts"],
          include: inWorker,
          // The platform's runtime starts slowly on a busy machine.
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});

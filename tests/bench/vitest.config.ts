import { execFileSync } from "node:child_process";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { cloudflareTest } from "@cloudflare/vitest-pool-workers";
import { defineConfig } from "vitest/config";

const root = new URL("../..", import.meta.url).pathname;
const runtime = { compatibilityDate: "2026-04-20", compatibilityFlags: ["nodejs_compat"] };

/**
 * The renderer in one piece, as a deploy puts it together, and where it lies: the way vitest loads modules one by
 * one makes each call across files dearer than it ever is on the edge. Made without the network.
 */
function renderer(): string {
  const folder = join(root, ".wrangler", "bench");
  const program = join(root, "node_modules", "wrangler", "bin", "wrangler.js");
  const how = ["--dry-run", "--outdir", folder, "--config", join(root, "wrangler.toml")];
  const made = ["deploy", join(root, "tests", "bench", "renderer.ts"), ...how];
  const env = { ...process.env, WRANGLER_HIDE_BANNER: "true", WRANGLER_SEND_METRICS: "false" };
  execFileSync(process.execPath, [program, ...made], { cwd: tmpdir(), env });
  return join(folder, "renderer.js");
}

/**
 * Prices under the real runtime, run by `npm run bench` and never by `npm test`. Each stands in a file of its
 * own here: serialise.bench.test.ts the writing of events, render.bench.test.ts a whole render, which renderer.ts
 * does in a worker of its own. clock.ts takes the medians, season.ts makes the events.
 */
export default defineConfig({
  root,
  plugins: [
    cloudflareTest({
      miniflare: {
        cf: false,
        ...runtime,
        serviceBindings: { RENDERER: "renderer" },
        workers: [{ name: "renderer", modules: true, scriptPath: renderer(), ...runtime }],
      },
    }),
  ],
  test: {
    include: ["tests/bench/**/*.bench.test.ts"],
    testTimeout: 120_000,
    fileParallelism: false,
  },
});

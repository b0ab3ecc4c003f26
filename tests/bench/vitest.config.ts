import { cloudflareTest } from "@cloudflare/vitest-pool-workers";
import { defineConfig } from "vitest/config";

/**
 * Prices under the real runtime, run by `npm run bench` and never by `npm test`. Each stands in a file of its
 * own here: serialise.bench.test.ts the writing of events; a bench of a whole render belongs beside it as
 * render.bench.test.ts. clock.ts takes the medians, season.ts makes the events.
 */
export default defineConfig({
  root: new URL("../..", import.meta.url).pathname,
  plugins: [
    cloudflareTest({
      miniflare: {
        cf: false,
        compatibilityDate: "2026-04-20",
        compatibilityFlags: ["nodejs_compat"],
      },
    }),
  ],
  test: { include: ["tests/bench/**/*.bench.test.ts"], testTimeout: 120_000 },
});

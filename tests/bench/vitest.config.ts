import { cloudflareTest } from "@cloudflare/vitest-pool-workers";
import { defineConfig } from "vitest/config";

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

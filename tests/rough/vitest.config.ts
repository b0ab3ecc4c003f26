import { defineConfig } from "vitest/config";

/**
 * What a store and a network can do to Sowbell, run by `npm run rough` and never by `npm test`: the runtime killed in the
 * midst of taps, the store broken under polls, and requests that no browser sends. Each file has a runtime of its own;
 * they run one after another, so that moments to kill at stay what they are.
 */
export default defineConfig({
  root: new URL("../..", import.meta.url).pathname,
  test: {
    include: ["tests/rough/**/*.rough.ts"],
    environment: "node",
    env: { WRANGLER_LOG: "error" },
    fileParallelism: false,
    testTimeout: 300_000,
    hookTimeout: 120_000,
  },
});

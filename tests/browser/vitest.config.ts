import { defineConfig } from "vitest/config";

/**
 * Sowbell as people meet it: the machine's own Chromium at a phone's and a desk's size over a Sowbell started for it, by
 * `npm run browser` and never by `npm test`. One file at a time, since a busy browser keeps nobody's time.
 */
export default defineConfig({
  root: new URL("../..", import.meta.url).pathname,
  test: {
    include: ["tests/browser/**/*.browser.ts"],
    environment: "node",
    globalSetup: "tests/browser/once.ts",
    fileParallelism: false,
    testTimeout: 180_000,
    hookTimeout: 120_000,
  },
});

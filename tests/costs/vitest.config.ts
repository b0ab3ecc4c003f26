import { readFileSync } from "node:fs";
import { cloudflareTest } from "@cloudflare/vitest-pool-workers";
import { defineConfig } from "vitest/config";

const root = new URL("../..", import.meta.url).pathname;

/** What a garden asks of its store, counted in the platform's own runtime; run by `npm run costs` and never by `npm test`. */
export default defineConfig({
  root,
  plugins: [
    cloudflareTest({
      main: `${root}tests/host/main.ts`,
      wrangler: { configPath: `${root}wrangler.toml` },
      miniflare: {
        cf: false,
        bindings: {
          SECRET: "a secret for tests, of more than 32 characters",
          QUARRY: readFileSync(`${root}plans/quarry-lane/2027.yaml`, "utf8"),
        },
      },
    }),
  ],
  test: { include: ["tests/costs/*.costs.ts"], testTimeout: 120_000 },
});

import { readFileSync } from "node:fs";
import { cloudflareTest, readD1Migrations } from "@cloudflare/vitest-pool-workers";
import { defineConfig } from "vitest/config";

const root = new URL("../..", import.meta.url).pathname;

/** What a garden asks of the store, counted in the platform's own runtime; run by `npm run costs` and never by `npm test`. */
export default defineConfig({
  root,
  plugins: [
    cloudflareTest(async () => ({
      wrangler: { configPath: `${root}wrangler.toml` },
      miniflare: {
        cf: false,
        bindings: {
          MIGRATIONS: await readD1Migrations(`${root}src/host/store/migrations`),
          QUARRY: readFileSync(`${root}plans/quarry-lane/2027.yaml`, "utf8"),
        },
      },
    })),
  ],
  test: {
    include: ["tests/costs/*.costs.ts"],
    setupFiles: ["tests/host/store/migrate.ts"],
    testTimeout: 120_000,
  },
});

import { defineConfig } from "vitest/config";

export default defineConfig({
  root: new URL("..", import.meta.url).pathname,
  test: {
    projects: [
      {
        test: {
          name: "core",
          environment: "node",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/web/**", "tests/store/**", "tests/worker.test.ts", "tests/bench/**"],
        },
      },
    ],
  },
});

import { expect, test, vi } from "vitest";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

test("a server that can't be reached is told, exit 1", async () => {
  vi.stubEnv("SECRET", "a secret of this test, long enough for it");
  const { exit, err } = await sowbell(["links", "back-step"]);
  expect(exit).toBe(1);
  expect(err).toContain("nothing to be had");
  expect(err).toContain("start it with npm start, or name --server");
  vi.unstubAllEnvs();
});

test("a server that is no address is wrong usage", async () => {
  vi.stubEnv("SECRET", "a secret of this test, long enough for it");
  const folder = folderOf({ "2027.yaml": PLAN });
  expect(await sowbell(["publish", folder, "--server", "next door"])).toMatchObject({ exit: 2 });
  vi.unstubAllEnvs();
});

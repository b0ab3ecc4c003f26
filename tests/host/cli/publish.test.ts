import { expect, test, vi } from "vitest";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

const answers = (put: Response) => async (_: string, init?: RequestInit) =>
  init?.method === "PUT" ? put : new Response("none", { status: 404 });

test("a published year is said on standard output, exit 0", async () => {
  vi.stubEnv("SECRET", "a secret of this test, long enough for it");
  const folder = folderOf({ "2027.yaml": PLAN });
  const { exit, out } = await sowbell(
    ["publish", folder],
    answers(Response.json({ version: 1, doubts: [] })),
  );
  expect(exit).toBe(0);
  expect(out).toContain("published as version 1");
  vi.unstubAllEnvs();
});

test("a plan changed on the server meanwhile is left, told on standard error, exit 1", async () => {
  vi.stubEnv("SECRET", "a secret of this test, long enough for it");
  const folder = folderOf({ "2027.yaml": PLAN });
  const { exit, out, err } = await sowbell(
    ["publish", folder],
    answers(Response.json({ version: 4 }, { status: 412 })),
  );
  expect({ exit, out }).toEqual({ exit: 1, out: "" });
  expect(err).toContain("left alone");
  vi.unstubAllEnvs();
});

test("a folder without a year's file publishes nothing, exit 1; no folder named is wrong usage", async () => {
  vi.stubEnv("SECRET", "a secret of this test, long enough for it");
  expect(await sowbell(["publish", folderOf({})])).toMatchObject({ exit: 1, out: "" });
  expect(await sowbell(["publish"])).toMatchObject({ exit: 2, out: "" });
  vi.unstubAllEnvs();
});

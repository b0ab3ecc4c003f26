import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { filesOf, zipped } from "../backup/archived.ts";
import { folderOf, sowbell } from "./terminal.ts";

beforeEach(() => void vi.stubEnv("SECRET", "a secret of this test, long enough for it"));
afterEach(() => void vi.unstubAllEnvs());

/** An archive in a folder of its own. */
function archive(bytes: Uint8Array = zipped(filesOf())): string {
  const file = join(folderOf({}), "weir.zip");
  writeFileSync(file, bytes);
  return file;
}

const LINKS = { garden: "weir", name: "Weir", owner: "/o/", household: "/h/", people: [] };

/** A server that answers a restore so, and gives links. */
const answering = (put: () => Response) =>
  vi.fn(async (_: string, init?: RequestInit) =>
    init?.method === "PUT" ? put() : Response.json(LINKS),
  );
const restored = () => Response.json({ years: [2027], lines: 1 }, { status: 201 });

test("a restored garden is said with its links, exit 0, and no other is overwritten by itself", async () => {
  const fetch = answering(restored);
  const { exit, out } = await sowbell(["restore", archive()], fetch);
  expect(exit).toBe(0);
  expect(out).toContain("weir: restored, 2027, 1 lines of the diary.");
  expect(out).toContain("Owner");
  const [address, init] = fetch.mock.calls[0] ?? [];
  expect(address).toMatch(/\/weir\/admin-1\/[^/]{43}\/archive$/);
  expect(init?.headers).toEqual({ "If-None-Match": "*" });
});

test("--over takes a garden's place, --as gives it another id", async () => {
  const fetch = answering(restored);
  await sowbell(["restore", archive(), "--over", "--as", "mill"], fetch);
  const [address, init] = fetch.mock.calls[0] ?? [];
  expect(address).toContain("/mill/admin-1/");
  expect(init?.headers).toEqual({ "If-Match": "*" });
});

test.each([
  [412, "there is a garden weir already. --over"],
  [410, "was deleted for good there. --as NAME"],
  [500, "the server answered 500"],
])("a server that answers %i is told in words, exit 1", async (status, words) => {
  const fetch = answering(() => new Response("x", { status }));
  const { exit, out, err } = await sowbell(["restore", archive()], fetch);
  expect([exit, out]).toEqual([1, ""]);
  expect(err).toContain(words);
});

test("problems of the server come line by line; a broken archive is told before anything is sent", async () => {
  const problems = ["2027.yaml:3:1: what is wrong. what would be right."];
  const told = await sowbell(
    ["restore", archive()],
    answering(() => Response.json({ problems }, { status: 422 })),
  );
  expect([told.exit, told.err]).toEqual([1, expect.stringContaining(problems[0] ?? "")]);
  const fetch = answering(restored);
  const good = zipped(filesOf());
  const broken = await sowbell(["restore", archive(good.slice(0, 200))], fetch);
  expect([broken.exit, fetch.mock.calls.length]).toEqual([1, 0]);
  expect(broken.err).toMatch(/weir\.zip: .+\.\n$/);
});

test("no archive, or one that is not there, is wrong usage", async () => {
  expect((await sowbell(["restore"])).exit).toBe(2);
  expect((await sowbell(["restore", "nowhere.zip"])).exit).toBe(2);
});

import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { sowbell } from "./terminal.ts";

beforeEach(() => void vi.stubEnv("SECRET", "a secret of this test, long enough for it"));
afterEach(() => void vi.unstubAllEnvs());

test("a new owner's link is printed, and that all others are closed is told", async () => {
  const fetch = vi.fn(async () => Response.json({ owner: "/lane/owner-234567/x/" }));
  const { exit, out, err } = await sowbell(["recover", "lane"], fetch);
  expect([exit, out]).toEqual([0, "http://127.0.0.1:8787/lane/owner-234567/x/\n"]);
  expect(err).toContain("Every other link of an owner is closed");
  const [address, init] = (fetch.mock.calls as unknown as [string, RequestInit][])[0] ?? [];
  expect([address, init?.method]).toEqual([
    expect.stringMatching(/\/lane\/admin-1\/[^/]{43}\/links\/owner$/),
    "DELETE",
  ]);
});

test("a garden that is not there, and none named", async () => {
  const none = async () => new Response("", { status: 404 });
  expect((await sowbell(["recover", "lane"], none)).exit).toBe(1);
  expect((await sowbell(["recover"])).exit).toBe(2);
});

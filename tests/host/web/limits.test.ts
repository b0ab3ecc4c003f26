import { expect, test, vi } from "vitest";
import { answerUnauthorized } from "../../../src/host/web/limits.ts";

const request = (from: string) =>
  new Request("https://garden.example/", { headers: { "cf-connecting-ip": from } });

/** A limiter that lets each key through so many times. */
function letting(most: number): RateLimiter {
  const seen = new Map<string, number>();
  const limit = async ({ key }: { readonly key: string }) => {
    seen.set(key, (seen.get(key) ?? 0) + 1);
    return { success: (seen.get(key) ?? 0) <= most };
  };
  return { limit };
}

test("a stranger who asks on and on waits, and no other with them", async () => {
  const context = { unauthorized: letting(2) };
  const statuses: number[] = [];
  for (const from of ["a", "a", "a", "b"])
    statuses.push((await answerUnauthorized(context, request(from))).status);
  expect(statuses).toEqual([404, 404, 429, 404]);
});

test("without a limiter, or with one that fails, nobody is limited", async () => {
  expect((await answerUnauthorized({ unauthorized: null }, request("a"))).status).toBe(404);
  const said = vi.spyOn(console, "error").mockReturnValue();
  const limit = () => Promise.reject(new Error("down"));
  expect((await answerUnauthorized({ unauthorized: { limit } }, request("a"))).status).toBe(404);
  expect(said).toHaveBeenCalledOnce();
  said.mockRestore();
});

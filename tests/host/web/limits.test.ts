import { expect, test, vi } from "vitest";
import type { AppContext } from "../../../src/host/web/app-context.ts";
import { answerUnauthorized, rateLimited } from "../../../src/host/web/limits.ts";

const LINK = { garden: "g", role: "helper", person: "imre", serial: 1 } as const;
const request = (from: string) =>
  new Request("https://garden.example/", { headers: { "cf-connecting-ip": from } });

/** A limiter that lets each key through so many times. */
function letting(most: number): RateLimiter & { readonly seen: Map<string, number> } {
  const seen = new Map<string, number>();
  const limit = async ({ key }: { readonly key: string }) => {
    seen.set(key, (seen.get(key) ?? 0) + 1);
    return { success: (seen.get(key) ?? 0) <= most };
  };
  return { seen, limit };
}

const shellOf = (limits: Partial<AppContext["limits"]>) =>
  ({ limits: { writes: null, unauthorized: null, ...limits } }) as AppContext;

test("a stranger who knocks on and on waits, and no other with them", async () => {
  const shell = shellOf({ unauthorized: letting(2) });
  const statuses: number[] = [];
  for (const from of ["a", "a", "a", "b"])
    statuses.push((await answerUnauthorized(shell, request(from))).status);
  expect(statuses).toEqual([404, 404, 429, 404]);
});

test("a link that writes too often waits, by link and not by address", async () => {
  const writes = letting(1);
  const shell = shellOf({ writes });
  expect(await rateLimited(shell, LINK)).toBeNull();
  expect((await rateLimited(shell, LINK))?.status).toBe(429);
  expect(await rateLimited(shell, { ...LINK, person: "oda" })).toBeNull();
  expect([...writes.seen.keys()]).toEqual(["g helper-imre-1", "g helper-oda-1"]);
});

test("without a limiter, or with one that fails, nobody is held back", async () => {
  expect((await answerUnauthorized(shellOf({}), request("a"))).status).toBe(404);
  const said = vi.spyOn(console, "error").mockReturnValue();
  const limit = () => Promise.reject(new Error("down"));
  expect(await rateLimited(shellOf({ writes: { limit } }), LINK)).toBeNull();
  expect(said).toHaveBeenCalledOnce();
  said.mockRestore();
});

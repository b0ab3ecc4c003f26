import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { checkLink, keyFrom } from "../../../src/host/links/mac.ts";
import { sowbell } from "./terminal.ts";

const SECRET = "a secret of this test, long enough for it";

beforeEach(() => {
  vi.stubEnv("SECRET", SECRET);
});
afterEach(() => {
  vi.unstubAllEnvs();
});

const linkIn = async (out: string) => {
  const [, garden = "", segment = "", mac = ""] = new URL(out.trim()).pathname.split("/");
  return checkLink({ garden, segment, mac }, await keyFrom(SECRET));
};

test("an invitation is a good link to a garden that nobody can guess, another each time", async () => {
  const [one, other] = await Promise.all(
    [1, 2].map(() => sowbell(["invite", "--server", "https://garden.example"])),
  );
  const link = await linkIn(one?.out ?? "");
  expect(link).toMatchObject({ role: "invitation", serial: 1 });
  expect(link?.garden).toMatch(/^[A-Za-z0-9]{16}$/);
  expect(other?.out).not.toBe(one?.out);
});

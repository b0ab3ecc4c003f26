import { expect, test, vi } from "vitest";
import { sowbell } from "./terminal.ts";

const SAID = {
  garden: "back-step",
  name: "Back Step",
  owner: "/back-step/owner-1/m/",
  household: "/back-step/owner-1/m/household.ics",
  people: [{ name: "Ada", path: "/back-step/helper-ada-1/m/sessions.ics" }],
};

test("links of a garden are printed with the server's address", async () => {
  vi.stubEnv("SECRET", "a secret of this test, long enough for it");
  const { exit, out } = await sowbell(
    ["links", "back-step", "--server", "https://garden.example"],
    async () => Response.json(SAID),
  );
  expect(exit).toBe(0);
  expect(out).toContain("https://garden.example/back-step/helper-ada-1/m/sessions.ics");
  vi.unstubAllEnvs();
});

test("a garden the server does not have is said so, exit 1", async () => {
  vi.stubEnv("SECRET", "a secret of this test, long enough for it");
  const { exit, out, err } = await sowbell(
    ["links", "moon"],
    async () => new Response("no", { status: 404 }),
  );
  expect({ exit, out }).toEqual({ exit: 1, out: "" });
  expect(err).toContain("no garden moon");
  vi.unstubAllEnvs();
});

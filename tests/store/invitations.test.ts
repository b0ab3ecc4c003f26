import { env } from "cloudflare:workers";
import { expect, test } from "vitest";
import type { Plan } from "../../src/plan/plan.ts";
import { isInvited } from "../../src/store/invitations.ts";
import { deleteGarden } from "../../src/store/leaving.ts";
import { revoke } from "../../src/store/links.ts";
import { savePlan } from "../../src/store/plans.ts";

const NOW = Date.UTC(2027, 4, 8);

test("an invitation holds till its garden is made, and not again when that is deleted", async () => {
  expect(await isInvited(env.DB, "new", "invitation-1")).toBe(true);
  const plan = { name: "New", year: 2027 } as unknown as Plan;
  const from = {
    text: "",
    beside: {},
    file: "",
    plan,
    readBy: "code 1",
    published: null,
    first: false,
  };
  const at = { savedAt: NOW, origin: "https://garden.example" };
  await savePlan(env.DB, { garden: "new", year: 2027, base: 0, ...from, ...at });
  expect(await isInvited(env.DB, "new", "invitation-1")).toBe(false);
  await deleteGarden(env.DB, "new", NOW);
  expect(await isInvited(env.DB, "new", "invitation-1")).toBe(false);
});

test("one that was revoked makes nothing, and the next does", async () => {
  await revoke(env.DB, "other", "invitation-1", NOW);
  expect(await isInvited(env.DB, "other", "invitation-1")).toBe(false);
  expect(await isInvited(env.DB, "other", "invitation-2")).toBe(true);
});

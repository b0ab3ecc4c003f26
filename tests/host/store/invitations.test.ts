import { env } from "cloudflare:workers";
import { expect, test } from "vitest";
import { isInvited } from "../../../src/host/store/invitations.ts";
import { deleteGarden } from "../../../src/host/store/leaving.ts";
import { revoke } from "../../../src/host/store/links.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import { firstOf } from "./made.ts";

const NOW = Date.UTC(2027, 4, 8);

test("an invitation holds till its garden is made, and not again when that is deleted", async () => {
  expect(await isInvited(env.DB, "new", "invitation-1")).toBe(true);
  await savePlan(env.DB, firstOf("new"));
  expect(await isInvited(env.DB, "new", "invitation-1")).toBe(false);
  await deleteGarden(env.DB, "new", NOW);
  expect(await isInvited(env.DB, "new", "invitation-1")).toBe(false);
});

test("one that was revoked makes nothing, and the next does", async () => {
  await revoke(env.DB, "other", "invitation-1", NOW);
  expect(await isInvited(env.DB, "other", "invitation-1")).toBe(false);
  expect(await isInvited(env.DB, "other", "invitation-2")).toBe(true);
});

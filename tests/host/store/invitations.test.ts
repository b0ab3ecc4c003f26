import { expect, test } from "vitest";
import { isInvited } from "../../../src/host/store/invitations.ts";
import { deleteGarden } from "../../../src/host/store/leaving.ts";
import { revoke } from "../../../src/host/store/links.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import { inStore } from "../in-store.ts";
import { firstOf } from "./made.ts";

const NOW = Date.UTC(2027, 4, 8);
const LINK = "invitation-1";

test("an invitation makes a garden once, and none after it was revoked or the garden deleted", async () => {
  await inStore("weir", (sql) => {
    expect(isInvited(sql, LINK)).toBe(true);
    revoke(sql, "invitation-2", NOW);
    expect([isInvited(sql, LINK), isInvited(sql, "invitation-2")]).toEqual([true, false]);
    savePlan(sql, firstOf("weir"));
    expect(isInvited(sql, LINK)).toBe(false);
    deleteGarden(sql, NOW);
    expect(isInvited(sql, LINK)).toBe(false);
  });
});

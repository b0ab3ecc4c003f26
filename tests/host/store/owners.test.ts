import { expect, test } from "vitest";
import { storeFeed } from "../../../src/host/store/feeds.ts";
import { gardenRecord } from "../../../src/host/store/gardens.ts";
import { linkUse } from "../../../src/host/store/links.ts";
import {
  closeOtherOwners,
  hasOtherOwners,
  opensAsOwner,
  recoveryOf,
  showNextOwner,
  storeRecovery,
} from "../../../src/host/store/owners.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import { inStore } from "../in-store.ts";
import { writtenFeed } from "./feeds.ts";
import { firstOf, SAVED_AT } from "./made.ts";

test("an owner's next links open beside the one in force, until one closes all others", async () => {
  await inStore("mill", (sql) => {
    savePlan(sql, firstOf("mill"));
    for (const link of ["owner-1", "owner-123456", "helper-1"])
      storeFeed(sql, writtenFeed("x", { link }));
    expect([opensAsOwner(sql, 1), hasOtherOwners(sql, 1)]).toEqual([true, false]);
    for (const serial of [123_456, 234_567]) showNextOwner(sql, serial, SAVED_AT);
    const opens = () => [1, 123_456, 234_567, 2].map((serial) => opensAsOwner(sql, serial));
    expect([opens(), hasOtherOwners(sql, 1)]).toEqual([[true, true, true, false], true]);
    closeOtherOwners(sql, 123_456);
    expect([opens(), hasOtherOwners(sql, 123_456)]).toEqual([[false, true, false, false], false]);
    expect(gardenRecord(sql)).toMatchObject({ owner: 123_456 });
    expect(linkUse(sql).used).toEqual(["helper-1", "owner-123456"]);
  });
});

test("of next links that were never used the newest are kept", async () => {
  await inStore("weir", (sql) => {
    savePlan(sql, firstOf("weir"));
    for (let at = 0; at < 50; at += 1) showNextOwner(sql, 100_000 + at, SAVED_AT + at);
    const open = Array.from({ length: 50 }, (_, at) => opensAsOwner(sql, 100_000 + at));
    expect(open.indexOf(true)).toBe(30);
  });
});

test("of a phrase its fingerprint is stored, and the next takes its place", async () => {
  await inStore("ford", (sql) => {
    expect(recoveryOf(sql)).toBeNull();
    for (const fingerprint of ["a", "b"]) storeRecovery(sql, { fingerprint, madeAt: 7 });
    expect(recoveryOf(sql)).toEqual({ fingerprint: "b", madeAt: 7 });
    storeRecovery(sql, null);
    expect(recoveryOf(sql)).toBeNull();
  });
});

import { expect, test } from "vitest";
import { copyRecord, storeCopyRecord } from "../../../src/host/store/copies.ts";
import { inStore } from "../in-store.ts";

test("what became of the last copy comes back; before there was any, one is due at once", async () => {
  await inStore("copies", (sql) => {
    expect(copyRecord(sql)).toEqual({ copiedAt: null, failures: 0, retryAt: 0 });
    storeCopyRecord(sql, { copiedAt: 5, failures: 0, retryAt: 0 });
    storeCopyRecord(sql, { copiedAt: 5, failures: 1, retryAt: 9 });
    expect(copyRecord(sql)).toEqual({ copiedAt: 5, failures: 1, retryAt: 9 });
  });
});

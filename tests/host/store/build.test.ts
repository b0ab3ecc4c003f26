import { expect, test } from "vitest";
import { buildRecord, discardBuild, storeBuildRecord } from "../../../src/host/store/build.ts";
import { inStore } from "../in-store.ts";

test("a garden that was never built has build 0, and a build's record comes back whole", async () => {
  await inStore("built", (sql) => {
    expect(buildRecord(sql)).toMatchObject({ number: 0, code: "", failures: 0, retryAt: 0 });
    const record = {
      ...{ number: 3, revision: 4, code: "code 1", until: 5, line: 6, baselineOf: "2027.1 code 1" },
      ...{ failures: 7, retryAt: 8 },
    };
    storeBuildRecord(sql, { ...record, number: 1 });
    storeBuildRecord(sql, record);
    expect(buildRecord(sql)).toEqual(record);
    discardBuild(sql);
    expect(buildRecord(sql)).toEqual({ ...record, code: "" });
  });
});

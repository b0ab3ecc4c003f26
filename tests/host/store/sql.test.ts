import { expect, test } from "vitest";
import { firstRow } from "../../../src/host/store/sql.ts";
import { inStore } from "../in-store.ts";

test("a transaction that throws leaves nothing, and passes on what was thrown", async () => {
  await inStore("all-or-nothing", (sql) => {
    const half = () => {
      sql.rows("INSERT INTO gone (at) VALUES (1)");
      throw new Error("half way");
    };
    expect(() => sql.transaction(half)).toThrow("half way");
    expect(firstRow(sql, "SELECT at FROM gone")).toBeNull();
    expect(
      sql.transaction(() => sql.rows("INSERT INTO gone (at) VALUES (?1) RETURNING at", 2)),
    ).toEqual([{ at: 2 }]);
    expect(firstRow(sql, "SELECT at FROM gone")).toEqual({ at: 2 });
  });
});

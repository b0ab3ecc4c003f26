import { expect, test } from "vitest";
import { gardenRecord, mendRecord, storeGardenRecord } from "../../../src/host/store/record.ts";
import { inStore } from "../in-store.ts";

const RECORD = { id: "weir", uids: "weir", origin: "https://garden.example", owner: 123_456 };

test("a record is stored twice, and either copy is enough", async () => {
  await inStore("record", (sql) => {
    storeGardenRecord(sql, RECORD, 5);
    const good = { ...RECORD, revision: 0, changedAt: 5 };
    expect([gardenRecord(sql), mendRecord(sql)]).toEqual([good, 0]);
    for (const wrong of [
      ...["owner = 1", "id = 'other'", "origin = ''", "uids = 'x'"],
      ...["copy = 'x'", "copy = substr(copy, 1, 20)", "copy = replace(copy, '123456', '123457')"],
    ]) {
      sql.rows(`UPDATE garden SET ${wrong}`);
      expect(gardenRecord(sql), wrong).toEqual(good);
      expect([mendRecord(sql), mendRecord(sql)], wrong).toEqual([1, 0]);
    }
    sql.rows("UPDATE garden SET changed_at = 9000000000000000");
    expect(gardenRecord(sql)?.changedAt).toBe(0);
    expect([mendRecord(sql), mendRecord(sql)]).toEqual([1, 0]);
  });
});

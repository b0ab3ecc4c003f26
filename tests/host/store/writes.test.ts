import { expect, test } from "vitest";
import { countWrite } from "../../../src/host/store/writes.ts";
import { inStore } from "../in-store.ts";

const NOW = Date.UTC(2027, 4, 8);

test("a person may write three hundred times a minute, and no other waits for them", async () => {
  await inStore("busy", (sql) => {
    for (let times = 0; times < 300; times += 1)
      expect(countWrite(sql, "helper-imre-1", NOW + times)).toBe(true);
    expect(countWrite(sql, "helper-imre-1", NOW + 59_999)).toBe(false);
    expect(countWrite(sql, "helper-oda-1", NOW + 59_999)).toBe(true);
    expect(countWrite(sql, "helper-imre-1", NOW + 60_000)).toBe(true);
  });
});

test("a garden may be written to three thousand times a minute, whoever writes", async () => {
  await inStore("busier", (sql) => {
    sql.rows("INSERT INTO writes (who, since, count) VALUES ('garden', ?1, 2999)", NOW);
    expect(countWrite(sql, "a", NOW)).toBe(true);
    expect(countWrite(sql, "b", NOW)).toBe(false);
    expect(countWrite(sql, "b", NOW + 60_000)).toBe(true);
  });
});

test("a clock that was set back does not close a garden", async () => {
  await inStore("set-back", (sql) => {
    sql.rows("INSERT INTO writes (who, since, count) VALUES ('person a', ?1, 9999)", NOW);
    expect(countWrite(sql, "a", NOW - 1)).toBe(true);
  });
});

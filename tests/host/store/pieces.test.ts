import { expect, test } from "vitest";
import {
  dropPieces,
  loadBytes,
  loadText,
  storeBytes,
  storeText,
} from "../../../src/host/store/pieces.ts";
import { inStore } from "../in-store.ts";

const noise = (length: number) =>
  Uint8Array.from({ length }, (_, at) => (Math.imul(at + 7, 2654435761) >>> 24) & 255);

test("a text of any length comes back, in pieces far below what a row may have", async () => {
  await inStore("long", (sql) => {
    const bytes = noise(3_000_000);
    storeBytes(sql, "big", bytes);
    expect(Buffer.compare(loadBytes(sql, "big") ?? Buffer.of(), bytes)).toBe(0);
    const rows = sql.rows<{ size: number }>("SELECT length(bytes) AS size FROM pieces");
    expect(rows).toHaveLength(12);
    expect(Math.max(...rows.map(({ size }) => size))).toBeLessThanOrEqual(262_144);
    storeText(sql, "text", "bäch 🥕");
    expect(loadText(sql, "text")).toBe("bäch 🥕");
  });
});

test("what is stored shorter leaves nothing of what stood longer, and nothing else is touched", async () => {
  await inStore("shorter", (sql) => {
    storeBytes(sql, "a", noise(600_000));
    storeBytes(sql, "b", noise(10));
    storeBytes(sql, "a", noise(262_144));
    expect(Buffer.compare(loadBytes(sql, "a") ?? Buffer.of(), noise(262_144))).toBe(0);
    storeBytes(sql, "a", new Uint8Array());
    expect(loadBytes(sql, "a")).toEqual(new Uint8Array());
    expect(loadBytes(sql, "b")).toEqual(noise(10));
    dropPieces(sql, "a");
    expect([loadBytes(sql, "a"), loadText(sql, "a")]).toEqual([null, null]);
  });
});

test("a text that can't be unpacked counts as never stored", async () => {
  await inStore("broken", (sql) => {
    storeText(sql, "t", "x".repeat(1000));
    sql.rows("UPDATE pieces SET bytes = substr(bytes, 1, 9)");
    expect(loadText(sql, "t")).toBeNull();
  });
});

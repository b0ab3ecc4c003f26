import { unzip, zip } from "./bytes.ts";
import type { SqlStore } from "./sql.ts";

/** Bytes of one piece; only the last is shorter. Source: house rule, far below the platform's 2 MB a row. */
export const PIECE_BYTES = 256 * 1024;

/** Stores a long text under a name, gzipped and in pieces, in place of what stood there. */
export function storeText(sql: SqlStore, name: string, text: string): void {
  storeBytes(sql, name, zip(text));
}

/** The text of that name; null where there is none, or it can't be read. */
export function loadText(sql: SqlStore, name: string): string | null {
  const bytes = loadBytes(sql, name);
  try {
    return bytes === null ? null : unzip(bytes);
  } catch {
    return null;
  }
}

/** Stores bytes under a name, in pieces, in place of what stood there. */
export function storeBytes(sql: SqlStore, name: string, bytes: Uint8Array): void {
  const parts = Math.max(1, Math.ceil(bytes.length / PIECE_BYTES));
  for (let part = 0; part < parts; part += 1)
    sql.rows(
      "INSERT INTO pieces (name, part, bytes) VALUES (?1, ?2, ?3) ON CONFLICT (name, part) DO UPDATE SET bytes = excluded.bytes",
      ...[name, part, bytes.subarray(part * PIECE_BYTES, (part + 1) * PIECE_BYTES)],
    );
  sql.rows("DELETE FROM pieces WHERE name = ?1 AND part >= ?2", name, parts);
}

/** The bytes of that name, put together; null where there are none. */
export function loadBytes(sql: SqlStore, name: string): Uint8Array<ArrayBuffer> | null {
  type Row = { readonly bytes: ArrayBuffer };
  const rows = sql.rows<Row>("SELECT bytes FROM pieces WHERE name = ?1 ORDER BY part", name);
  const [first] = rows;
  if (first === undefined) return null;
  if (rows.length === 1) return new Uint8Array(first.bytes);
  const whole = new Uint8Array(rows.reduce((sum, { bytes }) => sum + bytes.byteLength, 0));
  let at = 0;
  for (const { bytes } of rows) {
    whole.set(new Uint8Array(bytes), at);
    at += bytes.byteLength;
  }
  return whole;
}

/** Forgets what is stored under a name. */
export function dropPieces(sql: SqlStore, name: string): void {
  sql.rows("DELETE FROM pieces WHERE name = ?1", name);
}

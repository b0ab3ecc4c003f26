import { createHash } from "node:crypto";
import { parseStoredJson } from "./bytes.ts";
import { dropPieces, loadText, storeText } from "./pieces.ts";
import { firstRow, type SqlStore } from "./sql.ts";

/**
 * Stores texts by name in place of every text whose name begins with `under`. One that says what is stored already is not
 * written again: its fingerprint shows that.
 */
export function storeChangedTexts(
  sql: SqlStore,
  under: string,
  texts: ReadonlyMap<string, string>,
): void {
  for (const name of storedNames(sql, under)) if (!texts.has(name)) dropText(sql, name);
  for (const [name, text] of texts) {
    const fingerprint = createHash("sha256").update(text).digest("base64url");
    if (fingerprintOf(sql, name) === fingerprint) continue;
    storeText(sql, name, text);
    sql.rows(
      "INSERT OR REPLACE INTO fingerprints (name, fingerprint) VALUES (?1, ?2)",
      name,
      fingerprint,
    );
  }
}

/** Names of stored texts that begin so. */
export function storedNames(sql: SqlStore, under: string): readonly string[] {
  type Row = { readonly name: string };
  const query =
    "SELECT name FROM fingerprints WHERE substr(name, 1, length(?1)) = ?1 ORDER BY name";
  return sql.rows<Row>(query, under).map(({ name }) => name);
}

function fingerprintOf(sql: SqlStore, name: string): string | null {
  type Row = { readonly fingerprint: string };
  const query = "SELECT fingerprint FROM fingerprints WHERE name = ?1";
  return firstRow<Row>(sql, query, name)?.fingerprint ?? null;
}

function dropText(sql: SqlStore, name: string): void {
  dropPieces(sql, name);
  sql.rows("DELETE FROM fingerprints WHERE name = ?1", name);
}

/** Makes the texts whose names begin so be written again, whatever they say, since what is stored can't be read. */
export function forgetFingerprints(sql: SqlStore, under: string): void {
  for (const name of storedNames(sql, under))
    sql.rows("UPDATE fingerprints SET fingerprint = '' WHERE name = ?1", name);
}

/** A stored text as JSON; null where there is none, or it can't be read. */
export function loadJson<Stored>(sql: SqlStore, name: string): Stored | null {
  const text = loadText(sql, name);
  return text === null ? null : parseStoredJson(text);
}

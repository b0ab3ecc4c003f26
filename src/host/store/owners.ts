import { dropFeedsOf } from "./feeds.ts";
import { gardenRecord, storeGardenRecord } from "./record.ts";
import { storedInstant } from "./sealed.ts";
import { firstRow, type SqlStore } from "./sql.ts";

/** So many next links of an owner may wait to be used; the oldest go. Source: house rule. */
const MOST_NEXT = 20;

/** Whether an owner's link of that serial opens: the one in force, or one shown to take its place. */
export function opensAsOwner(sql: SqlStore, serial: number): boolean {
  if (gardenRecord(sql)?.owner === serial) return true;
  return firstRow(sql, "SELECT 1 FROM next_owners WHERE serial = ?1", serial) !== null;
}

/** Lets a link of that serial open as the owner beside those that do, till one of them closes the others; shown at an instant [ms]. */
export function showNextOwner(sql: SqlStore, serial: number, at: number): void {
  sql.rows("INSERT OR REPLACE INTO next_owners (serial, shown_at) VALUES (?1, ?2)", serial, at);
  sql.rows(
    "DELETE FROM next_owners WHERE serial NOT IN (SELECT serial FROM next_owners ORDER BY shown_at DESC, serial LIMIT ?1)",
    MOST_NEXT,
  );
}

/** Whether another owner's link than the one of that serial opens too. */
export function hasOtherOwners(sql: SqlStore, serial: number): boolean {
  if (gardenRecord(sql)?.owner !== serial) return true;
  return firstRow(sql, "SELECT 1 FROM next_owners WHERE serial <> ?1", serial) !== null;
}

/** Makes that serial the only one that opens as the owner, and forgets what was written for any other. */
export function closeOtherOwners(sql: SqlStore, serial: number): void {
  sql.transaction(() => {
    const record = gardenRecord(sql);
    if (record !== null) storeGardenRecord(sql, { ...record, owner: serial }, record.changedAt);
    sql.rows("DELETE FROM next_owners");
    const others = sql.rows<{ readonly link: string }>(
      "SELECT DISTINCT link FROM feeds WHERE link GLOB 'owner-*' AND link <> ?1",
      `owner-${serial}`,
    );
    for (const { link } of others) dropFeedsOf(sql, link);
  });
}

/** The fingerprint of the phrase that lets a shut-out owner in, and when it was made [ms since 1970 UTC]. */
export type Recovery = { readonly fingerprint: string; readonly madeAt: number };

/** A garden whose owner was let in again: the serial of the link that alone opens as the owner now, and the next phrase. */
export type Recovered = { readonly serial: number; readonly phrase: string };

/** What is stored of the garden's phrase; null where it has none. */
export function recoveryOf(sql: SqlStore): Recovery | null {
  const row = firstRow<Recovery>(sql, "SELECT fingerprint, made_at AS madeAt FROM recovery");
  return row && { ...row, madeAt: storedInstant(row.madeAt) };
}

/** Stores a phrase's fingerprint in place of any earlier one; null: the garden has none from then on. */
export function storeRecovery(sql: SqlStore, recovery: Recovery | null): void {
  sql.rows("DELETE FROM recovery");
  if (recovery !== null)
    sql.rows(
      "INSERT INTO recovery (only, fingerprint, made_at) VALUES (1, ?1, ?2)",
      ...[recovery.fingerprint, recovery.madeAt],
    );
}

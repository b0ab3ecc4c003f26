import { firstRow, type SqlStore } from "./sql.ts";

/** The last copy of the garden that was stored elsewhere, null: none was; after failures in a row, when it is tried again [ms since 1970 UTC]. */
export type CopyRecord = {
  readonly copiedAt: number | null;
  readonly failures: number;
  readonly retryAt: number;
};

/** The record of copies; of a garden that never had one, one that is due at once. */
export function copyRecord(sql: SqlStore): CopyRecord {
  const query = "SELECT copied_at AS copiedAt, failures, retry_at AS retryAt FROM copies";
  return firstRow<CopyRecord>(sql, query) ?? { copiedAt: null, failures: 0, retryAt: 0 };
}

/** Stores what became of a copy. */
export function storeCopyRecord(sql: SqlStore, { copiedAt, failures, retryAt }: CopyRecord): void {
  sql.rows(
    "INSERT OR REPLACE INTO copies (only, copied_at, failures, retry_at) VALUES (1, ?1, ?2, ?3)",
    ...[copiedAt, failures, retryAt],
  );
}

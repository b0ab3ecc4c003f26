import { seal, storedInstant, unseal } from "./sealed.ts";
import { firstRow, type SqlStore } from "./sql.ts";

/**
 * A garden's record. `revision` rises with every change of plans or diary, `changedAt` [ms since 1970 UTC] is the newest
 * of them; `owner` is the serial in force of the owner's links.
 */
export type GardenRecord = {
  readonly id: string;
  /** The id that the UIDs of its events are made from: its own, or that of the garden it was restored from. */
  readonly uids: string;
  readonly revision: number;
  readonly changedAt: number;
  readonly origin: string;
  readonly owner: number;
};

type RecordRow = GardenRecord & { readonly copy: string | null };

const RECORD =
  "SELECT id, coalesce(uids, id) AS uids, revision, changed_at AS changedAt, origin, owner, copy FROM garden";

/** What of a record is stored twice: who the garden is and which owner's link opens. */
type RecordCopy = Pick<GardenRecord, "id" | "uids" | "origin" | "owner">;

/**
 * The garden's record; null where there is no garden. Where one of its two copies is damaged the other counts: the sealed one can be
 * told from a damaged one.
 */
export function gardenRecord(sql: SqlStore): GardenRecord | null {
  const row = firstRow<RecordRow>(sql, RECORD);
  if (row === null) return null;
  const { copy, ...record } = row;
  const changedAt = storedInstant(record.changedAt);
  return { ...record, ...unseal<RecordCopy>(copy), changedAt };
}

/** Stores a garden's record, in place of the one there is; both copies of it. `changedAt` counts only for a new one. */
export function storeGardenRecord(
  sql: SqlStore,
  { id, uids, origin, owner }: RecordCopy,
  changedAt: number,
): void {
  sql.rows(
    `INSERT INTO garden (only, id, uids, origin, owner, copy, changed_at) VALUES (1, ?1, ?2, ?3, ?4, ?5, ?6)
      ON CONFLICT (only) DO UPDATE SET id = ?1, uids = ?2, origin = ?3, owner = ?4, copy = ?5`,
    ...[id, uids === id ? null : uids, origin, owner, seal({ id, uids, origin, owner }), changedAt],
  );
}

/** Puts the damaged copy of a garden's record right by the other; gives how many were damaged. */
export function mendRecord(sql: SqlStore): number {
  const row = firstRow<RecordRow>(sql, RECORD);
  const record = gardenRecord(sql);
  if (row === null || record === null || row.copy === null) return 0;
  const { id, uids, origin, owner } = row;
  if (row.copy === seal({ id, uids, origin, owner }) && row.changedAt === record.changedAt)
    return 0;
  storeGardenRecord(sql, record, record.changedAt);
  sql.rows("UPDATE garden SET changed_at = ?1", record.changedAt);
  return 1;
}

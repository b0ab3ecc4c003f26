import type { Plan, PublishedState } from "../../../app/index.ts";
import {
  type Event,
  type FormerTasks,
  readLedger,
  type StoredLedger,
} from "../../../app/records.ts";
import { dayFromIso } from "../../../base/index.ts";
import { parseStoredJson, unzip } from "../bytes.ts";
import { storeLine } from "../diary.ts";
import { storeEvents, storeFormerTasks } from "../events.ts";
import { storeFeedBytes, storeLedger } from "../feeds.ts";
import { storeRevoked } from "../links.ts";
import { showNextOwner } from "../owners.ts";
import { insertVersion } from "../plans.ts";
import { storeGardenRecord } from "../record.ts";
import { firstRow, type SqlStore } from "../sql.ts";
import { storeTasks } from "../tasks.ts";
import {
  type OldDiaryRow,
  type OldFeedRow,
  type OldGarden,
  type OldGardenRow,
  type OldPlanRow,
  readOldGarden,
} from "./old-garden.ts";

/** Where a garden is brought over from: the former store, null where none is bound, and the garden's id. */
export type FormerGarden = { readonly db: D1Database | null; readonly garden: string };

/**
 * Copies a garden from the former store into its own, once, whole or not at all: plans with every version, the diary, revoked
 * links, the owner's serials, how tasks were published, and feeds with their ledgers, so that no SEQUENCE ever falls. A garden
 * that was deleted there stays deleted. Where one was ever stored here nothing is looked for any more. Throws where the former
 * store can't be read; then nothing is stored.
 */
export async function bringOver(sql: SqlStore, { db, garden }: FormerGarden): Promise<void> {
  if (db === null || !isNew(sql)) return;
  const old = await readOldGarden(db, garden);
  sql.transaction(() => copyGarden(sql, old));
}

/** Whether nothing was ever stored here. */
function isNew(sql: SqlStore): boolean {
  const query = "SELECT 1 WHERE EXISTS (SELECT 1 FROM garden) OR EXISTS (SELECT 1 FROM gone)";
  return firstRow(sql, query) === null;
}

function copyGarden(sql: SqlStore, { garden, plans, diary, revoked, feeds, goneAt }: OldGarden) {
  for (const { link, at } of revoked) storeRevoked(sql, link, at);
  if (goneAt !== null) sql.rows("INSERT INTO gone (at) VALUES (?1)", goneAt);
  if (garden === null) return;
  copyRecord(sql, garden);
  copyPlans(sql, plans);
  for (const line of diary) copyLine(sql, line);
  for (const feed of feeds) copyFeed(sql, feed);
  copyState(sql, garden);
  sql.rows("UPDATE garden SET revision = ?1, changed_at = ?2", garden.revision, garden.changed_at);
}

function copyRecord(sql: SqlStore, garden: OldGardenRow): void {
  const { id, changed_at, origin, owner, owner_next } = garden;
  storeGardenRecord(sql, { id, uids: id, origin, owner }, changed_at);
  if (owner_next !== null) showNextOwner(sql, owner_next, changed_at);
}

/** Versions come oldest first, so that what was read of the newest stays. */
function copyPlans(sql: SqlStore, plans: readonly OldPlanRow[]): void {
  for (const { beside, plan, read_by, saved_at, ...row } of plans)
    insertVersion(sql, {
      ...row,
      beside: JSON.parse(beside),
      plan: parseStoredJson<Plan>(plan),
      readBy: read_by,
      savedAt: saved_at,
    });
}

/** A line of a day that is none was never written by us, and would be read by nothing. */
function copyLine(sql: SqlStore, { day: iso, said_at, ...line }: OldDiaryRow): void {
  const day = dayFromIso(iso);
  if (day !== null) storeLine(sql, { ...line, day, saidAt: said_at });
}

function copyFeed(sql: SqlStore, { link, feed, code, until, ...row }: OldFeedRow): void {
  const { size, print, last_modified, body, ledger } = row;
  const record = { link, feed, build: 0, code, until, size, print, lastModified: last_modified };
  storeFeedBytes(sql, record, Uint8Array.from(Buffer.from(body, "base64")));
  const kept = ledgerIn(ledger);
  if (kept) storeLedger(sql, { link, feed, ledger: readLedger(kept), over: null });
}

/** A ledger as it was packed; null where it can't be read. */
function ledgerIn(packed: string): StoredLedger | null {
  try {
    return JSON.parse(unzip(Buffer.from(packed, "base64")));
  } catch {
    return null;
  }
}

/** How tasks were published, the events, and what they were told with before; what can't be read counts as never kept. */
function copyState(sql: SqlStore, { standing, events, before }: OldGardenRow): void {
  const published = parseStoredJson<PublishedState>(standing) ?? {};
  const rest = { event: null, card: null, baseline: null };
  const rows = Object.entries(published).map(([id, task]) => ({ id, published: task, ...rest }));
  storeTasks(sql, rows);
  storeEvents(sql, parseStoredJson<readonly Event[]>(events) ?? []);
  storeFormerTasks(sql, parseStoredJson<FormerTasks>(before) ?? {});
}

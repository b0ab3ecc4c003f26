import type { SqlStore } from "../../src/host/store/sql.ts";

/** Rows that statements have read and written so far, as the platform counts them, index entries among the written. */
export type Rows = { readonly read: number; readonly written: number };

const sum = { read: 0, written: 0, bytes: 0 };

/** An object's database, counted with those of all others. */
export function countingStore(storage: DurableObjectStorage): SqlStore {
  return {
    rows: <Row>(query: string, ...bound: Parameters<SqlStore["rows"]>[1][]) => {
      const cursor = storage.sql.exec<Row>(query, ...bound);
      const rows = cursor.toArray();
      sum.read += cursor.rowsRead;
      sum.written += cursor.rowsWritten;
      sum.bytes = storage.sql.databaseSize;
      return rows;
    },
    transaction: (work) => storage.transactionSync(work),
  };
}

/** Rows that some work reads and writes. */
export async function rowsOf(work: () => Promise<unknown>): Promise<Rows> {
  const before = { ...sum };
  await work();
  return { read: sum.read - before.read, written: sum.written - before.written };
}

/** How large the database that was last asked is [bytes]. */
export const bytesOfLast = () => sum.bytes;

/** What can be written into a column. */
export type SqlValue = string | number | null | Uint8Array;

/**
 * A garden's own database, as the store's functions use it. Everything is synchronous. `rows` runs a statement and gives its
 * rows; `transaction` does its work whole or, where that throws, not at all, and passes on what was thrown.
 */
export type SqlStore = {
  rows<Row>(query: string, ...bound: readonly SqlValue[]): readonly Row[];
  transaction<Result>(work: () => Result): Result;
};

/** The database of a Durable Object. */
export function sqlStoreOf(storage: DurableObjectStorage): SqlStore {
  return {
    rows: (query, ...bound) => storage.sql.exec<never>(query, ...bound).toArray(),
    transaction: (work) => storage.transactionSync(work),
  };
}

/** The first row of a statement, null where it has none. */
export function firstRow<Row>(
  sql: SqlStore,
  query: string,
  ...bound: readonly SqlValue[]
): Row | null {
  return sql.rows<Row>(query, ...bound)[0] ?? null;
}

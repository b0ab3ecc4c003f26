import { runInDurableObject } from "cloudflare:test";
import { env } from "cloudflare:workers";
import { type SqlStore, sqlStoreOf } from "../../src/host/store/sql.ts";

/** Looks into a garden's own store, or does something to it. */
export function inStore<Result>(garden: string, work: (sql: SqlStore) => Result): Promise<Result> {
  return runInDurableObject(env.GARDENS.getByName(garden), (_, { storage }) =>
    work(sqlStoreOf(storage)),
  );
}

/** Waits until a garden's object builds nothing any more. */
export async function settled(garden: string): Promise<void> {
  await env.GARDENS.getByName(garden).settled();
}

import { env } from "cloudflare:workers";
import { gzipSync } from "node:zlib";

const bound = env as unknown as { readonly FORMER: D1Database };

let made: Promise<unknown> | null = null;

/** A store of the former kind, with its tables as its own migrations make them. All tests share it, so their gardens differ in name. */
export async function formerStore(): Promise<D1Database> {
  const db = bound.FORMER;
  const queries = env.MIGRATIONS.flatMap((migration) => migration.queries);
  // All at once: one by one, the migrations would take longer than the tests.
  made ??= db.batch(queries.map((query) => db.prepare(query)));
  await made;
  return db;
}

/** A text as the former store kept bodies and ledgers. */
export const packed = (text: string) => gzipSync(text).toString("base64");

/** Puts a row into a table of the former store, by its columns. */
export async function put(
  db: D1Database,
  table: string,
  row: Readonly<Record<string, string | number | null>>,
): Promise<void> {
  const columns = Object.keys(row);
  const places = columns.map((_, at) => `?${at + 1}`);
  const query = `INSERT INTO ${table} (${columns.join(", ")}) VALUES (${places.join(", ")})`;
  await db
    .prepare(query)
    .bind(...Object.values(row))
    .run();
}

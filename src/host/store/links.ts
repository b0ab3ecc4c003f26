import { dropFeedsOf } from "./feeds.ts";
import { storedInstant } from "./sealed.ts";
import { firstRow, type SqlStore } from "./sql.ts";

/**
 * What is known of a garden's links, each by its part of the path: those a feed was written for, and those revoked and when [ms];
 * and the keys of everybody whom any version of a plan ever named.
 */
export type LinkUse = {
  readonly used: readonly string[];
  readonly people: readonly string[];
  readonly revoked: readonly { readonly link: string; readonly at: number }[];
};

/** Which links calendars have asked with and who was ever named, in order, and which links were revoked, newest first. */
export function linkUse(sql: SqlStore): LinkUse {
  type Row = { readonly link: string; readonly at: number };
  const links = (query: string) => sql.rows<Row>(query).map(({ link }) => link);
  return {
    used: links("SELECT DISTINCT link FROM feeds ORDER BY link"),
    people: links("SELECT key AS link FROM people ORDER BY key"),
    revoked: sql
      .rows<Row>("SELECT link, at FROM revoked ORDER BY at DESC, link")
      .map(({ link, at }) => ({ link, at: storedInstant(at) })),
  };
}

/** Every revoked link by its part of the path, by either of the names that are stored of it. */
export function revokedLinks(sql: SqlStore): readonly string[] {
  type Row = { readonly link: string; readonly copy: string | null };
  const rows = sql.rows<Row>("SELECT link, copy FROM revoked ORDER BY link");
  return [...new Set(rows.flatMap(({ link, copy }) => [link, copy ?? link]))];
}

/** Stores that a link was revoked, by a name that is stored twice, so that no damage to one opens it again. The first instant stays. */
export function storeRevoked(sql: SqlStore, link: string, at: number): void {
  sql.rows(
    "INSERT INTO revoked (link, copy, at) VALUES (?1, ?1, ?2) ON CONFLICT DO NOTHING",
    ...[link, at],
  );
}

/** Closes what either of two names that differ stands for, since it can't be told which is right; gives how many did. */
export function mendRevoked(sql: SqlStore): number {
  type Row = { readonly link: string; readonly copy: string; readonly at: number };
  const bad = sql.rows<Row>("SELECT link, copy, at FROM revoked WHERE copy <> link");
  for (const { link, copy, at } of bad) {
    sql.rows("UPDATE revoked SET copy = link WHERE link = ?1", link);
    storeRevoked(sql, copy, at);
  }
  return bad.length;
}

/** Whether that link was revoked. */
export function isRevoked(sql: SqlStore, link: string): boolean {
  return firstRow(sql, "SELECT 1 FROM revoked WHERE link = ?1 OR copy = ?1", link) !== null;
}

/**
 * Revokes one link, given as its part of the path (`helper-imre-1`), at an instant [ms since 1970 UTC], and forgets what was
 * written for it. Again is no mistake.
 */
export function revoke(sql: SqlStore, link: string, at: number): void {
  sql.transaction(() => {
    storeRevoked(sql, link, at);
    dropFeedsOf(sql, link);
  });
}

import { dropFeedsOf } from "./feeds.ts";
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
    revoked: sql.rows<Row>("SELECT link, at FROM revoked ORDER BY at DESC, link"),
  };
}

/** Every revoked link by its part of the path. */
export function revokedLinks(sql: SqlStore): readonly string[] {
  return sql
    .rows<{ readonly link: string }>("SELECT link FROM revoked ORDER BY link")
    .map(({ link }) => link);
}

/** Whether that link was revoked. */
export function isRevoked(sql: SqlStore, link: string): boolean {
  return firstRow(sql, "SELECT 1 FROM revoked WHERE link = ?1", link) !== null;
}

/**
 * Revokes one link, given as its part of the path (`helper-imre-1`), at an instant [ms since 1970 UTC], and forgets what was
 * written for it. Again is no mistake.
 */
export function revoke(sql: SqlStore, link: string, at: number): void {
  sql.transaction(() => {
    sql.rows("INSERT INTO revoked (link, at) VALUES (?1, ?2) ON CONFLICT DO NOTHING", link, at);
    dropFeedsOf(sql, link);
  });
}

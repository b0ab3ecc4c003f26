/** What is known of a garden's links, each by its part of the path: those a feed was written for, and those revoked and when [ms]. */
export type LinkUse = {
  readonly used: readonly string[];
  readonly revoked: readonly { readonly link: string; readonly at: number }[];
};

/** Which links calendars have asked with, in order, and which were revoked, newest first. */
export async function linkUse(db: D1Database, garden: string): Promise<LinkUse> {
  const [used, revoked] = await db.batch<{ readonly link: string; readonly at: number }>([
    db.prepare("SELECT DISTINCT link FROM feeds WHERE garden = ?1 ORDER BY link").bind(garden),
    db
      .prepare(
        "SELECT link, revoked_at AS at FROM revoked WHERE garden = ?1 ORDER BY revoked_at DESC, link",
      )
      .bind(garden),
  ]);
  return { used: (used?.results ?? []).map(({ link }) => link), revoked: revoked?.results ?? [] };
}

/**
 * Revokes one link, given as its part of the path (`helper-imre-1`), at an instant [ms since 1970 UTC], and forgets what was
 * written for it. Again is no mistake.
 */
export async function revoke(
  db: D1Database,
  garden: string,
  link: string,
  at: number,
): Promise<void> {
  await db.batch([
    db
      .prepare(
        "INSERT INTO revoked (garden, link, revoked_at) VALUES (?1, ?2, ?3) ON CONFLICT DO NOTHING",
      )
      .bind(garden, link, at),
    db.prepare("DELETE FROM feeds WHERE garden = ?1 AND link = ?2").bind(garden, link),
  ]);
}

/** Whether a garden of that id was deleted for good. */
export async function isGone(db: D1Database, garden: string): Promise<boolean> {
  const row = await db.prepare("SELECT 1 FROM gone WHERE garden = ?1").bind(garden).first();
  return row !== null;
}

/**
 * Deletes a garden for good: plans with all their versions, diary, feeds and what was told, at once or not at all. Only its
 * id stays, so that no link of it ever opens a garden again. `at` in ms since 1970 UTC.
 */
export async function deleteGarden(db: D1Database, garden: string, at: number): Promise<void> {
  const of = (query: string) => db.prepare(query).bind(garden);
  await db.batch([
    db
      .prepare("INSERT INTO gone (garden, gone_at) VALUES (?1, ?2) ON CONFLICT DO NOTHING")
      .bind(garden, at),
    of("DELETE FROM gardens WHERE id = ?1"),
    of("DELETE FROM revoked WHERE garden = ?1"),
  ]);
}

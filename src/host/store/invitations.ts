/** Whether an invitation still makes its garden: there is none yet, none was deleted, and the invitation was not revoked. One query. */
export async function isInvited(db: D1Database, garden: string, link: string): Promise<boolean> {
  const row = await db
    .prepare(
      `SELECT EXISTS (SELECT 1 FROM gardens WHERE id = ?1) AS made,
        EXISTS (SELECT 1 FROM gone WHERE garden = ?1) AS gone,
        EXISTS (SELECT 1 FROM revoked WHERE garden = ?1 AND link = ?2) AS revoked`,
    )
    .bind(garden, link)
    .first<{ readonly made: number; readonly gone: number; readonly revoked: number }>();
  return row !== null && row.made + row.gone + row.revoked === 0;
}

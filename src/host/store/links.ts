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
export async function linkUse(db: D1Database, garden: string): Promise<LinkUse> {
  type Row = { readonly link: string; readonly at: number };
  const [used, revoked, people] = await db.batch<Row>([
    db.prepare("SELECT DISTINCT link FROM feeds WHERE garden = ?1 ORDER BY link").bind(garden),
    db
      .prepare(
        "SELECT link, revoked_at AS at FROM revoked WHERE garden = ?1 ORDER BY revoked_at DESC, link",
      )
      .bind(garden),
    db
      .prepare(
        `SELECT DISTINCT person.value ->> '$.key' AS link FROM plans, json_each(plans.plan, '$.people') AS person
          WHERE garden = ?1 AND json_valid(plans.plan) ORDER BY link`,
      )
      .bind(garden),
  ]);
  const linksIn = (result: D1Result<Row> | undefined) =>
    (result?.results ?? []).map(({ link }) => link);
  return { used: linksIn(used), revoked: revoked?.results ?? [], people: linksIn(people) };
}

/** Lets a link of that serial open as the owner beside the one in force, till one of them closes the other. */
export async function showNextOwner(db: D1Database, garden: string, serial: number): Promise<void> {
  await db.prepare("UPDATE gardens SET owner_next = ?2 WHERE id = ?1").bind(garden, serial).run();
}

/** Makes that serial the only one that opens as the owner, and forgets what was written for any other. */
export async function closeOtherOwners(
  db: D1Database,
  garden: string,
  serial: number,
): Promise<void> {
  await db.batch([
    db
      .prepare("UPDATE gardens SET owner = ?2, owner_next = NULL WHERE id = ?1")
      .bind(garden, serial),
    db
      .prepare("DELETE FROM feeds WHERE garden = ?1 AND link GLOB 'owner-*' AND link <> ?2")
      .bind(garden, `owner-${serial}`),
  ]);
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

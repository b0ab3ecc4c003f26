/** A garden's row in the former store, named as its columns are. */
export type OldGardenRow = {
  readonly id: string;
  readonly revision: number;
  readonly changed_at: number;
  readonly origin: string;
  readonly owner: number;
  readonly owner_next: number | null;
  /** How each task was published, as JSON. */
  readonly standing: string;
  readonly events: string | null;
  readonly before: string | null;
};

/** A version of a plan in the former store; `plan` as it was read, as JSON. */
export type OldPlanRow = {
  readonly year: number;
  readonly version: number;
  readonly text: string;
  readonly beside: string;
  readonly file: string;
  readonly plan: string;
  readonly read_by: string;
  readonly published: string | null;
  readonly saved_at: number;
};

/** A line of the diary in the former store. */
export type OldDiaryRow = {
  readonly id: number;
  readonly day: string;
  readonly text: string;
  readonly task: string | null;
  readonly person: string | null;
  readonly said_at: number;
};

/** A feed in the former store; body and ledger gzipped, as base64. */
export type OldFeedRow = {
  readonly link: string;
  readonly feed: string;
  readonly body: string;
  readonly size: number;
  readonly print: string;
  readonly last_modified: number;
  readonly ledger: string;
  readonly code: string;
  readonly until: number;
};

/** Everything the former store has of a garden; `garden` null where it has none, `goneAt` null where none was deleted. */
export type OldGarden = {
  readonly garden: OldGardenRow | null;
  readonly plans: readonly OldPlanRow[];
  readonly diary: readonly OldDiaryRow[];
  readonly revoked: readonly { readonly link: string; readonly at: number }[];
  readonly feeds: readonly OldFeedRow[];
  readonly goneAt: number | null;
};

/** Versions oldest first, the diary in the order it was said. */
const QUERIES = [
  "SELECT id, revision, changed_at, origin, owner, owner_next, standing, events, before FROM gardens WHERE id = ?1",
  `SELECT year, version, text, beside, file, plan, read_by, published, saved_at FROM plans
    WHERE garden = ?1 ORDER BY year, version`,
  "SELECT id, day, text, task, person, said_at FROM diary WHERE garden = ?1 ORDER BY id",
  "SELECT link, revoked_at AS at FROM revoked WHERE garden = ?1",
  "SELECT link, feed, body, size, print, last_modified, ledger, code, until FROM feeds WHERE garden = ?1",
  "SELECT gone_at AS at FROM gone WHERE garden = ?1",
];

/** A garden as the former store has it, seen at one moment. */
export async function readOldGarden(db: D1Database, garden: string): Promise<OldGarden> {
  const results = await db.batch<unknown>(QUERIES.map((query) => db.prepare(query).bind(garden)));
  const rows = <Row>(at: number) => (results[at]?.results ?? []) as Row[];
  return {
    garden: rows<OldGardenRow>(0)[0] ?? null,
    plans: rows<OldPlanRow>(1),
    diary: rows<OldDiaryRow>(2),
    revoked: rows<{ link: string; at: number }>(3),
    feeds: rows<OldFeedRow>(4),
    goneAt: rows<{ at: number }>(5)[0]?.at ?? null,
  };
}

import { firstRow, type SqlStore } from "./sql.ts";

/** After how long a count begins anew [ms]. */
const PERIOD_MS = 60_000;

/** Writes of one person in a minute, and of a garden's people together. Source: house rule; a busy household taps a dozen. */
const MOST = { person: 300, garden: 3000 } as const;

/** Counts a write by somebody (`helper-imre`) at an instant [ms] and says whether it may be done: false where there were too many. */
export function countWrite(sql: SqlStore, who: string, now: number): boolean {
  return sql.transaction(() => {
    const own = countOne(sql, `person ${who}`, now);
    return own <= MOST.person && countOne(sql, "garden", now) <= MOST.garden;
  });
}

/** New places whose years a garden asks for in a day. Source: house rule; a place is put right once or twice. */
const MOST_PLACES = 8;
const DAY_MS = 86_400_000;

/** Counts a new place whose years are asked for at an instant [ms]; false where there were too many that day. */
export function countPlace(sql: SqlStore, now: number): boolean {
  return sql.transaction(() => countOne(sql, "places", now, DAY_MS) <= MOST_PLACES);
}

function countOne(sql: SqlStore, who: string, now: number, periodMs = PERIOD_MS): number {
  type Row = { readonly since: number; readonly count: number };
  const row = firstRow<Row>(sql, "SELECT since, count FROM writes WHERE who = ?1", who);
  // No count is higher than the highest that is still counted: one that is was damaged.
  const isOurs = row !== null && row.count >= 0 && row.count <= MOST.garden + 1;
  const goesOn = isOurs && now >= row.since && now - row.since < periodMs;
  const [since, count] = goesOn ? [row.since, Math.min(row.count, MOST.garden) + 1] : [now, 1];
  sql.rows(
    "INSERT OR REPLACE INTO writes (who, since, count) VALUES (?1, ?2, ?3)",
    who,
    since,
    count,
  );
  return count;
}

import { firstRow, type SqlStore } from "../store/sql.ts";
import type { CellContext } from "./cell.ts";
import { lastWholeYear, type WeatherPlace } from "./terms.ts";

/** The years behind a cell's place as the text of a weather file; null with what was wrong with the last try. */
export type CellYears =
  | { readonly file: string; readonly fault: null }
  | { readonly file: null; readonly fault: string };

/** The first pause after a try that failed, and the longest, each twice the one before [ms]; somebody waits for the first. */
const PAUSES = { first: 60_000, longest: 12 * 3_600_000 } as const;

const TABLE = `CREATE TABLE IF NOT EXISTS years (
  only INTEGER PRIMARY KEY CHECK (only = 1),
  file TEXT,
  upto INTEGER,
  next_at INTEGER NOT NULL,
  failures INTEGER NOT NULL,
  fault TEXT
) STRICT`;

type YearsRow = {
  readonly file: string | null;
  /** The last year in it. */
  readonly upto: number | null;
  readonly nextAt: number;
  readonly failures: number;
  readonly fault: string | null;
};

const NEVER_ASKED: YearsRow = { file: null, upto: null, nextAt: 0, failures: 0, fault: null };

/**
 * The years behind a cell's place: asked for once and kept for every garden there, until another year is whole. Where asking again
 * fails, those that are known stay.
 */
export async function yearsOfCell(
  { sql, now, source }: CellContext,
  place: WeatherPlace,
): Promise<CellYears> {
  sql.rows(TABLE);
  const known =
    firstRow<YearsRow>(sql, "SELECT file, upto, next_at AS nextAt, failures, fault FROM years") ??
    NEVER_ASKED;
  const isWhole = known.file !== null && (known.upto ?? 0) >= lastWholeYear(now);
  const waits = known.nextAt > now && known.nextAt <= now + PAUSES.longest;
  if (isWhole || waits) return answerFrom(known);
  const answer = await source.yearsBehind(place);
  const next: YearsRow =
    answer.kind === "good"
      ? { ...NEVER_ASKED, file: answer.value.file, upto: lastWholeYear(now) }
      : rowAfterFailure(known, answer.kind === "failed" ? answer.fault : "nothing new", {
          now,
          retryAt: answer.retryAt,
        });
  storeRow(sql, next);
  return answerFrom(next);
}

function rowAfterFailure(
  known: YearsRow,
  fault: string,
  { now, retryAt }: { readonly now: number; readonly retryAt: number | null },
): YearsRow {
  const pause = Math.min(PAUSES.first * 2 ** known.failures, PAUSES.longest);
  const nextAt = Math.max(now + pause, retryAt ?? 0);
  return { ...known, nextAt, failures: known.failures + 1, fault };
}

function storeRow(sql: SqlStore, { file, upto, nextAt, failures, fault }: YearsRow): void {
  sql.rows(
    `INSERT OR REPLACE INTO years (only, file, upto, next_at, failures, fault)
      VALUES (1, ?1, ?2, ?3, ?4, ?5)`,
    ...[file, upto, nextAt, failures, fault],
  );
}

function answerFrom({ file, fault }: YearsRow): CellYears {
  return file === null ? { file, fault: fault ?? "not asked yet" } : { file, fault: null };
}

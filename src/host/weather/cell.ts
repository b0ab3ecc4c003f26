import type { KnownWeather, WeatherQuestion, WeatherService } from "../../app/index.ts";
import { firstRow, type SqlStore } from "../store/sql.ts";
import type { SourceAnswer, WeatherSource } from "./source.ts";

/** What a cell is asked: which service, and of where and when; coordinates to the tenth of a degree. */
export type CellQuestion = WeatherQuestion & { readonly source: WeatherService };

/**
 * What a cell knows: the newest good answer, when it came, when it is worth asking again [ms since 1970 UTC], and what was wrong
 * with the last try; null: nothing.
 */
export type CellAnswer = {
  readonly weather: KnownWeather | null;
  readonly fetchedAt: number | null;
  readonly nextAt: number;
  readonly fault: string | null;
};

/** What a cell works with: its database, the clock [ms since 1970 UTC], and whom it asks. */
export type CellContext = {
  readonly sql: SqlStore;
  readonly now: number;
  readonly source: WeatherSource;
};

/** A good answer holds for six hours, so that a service is asked four times a day at the most [ms]. */
const HOLDS_MS = 6 * 3_600_000;

/** The first pause after a try that failed, and the longest, each twice the one before [ms]: at most four tries a day. */
const PAUSES = { first: 2 * 3_600_000, longest: 12 * 3_600_000 } as const;

/** No answer holds so long [ms]; what is due later was put off by a clock that ran ahead. Source: house rule. */
const LONGEST_MS = 7 * 86_400_000;

const TABLE = `CREATE TABLE IF NOT EXISTS cell (
  only INTEGER PRIMARY KEY CHECK (only = 1),
  weather TEXT,
  fetched_at INTEGER,
  next_at INTEGER NOT NULL,
  failures INTEGER NOT NULL,
  last_modified TEXT,
  fault TEXT
) STRICT`;

type CellRow = {
  readonly weather: string | null;
  readonly fetchedAt: number | null;
  readonly nextAt: number;
  readonly failures: number;
  readonly lastModified: string | null;
  readonly fault: string | null;
};

const NEVER_ASKED: CellRow = {
  ...{ weather: null, fetchedAt: null, nextAt: 0, failures: 0, lastModified: null, fault: null },
};

/** The newest weather of a cell; the service is asked where that is due, and never sooner. */
export async function answerCell(
  context: CellContext,
  question: CellQuestion,
): Promise<CellAnswer> {
  const { sql, now } = context;
  sql.rows(TABLE);
  const known = storedRow(sql);
  if (known.nextAt > now && known.nextAt <= now + LONGEST_MS) return answerFrom(known);
  const next = await rowAfterAsking(context, question, known);
  storeRow(sql, next);
  return answerFrom(next);
}

async function rowAfterAsking(
  { now, source }: CellContext,
  question: CellQuestion,
  known: CellRow,
): Promise<CellRow> {
  // Where what it was said of is lost, it has to be said again.
  const knownSince = known.weather === null ? null : known.lastModified;
  return rowAfterAnswer(await source.seasonSoFar(question, knownSince), known, now);
}

function rowAfterAnswer(answer: SourceAnswer<KnownWeather>, known: CellRow, now: number): CellRow {
  if (answer.kind === "failed") return rowAfterFailure(known, answer.fault, answer.retryAt, now);
  const nextAt = Math.max(now + HOLDS_MS, answer.expiresAt ?? 0);
  const fresh = { fetchedAt: now, nextAt, failures: 0, fault: null };
  if (answer.kind === "unchanged") return { ...known, ...fresh };
  const { value, lastModified } = answer;
  return { ...fresh, weather: JSON.stringify(value), lastModified };
}

/** What is known stays; the next try is after a pause that grows, and not before the service says. */
function rowAfterFailure(
  known: CellRow,
  fault: string,
  retryAt: number | null,
  now: number,
): CellRow {
  const pause = Math.min(PAUSES.first * 2 ** known.failures, PAUSES.longest);
  const nextAt = Math.max(now + pause, retryAt ?? 0);
  return { ...known, nextAt, failures: known.failures + 1, fault };
}

function storedRow(sql: SqlStore): CellRow {
  const row = firstRow<CellRow>(
    sql,
    `SELECT weather, fetched_at AS fetchedAt, next_at AS nextAt, failures, last_modified AS lastModified, fault
      FROM cell`,
  );
  return row ?? NEVER_ASKED;
}

function storeRow(sql: SqlStore, row: CellRow): void {
  const { weather, fetchedAt, nextAt, failures, lastModified, fault } = row;
  sql.rows(
    `INSERT OR REPLACE INTO cell (only, weather, fetched_at, next_at, failures, last_modified, fault)
      VALUES (1, ?1, ?2, ?3, ?4, ?5, ?6)`,
    ...[weather, fetchedAt, nextAt, failures, lastModified, fault],
  );
}

function answerFrom({ weather, fetchedAt, nextAt, fault }: CellRow): CellAnswer {
  const known = weather === null ? null : (JSON.parse(weather) as KnownWeather);
  return { weather: known, fetchedAt, nextAt, fault };
}

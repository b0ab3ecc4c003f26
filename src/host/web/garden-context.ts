import type { Baseline } from "../../app/index.ts";
import { dayAt, plus, startOf } from "../../base/index.ts";
import type { BuildInput, Engine } from "../edge/engine.ts";
import { logFailure } from "../log.ts";
import {
  type BuildRecord,
  buildRecord,
  isDayOver,
  type OwedBuild,
  owedBuild,
} from "../store/build.ts";
import { copyRecord } from "../store/copies.ts";
import {
  gardenRecord,
  loadFullPlans,
  loadGarden,
  type StoredGarden,
  zoneOf,
} from "../store/gardens.ts";
import { rowSum } from "../store/sealed.ts";
import type { SqlStore } from "../store/sql.ts";
import { baselineDays, publishedState, type StoredTasks } from "../store/tasks.ts";
import { loadWeather, weatherRecord } from "../store/weather.ts";
import type { CellAnswer, CellQuestion } from "../weather/cell.ts";
import type { CellYears } from "../weather/cell-years.ts";
import { cellName, type WeatherPlace } from "../weather/terms.ts";

/**
 * What a garden's own object works with. `now` gives ms since 1970 UTC; `code` tells one deploy from the next; `epoch` is
 * part of every validator; `origin` is where links in events lead, null for the address the garden was last published at.
 */
export type GardenContext = {
  readonly sql: SqlStore;
  readonly key: CryptoKey;
  readonly now: () => number;
  readonly code: string;
  readonly epoch: string;
  readonly origin: string | null;
  /** The core, loaded when it is first asked for. */
  readonly engine: () => Promise<Engine>;
  /** Asks a cell for its weather; null: there are no cells here. */
  readonly askCell: ((cell: string, question: CellQuestion) => Promise<CellAnswer>) | null;
  /** Where copies of gardens are kept; null: nowhere. */
  readonly copies: R2Bucket | null;
  /** Asks a cell for the years behind its place; null: there are no cells here. */
  readonly askYears: ((cell: string, place: WeatherPlace) => Promise<CellYears>) | null;
  /** The text of towns.txt, which is no part of the script. */
  readonly towns: () => Promise<string>;
  /** Sets the object's alarm [ms since 1970 UTC]; inside a transaction it is part of it. */
  readonly ring: (at: number) => void;
  /** Builds the year behind the answer, since plans or diary have just changed. */
  readonly rebuild: () => void;
  /** Builds the year behind the answer where a build is owed and none is on its way. */
  readonly catchUp: () => void;
  /** Builds the year at once; false where that failed. */
  readonly buildNow: () => Promise<boolean>;
};

/** As long after a change as its alarm rings, should the work behind the answer not live to do it [ms]. */
const OWED_MS = 60_000;

/**
 * Does a write that changes plans or diary, so that a build is owed with it or neither is there; then the build begins
 * behind the answer. Gives what the write gave; `changed` says of that whether there is anything to build.
 */
export function writeAndRebuild<Result>(
  { sql, ring, now, rebuild }: Pick<GardenContext, "sql" | "ring" | "now" | "rebuild">,
  write: () => Result,
  changed: (result: Result) => boolean,
): Result {
  const result = sql.transaction(() => {
    const written = write();
    if (changed(written)) ring(now() + OWED_MS);
    return written;
  });
  if (changed(result)) rebuild();
  return result;
}

/** What the year is built from at this instant, over the tasks that stand. */
export function buildInput(
  { sql, now }: GardenContext,
  stored: StoredGarden,
  tasks: StoredTasks,
): BuildInput {
  const baseline = baselineDays(tasks.values());
  const holds = buildRecord(sql).baselineOf === baselineKey(stored, baseline);
  return {
    id: stored.id,
    plans: loadFullPlans(sql, stored).plans,
    instant: now(),
    published: publishedState(tasks),
    baseline: holds ? baseline : null,
    weather: loadWeather(sql, weatherCellOf(stored)),
  };
}

/** Which readings of which plans: what the baseline hangs on and nothing else. */
export function readingsOf({ plans }: StoredGarden): string {
  return plans.map(({ year, version, readBy }) => `${year}.${version} ${readBy}`).join(", ");
}

/** Of which readings a baseline is, and its check sum, so that no damaged day of it counts. */
export function baselineKey(stored: StoredGarden, baseline: Baseline): string {
  const days = Object.entries(baseline).sort(([a], [b]) => (a < b ? -1 : 1));
  return `${readingsOf(stored)} #${rowSum(days.flat())}`;
}

/** Whether a build was made from those readings. */
export function isOfReadings(
  { baselineOf }: Pick<BuildRecord, "baselineOf">,
  stored: StoredGarden,
): boolean {
  return baselineOf?.startsWith(`${readingsOf(stored)} #`) ?? false;
}

type Clocked = Pick<GardenContext, "sql" | "code" | "now" | "copies">;

/** Whether a build is owed: plans, diary, code or day are others than the last build's, or a feed shows an earlier one. */
export function isBuildOwed({ sql, code, now }: Clocked): boolean {
  return owedBuild(sql, code, now())?.owed === 1;
}

/** Whether the year is another than plans, diary, code and day would make it. */
export function isYearBehind({ sql, code, now }: Clocked): boolean {
  const garden = gardenRecord(sql);
  const build = buildRecord(sql);
  if (garden === null) return false;
  return build.revision !== garden.revision || build.code !== code || isDayOver(build, now());
}

/**
 * Builds behind the answer where a build is owed, unless it is the pause after one that failed. Never throws: the answer that it comes
 * behind stands, and may say that something was stored.
 */
export function catchUpIfOwed(context: GardenContext): void {
  const { sql, code, now } = context;
  try {
    catchUpOn(owedBuild(sql, code, now()), context);
  } catch (error) {
    logFailure("looking for what is owed", error);
  }
}

/** The same by a look that was had already; null: there is no garden. */
export function catchUpOn(
  build: OwedBuild | null,
  { now, catchUp }: Pick<GardenContext, "now" | "catchUp">,
): void {
  if (build?.owed === 1 && build.retryAt <= now()) catchUp();
}

/**
 * When the alarm is to ring next [ms]: at once where a build is owed that may begin, or the weather is to be asked for; null
 * where there is no garden.
 */
export function nextRing(context: Clocked): number | null {
  const { sql, code, now } = context;
  const garden = loadGarden(sql);
  if (garden === null) return gardenRecord(sql) === null ? null : buildRecord(sql).until;
  const { owed, retryAt } = owedBuild(sql, code, now()) ?? { owed: 0, retryAt: 0 };
  const build = owed === 1 ? Math.max(retryAt, now()) : buildRecord(sql).until;
  const others = [weatherDueAt(context, garden), copyDueAt(context, garden)];
  return Math.min(build, ...others.map((due) => Math.max(due ?? build, now())));
}

/** No answer holds so long [ms]; what is due later was put off by a clock that ran ahead. Source: house rule. */
const LONGEST_WEATHER_MS = 7 * 86_400_000;

/** When the weather is to be asked for again [ms since 1970 UTC]; null where nobody is asked. */
export function weatherDueAt(
  { sql, now }: Pick<GardenContext, "sql" | "now">,
  garden: StoredGarden,
): number | null {
  const cell = weatherCellOf(garden);
  if (cell === null) return null;
  const record = weatherRecord(sql);
  if (record?.cell !== cell || record.nextAt > now() + LONGEST_WEATHER_MS) return 0;
  return record.nextAt;
}

/** The pause after a copy that failed [ms]. Source: house rule. */
export const COPY_PAUSE_MS = 3_600_000;

/**
 * When the garden is to be copied next [ms since 1970 UTC]: with the turn of its day, or after the pause of one that failed; null where
 * there is no bucket. A copy of a day still to come was made by a clock that ran ahead.
 */
export function copyDueAt(
  { sql, now, copies }: Pick<GardenContext, "sql" | "now" | "copies">,
  garden: StoredGarden,
): number | null {
  if (copies === null) return null;
  const { copiedAt, retryAt } = copyRecord(sql);
  if (retryAt > now() && retryAt <= now() + COPY_PAUSE_MS) return retryAt;
  const zone = zoneOf(garden);
  const today = dayAt(now(), zone);
  const last = copiedAt === null ? null : dayAt(copiedAt, zone);
  return last === today && (copiedAt ?? 0) <= now() ? startOf(plus(today, 1), zone) : 0;
}

/** The cell whose weather is the garden's, by its newest plan; null where that names nobody to ask. */
export function weatherCellOf({ plans }: Pick<StoredGarden, "plans">): string | null {
  const { clock, forecast } = plans.at(-1)?.summary ?? {};
  if (!forecast || clock === undefined) return null;
  return cellName(forecast.source, { ...forecast, clock });
}

import { logFailure } from "../log.ts";
import { buildRecord, discardBuild, storeBuildRecord } from "../store/build.ts";
import { mendDamage } from "../store/damage.ts";
import { gardenRecord } from "../store/gardens.ts";
import { type GardenContext, isYearBehind } from "../web/garden-context.ts";
import { buildYear } from "./build-year.ts";
import { writeFeedsBehind } from "./write-feeds.ts";

/** The first pause after a build that failed, and the longest, each twice the one before [ms]. */
const PAUSES = { first: 60_000, longest: 6 * 3_600_000 } as const;

/**
 * Builds the year where that is owed, and writes every feed that is behind. A failure is logged with the garden's name and
 * never with a link; what was stored stays, and the alarm rings for another try after a pause that grows, which builds the whole
 * year anew. Says whether all went well.
 */
export async function payBuild(context: GardenContext): Promise<boolean> {
  try {
    if (await buildOnce(context)) return true;
  } catch (error) {
    if (await buildMended(context)) return true;
    logFailure("building the year", error, gardenRecord(context.sql)?.id);
    noteFailure(context, discardBuild);
    return false;
  }
  noteFailure(context);
  return false;
}

/** Says whether every feed could be written. Throws where the year could not be built. */
async function buildOnce(context: GardenContext): Promise<boolean> {
  const engine = await context.engine();
  const events = isYearBehind(context) ? buildYear(context, engine) : null;
  return (await writeFeedsBehind(context, engine, events)) === 0;
}

/** Builds once more where something stored was damaged, and is mended now; whether all went well then. */
async function buildMended(context: GardenContext): Promise<boolean> {
  try {
    return mendDamage(context.sql, context.now()) && (await buildOnce(context));
  } catch {
    return false;
  }
}

/** Where even this can't be stored, the build is owed as before and the next request begins it. */
function noteFailure(
  { sql, now, ring }: GardenContext,
  also: (sql: GardenContext["sql"]) => void = () => undefined,
): void {
  try {
    sql.transaction(() => {
      if (gardenRecord(sql) === null) return;
      also(sql);
      const build = buildRecord(sql);
      const retryAt = now() + pauseAfter(build.failures);
      storeBuildRecord(sql, { ...build, failures: build.failures + 1, retryAt });
      ring(retryAt);
    });
  } catch (error) {
    logFailure("noting a failure", error);
  }
}

/** How long to wait after a failure that so many others went before [ms]. */
export function pauseAfter(failures: number): number {
  return Math.min(PAUSES.first * 2 ** failures, PAUSES.longest);
}

import { dayAt, isoOf, weekdayOf } from "../../base/index.ts";
import { encodePathPart } from "../links/segment.ts";
import { logFailure } from "../log.ts";
import { copyRecord, storeCopyRecord } from "../store/copies.ts";
import { gardenRecord, loadGarden, type StoredGarden, zoneOf } from "../store/gardens.ts";
import { COPY_PAUSE_MS, copyDueAt, type GardenContext } from "../web/garden-context.ts";

/** Where a garden's copies lie in the bucket. */
const folderOf = (garden: string) => `${encodePathPart(garden)}/`;

type Copying = Pick<GardenContext, "sql" | "now" | "copies">;

/**
 * Copies the garden as an archive to the bucket where that is due: one copy for each day of the week, each in place of last week's, and one
 * for each month, from the first copy made in it. A failure is logged, stored, and tried again within hours.
 */
export async function copyNightly(context: GardenContext): Promise<void> {
  const { sql, now, copies } = context;
  const garden = loadGarden(sql);
  const due = garden && copyDueAt(context, garden);
  if (garden === null || copies === null || due === null || due > now()) return;
  const before = copyRecord(sql);
  try {
    await putCopies(context, copies, garden);
    note(context, { copiedAt: now(), failures: 0, retryAt: 0 });
  } catch (error) {
    logFailure("copying the garden", error, garden.id);
    const retryAt = now() + COPY_PAUSE_MS;
    note(context, { ...before, failures: before.failures + 1, retryAt });
  }
}

/** Nothing is noted of a garden that was deleted meanwhile. */
function note({ sql }: Copying, record: Parameters<typeof storeCopyRecord>[1]): void {
  sql.transaction(() => {
    if (gardenRecord(sql) !== null) storeCopyRecord(sql, record);
  });
}

async function putCopies(
  { sql, now }: Copying,
  copies: R2Bucket,
  garden: StoredGarden,
): Promise<void> {
  const { archiveFiles } = await import("../backup/archive-files.ts");
  const { pack } = await import("../backup/pack.ts");
  const bytes = pack(garden.id, archiveFiles(sql, garden), garden.changedAt);
  const today = dayAt(now(), zoneOf(garden));
  const folder = folderOf(garden.id);
  const month = `${folder}${isoOf(today).slice(0, 7)}.zip`;
  await copies.put(`${folder}weekday-${weekdayOf(today)}.zip`, bytes);
  if ((await copies.head(month)) === null) await copies.put(month, bytes);
  // The garden may have been deleted while they were under way.
  if (gardenRecord(sql) === null) await deleteCopies(copies, garden.id);
}

/** Deletes every copy of a garden. Throws where that can't be done. */
export async function deleteCopies(copies: R2Bucket | null, garden: string): Promise<void> {
  if (copies === null) return;
  for (;;) {
    const { objects } = await copies.list({ prefix: folderOf(garden) });
    if (objects.length === 0) return;
    await copies.delete(objects.map(({ key }) => key));
  }
}

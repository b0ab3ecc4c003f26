import type { PublishedTask } from "../../app/index.ts";
import { isoOf } from "../../base/index.ts";
import { readSegment } from "../links/segment.ts";
import { storedDiary } from "../store/diary.ts";
import { formerTasks } from "../store/events.ts";
import { feedLedger, feedRecord } from "../store/feeds.ts";
import type { StoredGarden } from "../store/gardens.ts";
import { linkUse } from "../store/links.ts";
import type { SavedVersion } from "../store/plans.ts";
import type { SqlStore } from "../store/sql.ts";
import { takenBackRanges } from "../store/taken-back.ts";
import { publishedState, storedTasks } from "../store/tasks.ts";
import { loadWeather, weatherRecord } from "../store/weather.ts";
import { sumOf } from "./read-archive.ts";
import { SNAPSHOT_FORM, type Snapshot } from "./snapshot.ts";

/** What of a garden is no text of a plan, so that it can be made anew from both: `versions` are its plans' versions, oldest first. */
export function takeSnapshot(
  sql: SqlStore,
  { id, uids, owner }: StoredGarden,
  versions: readonly SavedVersion[],
): Snapshot {
  const { people, revoked } = linkUse(sql);
  return {
    form: SNAPSHOT_FORM,
    ...{ garden: id, uids, owner },
    versions: versions.map(({ text, beside, ...rest }) => ({
      ...rest,
      beside: Object.fromEntries(Object.entries(beside).map(([name, file]) => [name, sumOf(file)])),
    })),
    diary: storedDiary(sql).map(({ day, ...rest }) => ({ ...rest, day: isoOf(day) })),
    takenBack: takenBackRanges(sql),
    people,
    revoked: revoked.flatMap(({ link, at }) => {
      const named = namedLink(id, link);
      return named ? [{ ...named, at }] : [];
    }),
    tasks: publishedState(storedTasks(sql)) as Record<string, PublishedTask>,
    former: formerTasks(sql),
    feeds: feedRevisions(sql, id),
    weather: weatherOf(sql),
  };
}

function namedLink(garden: string, segment: string) {
  const link = readSegment(garden, segment);
  return link && { role: link.role, person: link.person, serial: link.serial };
}

/** Of each feed how often its events have changed, and when, so that no calendar takes what is told anew for old. */
function feedRevisions(sql: SqlStore, garden: string): Snapshot["feeds"] {
  type Row = { readonly link: string; readonly feed: string };
  const keys = sql.rows<Row>("SELECT link, feed FROM feeds ORDER BY link, feed");
  return keys.flatMap((key) => {
    const [named, record, ledger] = [
      namedLink(garden, key.link),
      feedRecord(sql, key),
      feedLedger(sql, key),
    ];
    if (named === null || record === null || ledger === null) return [];
    const events = Object.entries(ledger.entries).map(([event, { sequence, stamp }]) => {
      return [event, [sequence, stamp] as [number, number]] as const;
    });
    const { lastModified } = record;
    return [{ ...named, feed: key.feed, lastModified, events: Object.fromEntries(events) }];
  });
}

function weatherOf(sql: SqlStore): Snapshot["weather"] {
  const cell = weatherRecord(sql)?.cell ?? null;
  const known = loadWeather(sql, cell);
  return cell === null || known === null ? null : { cell, known };
}

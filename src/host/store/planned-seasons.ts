import type { Year } from "../../app/index.ts";
import { loadJson } from "./changed-texts.ts";
import { storeText } from "./pieces.ts";
import type { SqlStore } from "./sql.ts";

/** For which year it was planned, and the readings of all plans that it was built from. */
export type PlannedKey = { readonly year: number; readonly of: string };

type Planned = { readonly of: string; readonly seasons: Year["seasons"] };

const nameOf = ({ year }: PlannedKey) => `planned/${year}`;

/** What was planned for a year; null where that is not stored, was built from other readings, or can't be read. */
export function loadPlannedSeasons(sql: SqlStore, key: PlannedKey): Year["seasons"] | null {
  const planned = loadJson<Planned>(sql, nameOf(key));
  return planned?.of === key.of ? planned.seasons : null;
}

/** Stores what was planned for a year. */
export function storePlannedSeasons(
  sql: SqlStore,
  key: PlannedKey,
  seasons: Year["seasons"],
): void {
  const planned: Planned = { of: key.of, seasons };
  storeText(sql, nameOf(key), JSON.stringify(planned));
}

import { dayAt, isoOf } from "../../base/index.ts";
import { diaryLines } from "../store/diary.ts";
import { type StoredGarden, zoneOf } from "../store/gardens.ts";
import { allVersions, type SavedVersion, savedPlan } from "../store/plans.ts";
import type { SqlStore } from "../store/sql.ts";
import { besideFile, SNAPSHOT, SUMS, sumOf, versionFile } from "./read-archive.ts";
import { takeSnapshot } from "./take-snapshot.ts";

/** Texts by their names in an archive. */
export type ArchiveFiles = Readonly<Record<string, string>>;

/**
 * A garden as files: each year's plan in force as a garden's folder has it, with the files beside it; the diary as a table to
 * read; all that it can be made anew from; other files that are given; and last the check sums of all of them. No link is in it.
 */
export function archiveFiles(
  sql: SqlStore,
  stored: StoredGarden,
  others: ArchiveFiles = {},
): ArchiveFiles {
  const versions = allVersions(sql);
  const files: ArchiveFiles = {
    ...planFiles(sql, stored),
    ...versionFiles(versions),
    "diary.csv": diaryFile(sql, stored),
    ...others,
    [SNAPSHOT]: `${JSON.stringify(takeSnapshot(sql, stored, versions))}\n`,
  };
  const sums = Object.entries(files).map(([name, text]) => `${sumOf(text)}  ${name}\n`);
  return { ...files, [SUMS]: sums.join("") };
}

/** A file named as another year's or as a plan stands in a folder of its year. */
function planFiles(sql: SqlStore, { plans }: StoredGarden): ArchiveFiles {
  const inForce = plans.flatMap(({ year }) => savedPlan(sql, year) ?? []);
  const files = new Map(inForce.map(({ year, text }) => [`${year}.yaml`, text]));
  for (const { year, beside } of inForce.toReversed())
    for (const [said, text] of Object.entries(beside)) {
      const name = fileName(said);
      const free = (files.get(name) ?? text) === text;
      files.set(free ? name : `${year}/${name}`, text);
    }
  return Object.fromEntries(files);
}

/** Names that other files of the archive have. */
const OURS = /^(?:SHA256SUMS|garden\.json|diary\.csv|versions|beside|calendars)$/i;

/** A name that stays in its folder, wherever the archive is opened, and is none of the archive's own. */
export function fileName(name: string): string {
  const within = name.replaceAll(/[^\p{L}\p{N}._ -]/gu, "_").replace(/^\.+/, "_");
  return OURS.test(within) ? `_${within}` : within;
}

/** Every version's text, and once each text that stood beside any. */
function versionFiles(versions: readonly SavedVersion[]): ArchiveFiles {
  const texts = versions.map(({ year, version, text }) => [versionFile(year, version), text]);
  const beside = versions.flatMap((version) =>
    Object.values(version.beside).map((text) => [besideFile(sumOf(text)), text]),
  );
  return Object.fromEntries([...texts, ...beside]);
}

/** What was said over links, a line each. Source of the form: RFC 4180. */
function diaryFile(sql: SqlStore, stored: StoredGarden): string {
  const zone = zoneOf(stored);
  const rows = diaryLines(sql).map(({ day, text, task, person, saidAt }) => [
    ...[isoOf(day), person ?? "", text, task ?? ""],
    isoOf(dayAt(saidAt, zone)),
  ]);
  const all = [["day", "person", "said", "job", "written on"], ...rows];
  return all.map((row) => `${row.map(cell).join(",")}\r\n`).join("");
}

/** Quoted where it must be; what a table program would take for a formula is text. */
function cell(value: string): string {
  const text = /^[=+\-@\t]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

import { createHash } from "node:crypto";
import type { PlanFileTexts, PlanVersion } from "../store/plans.ts";
import { MOST_GARDEN_BYTES } from "../store/thinning.ts";
import { readSnapshot, type Snapshot } from "./snapshot.ts";
import { BadArchive, unpack } from "./unpack.ts";

/** Names of the files that restoring reads, inside the archive's one folder. */
export const SUMS = "SHA256SUMS";
/** What is not text of a plan. */
export const SNAPSHOT = "garden.json";
/** The text of a version of a year's plan. */
export const versionFile = (year: number, version: number) => `versions/${year}-${version}.yaml`;
/** A text that stood beside plans, by its check sum. */
export const besideFile = (sum: string) => `beside/${sum}.txt`;

const READ =
  /^(?:[^/]+\/)?(SHA256SUMS|garden\.json|versions\/\d{4}-\d{1,9}\.yaml|beside\/[0-9a-f]{64}\.txt)$/;

/** A version of a plan as an archive has it: not read yet. */
export type ArchivedVersion = Omit<PlanVersion, "plan" | "readBy">;

/** What an archive holds: what was stored of the garden, and every version of its plans, oldest first. */
export type ArchivedGarden = {
  readonly snapshot: Snapshot;
  readonly versions: readonly ArchivedVersion[];
};

/** The check sum of a file's bytes, as `sha256sum` prints it. */
export function sumOf(bytes: Uint8Array | string): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/**
 * Reads an archive that `archiveFiles` made. Throws `BadArchive`, with the file and the place in it, for one that is cut, damaged,
 * made by hand or made to exhaust us; nothing of such a one is used.
 */
export function readArchive(bytes: Uint8Array): ArchivedGarden {
  const files = filesOf(bytes);
  checkSums(files);
  const text = decoded(files, SNAPSHOT);
  const { snapshot, wrong } = readSnapshot(text);
  if (snapshot === null) throw new BadArchive(`${SNAPSHOT}: ${wrong}`);
  if (snapshot.versions.length === 0) throw new BadArchive(`${SNAPSHOT}: no plan is in it`);
  checkSize(snapshot, files);
  const versions = snapshot.versions.map(({ beside, ...rest }) => ({
    ...rest,
    text: decoded(files, versionFile(rest.year, rest.version)),
    beside: besideTexts(files, beside),
  }));
  const keys = versions.map(({ year, version }) => year * 1e9 + version);
  if (keys.some((key, at) => key <= (keys[at - 1] ?? 0)))
    throw new BadArchive(`${SNAPSHOT}: versions are not in order`);
  return { snapshot, versions };
}

type Files = ReadonlyMap<string, Uint8Array>;

/** The files that are read, by their names inside the folder. */
function filesOf(bytes: Uint8Array): Files {
  const found = unpack(bytes, (name) => READ.test(name));
  const folders = new Set([...found.keys()].map((name) => name.slice(0, -inFolder(name).length)));
  if (folders.size > 1) throw new BadArchive("it holds more than one garden");
  return new Map([...found].map(([name, file]) => [inFolder(name), file]));
}

const inFolder = (name: string) => READ.exec(name)?.[1] ?? name;

/** Every file must be listed with its check sum, and every one that is listed and would be read must be there. */
function checkSums(files: Files): void {
  const sums = new Map<string, string>();
  for (const line of decoded(files, SUMS).split("\n")) {
    const found = /^([0-9a-f]{64}) [ *](?:\.\/)?(.+)$/.exec(line);
    if (found) sums.set(found[2] ?? "", found[1] ?? "");
  }
  for (const name of sums.keys())
    if (inFolder(name) === name && READ.test(name) && !files.has(name))
      throw new BadArchive(`${name} is missing`);
  for (const [name, bytes] of files)
    if (name !== SUMS && sums.get(name) !== sumOf(bytes))
      throw new BadArchive(
        `${name} is not what its check sum in ${SUMS} says: damaged, or changed since`,
      );
}

/** Counts a text beside as often as versions name it, since each is stored with its own. */
function checkSize({ versions }: Snapshot, files: Files): void {
  const names = versions.flatMap(({ year, version, beside }) => [
    versionFile(year, version),
    ...Object.values(beside).map(besideFile),
  ]);
  const bytes = names.reduce((sum, name) => sum + (files.get(name)?.length ?? 0), 0);
  if (bytes > MOST_GARDEN_BYTES)
    throw new BadArchive(`its plans come to more than ${MOST_GARDEN_BYTES / 1024 / 1024} MiB`);
}

function decoded(files: Files, name: string): string {
  const bytes = files.get(name);
  if (bytes === undefined)
    throw new BadArchive(
      name === SNAPSHOT || name === SUMS
        ? `there is no ${name} in it, so it was not made by this Sowbell`
        : `${name} is missing`,
    );
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw new BadArchive(`${name} is no text in UTF-8`);
  }
}

function besideTexts(files: Files, beside: Readonly<Record<string, string>>): PlanFileTexts {
  return Object.fromEntries(
    Object.entries(beside).map(([name, sum]) => [name, decoded(files, besideFile(sum))]),
  );
}

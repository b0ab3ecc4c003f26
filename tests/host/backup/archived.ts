import { strToU8, zipSync } from "fflate";
import { sumOf } from "../../../src/host/backup/read-archive.ts";
import type { Snapshot } from "../../../src/host/backup/snapshot.ts";

/** A snapshot of a garden with one version of one plan and a line of diary; what is given stands instead. */
export function snapshotOf(over: Partial<Record<keyof Snapshot, unknown>> = {}): unknown {
  return {
    form: 1,
    ...{ garden: "weir", uids: "weir", owner: 1 },
    versions: [
      { year: 2027, version: 1, file: "2027.yaml", published: null, savedAt: 1000, beside: {} },
    ],
    diary: [{ id: 1, day: "2027-05-08", text: "done", task: "t", person: null, saidAt: 1000 }],
    ...{ takenBack: [], people: [], revoked: [], tasks: {}, former: {}, feeds: [], weather: null },
    ...over,
  };
}

/** The files of an archive of that snapshot with good check sums; what is given is added, or stands instead. */
export function filesOf(
  snapshot: unknown = snapshotOf(),
  more: Readonly<Record<string, string>> = {},
): Record<string, string> {
  const files: Record<string, string> = {
    "versions/2027-1.yaml": "garden: Weir\n",
    "garden.json": JSON.stringify(snapshot),
    ...more,
  };
  const sums = Object.entries(files).map(([name, text]) => `${sumOf(text)}  ${name}\n`);
  return { ...files, SHA256SUMS: sums.join("") };
}

/** Files as an archive, in a folder. */
export function zipped(
  files: Readonly<Record<string, string>>,
  folder = "weir/",
): Uint8Array<ArrayBuffer> {
  const entries = Object.entries(files).map(([name, text]) => [folder + name, strToU8(text)]);
  return Uint8Array.from(zipSync(Object.fromEntries(entries)));
}

import { strToU8, zipSync } from "fflate";
import type { ArchiveFiles } from "./archive-files.ts";

/** Instants that an archive can have [ms since 1970 UTC]. Source: APPNOTE 4.4.6, from 1980 on. */
const ZIP = { first: Date.UTC(1980, 0, 2), last: Date.UTC(2098, 0, 1) } as const;

/** Files in one archive, in a folder of that name, as of an instant [ms since 1970 UTC]. Equal files give equal bytes. */
export function pack(
  folder: string,
  files: ArchiveFiles,
  changedAt: number,
): Uint8Array<ArrayBuffer> {
  const bytes = Object.fromEntries(
    Object.entries(files).map(([name, text]) => [`${folder}/${name}`, strToU8(text)]),
  );
  return Uint8Array.from(
    zipSync(bytes, { level: 6, mtime: Math.min(Math.max(changedAt, ZIP.first), ZIP.last) }),
  );
}

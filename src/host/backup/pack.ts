import { strToU8, zipSync } from "fflate";
import type { ArchiveFiles } from "./archive-files.ts";

/** Files in one archive, in a folder of that name, as of an instant [ms since 1970 UTC]. Equal files give equal bytes. */
export function pack(
  folder: string,
  files: ArchiveFiles,
  changedAt: number,
): Uint8Array<ArrayBuffer> {
  const bytes = Object.fromEntries(
    Object.entries(files).map(([name, text]) => [`${folder}/${name}`, strToU8(text)]),
  );
  return Uint8Array.from(zipSync(bytes, { level: 6, mtime: changedAt }));
}

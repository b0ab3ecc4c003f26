import { Unzip, UnzipInflate } from "fflate";
import { MOST_ARCHIVE } from "../store/thinning.ts";

/** Bytes that are unpacked at a time, so that what unpacks to a thousand times its size is seen in good time. */
const STEP = 4096;

/** An archive that can't be used, and why, in a sentence. */
export class BadArchive extends Error {}

/**
 * The wanted files of an archive by name. Others are passed over without being unpacked, so their names and sizes never matter. Throws
 * `BadArchive` for what is no archive, has a file twice, is cut off inside a file, or holds too much.
 */
export function unpack(
  bytes: Uint8Array,
  isWanted: (name: string) => boolean,
): ReadonlyMap<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  const open = new Set<string>();
  let [seen, total] = [0, 0];
  const unzip = new Unzip((file) => {
    seen += 1;
    if (seen > MOST_ARCHIVE.files)
      throw new BadArchive(`it has more than ${MOST_ARCHIVE.files} files`);
    const { name } = file;
    if (!isWanted(name)) return;
    if (open.has(name) || files.has(name)) throw new BadArchive(`${name} is in it twice`);
    open.add(name);
    const parts: Uint8Array[] = [];
    file.ondata = (error, part, isLast) => {
      // What is thrown here comes back as an error of the library's.
      if (error instanceof BadArchive) throw error;
      if (error) throw new BadArchive(`${name} can't be unpacked`);
      total += part.length;
      if (total > MOST_ARCHIVE.unpacked)
        throw new BadArchive(`it unpacks to more than ${MOST_ARCHIVE.unpacked / 1024 / 1024} MiB`);
      parts.push(part);
      if (!isLast) return;
      open.delete(name);
      files.set(name, joined(parts));
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  pushAll(unzip, bytes);
  const [cut] = open;
  if (cut !== undefined) throw new BadArchive(`it ends in the middle of ${cut}`);
  if (seen === 0) throw new BadArchive("it is no zip archive");
  return files;
}

function pushAll(unzip: Unzip, bytes: Uint8Array): void {
  try {
    for (let at = 0; at < bytes.length; at += STEP)
      unzip.push(bytes.subarray(at, at + STEP), at + STEP >= bytes.length);
  } catch (error) {
    if (error instanceof BadArchive) throw error;
    throw new BadArchive("it is cut short, or damaged");
  }
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

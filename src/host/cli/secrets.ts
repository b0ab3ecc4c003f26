import { appendFileSync, existsSync, readFileSync, statSync } from "node:fs";

/**
 * `NAME=value` as wrangler reads it: spaces about, `export` before, quotes of either kind, and behind it a comment from `#`
 * on. Source: from memory, unchecked; the rules of dotenv, which wrangler uses.
 */
const BINDING =
  /^[ \t]*(?:export[ \t]+)?([\w.-]+)[ \t]*=[ \t]*('[^'\n]*'|"[^"\n]*"|[^#\r\n]*)[ \t]*(?:#.*)?\r?$/gm;

/** What a file of `NAME=value` lines binds, by name, the last of two counts; nothing where there is no such file. */
export function bindingsIn(file: string): Readonly<Record<string, string>> {
  if (!existsSync(file)) return {};
  const lines = readFileSync(file, "utf8")
    .replace(/^\uFEFF/, "")
    .matchAll(BINDING);
  return Object.fromEntries(
    [...lines].map(([, name = "", value = ""]) => [name, plainValue(value)]),
  );
}

function plainValue(value: string): string {
  const short = value.trim();
  return /^(['"]).*\1$/.test(short) && short.length > 1 ? short.slice(1, -1) : short;
}

/** The secret in such a file, or null where the file or the name is missing. */
export function secretIn(file: string): string | null {
  return bindingsIn(file).SECRET || null;
}

/** Adds a line to such a file, on a line of its own whatever the file ends with; a new file is for its owner alone. */
export function addBinding(file: string, name: string, value: string): void {
  const text = existsSync(file) ? readFileSync(file, "utf8") : "";
  const gap = text === "" || text.endsWith("\n") ? "" : "\n";
  appendFileSync(file, `${gap}${name}=${value}\n`, { mode: 0o600 });
}

/** What to say where others on this machine can read a file of secrets, and how to end it; null where they can't, or no such file is. */
export function othersCanRead(file: string): string | null {
  if (process.platform === "win32" || !existsSync(file)) return null;
  const mode = statSync(file).mode & 0o077;
  return mode === 0
    ? null
    : `${file} can be read by others on this machine, and whoever has the secret in it opens every garden: chmod 600 ${file}`;
}

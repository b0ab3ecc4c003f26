/** Blocks of a plan that belong to their own year. */
const OF_ITS_YEAR = ["diary", "away"] as const;

/**
 * A plan's text as a start for the next year: the year one later, without diary and absences, everything else as it was
 * written, comments too. Days that were written for the old year are left for the gardener to check. A plan written
 * entirely in braces stays as it is.
 */
export function nextYear(text: string, year: number): string {
  const lines = text.split("\n");
  const remaining = lines.filter((line, at) => line.startsWith("#") || !isOfItsYear(lines, at));
  const said = remaining.map((line) => line.replace(/^((["']?)year\2\s*:\s*)\d{4}\b/, `$1${year}`));
  return `${said.join("\n").trimEnd()}\n`;
}

/** Whether a line is one of those top-level keys or stands below it. */
function isOfItsYear(lines: readonly string[], at: number): boolean {
  const top = lines.slice(0, at + 1).findLast((line) => /^[^\s#-]/.test(line)) ?? "";
  return OF_ITS_YEAR.some((name) => new RegExp(`^(["']?)${name}\\1\\s*:`).test(top));
}

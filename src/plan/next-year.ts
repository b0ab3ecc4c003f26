/** Blocks of a plan that belong to their own year. */
const OF_ITS_YEAR = ["diary", "away"] as const;

/**
 * A plan's text as the next year's begins: the year one later, the diary and the absences left out, all the rest as it was
 * written. Days that were written for the old year are the gardener's to look through.
 */
export function nextYear(text: string, year: number): string {
  const lines = text.split("\n");
  const kept = lines.filter((_, at) => !OF_ITS_YEAR.some((name) => isInBlock(lines, at, name)));
  const said = kept.map((line) => line.replace(/^(year:\s*)\d{4}\b/, `$1${year}`));
  return `${said.join("\n").trimEnd()}\n`;
}

/** Whether a line is the top-level key of that name or stands below it. */
function isInBlock(lines: readonly string[], at: number, name: string): boolean {
  const top = lines.slice(0, at + 1).findLast((line) => /^[^\s#-]/.test(line)) ?? "";
  return new RegExp(`^${name}\\s*:`).test(top);
}

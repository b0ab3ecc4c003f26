/** Requests a second, and what one of them costs the runtime's process [ms], null where that can't be told. */
export type Measured = { readonly perSecond: number; readonly cpuMs: number | null };

/** How much of another course's rate a course must have. */
export type Wish = { readonly name: string; readonly of: string; readonly least: number };

/** Of several runs the middle one in each figure. */
export function medianOf(runs: readonly Measured[]): Measured {
  const cpu = runs.map(({ cpuMs }) => cpuMs).filter((ms) => ms !== null);
  return {
    perSecond: middle(runs.map(({ perSecond }) => perSecond)),
    cpuMs: cpu.length < runs.length ? null : middle(cpu),
  };
}

function middle(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}

/** A table of rates and prices, each rate also as a part of each of those it is held against. */
export function tableOf(
  measured: ReadonlyMap<string, Measured>,
  against: readonly string[],
): string {
  const rows = [...measured].map(([name, { perSecond, cpuMs }]) => [
    name,
    perSecond.toFixed(0),
    cpuMs === null ? "no /proc" : cpuMs.toFixed(3),
    ...against.map((other) => (perSecond / rateOf(measured, other)).toFixed(2)),
  ]);
  const head = ["", "a second", "CPU ms", ...against.map((other) => `of ${other}`)];
  const line = ([name = "", ...figures]: readonly string[]) =>
    name.padEnd(22) +
    figures.map((figure, i) => figure.padStart((head[i + 1]?.length ?? 0) + 3)).join("");
  return [head, ...rows].map(line).join("\n");
}

function rateOf(measured: ReadonlyMap<string, Measured>, name: string): number {
  return measured.get(name)?.perSecond ?? Number.NaN;
}

/** What is missed, a line each; a course that was not run misses too. */
export function wishesMissed(
  measured: ReadonlyMap<string, Measured>,
  wishes: readonly Wish[],
): readonly string[] {
  return wishes.flatMap(({ name, of, least }) => {
    const part = rateOf(measured, name) / rateOf(measured, of);
    if (part >= least) return [];
    return [`${name}: ${part.toFixed(2)} of ${of}, wanted ${least.toFixed(2)} or more`];
  });
}

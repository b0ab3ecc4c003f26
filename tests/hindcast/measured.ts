import type { Case } from "./hindcast.ts";

/** What some cases come to. Days throughout; errors and widths are of days that came. */
export type Measured = {
  readonly cases: number;
  /** Cases that frost dates alone settle, whatever the weather. */
  readonly settled: number;
  /** The share, 0 to 1, that came from early to late, both inclusive: of all cases, and of those not settled. */
  readonly inside: number;
  readonly insideUnsettled: number;
  /** Days from early to late, the middle of all cases and of those not settled. */
  readonly width: number;
  readonly widthUnsettled: number;
  /** Mean absolute error of the usual day, and of the charts' day. */
  readonly error: number;
  readonly chartError: number;
  /** How much later than the usual day it came, on average. */
  readonly later: number;
};

/** Whether a case came from early to late, both inclusive. */
export function isInside({ early, late, came }: Case): boolean {
  return came !== null && came >= early && came <= late;
}

/** Shares, widths and errors of some cases; NaN where there are none of a kind. */
export function measured(cases: readonly Case[]): Measured {
  const open = cases.filter(({ settled }) => !settled);
  const came = cases.flatMap((each) => (each.came === null ? [] : [{ ...each, came: each.came }]));
  return {
    cases: cases.length,
    settled: cases.length - open.length,
    inside: cases.filter(isInside).length / cases.length,
    insideUnsettled: open.filter(isInside).length / open.length,
    width: median(cases.map(({ early, late }) => late - early)),
    widthUnsettled: median(open.map(({ early, late }) => late - early)),
    error: mean(came.map((each) => Math.abs(each.came - each.usual))),
    chartError: mean(came.map((each) => Math.abs(each.came - each.charted))),
    later: mean(came.map((each) => each.came - each.usual)),
  };
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = (sorted.length - 1) / 2;
  return ((sorted[Math.floor(half)] ?? Number.NaN) + (sorted[Math.ceil(half)] ?? Number.NaN)) / 2;
}

const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

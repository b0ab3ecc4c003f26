import type { Rows } from "./counting.ts";
import { DAY, FREE, PAID } from "./plan.ts";

/** What each kind of call costs in rows; the CPU [ms] of polls by `npm run load`, of the rest by `npm run bench`. */
export type Measured = Readonly<Record<keyof typeof DAY, Rows>> & {
  readonly cron: Rows;
  readonly bytesAGarden: number;
};

/**
 * CPU [ms] of one call of each kind, on two shared cores. Source: `npm run load` for polls and pages; the rest from what a
 * telling takes by `npm run bench`: one for a day's calendars, three for a tap with the page after it, and as much again
 * for reading a plan.
 */
export const CPU_MS: Readonly<Record<keyof typeof DAY, number>> = {
  polls304: 0.3,
  polls200: 0.4,
  pages: 8,
  taps: 60,
  renders: 30,
  saves: 60,
};

const CRON_RUNS_A_DAY = 144;
const DAYS_A_MONTH = 30;

/** A day of so many gardens. */
export type Day = {
  readonly gardens: number;
  readonly requests: number;
  readonly cpuMs: number;
  readonly rowsRead: number;
  readonly rowsWritten: number;
  readonly bytes: number;
};

const KINDS = Object.keys(DAY) as readonly (keyof typeof DAY)[];

/** What so many gardens come to in a day. */
export function dayOf(gardens: number, measured: Measured): Day {
  const sum = (of: (kind: keyof typeof DAY) => number) =>
    gardens * KINDS.reduce((all, kind) => all + DAY[kind] * of(kind), 0);
  const asked = DAY.polls304 + DAY.polls200 + DAY.pages + DAY.taps + DAY.saves;
  return {
    gardens,
    requests: gardens * asked + CRON_RUNS_A_DAY,
    cpuMs: sum((kind) => CPU_MS[kind]),
    rowsRead: sum((kind) => measured[kind].read) + CRON_RUNS_A_DAY * measured.cron.read,
    rowsWritten: sum((kind) => measured[kind].written) + CRON_RUNS_A_DAY * measured.cron.written,
    bytes: gardens * measured.bytesAGarden,
  };
}

/** How many gardens the free plan carries, and what ends it first. */
export function freeGardens(measured: Measured): { readonly gardens: number; readonly by: string } {
  const one = dayOf(1, measured);
  const none = dayOf(0, measured);
  const limits = [
    ["requests a day", (FREE.requestsADay - none.requests) / (one.requests - none.requests)],
    ["rows read a day", (FREE.rowsReadADay - none.rowsRead) / (one.rowsRead - none.rowsRead)],
    ["rows written a day", FREE.rowsWrittenADay / (one.rowsWritten - none.rowsWritten)],
    ["the bytes of one database", FREE.bytesADatabase / one.bytes],
  ] as const;
  const [by, gardens] = limits.reduce((least, each) => (each[1] < least[1] ? each : least));
  return { gardens: Math.floor(gardens), by };
}

/** A month's price on the paid plan [US dollars]. */
export function monthsPrice(day: Day): number {
  const over = (used: number, { held, aMillion }: { held: number; aMillion: number }) =>
    (Math.max(0, used * DAYS_A_MONTH - held) / 1e6) * aMillion;
  const { held, aGigabyte } = PAID.gigabytes;
  return (
    PAID.fee +
    over(day.requests, PAID.requests) +
    over(day.cpuMs, PAID.cpuMs) +
    over(day.rowsRead, PAID.rowsRead) +
    over(day.rowsWritten, PAID.rowsWritten) +
    Math.max(0, day.bytes / 1e9 - held) * aGigabyte
  );
}

/** How many databases so many bytes fill on the paid plan. */
export function databasesFor(day: Day): number {
  return Math.max(1, Math.ceil(day.bytes / PAID.bytesADatabase));
}

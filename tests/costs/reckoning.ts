import type { Rows } from "./counting.ts";
import { DAY, FREE, OBJECT_GIGABYTES, PAID } from "./plan.ts";

type Kind = keyof typeof DAY;

/** What each kind of call costs in rows, and a garden in bytes. */
export type Measured = Readonly<Record<Kind, Rows>> & { readonly bytesAGarden: number };

/**
 * CPU [ms] of one call of each kind, on two shared cores. Source: `npm run bench`, rounded up; a tap and a saved plan with the
 * build behind them.
 */
export const CPU_MS: Readonly<Record<Kind, number>> = {
  polls304: 0.3,
  polls200: 0.4,
  pages: 2,
  taps: 40,
  turns: 40,
  saves: 100,
};

/**
 * How long an object runs for one call of each kind [s]. Source: house rule, what a call takes on the wall; behind a tap and a
 * saved plan the two seconds in which further changes gather.
 */
const RUNS_S: Readonly<Record<Kind, number>> = {
  polls304: 0.002,
  polls200: 0.003,
  pages: 0.005,
  taps: 2.1,
  turns: 0.1,
  saves: 2.2,
};

/** Times an alarm is set, each charged as a row written: with a change, and with the build that follows. */
const ALARMS: Readonly<Record<Kind, number>> = {
  ...{ polls304: 0, polls200: 0, pages: 0, taps: 2, turns: 2, saves: 2 },
};

const DAYS_A_MONTH = 30;

/** A day of so many gardens. */
export type Day = {
  readonly gardens: number;
  readonly requests: number;
  readonly objectRequests: number;
  readonly gigabyteSeconds: number;
  readonly cpuMs: number;
  readonly rowsRead: number;
  readonly rowsWritten: number;
  readonly bytes: number;
};

const KINDS = Object.keys(DAY) as readonly Kind[];

/** What so many gardens come to in a day. An alarm is a call of the object and no request. */
export function dayOf(gardens: number, measured: Measured): Day {
  const sum = (of: (kind: Kind) => number) =>
    gardens * KINDS.reduce((all, kind) => all + DAY[kind] * of(kind), 0);
  return {
    gardens,
    requests: sum((kind) => (kind === "turns" ? 0 : 1)),
    objectRequests: sum(() => 1),
    gigabyteSeconds: sum((kind) => RUNS_S[kind] * OBJECT_GIGABYTES),
    cpuMs: sum((kind) => CPU_MS[kind]),
    rowsRead: sum((kind) => measured[kind].read),
    rowsWritten: sum((kind) => measured[kind].written + ALARMS[kind]),
    bytes: gardens * measured.bytesAGarden,
  };
}

/** How many gardens the free plan carries, and what ends it first. */
export function freeGardens(measured: Measured): { readonly gardens: number; readonly by: string } {
  const one = dayOf(1, measured);
  const limits = [
    ["requests a day", FREE.requestsADay / one.requests],
    ["requests of objects a day", FREE.objectRequestsADay / one.objectRequests],
    ["gigabyte-seconds a day", FREE.gigabyteSecondsADay / one.gigabyteSeconds],
    ["rows read a day", FREE.rowsReadADay / one.rowsRead],
    ["rows written a day", FREE.rowsWrittenADay / one.rowsWritten],
    ["bytes stored", FREE.bytes / one.bytes],
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
    over(day.objectRequests, PAID.objectRequests) +
    over(day.gigabyteSeconds, PAID.gigabyteSeconds) +
    over(day.rowsRead, PAID.rowsRead) +
    over(day.rowsWritten, PAID.rowsWritten) +
    Math.max(0, day.bytes / 1e9 - held) * aGigabyte
  );
}

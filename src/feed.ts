import type { Day } from "./days/day.ts";
import type { Plan } from "./plan/plan.ts";
import type { Placed, Standing } from "./schedule/placed.ts";
import type { Event } from "./words/event.ts";

/** A garden: its years' plans in year order, all of one garden id. */
export type Garden = { readonly id: string; readonly plans: readonly Plan[] };

/** Today, as the core knows it. Equal inputs give equal output at every instant before `until`. */
export type Horizon = {
  /** First day the feed shows. */
  readonly firstDay: Day;
  /** Next working day of each person (by key) on which open work is told; `""` where the plan names nobody. */
  readonly openDays: Readonly<Record<string, Day>>;
  /** The instant [ms since 1970 UTC] at which either changes. */
  readonly until: number;
};

export type Told = {
  readonly placed: readonly Placed[];
  readonly events: readonly Event[];
  readonly standing: Standing;
};

/** The horizon at an instant [ms since 1970 UTC], in the garden's own zone. */
export function horizonAt(_garden: Garden, _instant: number): Horizon {
  throw new Error("not built");
}

/** The whole job. */
export function tell(_garden: Garden, _horizon: Horizon, _standing: Standing): Told {
  throw new Error("not built");
}

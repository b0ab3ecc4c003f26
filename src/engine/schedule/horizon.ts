import {
  type Day,
  dayAt,
  earliest,
  monthStart,
  plus,
  startOf,
  weekdayOf,
} from "../../base/index.ts";
import { type Plan, planOn, plusYears, seasonOf } from "../../garden/model/index.ts";

/** Today, as the core knows it. Equal inputs give equal output at every instant before `until`. */
export type Horizon = {
  /** First day the feed shows; always the first of a month. */
  readonly firstDay: Day;
  /** Each person's (by key) next day with gardening hours, today included, on which open work is told. */
  readonly openDays: Readonly<Record<string, Day>>;
  /** The instant [ms since 1970 UTC] at which either may change. */
  readonly until: number;
};

/** The least number of past months that a feed shows. */
const MONTHS_SHOWN = 6;

/** The day the season of a day began; a season behind the last plan's begins whole years after that one. Plans in year order, not empty. */
function seasonStart(plans: readonly Plan[], day: Day): Day {
  const { from, to } = seasonOf(planOn(plans, day));
  let years = 0;
  while (plusYears(to, years) < day) years += 1;
  return plusYears(from, years);
}

function nextWorkingDay(hours: readonly { readonly weekday: number }[], today: Day): Day {
  for (let ahead = 0; ahead < 7; ahead++) {
    const day = plus(today, ahead);
    if (hours.some((each) => each.weekday === weekdayOf(day))) return day;
  }
  return today;
}

/** The horizon of a garden at an instant [ms since 1970 UTC], by the clock of its newest plan. Plans in year order, not empty. */
export function horizonOf(plans: readonly Plan[], instant: number): Horizon {
  const newest = plans[plans.length - 1];
  if (!newest) throw new RangeError("a garden without a plan has no horizon");
  const { clock } = newest.site;
  const today = dayAt(instant, clock);
  const month = monthStart(today);
  const openDays: Record<string, Day> = {};
  for (const person of newest.people) openDays[person.key] = nextWorkingDay(person.gardens, today);
  const next = earliest(
    monthStart(today, 1),
    ...Object.values(openDays).map((day) => plus(day, 1)),
  );
  return {
    firstDay: earliest(monthStart(seasonStart(plans, month)), monthStart(today, -MONTHS_SHOWN)),
    openDays,
    until: startOf(next, clock),
  };
}

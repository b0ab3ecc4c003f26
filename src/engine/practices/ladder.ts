import { type Day, latest, plus } from "../../base/index.ts";
import type { Climate } from "../climate/climate.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { plantingTaskId } from "./task.ts";

/** Whole days out before the nights of a ladder. Source: common practice. */
export const WHOLE_DAYS = 2;
/** Nights out at the end of a ladder, the last ending on setting-out day. Source: common practice. */
export const NIGHTS = 2;
/** How long "all day" is [minutes]. Source: house rule; out at ten, in by dusk. */
export const ALL_DAY = 600;

/** A rung of the ladder: its number from 1, its day, and how long plants stay out; nights are out till morning. */
export type HardeningRung = {
  readonly number: number;
  readonly day: Day;
  readonly out: number | "night";
};

/**
 * The ladder for tender plants, counted back from setting out over days on which somebody is about: an hour,
 * then an hour more each day up to a whole one, then whole days, then nights, the last of them ending on setting-out day. A day
 * on which nobody is about is passed over; the hours of the next one go on from there. `days` at least 4.
 */
export function hardeningLadder(
  setOut: Day,
  days: number,
  around: (day: Day) => boolean,
): readonly HardeningRung[] {
  const dates: Day[] = [];
  for (let back = 1; dates.length < days && back <= days + 21; back++) {
    const day = plus(setOut, -back);
    if (around(day)) dates.unshift(day);
  }
  const hours = dates.length - WHOLE_DAYS - NIGHTS;
  return dates.map((day, i) => {
    const out =
      i < hours ? Math.min((i + 1) * 60, ALL_DAY) : i < hours + WHOLE_DAYS ? ALL_DAY : "night";
    return { number: i + 1, day, out };
  });
}

/** Marks a setting out that the forecast holds back, which is told at once. */
export const HELD_UP = "held up";

/** What keeps plants in on a day that is forecast. */
export type HoldReason = "cold" | "windy";

/** A rung with the days before it on which plants had to stay in instead, by the forecast. */
export type HeldRung = HardeningRung & {
  readonly held: readonly { readonly day: Day; readonly why: HoldReason }[];
};

/** A ladder on its days, and the first day on which it has been gone through. */
export type Ladder = { readonly rungs: readonly HeldRung[]; readonly doneBy: Day };

/**
 * A high under which no tender seedling is carried out by day, a low under which none is left out, whatever else they bear [°C], and a
 * gust that tears at them [m/s]. Source: house rule: on a day that never gets to 50 °F the tender stand still, and a night under 40 °F
 * is near frost at the leaves; what is between is told in the text. Beaufort 7, from 13.9 m/s, World Meteorological Organization.
 */
const [COLD_DAY_C, COLD_NIGHT_C, WINDY_MPS] = [10, 4, 13.9];

/** Days ahead, today with them, whose forecast holds a rung. Source: house rule: farther ahead it is taken back too often. */
const HELD_AHEAD = 2;

/** Whether a day is known to be too cold or windy for a rung: for hours out by its high, for a night by the low that ends it. */
function holdOn(
  climate: Climate,
  day: Day,
  { out, floorC }: { readonly out: HardeningRung["out"]; readonly floorC: number },
): HoldReason | null {
  const known = climate.known(day);
  if ((known?.gustMps ?? 0) >= WINDY_MPS) return "windy";
  if (out !== "night") return (known?.highC ?? COLD_DAY_C) < COLD_DAY_C ? "cold" : null;
  const leastC = Math.min(floorC, COLD_NIGHT_C);
  return (climate.known(plus(day, 1))?.lowC ?? leastC) < leastC ? "cold" : null;
}

/** The same for the day on which plants go out for good and the night after it. */
export function holdSettingOut(context: SowingContext, day: Day): HoldReason | null {
  const floorC = context.crop.indoors?.nightFloorC.value;
  if (!isNear(context, day) || floorC === undefined) return null;
  return holdOn(context.climate, day, { out: "night", floorC });
}

function isNear({ soFar }: SowingContext, day: Day): boolean {
  return soFar !== null && day >= soFar.asOf && day < plus(soFar.asOf, HELD_AHEAD);
}

/** The setting-out day that a ladder is counted back from, how many days it has, the coldest night it bears [°C], and the day by which it must be gone through. */
export type LadderBounds = {
  readonly setOut: Day;
  readonly days: number;
  readonly floorC: number;
  readonly by: Day;
};

/**
 * The ladder of a planting. Where this year's weather is known, rungs whose day has passed stay as they were told, the rest follow
 * day by day, and a day that is known to be too cold or windy holds its rung until the next: its hours come then, and none are gone
 * back. Where that would end after `by`, no rung is held. Source: common practice.
 */
export function ladderOf(context: SowingContext, parts: LadderBounds): Ladder {
  const planned = hardeningLadder(parts.setOut, parts.days, context.around);
  if (context.soFar === null)
    return { rungs: planned.map((rung) => ({ ...rung, held: [] })), doneBy: parts.setOut };
  const held = walk(context, planned, { ...parts, holds: true });
  return held.doneBy <= parts.by ? held : walk(context, planned, { ...parts, holds: false });
}

function walk(
  context: SowingContext,
  planned: readonly HardeningRung[],
  { floorC, by, holds }: LadderBounds & { readonly holds: boolean },
): Ladder {
  const asOf = context.soFar?.asOf ?? by;
  const passed: HeldRung[] = [];
  for (const rung of planned) {
    const day = passedDay(context, rung, asOf);
    if (day === null) break;
    passed.push({ ...rung, day, held: [] });
  }
  const rungs = [...passed];
  for (const rung of planned.slice(passed.length)) {
    const last = rungs.at(-1)?.day;
    const next = last === undefined ? asOf : plus(last, 1);
    // What is under way goes on day by day, however far the day of setting out has moved.
    const from = passed.length > 0 ? next : latest(next, asOf, rung.day);
    rungs.push({ ...rung, ...firstDayOut(context, from, { out: rung.out, floorC, holds }) });
  }
  return { rungs, doneBy: plus(rungs.at(-1)?.day ?? plus(by, -1), 1) };
}

/** The day on which a rung was gone through: as it was told, or as it is planned where nothing ever was; null where it is still to come. */
function passedDay(context: SowingContext, rung: HardeningRung, asOf: Day): Day | null {
  const toldOn = (number: number) =>
    context.soFar?.toldOn(plantingTaskId(context, "harden off", `out-${number}`)) ?? null;
  const day = toldOn(rung.number) ?? (toldOn(1) === null ? rung.day : null);
  return day !== null && day < asOf ? day : null;
}

/** The longest that somebody is waited for [days]; the same as `hardeningLadder` looks back. */
const MOST_WAITED_DAYS = 21;

/** The first day from one on, today at the soonest, with somebody about and no weather against it; and the days that had. */
function firstDayOut(
  context: SowingContext,
  from: Day,
  {
    out,
    floorC,
    holds,
  }: { readonly out: HardeningRung["out"]; readonly floorC: number; readonly holds: boolean },
): Pick<HeldRung, "day" | "held"> {
  const held: { readonly day: Day; readonly why: HoldReason }[] = [];
  const asOf = context.soFar?.asOf ?? from;
  const today = latest(from, asOf);
  for (let day = from; day <= today + MOST_WAITED_DAYS; day = plus(day, 1)) {
    const counts = day < asOf || (holds && isNear(context, day));
    const why = counts ? holdOn(context.climate, day, { out, floorC }) : null;
    if (why !== null) held.push({ day, why });
    else if (day >= asOf && context.around(day)) return { day, held };
  }
  return { day: today, held: [] };
}

import { type Day, plus } from "../../base/index.ts";
import { isRaised } from "../../garden/model/index.ts";
import type { Basis } from "./anchors.ts";
import type { DateDecision } from "./date-decision.ts";
import { lastHarvest } from "./ending.ts";
import { ripeIfStarted } from "./ripe.ts";
import type { SowingContext } from "./sowing-context.ts";
import { upFrom } from "./up.ts";

/**
 * Why a sowing on a day fails in a usual season: the seed is dormant in soil too warm; the crop is ready in heat that
 * ends it; it bolts in long days, or after cold while young; it never comes up, or is too late before winter.
 */
export type Refusal = "asleep" | "heat" | "long days" | "cold" | "never up" | "too late";

/** Days from the first harvest on in which heat matters. Source: house rule; a first week of picking. */
const PICKING_DAYS = 7;

/** Days after emergence for which a plant is young. Source: house rule, six weeks. */
const YOUNG_DAYS = 42;

/** Why a start on a day (sowing, planting or setting out) fails, or null where it succeeds. */
export function refusalOf(context: SowingContext, day: Day): Refusal | null {
  const { climate, crop, bed, planting } = context;
  const soilMax = planting.start === "seed outdoors" ? crop.outdoors?.soilMaxC : null;
  if (soilMax && climate.dampSoilC(day, bed) > soilMax.value) return "asleep";
  const up = isRaised(planting.start) ? day : upFrom(context, day);
  if (up === null) return "never up";
  const ripe = ripeIfStarted(context, day);
  const end = lastHarvest(context, day);
  if (ripe === null || (end !== null && worthwhileUntil(context, ripe) > end)) return "too late";
  return weatherRefusal(context, up, ripe);
}

/** Days of picking for which what bears longer is worth its place. Source: house rule, six weeks; Virginia counts on no more for its last sowings. */
const WORTH_DAYS = 42;

/** The day until which it should bear, from its first harvest on, to be worth its place: as long as it does, six weeks at the most. */
export function worthwhileUntil({ crop }: SowingContext, ripe: Day): Day {
  return plus(ripe, Math.min(crop.harvest.bearsDays?.value[0] ?? 0, WORTH_DAYS));
}

function weatherRefusal({ climate, crop }: SowingContext, up: Day, ripe: Day): Refusal | null {
  const { heatC, longDays, coldYoung } = crop.limits;
  const warmAt = (day: Day, aboveC: number) => climate.airAheadC(day) > aboveC;
  if (heatC && (warmAt(ripe, heatC.value) || warmAt(plus(ripe, PICKING_DAYS), heatC.value)))
    return "heat";
  const isLong = longDays && (climate.dayHours?.(ripe) ?? 0) > longDays.value.hours;
  if (isLong && warmAt(ripe, longDays.value.aboveC)) return "long days";
  if (!coldYoung) return null;
  let cold = 0;
  for (let day = up; day < up + YOUNG_DAYS; day = plus(day, 1))
    if (climate.airC(day) <= coldYoung.value.belowC) cold += 1;
  return cold > coldYoung.value.days ? "cold" : null;
}

const REFUSAL_BASIS: Readonly<Record<Refusal, Basis>> = {
  asleep: "heat",
  heat: "heat",
  "long days": "day length",
  cold: "cold",
  "never up": "soil",
  "too late": "first frost",
};

/** Days that are searched for a better one. Source: house rule; half a year leads from spring to autumn. */
const LOOK_AHEAD_DAYS = 183;

/**
 * A calculated sowing day moved out of heat, long days and cold in which it would fail. Where only cold is in the way,
 * it waits for warmth. Where heat or long days are in the way, it waits for the other side of summer, but only if the
 * gardener's wish or a place that was taken put it there: a spring day that the season itself gives (`first`) stays,
 * but for a crop that is grown for autumn.
 */
export function withinLimits(
  context: SowingContext,
  decision: DateDecision,
  first: () => Day,
): DateDecision {
  const refusal = hasLimits(context) ? refusalOf(context, decision.day) : null;
  if (refusal === null || refusal === "too late" || refusal === "never up") return decision;
  const staysInSpring = refusal !== "cold" && !context.crop.forAutumn;
  if (staysInSpring && decision.day <= first()) return decision;
  const better = nextGoodStart(context, decision.day);
  if (better === null) return decision;
  const basis = REFUSAL_BASIS[refusal];
  return {
    ...decision,
    day: better,
    early: better,
    late: better,
    basis: [...decision.basis, basis],
    tests: [...decision.tests, { basis, day: better }],
    stop: null,
    stopped: false,
  };
}

const hasLimits = ({ crop }: SowingContext) =>
  crop.outdoors?.soilMaxC || crop.limits.heatC || crop.limits.longDays || crop.limits.coldYoung;

/** The first day after a day on which a start succeeds; null where there is none in the next half year. */
export function nextGoodStart(context: SowingContext, after: Day): Day | null {
  for (let on = 1; on <= LOOK_AHEAD_DAYS; on++) {
    const day = plus(after, on);
    if (refusalOf(context, day) === null) return day;
  }
  return null;
}

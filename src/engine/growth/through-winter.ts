import { type Day, latest, plus } from "../../base/index.ts";
import { type Crop, isTender } from "../../crops/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import {
  type Autumn,
  autumnAfter,
  frozenFrom,
  springAfter,
  tooColdFrom,
  wintersYoung,
} from "./autumn.ts";
import { hasCoolSeason, hasCoolSummer } from "./cool-season.ts";
import { inPlace, type SowingContext } from "./sowing-context.ts";

/** Days before spring from which what lived through the winter grows on. Source: common practice, about four weeks before the last frost. */
const GROWS_ON_DAYS = 28;

/** The day on which a sowing that lived through its first winter young grows on; null for every other. */
export function growsOnFrom(context: SowingContext): Day | null {
  const start = inPlace(context);
  if (!start || !wintersYoung(context, start.day)) return null;
  return latest(start.day, plus(springAfter(context, start.day), -GROWS_ON_DAYS));
}

/** The end of a harvest that goes on through the winter, and what makes it: hard frost, frozen soil, or shoots that flower in spring. */
export type WinterEnd = { readonly day: Day; readonly by: "cold" | "frozen soil" | "spring" };

/** Days from when spring begins in which what stood the winter runs to flower. Source: common practice, two weeks. */
const FLOWERS_DAYS = 14;

/** Days in which what was sown for the winter, and grows on in spring, runs to flower after it begins. Source: common practice. */
const YOUNG_FLOWERS_DAYS = 35;

/**
 * The day on which a crop that is picked through this season's winter till spring goes into its place, so that it is grown
 * by then and not old; null where the winter ends it, where summer is not cool, and for every other crop.
 */
export function forWinterFrom(context: SowingContext): Day | null {
  const { crop, plan } = context;
  const weeks = crop.winter?.inPlaceWeeksBefore;
  if (!weeks || !hasCoolSummer(context)) return null;
  const autumn = autumnAfter(context, seasonOf(plan).from);
  if (!autumn || tooColdFrom(context, autumn) !== null) return null;
  const isDug = ROOTS.includes(crop.harvest.verb);
  if (isDug && frozenFrom(context, autumn) !== null) return null;
  return plus(autumn.usual, -7 * weeks.value);
}

const ROOTS: readonly string[] = ["Dig", "Lift", "Pull"];

/**
 * When a harvest that is ready on a day ends that goes on through the winter: before the nights are too cold for it, before
 * the soil freezes on what is dug, and else as it runs to flower in spring. Null for crops that are not harvested
 * through the winter, and under glass, where it is left to the gardener.
 */
export function winterEndOf(context: SowingContext, ripe: Day): WinterEnd | null {
  const { winter, harvest } = context.crop;
  const start = inPlace(context);
  if (!start || winter?.picked === "after it" || context.climate.underGlass) return null;
  const mild = mildWinterEnd(context, start.day, ripe);
  if (mild || !winter) return mild;
  const young = wintersYoung(context, start.day);
  if (winter.picked === "through it if sown for it" && !young) return null;
  const autumn = autumnAfter(context, young ? start.day : ripe);
  if (!autumn) return null;
  const days = young ? YOUNG_FLOWERS_DAYS : FLOWERS_DAYS;
  const spring: WinterEnd = { day: plus(springAfter(context, autumn.usual), days), by: "spring" };
  const frozen = ROOTS.includes(harvest.verb) ? frozenFrom(context, autumn) : null;
  if (young) return spring;
  return firstEnd(autumn, frozen, tooColdFrom(context, autumn)) ?? spring;
}

/** The most days from a first harvest to the spring that ends it, in a place whose cool season nothing freezes. Source: house rule; sown in autumn. */
const COOL_SEASON_DAYS = 200;

/** Days in its row from which a root keeps as well in mild soil as in a store. Source: house rule; carrots and beets do, radishes and turnips don't. */
const KEEPS_DAYS = 30;

/** Hardy roots that are pulled as one needs them. */
const isKeptInSoil = (crop: Crop) =>
  crop.eaten === "root" &&
  !isTender(crop) &&
  crop.overwinter === null &&
  crop.harvest.holdsDays.value >= KEEPS_DAYS;

/** Without frost, what was sown as the heat went is picked on till spring; what is cut again and again has its own last cut. */
function mildWinterEnd(context: SowingContext, start: Day, ripe: Day): WinterEnd | null {
  const { crop } = context;
  if (!(crop.winter || isKeptInSoil(crop)) || crop.harvest.cuts) return null;
  if (autumnAfter(context, start) || !hasCoolSeason(context)) return null;
  const spring = springAfter(context, ripe);
  if (spring - ripe > COOL_SEASON_DAYS || springAfter(context, start) < spring) return null;
  return { day: plus(spring, FLOWERS_DAYS), by: "spring" };
}

function firstEnd({ killing }: Autumn, frozen: Day | null, cold: Day | null): WinterEnd | null {
  if (frozen !== null && (cold === null || frozen <= cold))
    return { day: latest(frozen, plus(killing, 1)), by: "frozen soil" };
  return cold && { day: latest(cold, plus(killing, 1)), by: "cold" };
}

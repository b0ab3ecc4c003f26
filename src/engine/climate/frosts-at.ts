import { type Day, plus } from "../../base/index.ts";
import { type Bed, type FrostDates, plusYears, type Site } from "../../garden/model/index.ts";
import { DAYS_TO_KILLING_FROST, killingFrost } from "./frost.ts";
import { glassOf } from "./glass.ts";

/** The frosts of a place; null where there are none. */
export type PlaceFrosts = Pick<Site, "lastFrost" | "firstFrost" | "killingFrost">;

const NONE: PlaceFrosts = { lastFrost: null, firstFrost: null, killingFrost: null };

/** A house heated to this has no frost [°C]. Source: house rule; heaters lag, and corners are colder. */
const FROST_FREE_C = 2;

/**
 * The frosts that reach a bed: the site's own in the open, none in a heated house. Under glass that nothing heats nights
 * are two degrees warmer, so its frosts are the hard ones outdoors, 28 °F (-2 °C): as much later in autumn as those are,
 * and as much sooner in spring; none where they would meet in winter.
 * Source: GLASS_NIGHT_K, and DAYS_TO_KILLING_FROST for both sides.
 */
export function frostsAt(site: PlaceFrosts, bed: Bed | null): PlaceFrosts {
  const glass = glassOf(bed);
  if (!glass) return site;
  const { lastFrost, firstFrost } = site;
  if (!lastFrost || !firstFrost) return NONE;
  if (glass.keptAboveC !== null && glass.keptAboveC >= FROST_FREE_C) return NONE;
  const later = killingFrost(firstFrost, site.killingFrost) - firstFrost.usual;
  const [last, first] = [moved(lastFrost, -DAYS_TO_KILLING_FROST), moved(firstFrost, later)];
  if (first.usual >= plusYears(last.usual, 1)) return NONE;
  return { lastFrost: last, firstFrost: first, killingFrost: null };
}

function moved({ early, usual, late, given }: FrostDates, days: number): FrostDates {
  const by = (day: Day) => plus(day, days);
  return { early: by(early), usual: by(usual), late: by(late), given };
}

import type { Day } from "../../base/index.ts";
import type { Crop } from "../../crops/index.ts";
import type { Planting, Site } from "../../garden/model/index.ts";
import { hardinessOf } from "../growth/hardiness.ts";
import { isWarmEnough } from "./fabric.ts";
import { leafC } from "./night-needs.ts";
import type { HardeningStep } from "./planting-record.ts";

/** Where a tray is on the day: in the house or greenhouse, out by day, or out for its first nights. */
export type TrayPlace = "indoors" | "out by day" | "out overnight";

/**
 * What to do with a tray tonight: from outdoors under cover, from an unheated greenhouse into the house, or nothing.
 */
export type TrayNeed = "leave" | "bring in" | "into the house";

/** Trays of one planting on a night. `floorC`: its nights out stay above this [°C]; null where the facts give none. */
export type Tray = {
  readonly planting: string;
  readonly name: string;
  readonly place: TrayPlace;
  readonly floorC: number | null;
  readonly need: TrayNeed;
};

/**
 * Where a planting's trays are on a day, by the scheduled steps of hardening off; hardy ones stay out from their step
 * on.
 */
export function trayPlace(hardening: readonly HardeningStep[], day: Day): TrayPlace {
  const carried = hardening.filter((step) => !step.stays && step.day === day);
  const steps = carried.length > 0 ? carried : hardening.filter((s) => s.stays && s.day <= day);
  if (steps.length === 0) return "indoors";
  return steps.some(({ out }) => out === "out overnight") ? "out overnight" : "out by day";
}

/** What a planting's trays need on a night of that low [°C], corrected for the garden. */
export function trayTonight(
  { crop, planting, name }: { crop: Crop; planting: Planting; name: string },
  place: TrayPlace,
  { lowC, site }: { readonly lowC: number; readonly site: Site },
): Tray {
  const floorC = crop.indoors?.nightFloorC.value ?? null;
  const tray = { planting: planting.key, name, place, floorC };
  if (place === "indoors") return { ...tray, need: indoorsNeed(crop, { lowC, site }) };
  const warm = place === "out overnight" && floorC !== null && isWarmEnough(lowC, floorC);
  return { ...tray, need: warm ? "leave" : "bring in" };
}

/** An unheated greenhouse is no shelter on a night that is too cold in it. */
function indoorsNeed(crop: Crop, { lowC, site }: { lowC: number; site: Site }): TrayNeed {
  const { killsC } = hardinessOf(crop, "young");
  if (site.greenhouse === null || site.greenhouse.keptAbove !== null || killsC === null)
    return "leave";
  const airC = leafC({ lowC, place: { keptAboveC: null } });
  return isWarmEnough(airC, killsC) ? "leave" : "into the house";
}

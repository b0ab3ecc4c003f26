import type { Day } from "../base/days/day.ts";
import { type FrostTonight, frostTonight } from "../engine/beds/frost-tonight.ts";
import type { Year } from "../engine/year.ts";
import { newestPlan } from "../garden/model/garden.ts";
import { type FrostTonightText, frostTonightText } from "../views/events/frost-tonight.ts";

export type { FrostTonight } from "../engine/beds/frost-tonight.ts";
export type { FrostTonightText } from "../views/events/frost-tonight.ts";

/** A night that may be cold: what each plant and tray needs, and the same in words. */
export type FrostNight = { readonly report: FrostTonight; readonly text: FrostTonightText };

/** The night that follows a day, from the low that the forecast gives [°C]. */
export function frostNight(year: Year, day: Day, forecastC: number): FrostNight {
  const report = frostTonight(year, day, forecastC);
  return { report, text: frostTonightText(report, newestPlan(year.plans).measures) };
}

import type { Day } from "../base/index.ts";
import { type FrostTonight, frostTonight, type YearCourse } from "../engine/index.ts";
import { newestPlan } from "../garden/model/index.ts";
import { type FrostTonightText, frostTonightText, nightInShort } from "../views/index.ts";

export type { FrostTonight } from "../engine/index.ts";
export type { FrostTonightText } from "../views/index.ts";

/** A night that may be cold: what each plant and tray needs, and the same in words. */
export type FrostNight = { readonly report: FrostTonight; readonly text: FrostTonightText };

/** The night that follows a day, from the low that the forecast gives [°C]. */
export function frostNight(year: YearCourse, day: Day, forecastC: number): FrostNight {
  const report = frostTonight(year, day, forecastC);
  return { report, text: frostTonightText(report, newestPlan(year.plans).measures) };
}

/** What the night that follows a day asks something for at that low by the forecast [°C], bed by bed in one line; empty where nothing. */
export function frostInShort(year: YearCourse, day: Day, forecastC: number): string {
  return nightInShort(frostTonight(year, day, forecastC));
}

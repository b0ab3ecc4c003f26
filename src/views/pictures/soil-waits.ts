import { type Day, degreesC, plus, sayDay, sayQuantity } from "../../base/index.ts";
import { type Crop, cropFor } from "../../crops/index.ts";
import {
  type Bed,
  isRaised,
  type Plan,
  type Planting,
  seasonOf,
} from "../../garden/model/index.ts";
import type { DrawnSeason } from "./sketch.ts";
import { plainLine } from "./svg.ts";
import { soilIn } from "./warmth.ts";

/**
 * Crops that wait for the same soil: their names in the plan's order, the soil at seed depth [°C], the usual first day
 * that has it, null where none of the season's has; `always` where every day has it, and so nothing waits. `film`: in a
 * bed that film warms.
 */
export type SoilWait = {
  readonly names: readonly string[];
  readonly soilC: number;
  readonly film: boolean;
  readonly day: Day | null;
  readonly always: boolean;
};

/** The crops by the soil they wait for, the coldest first; crops that overwinter wait for none. */
export function soilWaitsOf(drawn: DrawnSeason): readonly SoilWait[] {
  const { plan } = drawn;
  const groups = new Map<
    string,
    { names: string[]; soilC: number; film: boolean; bed: Bed | null }
  >();
  for (const planting of plan.plantings) {
    const crop = cropFor(planting);
    const soilC = crop ? soilOf(planting, crop) : null;
    if (!crop || soilC === null) continue;
    const bed = plan.beds.find(({ key }) => key === planting.bed && key !== null) ?? null;
    const film = bed?.warmed ?? false;
    const key = `${film}|${soilC}`;
    const group = groups.get(key) ?? { names: [], soilC, film, bed: film ? bed : null };
    const name = plainLine(crop.many);
    if (!group.names.includes(name)) group.names.push(name);
    groups.set(key, group);
  }
  return [...groups.values()]
    .map(({ bed, ...group }) => ({ ...group, ...daysWarm(drawn, bed, group.soilC) }))
    .sort((a, b) => a.soilC - b.soilC || Number(a.film) - Number(b.film));
}

/** The soil that it waits for [°C], to be sown or planted, or to be set out; null where it waits for none. */
function soilOf(
  { start, inSince }: Planting,
  { overwinter, outdoors, settingOut }: Crop,
): number | null {
  if (overwinter || inSince !== null) return null;
  if (isRaised(start)) return settingOut?.soilMinC?.value ?? null;
  return outdoors?.soilMinC.value ?? null;
}

/** The season's first day with that soil in a usual year, and whether all its days have it. */
function daysWarm(
  drawn: DrawnSeason,
  bed: Bed | null,
  soilC: number,
): Pick<SoilWait, "day" | "always"> {
  const { from, to } = seasonOf(drawn.plan);
  const soil = soilIn(drawn, bed);
  const days = Array.from({ length: to - from + 1 }, (_, i) => plus(from, i));
  const warm = days.filter((day) => soil(day).usualC >= soilC);
  return { day: warm[0] ?? null, always: warm.length === days.length };
}

/** The same in a sentence: `beets, carrots: 45 °F, usually from 9 May.` */
export function soilWaitText(
  { names, soilC, film, day, always }: SoilWait,
  { measures }: Plan,
): string {
  const soil = sayQuantity(degreesC(soilC), measures);
  const where = film ? ", under film" : "";
  const from = day === null ? "the soil here is never that warm" : `usually from ${sayDay(day)}`;
  const when = always ? "warm enough all year" : from;
  return `${names.join(", ")}${where}: ${soil}, ${when}.`;
}

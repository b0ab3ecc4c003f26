import { cropOf } from "../crops/crops.ts";
import type { Crop } from "../crops/facts.ts";
import { type Day, plus, sayDay } from "../days/day.ts";
import type { Bed, Plan, Planting } from "../plan/plan.ts";
import { seasonOf } from "../plan/season.ts";
import { degreesC } from "../quantities/quantity.ts";
import { sayQuantity } from "../quantities/say.ts";
import { soilIn } from "./warmth.ts";
import { plainLine } from "./write.ts";

/**
 * Crops that wait for the same soil: their names in the plan's order, the soil at seed depth [°C], the usual first day
 * that has it, null where none of the season's has. `film`: in a bed that film warms.
 */
export type Waiting = {
  readonly names: readonly string[];
  readonly soilC: number;
  readonly film: boolean;
  readonly day: Day | null;
};

/** What grows here by the soil it waits for, the coldest first; what stands the winter waits for none. */
export function waitingOf(plan: Plan): readonly Waiting[] {
  const groups = new Map<
    string,
    { names: string[]; soilC: number; film: boolean; bed: Bed | null }
  >();
  for (const planting of plan.plantings) {
    const crop = cropOf(planting.crop);
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
    .map(({ names, soilC, film, bed }) => ({ names, soilC, film, day: firstDay(plan, bed, soilC) }))
    .sort((a, b) => a.soilC - b.soilC || Number(a.film) - Number(b.film));
}

/** The soil that holds it back [°C]: where it is sown or planted, or where raised plants go out; null where none does. */
function soilOf(
  { start, inSince }: Planting,
  { overwinter, outdoors, settingOut }: Crop,
): number | null {
  if (overwinter || inSince !== null) return null;
  if (start === "seed indoors" || start === "plants") return settingOut?.soilMinC?.value ?? null;
  return outdoors?.soilMinC.value ?? null;
}

function firstDay(plan: Plan, bed: Bed | null, soilC: number): Day | null {
  const { from, to } = seasonOf(plan);
  const soil = soilIn(plan, bed);
  for (let day = from; day <= to; day = plus(day, 1)) if (soil(day).usualC >= soilC) return day;
  return null;
}

/** The same in a sentence: `beets, carrots: 45 °F, usually from 9 May.` */
export function waitingTold({ names, soilC, film, day }: Waiting, { measures }: Plan): string {
  const soil = sayQuantity(degreesC(soilC), measures);
  const where = film ? ", under film" : "";
  const when = day === null ? "the soil here is never that warm" : `usually from ${sayDay(day)}`;
  return `${names.join(", ")}${where}: ${soil}, ${when}.`;
}

import type { Day } from "../../base/index.ts";
import { climateFrom, ONE_IN_TEN, seasonFor } from "../../engine/index.ts";
import type { Bed } from "../../garden/model/index.ts";
import type { DrawnSeason } from "./sketch.ts";

/** Soil at seed depth on a day [°C]: in a cool season, a usual one and a warm one; cool ≤ usual ≤ warm. */
export type Soil = { readonly coolC: number; readonly usualC: number; readonly warmC: number };

/** The soil of a bed, or of open ground where that is null, through a season as it is in a usual year, without any diary. */
export function soilIn({ year, plan }: DrawnSeason, bed: Bed | null): (day: Day) => Soil {
  const { climate } = seasonFor(year, plan);
  const usual = climateFrom({ ...climate, measuredSoil: [], observedWeather: [] });
  const { soilC, spreadK, curveK } = usual;
  return (day) => {
    const awayK = ONE_IN_TEN * Math.hypot(spreadK(day), curveK(day));
    return {
      coolC: soilC(day, bed, -awayK),
      usualC: soilC(day, bed),
      warmC: soilC(day, bed, awayK),
    };
  };
}

import { dayAt } from "../../base/index.ts";
import { gardenRecord, loadGarden, type StoredGarden, zoneOf } from "../store/gardens.ts";
import { loadWeather, storeWeather, type WeatherRecord, weatherRecord } from "../store/weather.ts";
import type { CellAnswer, CellQuestion } from "../weather/cell.ts";
import { roundedPlace } from "../weather/terms.ts";
import { type GardenContext, weatherCellOf, weatherDueAt } from "../web/garden-context.ts";

/** The pause after a cell that could not even be asked [ms]. */
const PAUSE_MS = 2 * 3_600_000;

/**
 * Asks for the garden's weather where that is due, and stores what is known then. A build is owed where that is other than
 * before. A failure is logged without a place, and what was known stays.
 */
export async function refreshWeather(context: GardenContext): Promise<void> {
  const { sql, now, askCell } = context;
  const garden = loadGarden(sql);
  const due = garden && weatherDueAt(context, garden);
  if (garden === null || due === null || due > now() || askCell === null) return;
  const cell = weatherCellOf(garden);
  const question = questionOf(garden, now());
  if (cell === null || question === null) return;
  try {
    await store(context, cell, await askCell(cell, question));
  } catch (error) {
    console.error(`garden ${garden.id}: the weather could not be asked for:`, error);
    const before = recordOf(context, cell);
    storeNext(context, { ...before, nextAt: now() + PAUSE_MS, fault: "not reached" }, null);
  }
}

function questionOf(garden: StoredGarden, now: number): CellQuestion | null {
  const forecast = garden.plans.at(-1)?.summary.forecast;
  if (!forecast) return null;
  const clock = zoneOf(garden);
  const { latitude, longitude } = roundedPlace({ ...forecast, clock });
  return { source: forecast.source, latitude, longitude, clock, today: dayAt(now, clock) };
}

/** The record of the cell; one that was never asked where the garden's is of another. */
function recordOf({ sql }: GardenContext, cell: string): WeatherRecord {
  const record = weatherRecord(sql);
  return record?.cell === cell ? record : { cell, fetchedAt: null, nextAt: 0, fault: null };
}

async function store(context: GardenContext, cell: string, answer: CellAnswer): Promise<void> {
  const { weather, fetchedAt, nextAt, fault } = answer;
  const before = recordOf(context, cell);
  const isNew = weather !== null && fetchedAt !== before.fetchedAt;
  const { mergeWeather } = await context.engine();
  const known = isNew ? mergeWeather(loadWeather(context.sql, cell), weather) : null;
  storeNext(context, { cell, fetchedAt, nextAt, fault }, known);
}

/** Nothing is stored where the garden has been deleted meanwhile. */
function storeNext(
  { sql, now }: GardenContext,
  record: WeatherRecord,
  known: Parameters<typeof storeWeather>[2]["weather"],
): void {
  sql.transaction(() => {
    if (gardenRecord(sql) !== null) storeWeather(sql, record, { weather: known, now: now() });
  });
}

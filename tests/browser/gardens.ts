import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const LANE = fileURLToPath(new URL("../../plans/quarry-lane/2027.yaml", import.meta.url));

/** The year of Quarry Lane in these tests: always the next one, as in the year before the plan's own. */
export const YEAR = new Date().getFullYear() + 1;

/** Quarry Lane with its years moved so that its season lies ahead of today. */
function laneText(): string {
  return readFileSync(LANE, "utf8").replaceAll(/\b20\d\d\b/g, (year) =>
    String(Number(year) + YEAR - 2027),
  );
}

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** So many days from today, as a plan says a day. */
function ahead(days: number): string {
  const day = new Date(Date.now() + days * 86_400_000);
  return `${day.getUTCDate()} ${MONTHS[day.getUTCMonth()]}`;
}

/** A garden with much to do this week and the next, on the side of the equator where no season ends in between. */
function weekText(): string {
  const now = new Date();
  const [year, month] = [now.getUTCFullYear(), now.getUTCMonth()];
  const north = month >= 2 && month <= 8;
  return `garden: This Week
year: ${north || month > 8 ? year : year - 1}
measures: metric
place: { clock: UTC, latitude: ${north ? 33 : -33}, last frost: none, first frost: none }
people:
  Imre: { gardens: every day 9-11, home: every day }
  Oda: { gardens: Sat 9-12, home: every day }
beds:
  South bed:
    is: 8 x 1.2 m
    crops:
      - carrot: 3 rows, sow ${ahead(2)}
      - beet: 2 rows, sow ${ahead(3)}
      - chard: 2 rows, sow ${ahead(4)}
      - turnip: 2 rows, sow ${ahead(5)}
      - kohlrabi: 2 rows, sow ${ahead(6)}
      - parsnip: 1 row, sow ${ahead(9)}
`;
}

/** The same with jobs today too, of several kinds and in several beds. */
function todayText(): string {
  const beds = ["arugula", "pea", "spinach", "dill"].map(
    (crop) =>
      `  The ${crop} bed:\n    is: 2 x 1 m\n    crops:\n      - ${crop}: 1 row, sow ${ahead(0)}\n`,
  );
  return `${weekText()}${beds.join("")}`;
}

/** The gardens by the folder they lie in: one to look at, some to write in so that no test meets another's writing. */
export const GARDENS: Readonly<Record<string, () => string>> = {
  "quarry-lane": laneText,
  "this-week": weekText,
  tapped: weekText,
  today: todayText,
  "today-answers": todayText,
  "today-done": todayText,
  "today-keys": todayText,
  winter: laneText,
  written: laneText,
  "written-bare": laneText,
  "written-keys": laneText,
  "written-leaving": laneText,
  "written-old": laneText,
  "written-together": laneText,
};

/** Lays every garden's folder into the one for plans. */
export function layOut(plans: string): void {
  for (const [garden, text] of Object.entries(GARDENS)) {
    const year = /^year: (\d{4})$/m.exec(text())?.[1];
    mkdirSync(join(plans, garden), { recursive: true });
    writeFileSync(join(plans, garden, `${year}.yaml`), text());
  }
}

import { type Day, type DaySpan, latest, sayDay } from "../../base/index.ts";
import { type Life, type PlantingInYear, plantingsIn } from "../../engine/index.ts";
import { type Bed, seasonOf } from "../../garden/model/index.ts";
import type { Sketch } from "./sketch.ts";
import { plainLine } from "./svg.ts";

/** A planting in a bed's row: its name, its days in words, and its sowings of this season. */
export type Plant = Pick<PlantingInYear, "planting" | "crop" | "lives"> & {
  readonly name: string;
  readonly days: string;
  /** The same without the number of its sowings and the day it goes out, where there is less room. */
  readonly shorter: string;
  /** With no word for how it goes in, where there is little. */
  readonly brief: string;
};

/** A bed with what grows in it this season, in the plan's order; `bed` null: plants in no bed. */
export type BedRow = {
  readonly bed: Bed | null;
  readonly name: string;
  readonly plants: readonly Plant[];
};

/** The beds in walking order, which is the plan's, then plants in no bed. Never empty. */
export function bedRowsOf(sketch: Sketch): readonly BedRow[] {
  const { plan } = sketch;
  const season = seasonOf(plan);
  const grown = plantingsIn(sketch.year).flatMap((each) => plantsThisSeason(each, sketch, season));
  const rows: readonly BedRow[] = plan.beds.map((bed) => ({
    bed,
    name: plainLine(bed.name),
    plants: grown.filter(({ planting }) => planting.bed === bed.key),
  }));
  const keys = plan.beds.map((bed) => bed.key);
  const rest = grown.filter(({ planting }) => !keys.includes(planting.bed ?? ""));
  const name = rows.length === 0 ? "" : "In no bed";
  return rest.length === 0 && rows.length > 0 ? rows : [...rows, { bed: null, name, plants: rest }];
}

/** A planting with its sowings of this season; one of another year without any is left out. */
function plantsThisSeason(
  grown: PlantingInYear,
  sketch: Sketch,
  { from, to }: DaySpan,
): readonly Plant[] {
  const { planting, crop, plan, lives } = grown;
  const now = lives.filter((life) => life.gone > from && life.starts <= to);
  if (now.length === 0 && plan.year !== sketch.plan.year) return [];
  const written = planting.written.toLowerCase() === crop?.one ? crop.many : planting.written;
  const name = plainLine(planting.name ?? written);
  const nameParts = [
    name.charAt(0).toUpperCase() + name.slice(1),
    planting.variety === null || planting.name ? "" : `(${plainLine(planting.variety)})`,
  ];
  return [
    {
      planting,
      crop,
      lives: now,
      name: nameParts.filter(Boolean).join(" "),
      days: daysText(grown, now, to),
      shorter: shorterText(grown, now, to),
      brief: briefText(now, to),
    },
  ];
}

/** `sown 2 May, ready 28 July`; several sowings by their number, what comes after the season's last day left out. */
function daysText({ planting, crop }: PlantingInYear, lives: readonly Life[], to: Day): string {
  const [first] = lives;
  if (crop === null) return "not known here, so not drawn";
  if (!first) return "no day for it this season";
  const many = lives.length > 1 ? `, ${lives.length} sowings` : "";
  const out = first.out === null ? "" : `, out ${sayDay(first.out)}`;
  return `${wentInText(planting)} ${sayDay(first.starts)}${many}${out}${readyText(lives, to)}`;
}

function wentInText({ start, inSince }: PlantingInYear["planting"]): string {
  if (inSince !== null) return "in since";
  return start.startsWith("seed") ? "sown" : "planted";
}

/** `sown 2 May, ready 28 July`; empty where it has no days. */
function shorterText({ planting }: PlantingInYear, lives: readonly Life[], to: Day): string {
  const brief = briefText(lives, to);
  return brief === "" ? "" : `${wentInText(planting)} ${brief}`;
}

/** `2 May, ready 28 July`; empty where it has no days. */
function briefText(lives: readonly Life[], to: Day): string {
  const [first] = lives;
  if (!first) return "";
  return `${sayDay(first.starts)}${readyText(lives, to)}`;
}

/**
 * From when to when one eats of it, by the first and the last of its sowings that are ready, or that none is; a harvest that is
 * over within days has one. Empty where it comes after the season's last day, and without an end where that does.
 */
function readyText(lives: readonly Life[], to: Day): string {
  const ready = lives.filter((life) => life.ready);
  const [first] = ready;
  if (!first) return ", not ready here";
  if (first.full > to) return "";
  const from = `, ready ${sayDay(first.full)}`;
  const ends = latest(...ready.map((life) => life.ends));
  return ends > to || ends - first.full < ONCE_DAYS ? from : `${from} to ${sayDay(ends)}`;
}

/** A harvest of fewer days than these is told by its first alone. Source: house rule. */
const ONCE_DAYS = 7;

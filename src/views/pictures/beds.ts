import { type Day, type DaySpan, sayDay } from "../../base/index.ts";
import { type Life, type PlantingInYear, plantingsIn } from "../../engine/index.ts";
import { type Bed, seasonOf } from "../../garden/model/index.ts";
import type { Sketch } from "./sketch.ts";
import { plainLine } from "./svg.ts";

/** A planting in a bed's row: its name, its days in words, and its sowings of this season. */
export type Plant = Pick<PlantingInYear, "planting" | "crop" | "lives"> & {
  readonly name: string;
  readonly days: string;
  /** The same with only the first and the last day, where there is little room. */
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
      brief: briefText(now, to),
    },
  ];
}

/** `sown 2 May, ready 28 July`; several sowings by their number, what comes after the season's last day left out. */
function daysText({ planting, crop }: PlantingInYear, lives: readonly Life[], to: Day): string {
  const [first] = lives;
  if (crop === null) return "not known here, so not drawn";
  if (!first) return "no day for it this season";
  const { start, inSince } = planting;
  const wentIn = inSince !== null ? "in since" : start.startsWith("seed") ? "sown" : "planted";
  const many = lives.length > 1 ? `, ${lives.length} sowings` : "";
  const out = first.out === null ? "" : `, out ${sayDay(first.out)}`;
  return `${wentIn} ${sayDay(first.starts)}${many}${out}${readyText(lives, to)}`;
}

/** `2 May, ready 28 July`; empty where it has no days. */
function briefText(lives: readonly Life[], to: Day): string {
  const [first] = lives;
  if (!first) return "";
  return `${sayDay(first.starts)}${readyText(lives, to)}`;
}

/** The first of its sowings that is ready, or that none is. Empty where that comes after the season's last day. */
function readyText(lives: readonly Life[], to: Day): string {
  const first = lives.find((life) => life.ready);
  if (!first) return ", not ready here";
  return first.full > to ? "" : `, ready ${sayDay(first.full)}`;
}

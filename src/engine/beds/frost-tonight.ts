import type { Day } from "../../base/index.ts";
import type { Crop } from "../../crops/index.ts";
import { type Bed, type Plan, type Planting, planOn } from "../../garden/model/index.ts";
import { glassOf } from "../climate/glass.ts";
import { type FrostStage, frostStage, hardinessOf } from "../growth/hardiness.ts";
import { objectOf } from "../practices/task.ts";
import { type PlantingInYear, plantingsIn, type YearCourse } from "../year.ts";
import {
  type FrostNeed,
  frostNeedOf,
  type Night,
  type NightPlace,
  needRank,
} from "./night-needs.ts";
import type { Life } from "./planting-record.ts";
import { type Tray, trayPlace, trayTonight } from "./trays-tonight.ts";

/**
 * A planting in its place on the night: its stage, the temperature below which it is hurt [°C, at the leaves; null:
 * never], and what it needs.
 */
export type PlantTonight = {
  readonly planting: string;
  readonly name: string;
  readonly family: Crop["family"];
  readonly stage: FrostStage;
  readonly killsC: number | null;
  readonly need: FrostNeed;
};

/** A bed with its plants; `bed` null: plants in no bed. `carry`: bags light enough to be carried under a roof. */
export type BedTonight = {
  readonly bed: string | null;
  readonly name: string;
  readonly carry: boolean;
  readonly plants: readonly PlantTonight[];
};

/**
 * What a garden needs for a night, as plain JSON: beds in the plan's order, empty ones left out, plants in no bed last;
 * then trays in the order of the plans. `lowC` is the forecast's `forecastC` corrected for the garden [°C]. `unknown`
 * has the names, as written, of the plantings whose crop the facts do not have.
 */
export type FrostTonight = {
  readonly day: Day;
  readonly forecastC: number;
  readonly lowC: number;
  readonly beds: readonly BedTonight[];
  readonly trays: readonly Tray[];
  readonly unknown: readonly string[];
};

type Tonight = {
  readonly plan: Plan;
  readonly day: Day;
  readonly lowC: number;
};

/** The report for the night after a day, from the forecast's low [°C]; a lower one never needs less. */
export function frostTonight(year: YearCourse, day: Day, forecastC: number): FrostTonight {
  const plan = planOn(year.plans, day);
  const lowC = forecastC - (plan.site.colderBy?.si ?? 0);
  const tonight: Tonight = { plan, day, lowC };
  const plantings = plantingsIn(year);
  return {
    day,
    forecastC,
    lowC,
    beds: [...plan.beds, null].flatMap((bed) => bedTonight(bed, plantings, tonight)),
    trays: plantings.flatMap((each) => traysOf(each, tonight)),
    unknown: plan.plantings.filter(({ known }) => !known).map(({ written }) => written),
  };
}

/** A bag with more mix than this is too heavy to carry [L]. Source: house rule, about 20 kg when wet. */
const CARRIED_L = 15;

function canBeCarried(bed: Bed | null): boolean {
  if (!bed?.bags) return false;
  const { across, high } = bed.bags;
  return (Math.PI * (across.si / 2) ** 2 * high.si) / 1000 <= CARRIED_L;
}

function bedTonight(
  bed: Bed | null,
  plantings: readonly PlantingInYear[],
  tonight: Tonight,
): readonly BedTonight[] {
  const keys = tonight.plan.beds.map(({ key }) => key);
  const here = ({ planting }: PlantingInYear) =>
    bed ? planting.bed === bed.key : !keys.includes(planting.bed ?? "");
  const plants = plantings.filter(here).flatMap((each) => plantTonight(each, bed, tonight));
  if (plants.length === 0) return [];
  return [{ bed: bed?.key ?? null, name: bed?.name ?? "", carry: canBeCarried(bed), plants }];
}

const inItsPlace = (life: Life, day: Day) =>
  life.starts <= day && day < life.gone && (life.out === null || life.out <= day);

/** The sowing of a planting that needs most tonight; none where none of it is in its place. */
function plantTonight(
  { planting, crop, lives, covers }: PlantingInYear,
  bed: Bed | null,
  { day, lowC }: Tonight,
): readonly PlantTonight[] {
  if (!crop) return [];
  const place: NightPlace = glassOf(bed) ?? "open";
  const night: Night = { lowC, place, covers: coversOn(covers, day) };
  const all = lives
    .filter((life) => inItsPlace(life, day))
    .map((life) => plantAt({ planting, crop }, stageOf(crop, life, day), night));
  const [first, ...more] = all;
  if (!first) return [];
  return [more.reduce((most, next) => (moreThan(next, most) ? next : most), first)];
}

/** Covers that lie there over the night after a day: put on by then, and not yet taken off. */
function coversOn(covers: PlantingInYear["covers"], day: Day): Night["covers"] {
  return covers.flatMap(({ thing, from, to }) =>
    from <= day && (to === null || day < to) ? [thing] : [],
  );
}

const moreThan = (a: PlantTonight, b: PlantTonight) => needRank(a.need) > needRank(b.need);

function stageOf(crop: Crop, { up, out, full, ready }: Life, day: Day): FrostStage {
  return frostStage(crop, { up, out, ready: ready ? full : null }, day);
}

function plantAt(
  what: { readonly planting: Planting; readonly crop: Crop },
  stage: FrostStage,
  night: Night,
): PlantTonight {
  return {
    planting: what.planting.key,
    name: objectOf(what),
    family: what.crop.family,
    stage,
    killsC: hardinessOf(what.crop, stage).killsC,
    need: frostNeedOf(what.crop, stage, night),
  };
}

/** The trays of a planting that is still in them; one entry for all its sowings. */
function traysOf(
  { planting, crop, lives, hardening }: PlantingInYear,
  { plan, day, lowC }: Tonight,
): readonly Tray[] {
  const raised = lives.some(({ starts, out }) => out !== null && starts <= day && day < out);
  if (!crop || !raised) return [];
  const place = trayPlace(hardening, day);
  const tray = { crop, planting, name: objectOf({ planting, crop }) };
  return [trayTonight(tray, place, { lowC, site: plan.site })];
}

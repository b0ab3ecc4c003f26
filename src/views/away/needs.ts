import { type Day, type DaySpan, earliest } from "../../base/index.ts";
import type { Crop } from "../../crops/index.ts";
import {
  objectOf,
  type PlantingInYear,
  plantingsIn,
  type ScheduledTask,
  type SowingRecord,
  seasonFor,
  tasksById,
  type Year,
} from "../../engine/index.ts";
import { isRaised, type Plan, type Planting, seasonOf } from "../../garden/model/index.ts";
import type { AwayNeed, EmergenceNeed, PickingNeed, TrayCareNeed, VentNeed } from "./away-need.ts";
import { isIn } from "./leave.ts";
import { awayWaterNeedsIn } from "./water-needs.ts";

/** One sowing of a planting whose crop is known. */
type Sowing = {
  readonly plan: Plan;
  readonly planting: Planting;
  readonly crop: Crop;
  readonly record: SowingRecord;
};

/** What the needs of some days are calculated from; tasks are all of the year's, by id. */
type NeedsContext = {
  readonly plan: Plan;
  readonly span: DaySpan;
  readonly tasks: ReadonlyMap<string, ScheduledTask>;
};

/** What a plan's garden needs in some days: under a roof first, then by planting, water last. Empty in winter. */
export function needsOf(year: Year, plan: Plan, span: DaySpan): readonly AwayNeed[] {
  const context = { plan, span, tasks: tasksById(year.scheduled) };
  const sowings = plantingsIn(year).flatMap((each) =>
    each.plan.year === plan.year ? sowingsOf(each) : [],
  );
  const trays = traysIn(sowings, context);
  return [
    ...trays,
    ...ventsIn(sowings, trays, context),
    ...sowings.flatMap((sowing) => pickingOf(sowing, context)),
    ...sowings.flatMap((sowing) => emergenceOf(sowing, context)),
    ...awayWaterNeedsIn(seasonFor(year, plan).wateringWeeks, span),
  ];
}

function sowingsOf({ plan, planting, crop, lives }: PlantingInYear): readonly Sowing[] {
  return crop ? lives.map((record) => ({ plan, planting, crop, record })) : [];
}

/** Sown under cover before these days, and not set out before they begin; those that are being hardened off apart. */
function traysIn(
  sowings: readonly Sowing[],
  { span, tasks }: NeedsContext,
): readonly TrayCareNeed[] {
  const inTrays = sowings.filter(({ planting, record: { acts } }) => {
    const { start, "set out": out } = acts;
    const raised = isRaised(planting.start) && planting.inSince === null;
    return raised && start && out && start.day < span.from && out.day >= span.from;
  });
  const outdoors = hardenedOffBy(tasks, span);
  const hardening = inTrays.filter(({ planting }) => outdoors.has(planting.key));
  const floors = hardening.flatMap(({ crop }) => crop.indoors?.nightFloorC.value ?? []);
  return [
    ...traysOf(hardening, Math.max(...floors)),
    ...traysOf(
      inTrays.filter((sowing) => !hardening.includes(sowing)),
      null,
    ),
  ];
}

/** Keys of plantings whose days outdoors have begun, or would begin in these days. */
function hardenedOffBy(tasks: NeedsContext["tasks"], span: DaySpan): ReadonlySet<string> {
  const keys = new Set<string>();
  for (const { task, day } of tasks.values()) {
    const last = task.rhythm === "timed" ? span.to : span.from - 1;
    if (task.practice === "harden off" && day <= last) keys.add(task.subject.key);
  }
  return keys;
}

function traysOf(
  sowings: readonly Sowing[],
  hardeningFloorC: number | null,
): readonly TrayCareNeed[] {
  if (sowings.length === 0) return [];
  return [{ kind: "trays", plants: [...new Set(sowings.map(objectOf))], hardeningFloorC }];
}

function ventsIn(
  sowings: readonly Sowing[],
  trays: readonly TrayCareNeed[],
  { plan, span }: NeedsContext,
): readonly VentNeed[] {
  const glass = new Set(plan.beds.flatMap(({ kind, key }) => (kind === "greenhouse" ? [key] : [])));
  const inIt = sowings.some(
    (sowing) => glass.has(sowing.planting.bed ?? "") && standsDuring(sowing, span),
  );
  return inIt || (plan.site.greenhouse && trays.length > 0) ? [{ kind: "vents" }] : [];
}

function standsDuring(sowing: Sowing, span: DaySpan): boolean {
  const { acts } = sowing.record;
  const inPlace = acts["set out"] ?? acts.start;
  return inPlace !== undefined && inPlace.day <= span.to && endOf(sowing) >= span.from;
}

/** The day that was set for its end, else the season's last. */
function endOf({ plan, record }: Sowing): Day {
  return record.acts.end?.day ?? seasonOf(plan).to;
}

/**
 * A crop that lasts no longer than this once ready spoils, or stops the plant [days]. Source: the crops' own days; the
 * line between is a house rule.
 */
const GROWS_OUT_DAYS = 3;

function pickingOf(sowing: Sowing, { span, tasks }: NeedsContext): readonly PickingNeed[] {
  const first = firstPick(sowing, tasks);
  const { kind, holdsDays } = sowing.crop.harvest;
  if (!first || kind === "once") return [];
  const from = earliest(first.day, first.window.due);
  if (from > span.to || lastPickOf(sowing, tasks) < span.from) return [];
  const quick = holdsDays.value <= GROWS_OUT_DAYS ? "grows out" : "ripens";
  const left = kind === "cut and come again" ? "stands" : quick;
  return [{ kind: "pick", task: first.task.id, bed: sowing.planting.bed, from, left }];
}

/** The day its picking ends; what stands for years is left to grow long before its season ends. */
function lastPickOf(sowing: Sowing, tasks: NeedsContext["tasks"]): Day {
  const last = tasks.get(`${sowing.planting.key}/harvest/last`);
  return sowing.crop.perennial && last ? earliest(last.day, endOf(sowing)) : endOf(sowing);
}

function firstPick(
  { planting, record: { sowing } }: Sowing,
  tasks: NeedsContext["tasks"],
): ScheduledTask | undefined {
  const before = `${planting.key}/harvest/${sowing === 1 ? "" : `sowing-${sowing}-`}`;
  return tasks.get(`${before}1`) ?? tasks.get(`${before}cut-1`);
}

function emergenceOf(
  { planting, crop, record }: Sowing,
  { span, tasks }: NeedsContext,
): readonly EmergenceNeed[] {
  const { emergence, sowing } = record;
  if (emergence === null || !isIn(emergence.day, span)) return [];
  const off = tasks.get(`${planting.key}/board/off`);
  const board = sowing === 1 && off !== undefined && off.day >= span.from;
  const plants = objectOf({ planting, crop });
  return [{ kind: "up", plants, bed: planting.bed, ...emergence, board }];
}

import { type Day, type DaySpan, earliest } from "../../base/days/day.ts";
import { isReached } from "../../engine/growth/milestones.ts";
import { anchorOf, inPlace, type SowingContext } from "../../engine/growth/sowing-context.ts";
import { upMilestone } from "../../engine/growth/up.ts";
import type { WholeGarden } from "../../engine/practices/practice.ts";
import { objectOf } from "../../engine/practices/task.ts";
import type { ScheduledTask } from "../../engine/schedule/scheduled-task.ts";
import { seasonOf } from "../../garden/model/season.ts";
import { isRaised } from "../../garden/plan/planting-start.ts";
import type { AwayNeed, EmergenceNeed, PickingNeed, TrayCareNeed, VentNeed } from "./away-need.ts";
import { isIn } from "./leave.ts";
import { awayWaterNeedsIn } from "./water-needs.ts";

/** What the garden asks for in some days: under a roof first, then as the plan's plantings stand, water last. Empty in winter. `placed` is the feed's. */
export function needsOf(
  garden: WholeGarden,
  scheduled: readonly ScheduledTask[],
  span: DaySpan,
): readonly AwayNeed[] {
  const trays = traysIn(garden, scheduled, span);
  return [
    ...trays,
    ...ventsIn(garden, trays, span),
    ...garden.contexts.flatMap((context) => pickingOf(context, scheduled, span)),
    ...garden.contexts.flatMap((context) => emergenceOf(context, scheduled, span)),
    ...awayWaterNeedsIn(garden, span),
  ];
}

/** Sown under cover before these days, and not set out before they begin; those that are being hardened off apart. */
function traysIn(
  garden: WholeGarden,
  scheduled: readonly ScheduledTask[],
  span: DaySpan,
): readonly TrayCareNeed[] {
  const inTrays = garden.contexts.filter((context) => {
    const { start, inSince } = context.planting;
    const [sown, out] = [anchorOf(context, "start"), anchorOf(context, "set out")];
    const raised = isRaised(start) && inSince === null;
    return raised && sown && out && sown.day < span.from && out.day >= span.from;
  });
  const hardening = inTrays.filter((context) => isHardening(context, scheduled, span));
  const floors = hardening.flatMap(({ crop }) => crop.indoors?.nightFloorC.value ?? []);
  return [
    ...traysOf(hardening, Math.max(...floors)),
    ...traysOf(
      inTrays.filter((context) => !hardening.includes(context)),
      null,
    ),
  ];
}

/** Whether its days outdoors have begun, or would begin in these days. */
function isHardening(
  { planting }: SowingContext,
  scheduled: readonly ScheduledTask[],
  span: DaySpan,
): boolean {
  return scheduled.some(
    ({ task, day }) =>
      task.practice === "harden off" &&
      task.subject.key === planting.key &&
      day <= (task.rhythm === "timed" ? span.to : span.from - 1),
  );
}

function traysOf(
  contexts: readonly SowingContext[],
  hardeningFloorC: number | null,
): readonly TrayCareNeed[] {
  if (contexts.length === 0) return [];
  return [{ kind: "trays", plants: [...new Set(contexts.map(objectOf))], hardeningFloorC }];
}

function ventsIn(
  { plan, contexts }: WholeGarden,
  trays: readonly TrayCareNeed[],
  span: DaySpan,
): readonly VentNeed[] {
  const inIt = contexts.some(
    (context) => context.bed?.kind === "greenhouse" && standsDuring(context, span),
  );
  return inIt || (plan.site.greenhouse && trays.length > 0) ? [{ kind: "vents" }] : [];
}

function standsDuring(context: SowingContext, span: DaySpan): boolean {
  const from = inPlace(context)?.day ?? null;
  return from !== null && from <= span.to && endOf(context) >= span.from;
}

/** The day that was set for its end, else the season's last. */
function endOf(context: SowingContext): Day {
  return anchorOf(context, "end")?.day ?? seasonOf(context.plan).to;
}

/** What may stand no longer than this once ready spoils, or stops the plant [days]. Source: the crops' own days to stand; the line between is a house rule. */
const GROWS_OUT_DAYS = 3;

function pickingOf(
  context: SowingContext,
  scheduled: readonly ScheduledTask[],
  span: DaySpan,
): readonly PickingNeed[] {
  const first = firstPick(context, scheduled);
  const { kind, holdsDays } = context.crop.harvest;
  if (first === null || kind === "once") return [];
  const from = earliest(first.day, first.window.due);
  if (from > span.to || endOf(context) < span.from) return [];
  const quick = holdsDays.value <= GROWS_OUT_DAYS ? "grows out" : "ripens";
  const left = kind === "cut and come again" ? "stands" : quick;
  return [{ kind: "pick", task: first.task.id, bed: context.planting.bed, from, left }];
}

function firstPick(
  { planting, sowing }: SowingContext,
  scheduled: readonly ScheduledTask[],
): ScheduledTask | null {
  const steps = sowing === 1 ? ["1", "cut-1"] : [`sowing-${sowing}-1`, `sowing-${sowing}-cut-1`];
  const ids = steps.map((step) => `${planting.key}/harvest/${step}`);
  return scheduled.find(({ task }) => ids.includes(task.id)) ?? null;
}

function emergenceOf(
  context: SowingContext,
  scheduled: readonly ScheduledTask[],
  span: DaySpan,
): readonly EmergenceNeed[] {
  const { key, start, bed } = context.planting;
  const up = upMilestone(context);
  if (isRaised(start)) return [];
  if (!isReached(up) || up.seen || !isIn(up.usual, span)) return [];
  const off = scheduled.find(({ task }) => task.id === `${key}/board/off`);
  const board = context.sowing === 1 && off !== undefined && off.day >= span.from;
  return [{ kind: "up", plants: objectOf(context), bed, day: up.usual, late: up.late, board }];
}

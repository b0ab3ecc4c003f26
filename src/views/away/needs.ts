import { type Day, earliest } from "../../base/days/day.ts";
import { anchorOf, type Growing, inPlace } from "../../engine/growth/growing.ts";
import { reached } from "../../engine/growth/milestones.ts";
import { upMilestone } from "../../engine/growth/up.ts";
import type { WholeGarden } from "../../engine/practices/practice.ts";
import { objectOf } from "../../engine/practices/task.ts";
import type { Placed } from "../../engine/schedule/placed.ts";
import { seasonOf } from "../../garden/model/season.ts";
import { isRaised } from "../../garden/plan/begin.ts";
import { isIn, type Span } from "./leave.ts";
import type { Need, Picking, Showing, Trays, Vents } from "./need.ts";
import { thirstIn } from "./thirst.ts";

/** What the garden asks for in some days: under a roof first, then as the plan's plantings stand, water last. Empty in winter. `placed` is the feed's. */
export function needsOf(
  garden: WholeGarden,
  placed: readonly Placed[],
  span: Span,
): readonly Need[] {
  const trays = traysIn(garden, placed, span);
  return [
    ...trays,
    ...ventsIn(garden, trays, span),
    ...garden.growings.flatMap((growing) => pickingOf(growing, placed, span)),
    ...garden.growings.flatMap((growing) => showingOf(growing, placed, span)),
    ...thirstIn(garden, span),
  ];
}

/** Sown under cover before these days, and not set out before they begin; those that are being hardened off apart. */
function traysIn(garden: WholeGarden, placed: readonly Placed[], span: Span): readonly Trays[] {
  const standing = garden.growings.filter((growing) => {
    const { start, inSince } = growing.planting;
    const [sown, out] = [anchorOf(growing, "start"), anchorOf(growing, "set out")];
    const raised = isRaised(start) && inSince === null;
    return raised && sown && out && sown.day < span.from && out.day >= span.from;
  });
  const begun = standing.filter((growing) => isHardening(growing, placed, span));
  const floors = begun.flatMap(({ crop }) => crop.indoors?.nightFloorC.value ?? []);
  return [
    ...traysOf(begun, Math.max(...floors)),
    ...traysOf(
      standing.filter((growing) => !begun.includes(growing)),
      null,
    ),
  ];
}

/** Whether its days outdoors have begun, or would begin in these days. */
function isHardening({ planting }: Growing, placed: readonly Placed[], span: Span): boolean {
  return placed.some(
    ({ task, day }) =>
      task.practice === "harden off" &&
      task.subject.key === planting.key &&
      day <= (task.rhythm === "timed" ? span.to : span.from - 1),
  );
}

function traysOf(growings: readonly Growing[], hardeningFloorC: number | null): readonly Trays[] {
  if (growings.length === 0) return [];
  return [{ kind: "trays", called: [...new Set(growings.map(objectOf))], hardeningFloorC }];
}

function ventsIn(
  { plan, growings }: WholeGarden,
  trays: readonly Trays[],
  span: Span,
): readonly Vents[] {
  const inIt = growings.some(
    (growing) => growing.bed?.kind === "greenhouse" && stands(growing, span),
  );
  return inIt || (plan.site.greenhouse && trays.length > 0) ? [{ kind: "vents" }] : [];
}

function stands(growing: Growing, span: Span): boolean {
  const from = inPlace(growing)?.day ?? null;
  return from !== null && from <= span.to && endOf(growing) >= span.from;
}

/** The day that was set for its end, else the season's last. */
function endOf(growing: Growing): Day {
  return anchorOf(growing, "end")?.day ?? seasonOf(growing.plan).to;
}

/** What may stand no longer than this once ready spoils, or stops the plant [days]. Source: the crops' own days to stand; the line between is a house rule. */
const GROWS_OUT_DAYS = 3;

function pickingOf(growing: Growing, placed: readonly Placed[], span: Span): readonly Picking[] {
  const first = firstPick(growing, placed);
  const { kind, holdsDays } = growing.crop.harvest;
  if (first === null || kind === "once") return [];
  const from = earliest(first.day, first.window.due);
  if (from > span.to || endOf(growing) < span.from) return [];
  const quick = holdsDays.value <= GROWS_OUT_DAYS ? "grows out" : "ripens";
  const left = kind === "cut and come again" ? "stands" : quick;
  return [{ kind: "pick", task: first.task.id, bed: growing.planting.bed, from, left }];
}

function firstPick({ planting, sowing }: Growing, placed: readonly Placed[]): Placed | null {
  const steps = sowing === 1 ? ["1", "cut-1"] : [`sowing-${sowing}-1`, `sowing-${sowing}-cut-1`];
  const ids = steps.map((step) => `${planting.key}/harvest/${step}`);
  return placed.find(({ task }) => ids.includes(task.id)) ?? null;
}

function showingOf(growing: Growing, placed: readonly Placed[], span: Span): readonly Showing[] {
  const { key, start, bed } = growing.planting;
  const up = upMilestone(growing);
  if (isRaised(start)) return [];
  if (!reached(up) || up.seen || !isIn(up.usual, span)) return [];
  const off = placed.find(({ task }) => task.id === `${key}/board/off`);
  const board = growing.sowing === 1 && off !== undefined && off.day >= span.from;
  return [{ kind: "up", called: objectOf(growing), bed, day: up.usual, late: up.late, board }];
}

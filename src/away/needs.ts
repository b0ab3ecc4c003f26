import type { Day } from "../days/day.ts";
import { anchorOf, type Growing } from "../growth/growing.ts";
import { reached } from "../growth/milestones.ts";
import { upMilestone } from "../growth/up.ts";
import { areaM2Of, dripMinutes, litresOn, type Runs, runsOf } from "../growth/watering.ts";
import { seasonOf } from "../plan/season.ts";
import type { WholeGarden } from "../practices/practice.ts";
import { dryWeeksOf } from "../practices/weekly-need.ts";
import type { Placed } from "../schedule/placed.ts";
import { isIn, type Span } from "./leave.ts";

/** What a bed wants in the driest week of the days [litres]; null where its size or its need is not known. `bed` null: what stands in none. */
export type Thirst = {
  readonly kind: "water";
  readonly bed: string | null;
  readonly litresAWeek: number | null;
  /** How its drip lines give that; null where it has none. */
  readonly runs: Runs | null;
};

/** Raised plants that are not in their bed yet. `hardening`: their days outdoors have begun. */
export type Trays = {
  readonly kind: "trays";
  readonly plantings: readonly string[];
  readonly hardening: boolean;
};

/** A greenhouse with something in it: air on sunny days. */
export type Vents = { readonly kind: "vents" };

/** What bears in these days, from the first picking on; `growsOut`: it spoils or stops bearing within days. `task`: its first harvest, by id. */
export type Picking = {
  readonly kind: "pick";
  readonly task: string;
  readonly bed: string | null;
  readonly from: Day;
  readonly growsOut: boolean;
  /** Left to stand, leaf by leaf, as salad: nothing is lost by leaving it. */
  readonly leaves: boolean;
};

/** Seed that comes up about `day` in these days; nothing by `late`: look. */
export type Showing = {
  readonly kind: "up";
  readonly planting: string;
  readonly bed: string | null;
  readonly day: Day;
  readonly late: Day;
};

/** What a garden asks for day by day, beside its jobs. */
export type Need = Thirst | Trays | Vents | Picking | Showing;

/** What the garden asks for in some days: under a roof first, then as the plan's plantings stand, water last. Empty in winter. */
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
    ...garden.growings.flatMap((growing) => showingOf(growing, span)),
    ...thirstIn(garden, span),
  ];
}

const WEEK = 7;

function thirstIn(garden: WholeGarden, span: Span): readonly Thirst[] {
  const byBed = new Map<string | null, Thirst>();
  for (const { monday, needs } of dryWeeksOf(garden)) {
    if (monday > span.to || monday + WEEK <= span.from) continue;
    for (const { bed, mm } of needs) {
      const area = bed && areaM2Of(bed);
      const litres = area === null || mm === null ? null : litresOn(area, mm);
      const known = byBed.get(bed?.key ?? null);
      if (known && (known.litresAWeek ?? 0) >= (litres ?? 0)) continue;
      const flowLh = bed?.drip?.si ?? null;
      const runs =
        flowLh === null || area === null || mm === null
          ? null
          : runsOf(dripMinutes({ needMm: mm, areaM2: area, flowLh }));
      const key = bed?.key ?? null;
      byBed.set(key, { kind: "water", bed: key, litresAWeek: litres, runs });
    }
  }
  return [...byBed.values()];
}

/** Sown under cover before these days end, and not set out before they begin. */
function traysIn(garden: WholeGarden, placed: readonly Placed[], span: Span): readonly Trays[] {
  const standing = garden.growings.filter((growing) => {
    const [start, out] = [anchorOf(growing, "start"), anchorOf(growing, "set out")];
    const raised = growing.planting.start === "seed indoors" && growing.planting.inSince === null;
    return raised && start && out && start.day < span.from && out.day >= span.from;
  });
  const begun = (growing: Growing) =>
    placed.some(
      ({ task, day }) =>
        task.practice === "harden off" &&
        task.subject.key === growing.planting.key &&
        day < span.from,
    );
  return [true, false].flatMap((hardening) => {
    const plantings = standing.filter((each) => begun(each) === hardening);
    if (plantings.length === 0) return [];
    return [{ kind: "trays", plantings: plantings.map((each) => each.planting.key), hardening }];
  });
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
  const from = (anchorOf(growing, "set out") ?? anchorOf(growing, "start"))?.day ?? null;
  return from !== null && from <= span.to && endOf(growing) >= span.from;
}

/** The day that was set for its end, else the season's last. */
function endOf(growing: Growing): Day {
  return anchorOf(growing, "end")?.day ?? seasonOf(growing.plan).to;
}

/** What is left longer than this once ready spoils, or stops the plant [days]. Source: the crops' own days to stand; the line is a house rule. */
const GROWS_OUT_DAYS = 3;

function pickingOf(growing: Growing, placed: readonly Placed[], span: Span): readonly Picking[] {
  const { kind, holdsDays } = growing.crop.harvest;
  const first = kind === "once" ? null : firstPick(growing, placed);
  if (first === null) return [];
  const from = Math.min(first.day, first.window.due) as Day;
  if (from > span.to || endOf(growing) < span.from) return [];
  return [
    {
      kind: "pick",
      task: first.task.id,
      bed: growing.planting.bed,
      from,
      growsOut: kind === "again and again" && holdsDays.value <= GROWS_OUT_DAYS,
      leaves: kind === "cut and come again",
    },
  ];
}

function firstPick({ planting, sowing }: Growing, placed: readonly Placed[]): Placed | null {
  const steps = sowing === 1 ? ["1", "cut-1"] : [`sowing-${sowing}-1`, `sowing-${sowing}-cut-1`];
  return (
    placed.find(
      ({ task }) =>
        task.subject.key === planting.key &&
        task.practice === "harvest" &&
        steps.includes(task.step),
    ) ?? null
  );
}

function showingOf(growing: Growing, span: Span): readonly Showing[] {
  const up = upMilestone(growing);
  if (growing.planting.start === "seed indoors" || growing.planting.start === "plants") return [];
  if (!reached(up) || up.seen || !isIn(up.usual, span)) return [];
  const { key, bed } = growing.planting;
  return [{ kind: "up", planting: key, bed, day: up.usual, late: up.late }];
}

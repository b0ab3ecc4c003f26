import type { Day } from "../../base/index.ts";
import type { NumberRange } from "../../crops/index.ts";
import { type Basis, combineBasis } from "./anchors.ts";
import { dailyShare } from "./emergence.ts";
import { isReached, type Milestone, middle } from "./milestones.ts";
import { anchorOf, type SowingContext } from "./sowing-context.ts";
import { upMilestone } from "./up.ts";

/**
 * The day from which outdoor warmth counts for a planting, and how many of the packet's days are still to come: least,
 * usual and most. Early ≤ usual ≤ late.
 */
export type Clock = {
  readonly early: Day;
  readonly usual: Day;
  readonly late: Day;
  readonly least: number;
  readonly days: number;
  readonly most: number;
  readonly basis: readonly Basis[];
};

/** The soil temperature that a packet's days assume [°C]. Source: house rule; 68 °F, a column of the days table. */
const PACKET_SOIL_C = 20;

/** The least part of a packet's days that plants have before them when they are set out. Source: house rule. */
const LEAST_LEFT = 0.25;

/** The days to emergence that a packet's days to harvest include; colder soil adds to them and delays the harvest. */
export function packetDaysToUp({ crop }: SowingContext): number {
  if (crop.comesUp.kind !== "table") return middle(crop.comesUp.days.value);
  const share = dailyShare(crop.comesUp.row, PACKET_SOIL_C);
  return share === 0 ? 0 : Math.round(1 / share);
}

/** The days that bought plants have grown before they go out, as if raised here. */
function daysRaised({ crop }: SowingContext): number {
  return crop.indoors ? middle(crop.indoors.weeksToSettingOut.value) * 7 : 0;
}

/** The packet's days: the plan's own, or the crop's least, middle and most. */
export function packetDays({ planting, crop }: SowingContext): readonly [number, number, number] {
  const { days } = planting;
  if (days !== null) return [days, days, days];
  const range: NumberRange = crop.harvest.days.value;
  return [range[0], middle(range), range[1]];
}

type ClockStart = Pick<Clock, "early" | "usual" | "late" | "basis">;

/** What is left of a packet's days once so many are used up. */
const lessUsed = (days: number, used: number) => Math.max(days - used, days * LEAST_LEFT);

function clockFrom(context: SowingContext, from: ClockStart, used: number): Clock {
  const left = packetDays(context).map((days) => lessUsed(days, used));
  const [least = 0, days = 0, most = 0] = left;
  return { ...from, least, days, most };
}

const on = (day: Day, basis: readonly Basis[]): ClockStart => ({
  early: day,
  usual: day,
  late: day,
  basis,
});

/** From when and for how long outdoor warmth counts, or why that is not known yet. */
export function clockOf(context: SowingContext): Clock | { readonly none: string } {
  const { harvest } = context.crop;
  const { start } = context.planting;
  if (harvest.from === "planting") return fromPlanting(context);
  return start === "seed outdoors" ? fromSowing(context) : fromSettingOut(context);
}

/** Tubers and cloves: from the day they went in. */
function fromPlanting(context: SowingContext): ReturnType<typeof clockOf> {
  const from = anchorOf(context, "start");
  if (!from) return { none: "it is not in its place yet" };
  return clockFrom(context, on(from.day, from.basis), 0);
}

/** From when it is up; to a packet that counts from setting out the weeks of raising are added first. */
function fromSowing(context: SowingContext): ReturnType<typeof clockOf> {
  const up: Milestone = upMilestone(context);
  return isReached(up) ? clockFrom(context, up, usedWhenUp(context)) : up;
}

/** Of the packet's days, those that are over when seed sown outdoors is up; negative where the packet counts from setting out. */
function usedWhenUp(context: SowingContext): number {
  const raised = context.crop.harvest.from === "setting out" ? daysRaised(context) : 0;
  return packetDaysToUp(context) - raised;
}

/** The packet's days, the middle of them, that are left when seed sown outdoors is up. */
export function packetDaysLeft(context: SowingContext): number {
  return lessUsed(packetDays(context)[1], usedWhenUp(context));
}

/** From the day they are set out; a packet that counts from sowing has used up the days before it under cover. */
function fromSettingOut(context: SowingContext): ReturnType<typeof clockOf> {
  const out = anchorOf(context, "set out");
  if (!out) return { none: "it is not in its place yet" };
  const from = on(out.day, out.basis);
  if (context.crop.harvest.from === "setting out") return clockFrom(context, from, 0);
  const start = anchorOf(context, "start");
  const raisedHere = context.planting.start === "seed indoors" && start;
  const used = raisedHere ? out.day - start.day : daysRaised(context);
  const basis = raisedHere ? combineBasis(start.basis, out.basis) : out.basis;
  return clockFrom(context, { ...from, basis }, used);
}

/** The packet's days, the middle of them, that lie before plants on the day they are set out, and before tubers on the day they are planted. */
export function packetDaysAhead(context: SowingContext): number {
  const { harvest } = context.crop;
  const used = harvest.from === "sowing" ? daysRaised(context) : 0;
  return lessUsed(packetDays(context)[1], used);
}

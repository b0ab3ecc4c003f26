import type { Day } from "../../base/days/day.ts";
import type { Range } from "../../crops/facts.ts";
import { allGrounds, type Ground } from "./anchors.ts";
import { dailyShare } from "./emergence.ts";
import { anchorOf, type Growing } from "./growing.ts";
import { type Milestone, middle, reached } from "./milestones.ts";
import { upMilestone } from "./up.ts";

/**
 * From when outdoor warmth counts for a planting, and for how many of the packet's days it still has to: least, usual
 * and most. Early ≤ usual ≤ late.
 */
export type Clock = {
  readonly early: Day;
  readonly usual: Day;
  readonly late: Day;
  readonly least: number;
  readonly days: number;
  readonly most: number;
  readonly grounds: readonly Ground[];
};

/** The soil that the days on a packet take for granted [°C]. Source: house rule; 68 °F, a column of the days table. */
const PACKET_SOIL_C = 20;

/** Plants set out have at least this part of a packet's days before them. Source: house rule. */
const LEAST_LEFT = 0.25;

/** Days to emergence that a packet's days to harvest already hold; cold soil adds to them, and so puts harvest off. */
export function packetDaysToUp({ crop }: Growing): number {
  if (crop.comesUp.kind !== "table") return middle(crop.comesUp.days.value);
  const share = dailyShare(crop.comesUp.row, PACKET_SOIL_C);
  return share === 0 ? 0 : Math.round(1 / share);
}

/** Days that bought plants have grown before they go out, as plants raised here would have. */
function daysRaised({ crop }: Growing): number {
  return crop.indoors ? middle(crop.indoors.weeksToSettingOut.value) * 7 : 0;
}

/** The packet's days: the plan's own, or the crop's least, middle and most. */
export function packetDays({ planting, crop }: Growing): readonly [number, number, number] {
  const { days } = planting;
  if (days !== null) return [days, days, days];
  const range: Range = crop.harvest.days.value;
  return [range[0], middle(range), range[1]];
}

type Span = Pick<Clock, "early" | "usual" | "late" | "grounds">;

/** What is left of a packet's days once so many are used up. */
const lessUsed = (days: number, used: number) => Math.max(days - used, days * LEAST_LEFT);

function counting(growing: Growing, from: Span, used: number): Clock {
  const left = packetDays(growing).map((days) => lessUsed(days, used));
  const [least = 0, days = 0, most = 0] = left;
  return { ...from, least, days, most };
}

const on = (day: Day, grounds: readonly Ground[]): Span => ({
  early: day,
  usual: day,
  late: day,
  grounds,
});

/** When and for how long outdoor warmth counts, or why that is not known yet. */
export function clockOf(growing: Growing): Clock | { readonly none: string } {
  const { harvest } = growing.crop;
  const { start } = growing.planting;
  if (harvest.from === "planting") return fromPlanting(growing);
  return start === "seed outdoors" ? fromSowing(growing) : fromSettingOut(growing);
}

/** Tubers and cloves: from the day they went in. */
function fromPlanting(growing: Growing): ReturnType<typeof clockOf> {
  const from = anchorOf(growing, "start");
  if (!from) return { none: "it is not in its place yet" };
  return counting(growing, on(from.day, from.grounds), 0);
}

/** From when it is up; a packet that counts from setting out is first given the weeks of raising. */
function fromSowing(growing: Growing): ReturnType<typeof clockOf> {
  const up: Milestone = upMilestone(growing);
  return reached(up) ? counting(growing, up, usedWhenUp(growing)) : up;
}

/** Of the packet's days, those that are over when seed sown outdoors is up; negative where the packet counts from setting out. */
function usedWhenUp(growing: Growing): number {
  const raised = growing.crop.harvest.from === "setting out" ? daysRaised(growing) : 0;
  return packetDaysToUp(growing) - raised;
}

/** The packet's days, the middle of them, that are left when seed sown outdoors is up. */
export function packetDaysLeft(growing: Growing): number {
  return lessUsed(packetDays(growing)[1], usedWhenUp(growing));
}

/** From the day they are set out; a packet that counts from sowing has used up the days before it under cover. */
function fromSettingOut(growing: Growing): ReturnType<typeof clockOf> {
  const out = anchorOf(growing, "set out");
  if (!out) return { none: "it is not in its place yet" };
  const from = on(out.day, out.grounds);
  if (growing.crop.harvest.from === "setting out") return counting(growing, from, 0);
  const start = anchorOf(growing, "start");
  const raisedHere = growing.planting.start === "seed indoors" && start;
  const used = raisedHere ? out.day - start.day : daysRaised(growing);
  const grounds = raisedHere ? allGrounds(start.grounds, out.grounds) : out.grounds;
  return counting(growing, { ...from, grounds }, used);
}

/** The packet's days, the middle of them, that lie before plants on the day they are set out, and before tubers on the day they are planted. */
export function packetDaysAhead(growing: Growing): number {
  const { harvest } = growing.crop;
  const used = harvest.from === "sowing" ? daysRaised(growing) : 0;
  return lessUsed(packetDays(growing)[1], used);
}

import {
  type Day,
  type Measures,
  partsOf,
  sayCount,
  sayDay,
  sayQuantity,
} from "../../base/index.ts";
import type { MeasuredNights, Measurement } from "./nights.ts";
import type { StageRecord } from "./planting-history.ts";
import type { YearReport } from "./year.ts";

/** A stage in two short texts: its day, and a note. Both empty for none. */
export type StageText = { readonly day: string; readonly aside: string };

/**
 * A stage's day on a year's sheet, with its year where that differs; how it compares with the plan and with a usual
 * year.
 */
export function stageText(stage: StageRecord | null, year: number): StageText {
  if (!stage) return { day: "", aside: "" };
  const day = dayIn(stage.day, year);
  switch (stage.known) {
    case "written":
      return { day, aside: joined(againstPlan(stage), usualIn(stage, year)) };
    case "supposed":
      return { day: `about ${day}`, aside: joined("supposed", usualIn(stage, year)) };
    case "ahead":
      return { day: `about ${day}`, aside: joined("still to come", usualIn(stage, year)) };
  }
}

const joined = (...texts: readonly string[]) => texts.filter((text) => text !== "").join("; ");

const dayIn = (day: Day, year: number) => sayDay(day, partsOf(day).year !== year);

function againstPlan({ day, planned }: StageRecord): string {
  if (planned === null) return "";
  return day === planned ? "as planned" : `${apart(day - planned)} than planned`;
}

/** Days that a stage must differ from a usual year before that is noted. Source: house rule, as in the feeds. */
const WORTH_SAYING_DAYS = 3;

function usualIn({ day, usual }: StageRecord, year: number): string {
  const near = usual === null || Math.abs(day - usual) < WORTH_SAYING_DAYS;
  return near ? "" : `usual ${dayIn(usual, year)}`;
}

/** `4 days later`, `1 day earlier`; days not 0. */
function apart(days: number): string {
  return `${sayCount(Math.abs(days), "day")} ${days > 0 ? "later" : "earlier"}`;
}

/** The season's frosts and lows as sentences; says so where no night was measured. */
export function nightLines({
  plan,
  nights,
}: Pick<YearReport, "plan" | "nights">): readonly string[] {
  const { lastFrost, firstFrost } = plan.site;
  const usual = (day: Day | undefined) =>
    day === undefined ? "" : `; the usual one is ${sayDay(day)}`;
  if (nights.lows.length === 0) return [noLows(plan), ...soilMeasurementLines(nights, plan)];
  return [
    nights.lastFrost === null
      ? "No spring frost was measured."
      : `The last spring frost measured: ${sayDay(nights.lastFrost)}${usual(lastFrost?.usual)}.`,
    nights.firstFrost === null
      ? "No autumn frost was measured."
      : `The first autumn frost measured: ${sayDay(nights.firstFrost)}${usual(firstFrost?.usual)}.`,
    `Lows: ${nights.lows.map((low) => measurementText(low, plan.measures)).join(", ")}.`,
    ...soilMeasurementLines(nights, plan),
  ];
}

function noLows({ site }: YearReport["plan"]): string {
  const { lastFrost, firstFrost } = site;
  const usual =
    lastFrost && firstFrost
      ? ` The usual frosts here: ${sayDay(lastFrost.usual)} and ${sayDay(firstFrost.usual)}.`
      : "";
  return `No night was measured, so how cold it was is not known.${usual}`;
}

const measurementText = ({ day, value }: Measurement, measures: Measures) =>
  `${sayDay(day)} ${sayQuantity(value, measures)}`;

function soilMeasurementLines(
  { soils }: MeasuredNights,
  plan: YearReport["plan"],
): readonly string[] {
  if (soils.length === 0) return [];
  const each = soils.map((soil) => {
    const bed = plan.beds.find(({ key }) => key === soil.bed)?.name;
    return `${measurementText(soil, plan.measures)}${bed === undefined ? "" : ` in ${bed}`}`;
  });
  return [`Soil: ${each.join(", ")}.`];
}

/** What the garden's own days mean for next year, a sentence a planting. */
export function packetText({ name, packet, took }: YearReport["packets"][number]): string {
  const days = took - packet;
  if (days === 0)
    return `${name}: just what the packet says, ${packet} days. Next year goes by it.`;
  return `${name}: ${sayCount(Math.abs(days), "day")} ${days > 0 ? "longer" : "less"} than the packet, ${took} for ${packet}. Next year goes by that.`;
}

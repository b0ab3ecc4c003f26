import type { Range } from "../crops/facts.ts";
import { type Day, plus } from "../days/day.ts";
import { allGrounds, type Ground } from "./anchors.ts";
import { dailyShare, upOn } from "./emergence.ts";
import { anchorOf, type Growing } from "./growing.ts";

/** When a stage is reached, early ≤ usual ≤ late, with what it hangs on; or none, with the reason in a clause. */
export type Milestone =
  | {
      readonly early: Day;
      readonly usual: Day;
      readonly late: Day;
      readonly grounds: readonly Ground[];
      /** Seen, and so no longer reckoned. */
      readonly seen: boolean;
    }
  | { readonly none: string };

/** Emergence is never told narrower than this, either side. Source: house rule. */
const LEAST_SPREAD_DAYS = 3;
/** Share of the days to emergence that it may come early or late. Source: the 30 % by which tables of one crop differ. */
const SPREAD = 0.3;

/** Whether a milestone has a day. */
export function reached(
  milestone: Milestone,
): milestone is Exclude<Milestone, { readonly none: string }> {
  return "usual" in milestone;
}

/** The middle of a range, to the whole day. */
export function middle([least, most]: Range): number {
  return Math.round((least + most) / 2);
}

function seenOn(day: Day): Milestone {
  return { early: day, usual: day, late: day, grounds: ["seen"], seen: true };
}

/** Milestones by the very growing they were asked of, which most practices ask again. A memo, nothing more. */
const ups = new WeakMap<Growing, Milestone>();

/** When the sowing, tuber or clove shows above the soil, from the day it went in; what was seen replaces it. */
export function upMilestone(growing: Growing): Milestone {
  const known = ups.get(growing);
  if (known) return known;
  const up = upOf(growing);
  ups.set(growing, up);
  return up;
}

function upOf(growing: Growing): Milestone {
  const seen = anchorOf(growing, "up");
  if (seen) return seenOn(seen.day);
  const start = anchorOf(growing, "start");
  if (!start) return { none: "it is not in yet" };
  const { comesUp, indoors } = growing.crop;
  if (comesUp.kind === "days") {
    const [least, most] = comesUp.days.value;
    return {
      early: plus(start.day, least),
      usual: plus(start.day, middle(comesUp.days.value)),
      late: plus(start.day, most),
      grounds: allGrounds(start.grounds, ["age"]),
      seen: false,
    };
  }
  const warm = growing.planting.start === "seed indoors" && indoors;
  const usual = upOn(comesUp.row, start.day, (day) =>
    warm ? warm.soilTempC.value : growing.climate.soilC(day, growing.bed),
  );
  if (usual === null) return { none: "the soil is too cold for it to come up" };
  const spread = Math.max(LEAST_SPREAD_DAYS, Math.round((usual - start.day) * SPREAD));
  return {
    early: plus(usual, -Math.min(spread, usual - start.day - 1)),
    usual,
    late: plus(usual, spread),
    grounds: allGrounds(start.grounds, warm ? ["age"] : ["soil", "age"]),
    seen: false,
  };
}

/** When it is first ready: the days of the packet or the crop, counted from sowing, setting out or planting. */
export function ripeMilestone(growing: Growing): Milestone {
  const seen = anchorOf(growing, "first ripe");
  if (seen) return seenOn(seen.day);
  const { harvest, overwinter } = growing.crop;
  const bought = growing.planting.start === "plants";
  const from = anchorOf(growing, bought || harvest.from === "setting out" ? "set out" : "start");
  if (!from) return { none: "it is not in its place yet" };
  if (overwinter) return afterWinter(growing, from.day, overwinter.harvestDaysAfterLastFrost.value);
  const [least, most] = harvest.days.value;
  const given = growing.planting.days;
  const spread = (most - least) / 2;
  const days = given ?? middle(harvest.days.value);
  const up = harvest.from === "sowing" ? upMilestone(growing) : null;
  const age = bought && harvest.from === "sowing" ? daysRaised(growing) : 0;
  const begins =
    up && reached(up) ? plus(up.usual, -packetDaysToUp(growing)) : plus(from.day, -age);
  return {
    early: plus(begins, days - spread),
    usual: plus(begins, days),
    late: plus(begins, days + Math.max(spread, days * 0.1)),
    grounds: allGrounds(up && reached(up) ? up.grounds : from.grounds, ["age"]),
    seen: false,
  };
}

/** Days that bought plants have grown before they go out, as plants raised here would have. */
function daysRaised({ crop }: Growing): number {
  return crop.indoors ? middle(crop.indoors.weeksToSettingOut.value) * 7 : 0;
}

/** The soil that the days on a packet take for granted [°C]. Source: house rule; 68 °F, a column of the days table. */
const PACKET_SOIL_C = 20;

/** Days to emergence that a packet's days to harvest already hold; cold soil adds to them, and so puts harvest off. */
function packetDaysToUp({ crop }: Growing): number {
  return crop.comesUp.kind === "table"
    ? Math.round(1 / dailyShare(crop.comesUp.row, PACKET_SOIL_C))
    : 0;
}

/** Days after the last frost of the spring that follows a day, for what stands the winter. */
export function afterWinter(growing: Growing, planted: Day, range: Range): Milestone {
  const frost = growing.plan.site.lastFrost;
  if (!frost) return { none: "there is no last frost to count from" };
  const spring = nextYearly(frost.usual, planted);
  return {
    early: plus(spring, range[0]),
    usual: plus(spring, middle(range)),
    late: plus(spring, range[1]),
    grounds: ["last frost"],
    seen: false,
  };
}

/** The first day after `from` that is a whole number of years from `day`. */
export function nextYearly(day: Day, from: Day): Day {
  const years = Math.ceil((from + 1 - day) / 365.25);
  return plus(day, years * 365.25);
}

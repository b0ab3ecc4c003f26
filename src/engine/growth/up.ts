import { type Day, earliest, latest, plus } from "../../base/days/day.ts";
import { allGrounds } from "./anchors.ts";
import { dailyShare, GIVE_UP_DAYS, type Seed, shareIn, upOn } from "./emergence.ts";
import { anchorOf, type Growing } from "./growing.ts";
import { memo } from "./memo.ts";
import { daysOn, type Milestone, middle, seenOn } from "./milestones.ts";
import { heldBack } from "./not-yet.ts";
import { warmerK } from "./seasons.ts";

/** Emergence is never told narrower than this, either side [days]. Source: house rule. */
const LEAST_SPREAD_DAYS = 3;

/** How deep seed lies where the facts give no depth [cm]. Source: the half inch of the days table. */
const TABLE_DEPTH_CM = 1.27;

const ups = memo<Milestone>();

/** When the sowing, tuber or clove shows above the soil, from the day it went in; what was seen replaces it. */
export function upMilestone(growing: Growing): Milestone {
  return ups(growing, () => heldBack(growing, "up", upOf(growing)));
}

function upOf(growing: Growing): Milestone {
  const seen = anchorOf(growing, "up");
  if (seen) return seenOn(seen.day);
  const start = anchorOf(growing, "start");
  if (!start) return { none: "it is not in yet" };
  const { comesUp, indoors } = growing.crop;
  if (comesUp.kind === "days")
    return daysOn(start.day, comesUp.days.value, allGrounds(start.grounds, ["age"]));
  const warm = growing.planting.start === "seed indoors" && indoors !== null;
  const days = warm ? upIndoors(growing, start.day) : upOutdoors(growing, start.day);
  if (days === null) return { none: "the soil is too cold for it to come up" };
  const grounds = allGrounds(start.grounds, warm ? ["age"] : ["soil", "age"]);
  return { ...days, grounds, seen: false };
}

type Days = { readonly early: Day; readonly usual: Day; readonly late: Day };

/** Kept as warm as its kind wants it, whatever the season. */
function upIndoors({ crop }: Growing, sown: Day): Days | null {
  const { comesUp, indoors } = crop;
  if (comesUp.kind !== "table" || !indoors) return null;
  const share = dailyShare(comesUp.row, indoors.soilTempC.value);
  const usual = upOn(sown, () => share);
  return usual === null ? null : apart(sown, { early: usual, usual, late: usual });
}

/** The day a seed sown outdoors on a day is up in a season so much warmer than usual [K], or null; what else is known of the planting does not count. */
export function upFrom(growing: Growing, sown: Day, warmerK = 0): Day | null {
  const { comesUp } = growing.crop;
  if (comesUp.kind === "days") return plus(sown, middle(comesUp.days.value));
  return upOn(sown, shareIn(growing.climate, seedOf(growing, comesUp.row, warmerK)));
}

/** The same in a warm, the usual and a cold season, never told narrower than LEAST_SPREAD_DAYS; null where the usual one brings it up never. */
export function upOutdoors(growing: Growing, sown: Day): Days | null {
  const { climate, crop } = growing;
  if (crop.comesUp.kind !== "table") return null;
  const { row } = crop.comesUp;
  const run = (shiftK: number) => upOn(sown, shareIn(climate, seedOf(growing, row, shiftK)));
  const usual = run(0);
  if (usual === null) return null;
  const early = run(warmerK(climate, "warm", sown, usual - sown));
  const late = run(warmerK(climate, "cold", sown, usual - sown));
  return apart(sown, { early: early ?? usual, usual, late: late ?? plus(sown, GIVE_UP_DAYS) });
}

/** A seed of the planting in its bed. */
export function seedOf({ bed, crop }: Growing, row: string, shiftK: number): Seed {
  const depth = crop.outdoors?.depthCm.value;
  const depthCm = depth ? (depth[0] + depth[1]) / 2 : TABLE_DEPTH_CM;
  return { row, bed, depthCm, warmerK: shiftK };
}

function apart(sown: Day, { early, usual, late }: Days): Days {
  return {
    early: latest(earliest(early, plus(usual, -LEAST_SPREAD_DAYS)), plus(sown, 1)),
    usual,
    late: latest(late, plus(usual, LEAST_SPREAD_DAYS)),
  };
}

import type { Day } from "../../base/days/day.ts";
import { plus } from "../../base/days/day.ts";
import { isRaised } from "../../garden/plan/begin.ts";
import { type Act, type Anchor, anchorKey } from "./anchors.ts";
import type { Growing } from "./growing.ts";
import { middle } from "./milestones.ts";
import type { Reckoned } from "./reckoned.ts";
import { autumnPlantingDay, plantingOutDay, settingOutDay } from "./starting.ts";
import { boxesOut } from "./winter-sown.ts";

/**
 * The first sowing as it would go if everything were done on its reckoned day: with anchors for its start and its
 * setting out. Null where the facts do not say how that crop begins in that way.
 */
export function supposed(growing: Growing): Growing | null {
  const { planting } = growing;
  const raised = isRaised(planting.start);
  const acts = raised ? raisedActs(growing) : sownActs(growing);
  if (acts.length === 0) return null;
  const anchors = new Map(growing.anchors);
  for (const [act, anchor] of acts) anchors.set(anchorKey(planting.key, 1, act), anchor);
  return { ...growing, sowing: 1, anchors };
}

type Acts = readonly (readonly [Act, Anchor])[];

const placed = (day: Day, { grounds }: Reckoned): Anchor => ({
  day,
  from: "placed",
  grounds,
  task: null,
});

function raisedActs(growing: Growing): Acts {
  const out = settingOutDay(growing);
  const { indoors } = growing.crop;
  if (!out) return [];
  const set = ["set out", placed(out.day, out)] as const;
  const boxes = boxesOut(growing);
  if (boxes)
    return [["start", { day: boxes.day, from: "placed", grounds: boxes.grounds, task: null }], set];
  if (growing.planting.start !== "seed indoors" || !indoors) return [set];
  const { fixed } = growing.planting;
  const sown = fixed.start ?? plus(out.day, -7 * middle(indoors.weeksToSettingOut.value));
  return [["start", placed(sown, out)], set];
}

function sownActs(growing: Growing): Acts {
  const { crop, planting } = growing;
  const day =
    planting.start === "cloves"
      ? autumnPlantingDay(growing)
      : crop.outdoors && plantingOutDay(growing, crop.outdoors);
  return day ? [["start", placed(day.day, day)]] : [];
}

import { type Day, plus } from "../../base/index.ts";
import { isRaised } from "../../garden/model/index.ts";
import { type Anchor, type AnchorAct, anchorKey } from "./anchors.ts";
import type { DateDecision } from "./date-decision.ts";
import { middle } from "./milestones.ts";
import type { SowingContext } from "./sowing-context.ts";
import { autumnPlantingDay, plantingOutDay, settingOutDay } from "./starting.ts";
import { boxesOut } from "./winter-sown.ts";

/**
 * The first sowing as if everything were done on its calculated day: with anchors for its start and its setting out.
 * Null where the facts do not have that way to begin for the crop.
 */
export function assumedContext(context: SowingContext): SowingContext | null {
  const { planting } = context;
  const raised = isRaised(planting.start);
  const acts = raised ? raisedActs(context) : sownActs(context);
  if (acts.length === 0) return null;
  const anchors = new Map(context.anchors);
  for (const [act, anchor] of acts) anchors.set(anchorKey(planting.key, 1, act), anchor);
  return { ...context, sowing: 1, anchors };
}

type Acts = readonly (readonly [AnchorAct, Anchor])[];

const scheduledAnchor = (day: Day, { basis }: DateDecision): Anchor => ({
  day,
  from: "placed",
  basis,
  task: null,
});

function raisedActs(context: SowingContext): Acts {
  const out = settingOutDay(context);
  const { indoors } = context.crop;
  if (!out) return [];
  const set = ["set out", scheduledAnchor(out.day, out)] as const;
  const boxes = boxesOut(context);
  if (boxes)
    return [["start", { day: boxes.day, from: "placed", basis: boxes.basis, task: null }], set];
  if (context.planting.start !== "seed indoors" || !indoors) return [set];
  const { fixed } = context.planting;
  const sown = fixed.start ?? plus(out.day, -7 * middle(indoors.weeksToSettingOut.value));
  return [["start", scheduledAnchor(sown, out)], set];
}

function sownActs(context: SowingContext): Acts {
  const { crop, planting } = context;
  const day =
    planting.start === "cloves"
      ? autumnPlantingDay(context)
      : crop.outdoors && plantingOutDay(context, crop.outdoors);
  return day ? [["start", scheduledAnchor(day.day, day)]] : [];
}

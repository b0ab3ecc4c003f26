import type { Day } from "../../base/index.ts";
import type { NumberRange } from "../../crops/index.ts";
import { springAfter } from "./autumn.ts";
import { type Milestone, milestoneAfter } from "./milestones.ts";
import type { SowingContext } from "./sowing-context.ts";

/** Days after spring begins, the next one after planting, for crops that overwinter. */
export function afterWinter(context: SowingContext, planted: Day, range: NumberRange): Milestone {
  const basis = context.plan.site.lastFrost ? "last frost" : "time of year";
  return milestoneAfter(springAfter(context, planted), range, [basis]);
}

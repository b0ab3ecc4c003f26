import { plus } from "../../base/index.ts";
import { dayAtHeight } from "../growth/height.ts";
import { isReached, middle } from "../growth/milestones.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { upMilestone } from "../growth/up.ts";
import { regionOf } from "../rules/regions.ts";
import { piecesOf } from "./care.ts";
import { deed, verb } from "./deeds.ts";
import { upReasons } from "./growth-reasons.ts";
import { definePractice } from "./practice.ts";
import { how, lengthRange, sign, why } from "./sentence.ts";
import {
  anchorTaskIds,
  objectOf,
  plantingTask,
  type TaskOf,
  taskIdBefore,
  window,
} from "./task.ts";

/** Days past the usual span before crowding costs the crop. Source: house rule. */
const CROWDED_AFTER_DAYS = 4;

function tasks(context: SowingContext): readonly TaskOf<"thin">[] {
  const up = upMilestone(context);
  if (context.planting.start !== "seed outdoors" || !isReached(up)) return [];
  return context.crop.thinnings.map((thinning, i) => {
    const [least, most] = thinning.daysAfterUp.value;
    const tall = dayAtHeight(context, middle(thinning.heightCm.value));
    const days = tall === null ? middle(thinning.daysAfterUp.value) : tall - up.usual;
    return plantingTask(context, "thin", thinning.step, {
      window: window(
        plus(up.usual, Math.min(least, days)),
        plus(up.usual, days),
        plus(up.usual, Math.max(most, days) + CROWDED_AFTER_DAYS),
      ),
      harm: "this week",
      rhythm: "session",
      minutes: 20,
      title: {
        verb: thinning.step === "1" ? "Thin" : "Thin … again",
        object: objectOf(context),
        where: "bed",
      },
      say: [
        how(
          "Thin to ",
          lengthRange(thinning.apartCm.value),
          " apart. ",
          ...piecesOf(thinning.how, regionOf(context.plan.site)),
        ),
        sign("They stand ", lengthRange(thinning.heightCm.value), " tall."),
        tall === null
          ? why(
              up.seen ? "Up on " : "Likely up about ",
              { day: up.usual },
              ", so they should be tall enough.",
            )
          : why("By the height you measured."),
      ],
      because: [
        [`Counted ${days} days from when it is up, `, { day: up.usual }, "."],
        ...upReasons(context),
      ],
      basis: up.basis,
      hangsOn: anchorTaskIds(context, "start"),
      after: taskIdBefore(context, "thin", context.crop.thinnings[i - 1]?.step),
    });
  });
}

/** Thinning to the room each plant needs; carrots twice. */
export const THIN = definePractice({
  name: "thin",
  past: { whole: "thinned" },
  words: ["thinning", "thinnings"],
  deeds: [
    deed(["… thinned again", "thinned … again"], { step: "2" }),
    deed(verb("thinned(?: out)?|singled", "thinned(?: out)?|singled|reduced")),
  ],
  answers: { done: "Thinned today", notYet: "Not tall enough yet" },
  tasks: { rest: tasks },
});

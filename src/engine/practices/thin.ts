import { plus } from "../../base/days/day.ts";
import type { Growing } from "../growth/growing.ts";
import { tallOn } from "../growth/height.ts";
import { middle, reached } from "../growth/milestones.ts";
import { upMilestone } from "../growth/up.ts";
import { upTold } from "./growth-told.ts";
import type { Practice } from "./practice.ts";
import { how, lengths, sign, why } from "./say.ts";
import { objectOf, plantingTask, stepBefore, type Task, tasksBehind, window } from "./task.ts";

/** Days past the usual span before crowding costs the crop. Source: house rule. */
const CROWDED_AFTER_DAYS = 4;

function tasks(growing: Growing): readonly Task[] {
  const up = upMilestone(growing);
  if (growing.planting.start !== "seed outdoors" || !reached(up)) return [];
  return growing.crop.thinnings.map((thinning, i) => {
    const [least, most] = thinning.daysAfterUp.value;
    const tall = tallOn(growing, middle(thinning.heightCm.value));
    const days = tall === null ? middle(thinning.daysAfterUp.value) : tall - up.usual;
    return plantingTask(growing, "thin", thinning.step, {
      window: window(
        plus(up.usual, Math.min(least, days)),
        plus(up.usual, days),
        plus(up.usual, Math.max(most, days) + CROWDED_AFTER_DAYS),
      ),
      harm: "this week",
      rhythm: "session",
      minutes: 20,
      title: {
        verb: thinning.step === "1" ? "Thin" : "Thin again:",
        object: objectOf(growing),
        where: "bed",
      },
      say: [
        how("Thin to ", lengths(thinning.apartCm.value), ` apart. ${thinning.how}`),
        sign("They stand ", lengths(thinning.heightCm.value), " tall."),
        tall === null
          ? why(
              up.seen ? "Up on " : "Likely up about ",
              { day: up.usual },
              ", so they should be tall enough.",
            )
          : why("By the height you measured."),
      ],
      because: () => [
        [`Counted ${days} days from when it is up, `, { day: up.usual }, "."],
        ...upTold(growing),
      ],
      grounds: up.grounds,
      hangsOn: tasksBehind(growing, "start"),
      after: stepBefore(growing, "thin", growing.crop.thinnings[i - 1]?.step),
    });
  });
}

/** Thinning to the room each plant needs; carrots twice. */
export const THIN: Practice = { name: "thin", pass: "rest", tasks };

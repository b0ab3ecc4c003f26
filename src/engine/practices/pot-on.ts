import { plus } from "../../base/days/day.ts";
import type { Growing } from "../growth/growing.ts";
import { middle, reached } from "../growth/milestones.ts";
import { upMilestone } from "../growth/up.ts";
import type { Practice } from "./practice.ts";
import { how, sign, why } from "./say.ts";
import { objectOf, plantingTask, type Task, tasksBehind, window } from "./task.ts";

function tasks(growing: Growing): readonly Task[] {
  const after = growing.crop.indoors?.potOnDaysAfterUp;
  const up = upMilestone(growing);
  if (growing.planting.start !== "seed indoors" || !after || !reached(up)) return [];
  const [least, most] = after.value;
  return [
    plantingTask(growing, "pot on", "1", {
      window: window(
        plus(up.usual, least),
        plus(up.usual, middle(after.value)),
        plus(up.usual, most + 4),
      ),
      harm: "this week",
      rhythm: "session",
      minutes: 30,
      indoors: true,
      title: { verb: "Pot on", object: objectOf(growing), where: null },
      say: [
        how(
          "Lift each by a leaf, never by the stem, into a pot of its own, deeper than it stood. Water, and keep out of hard sun for a day.",
        ),
        sign("The first true leaves are open, and roots show at the bottom of the cell."),
        why(up.seen ? "They showed on " : "They should be up about ", { day: up.usual }, "."),
      ],
      because: () => [
        [`Counted ${middle(after.value)} days from when they are up, `, { day: up.usual }, "."],
      ],
      grounds: up.grounds,
      needs: ["pots and compost"],
      hangsOn: tasksBehind(growing, "start"),
    }),
  ];
}

/** Seedlings into pots of their own once they have true leaves. */
export const POT_ON: Practice = { name: "pot on", pass: "rest", tasks };

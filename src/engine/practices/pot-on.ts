import { plus } from "../../base/index.ts";
import { isReached, middle } from "../growth/milestones.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { upMilestone } from "../growth/up.ts";
import { deed, verb } from "./deeds.ts";
import { definePractice } from "./practice.ts";
import { how, lengthRange, sign, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/** How wide the pots are [cm]. Source: common practice, 3 to 4 inches. */
const POT_CM = [7.62, 10.16] as const;

function tasks(context: SowingContext): readonly TaskOf<"pot on">[] {
  const after = context.crop.indoors?.potOnDaysAfterUp;
  const up = upMilestone(context);
  const { start, inSince } = context.planting;
  if (start !== "seed indoors" || inSince !== null || !after || !isReached(up)) return [];
  const [least, most] = after.value;
  return [
    plantingTask(context, "pot on", "1", {
      window: window(
        plus(up.usual, least),
        plus(up.usual, middle(after.value)),
        plus(up.usual, most + 4),
      ),
      harm: "this week",
      rhythm: "session",
      minutes: 30,
      indoors: true,
      title: { verb: "Pot on", object: objectOf(context), where: null },
      say: [
        how(
          "Lift each by a leaf, never by the stem, into a pot of its own, ",
          lengthRange(POT_CM),
          " across, deeper than it stood. Water, and keep out of hard sun for a day.",
        ),
        sign("The first true leaves are open, and roots show at the bottom of the cell."),
        why(up.seen ? "They showed on " : "They should be up about ", { day: up.usual }, "."),
      ],
      because: [
        [`Counted ${middle(after.value)} days from when they are up, `, { day: up.usual }, "."],
      ],
      basis: up.basis,
      needs: ["pots and compost"],
      hangsOn: anchorTaskIds(context, "start"),
    }),
  ];
}

/** Seedlings into pots of their own once they have true leaves. */
export const POT_ON = definePractice({
  name: "pot on",
  past: { whole: "potted on" },
  words: ["potting on", "potting up", "pot up"],
  deeds: [
    deed([
      ...verb("potted(?: on| up)?|repotted|pricked out", "potted (?:on|up)|repotted|pricked out"),
      "pricked off …",
      "… spaced on",
      "passed … (?:to|into) (?:bigger|larger|final) pots",
      "potting (?:on|up) …",
      "pricking out …",
    ]),
  ],
  thingsFor: "potting on",
  tasks: { rest: tasks },
});

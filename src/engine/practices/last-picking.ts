import { type Day, degreesC, latest, plus } from "../../base/index.ts";
import type { Crop, NumberRange, Perennial } from "../../crops/index.ts";
import { combineBasis } from "../growth/anchors.ts";
import { COOL_NIGHTS_C, coloursIndoors, coolNightsEnd, naturalEndOf } from "../growth/bearing.ts";
import { greatHeatOf } from "../growth/heat.ts";
import type { ReachedMilestone } from "../growth/milestones.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { winterEndOf } from "../growth/through-winter.ts";
import { lastOfTheWinter } from "./last-of-winter.ts";
import { how, type Sentence, sign, why } from "./sentence.ts";
import { objectOf, plantingTask, type TaskOf, taskIdBefore, window } from "./task.ts";

/** How it looks when it has borne for its time, by what is picked of it. */
function nearlyOver({ eaten, family }: Crop): string {
  if (family === "pea family") return "New flowers and pods grow few and small.";
  if (eaten === "root") return "What is left turns woody or begins to sprout.";
  return eaten === "leaf"
    ? "New shoots are few and thin, and soon run to flower or seed."
    : "New fruit is small and misshapen, and leaves turn yellow or grey.";
}

/** Days after its end within which great heat is what one waits for the end of. Source: house rule; two months. */
const HEAT_AHEAD_DAYS = 60;

/** When seed may go in again, where great heat comes at its end or soon after. */
function sowAgain(context: SowingContext, end: Day): readonly Sentence[] {
  if (context.planting.start !== "seed outdoors") return [];
  const heat = greatHeatOf(context);
  if (!heat || end > heat.sowAgain || plus(end, HEAT_AHEAD_DAYS) < heat.from) return [];
  return [
    how("For more, sow again from about ", { day: heat.sowAgain }, ": in great heat flowers drop."),
  ];
}

/** The last picking of what bears for some weeks and not till frost: it frees its place. */
export function lastPicking(
  context: SowingContext,
  ripe: ReachedMilestone,
  isCutAgain: boolean,
): readonly TaskOf<"harvest">[] {
  if (context.crop.perennial) return lastOfTheYear(context, ripe, context.crop.perennial);
  const winter = winterEndOf(context, ripe.usual);
  if (winter) {
    const isCut = context.crop.harvest.kind === "cut and come again";
    if (isCut && isCutAgain) return [];
    return [lastOfTheWinter(context, { ripe, winter, after: isCut ? "cut-1" : "1" })];
  }
  const { bearsDays, verb } = context.crop.harvest;
  const cool = coolNightsEnd(context, ripe.usual);
  if (cool !== null) return [untilCoolNights(context, ripe, cool)];
  const due = naturalEndOf(context);
  if (bearsDays === null || due === null) return [];
  const [least, most] = bearsDays.value;
  return [
    plantingTask(context, "harvest", "last", {
      window: window(plus(ripe.usual, least), due, plus(due, 14)),
      harm: "when you can",
      rhythm: "session",
      minutes: 15,
      title: { verb: `${verb} the last`, object: objectOf(context), where: "bed" },
      say: [
        how("Take what is left and clear the plants; the place is free."),
        ...sowAgain(context, due),
        sign(nearlyOver(context.crop)),
        why(`It bears for about ${Math.round(most / 7)} weeks.`),
      ],
      because: [[`It bears for ${most} days from its first harvest, `, { day: ripe.usual }, "."]],
      basis: ripe.basis,
      after: taskIdBefore(context, "harvest", "1"),
      hangsOn: taskIdBefore(context, "harvest", "1"),
      sets: { planting: context.planting.key, sowing: context.sowing, act: "end" },
    }),
  ];
}

/** Days that the last picking of what cool nights end may wait. Source: house rule; no frost hurries it. */
const COOL_WAIT_DAYS = 28;

/** Without frost, tender crops are cleared when they are worn out, and at the latest when nights are too cool for them. */
function untilCoolNights(
  context: SowingContext,
  ripe: ReachedMilestone,
  cool: Day,
): TaskOf<"harvest"> {
  return plantingTask(context, "harvest", "last", {
    window: window(latest(ripe.usual, plus(cool, -COOL_WAIT_DAYS)), cool, plus(cool, 14)),
    harm: "when you can",
    rhythm: "session",
    minutes: 30,
    title: {
      verb: `${context.crop.harvest.verb} the last`,
      object: objectOf(context),
      where: "bed",
    },
    say: [
      how(
        coloursIndoors(context.crop)
          ? "Take all that is sound, the green ones too, which colour indoors, and clear the plants; the place is free."
          : "Take what is left and clear the plants; the place is free.",
      ),
      sign("Nothing new has set or ripened for two weeks. Worn-out plants may go sooner."),
      why("From about then nights are too cool for more to ripen."),
    ],
    because: [
      [
        "Nights are usually under ",
        { quantity: degreesC(COOL_NIGHTS_C) },
        " from about ",
        { day: cool },
        " on.",
      ],
    ],
    basis: combineBasis(ripe.basis, ["cold"]),
    after: taskIdBefore(context, "harvest", "1"),
    hangsOn: taskIdBefore(context, "harvest", "1"),
    sets: { planting: context.planting.key, sowing: context.sowing, act: "end" },
  });
}

/** The last harvest of a year of what stands on: what is cut is left to grow, what is picked is picked clean. */
const YEARS_LAST = {
  rest: ([least, most]: NumberRange) => [
    how("Leave what comes from now on to grow."),
    sign("What comes is thinner and smaller than in the first weeks."),
    why(`After ${least} to ${most} weeks the roots need the rest of the summer.`),
  ],
  clear: ([least, most]: NumberRange) => [
    how("Take what is left, bruised and mouldy fruit too, so that nothing rots there."),
    sign("Little is left to pick."),
    why(`Picking goes on for ${least} to ${most} weeks.`),
  ],
} as const;

/** What stands for years ends its harvest after some weeks, where that is told; its place stays taken. */
function lastOfTheYear(
  context: SowingContext,
  ripe: ReachedMilestone,
  { harvestWeeks, ends }: Perennial,
): readonly TaskOf<"harvest">[] {
  const [least, most] = harvestWeeks.value;
  if (ends === null) return [];
  return [
    plantingTask(context, "harvest", "last", {
      window: window(
        plus(ripe.usual, 7 * least),
        plus(ripe.usual, 7 * most),
        plus(ripe.usual, 7 * most + 7),
        "earlier",
      ),
      harm: "when you can",
      rhythm: "session",
      minutes: 10,
      title: {
        verb: `${context.crop.harvest.verb} the last`,
        object: objectOf(context),
        where: "bed",
      },
      say: YEARS_LAST[ends](harvestWeeks.value),
      because: [["Counted from the first harvest, about ", { day: ripe.usual }, "."]],
      basis: ripe.basis,
      after: taskIdBefore(context, "harvest", "1"),
      hangsOn: taskIdBefore(context, "harvest", "1"),
    }),
  ];
}

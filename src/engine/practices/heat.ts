import { degreesC, plus } from "../../base/index.ts";
import { coolNightsEnd, naturalEndOf } from "../growth/bearing.ts";
import { type GreatHeat, greatHeatOf } from "../growth/heat.ts";
import { isReached } from "../growth/milestones.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { deed, verb } from "./deeds.ts";
import { definePractice } from "./practice.ts";
import { how, type Sentence, sign, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/** Days before the heat on which it is told, and the days it may wait. Source: house rule; time to hang a cloth. */
const DAYS = { before: 7, wait: 14 } as const;

/** The fruit as one says it: pods of beans, fruit of the rest. */
const borneBy = ({ crop }: SowingContext) => (crop.family === "pea family" ? "pods" : "fruit");

function sentences(context: SowingContext, { comes, to }: GreatHeat): readonly Sentence[] {
  const limits = context.crop.setsBelow?.value ?? { dayC: 0, nightC: 0 };
  const borne = borneBy(context);
  const sets = borne === "pods" ? "set" : "sets";
  const over: Sentence = sign(
    "The forecast names days over ",
    { quantity: degreesC(limits.dayC) },
    " or nights over ",
    { quantity: degreesC(limits.nightC) },
    ".",
  );
  const shade = how(
    "Hang shade cloth over the plants for the afternoon, clear of the leaves. Water deep in the early morning, and mulch the soil.",
  );
  if (comes === "hot spells")
    return [
      shade,
      over,
      why(`In such heat flowers drop and no ${borne} ${sets}. More sets as the heat passes.`),
    ];
  return [
    shade,
    ...(borne === "fruit"
      ? [how("Cut tired plants back by a third and feed them, and they bear again in autumn.")]
      : []),
    over,
    why(
      `Flowers drop in such heat, and hardly any ${borne} ${sets} until about `,
      { day: plus(to, 1) },
      ".",
    ),
  ];
}

function tasks(context: SowingContext): readonly TaskOf<"heat">[] {
  const heat = context.sowing > 1 ? null : greatHeatOf(context);
  const ripe = heat && ripeMilestone(context);
  if (!heat || !ripe || !isReached(ripe)) return [];
  const end = coolNightsEnd(context, ripe.usual) ?? naturalEndOf(context);
  if (end !== null && end <= heat.from) return [];
  const due = plus(heat.from, -DAYS.before);
  return [
    plantingTask(context, "heat", "1", {
      window: window(plus(due, -DAYS.before), due, plus(heat.from, DAYS.wait), "earlier"),
      harm: "when you can",
      rhythm: "session",
      minutes: 20,
      title: { verb: "Shade … from great heat", object: objectOf(context), where: "bed" },
      say: sentences(context, heat),
      because: [
        ["By the usual days and nights of this place, from about ", { day: heat.from }, "."],
      ],
      basis: ["time of year"],
      needs: ["shade cloth"],
      hangsOn: anchorTaskIds(context, "start", "set out"),
    }),
  ];
}

/** Shade in the days in which flowers drop from heat. */
export const HEAT = definePractice({
  name: "heat",
  past: { whole: "shaded" },
  words: ["shading", "shade"],
  deeds: [
    deed([
      ...verb("shaded", "shaded|under (?:shade net|shade cloth)"),
      "(?:put )?(?:the |a |some )?(?:shade net|shade netting|shade cloth) (?:on|over) …",
    ]),
  ],
  thingsFor: "the heat",
  tasks: { rest: tasks },
});

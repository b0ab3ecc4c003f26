import { plus } from "../../base/index.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { deed } from "./deeds.ts";
import { endsWithFrost, frostAheadTasks } from "./frost-ahead.ts";
import { definePractice } from "./practice.ts";
import { how, sign, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/** Fruit of the nightshade family goes on ripening once it is picked. Source: common practice. */
function greenToo({ crop }: SowingContext): string {
  return crop.family === "nightshade family" ? ", the green ones too; they colour indoors" : "";
}

function tasks(context: SowingContext): readonly TaskOf<"first frost">[] {
  const frost = context.plan.site.firstFrost;
  if (!frost || !endsWithFrost(context)) return [];
  const object = objectOf(context);
  const shared = {
    basis: ["first frost"],
    hangsOn: anchorTaskIds(context, "set out"),
    because: [["The usual first frost of autumn is about ", { day: frost.usual }, "."]],
  } as const;
  return [
    plantingTask(context, "first frost", "pick", {
      ...shared,
      window: window(plus(frost.usual, -7), plus(frost.usual, -2), plus(frost.usual, 5), "earlier"),
      harm: "this week",
      rhythm: "session",
      minutes: 30,
      title: { verb: "Pick the last", object, where: "bed" },
      say: [
        how(`Pick all that is sound before a frost night${greenToo(context)}. Clear the plants.`),
        sign("The forecast names a night near freezing that covers can't hold."),
        why("The first frost is usual about ", { day: frost.usual }, "."),
      ],
      needs: ["trays or crates"],
      sets: { planting: context.planting.key, sowing: context.sowing, act: "end" },
    }),
  ];
}

/** What the first frost would take, picked before it is usual; that it may come is told once for the garden. */
export const FIRST_FROST = definePractice({
  name: "first frost",
  words: ["frost"],
  deeds: [
    deed(
      ["picked … before (?:the )?(?:first )?frost", "… picked before (?:the )?(?:first )?frost"],
      { step: "pick" },
    ),
  ],
  thingsFor: "the first frost",
  away: { neighbour: { help: "frost", may: ({ step }) => step.endsWith("warning") } },
  tasks: { rest: tasks, shared: frostAheadTasks },
});

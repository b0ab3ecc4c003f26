import { plus } from "../../base/days/day.ts";
import { isTender } from "../../crops/crops.ts";
import { naturalEndOf } from "../growth/bearing.ts";
import { ripening } from "../growth/ripening.ts";
import { inPlace, type SowingContext } from "../growth/sowing-context.ts";
import type { Practice } from "./practice.ts";
import { how, sign, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, plantingTask, type Task, window } from "./task.ts";

/** Fruit of the nightshade family goes on ripening once it is picked. Source: common practice. */
function greenToo({ crop }: SowingContext): string {
  return crop.family === "nightshade family" ? ", the green ones too; they colour indoors" : "";
}

/** Whether all of it is brought in at once, and before the frost in a usual season. */
function isInBefore(context: SowingContext): boolean {
  return context.crop.harvest.kind === "once" && ripening(context).ripens;
}

/** Whether the first frost is what ends it: tender, out before the frost, and not over or brought in before. */
export function endsWithFrost(context: SowingContext): boolean {
  const frost = context.plan.site.firstFrost;
  const anchor = inPlace(context);
  if (!frost || !isTender(context.crop) || !anchor) return false;
  return anchor.day < frost.usual && naturalEndOf(context) === null && !isInBefore(context);
}

function tasks(context: SowingContext): readonly Task[] {
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
export const FIRST_FROST: Practice = { name: "first frost", pass: "rest", tasks };

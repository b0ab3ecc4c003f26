import { plus } from "../../base/days/day.ts";
import { isTender } from "../../crops/crops.ts";
import { overOn } from "../growth/bearing.ts";
import { type Growing, inPlace } from "../growth/growing.ts";
import { ripening } from "../growth/ripening.ts";
import type { Practice } from "./practice.ts";
import { how, sign, why } from "./say.ts";
import { objectOf, plantingTask, type Task, tasksBehind, window } from "./task.ts";

/** Fruit of the nightshade family goes on ripening once it is picked. Source: common practice. */
function greenToo({ crop }: Growing): string {
  return crop.family === "nightshade family" ? ", the green ones too; they colour indoors" : "";
}

/** Whether all of it is brought in at once, and before the frost in a usual season. */
function isInBefore(growing: Growing): boolean {
  return growing.crop.harvest.kind === "once" && ripening(growing).ripens;
}

/** Whether the first frost is what ends it: tender, out before the frost, and not over or brought in before. */
export function endsWithFrost(growing: Growing): boolean {
  const frost = growing.plan.site.firstFrost;
  const standing = inPlace(growing);
  if (!frost || !isTender(growing.crop) || !standing) return false;
  return standing.day < frost.usual && overOn(growing) === null && !isInBefore(growing);
}

function tasks(growing: Growing): readonly Task[] {
  const frost = growing.plan.site.firstFrost;
  if (!frost || !endsWithFrost(growing)) return [];
  const object = objectOf(growing);
  const shared = {
    grounds: ["first frost"],
    hangsOn: tasksBehind(growing, "set out"),
    because: () => [["The usual first frost of autumn is about ", { day: frost.usual }, "."]],
  } as const;
  return [
    plantingTask(growing, "first frost", "pick", {
      ...shared,
      window: window(plus(frost.usual, -7), plus(frost.usual, -2), plus(frost.usual, 5), "earlier"),
      harm: "this week",
      rhythm: "session",
      minutes: 30,
      title: { verb: "Pick the last", object, where: "bed" },
      say: [
        how(`Pick all that is sound before a frost night${greenToo(growing)}. Clear the plants.`),
        sign("The forecast names a night near freezing that covers can't hold."),
        why("The first frost is usual about ", { day: frost.usual }, "."),
      ],
      needs: ["trays or crates"],
      sets: { planting: growing.planting.key, sowing: growing.sowing, act: "end" },
    }),
  ];
}

/** What the first frost would take, picked before it is usual; that it may come is told once for the garden. */
export const FIRST_FROST: Practice = { name: "first frost", pass: "rest", tasks };

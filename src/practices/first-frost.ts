import { firstFrostAt } from "../climate/frost.ts";
import { isTender } from "../crops/crops.ts";
import { plus } from "../days/day.ts";
import { overOn } from "../growth/bearing.ts";
import { type Growing, inPlace } from "../growth/growing.ts";
import type { Practice } from "./practice.ts";
import { how, sign, why } from "./say.ts";
import { objectOf, plantingTask, type Task, tasksBehind, window } from "./task.ts";

/** Share of autumns that have had their frost by the day of the warning. Source: house rule. */
const WARNED_AT = 0.1;

/** Fruit of the nightshade family goes on ripening once it is picked. Source: common practice. */
function greenToo({ crop }: Growing): string {
  return crop.family === "nightshade family" ? ", the green ones too; they colour indoors" : "";
}

function tasks(growing: Growing): readonly Task[] {
  const frost = growing.plan.site.firstFrost;
  const standing = inPlace(growing);
  if (!frost || !isTender(growing.crop) || !standing || standing.day >= frost.usual) return [];
  const warned = firstFrostAt(frost, WARNED_AT);
  if (overOn(growing) !== null) return [];
  const object = objectOf(growing);
  const shared = {
    grounds: ["first frost"],
    hangsOn: tasksBehind(growing, "set out"),
    because: () => [["The usual first frost of autumn is about ", { day: frost.usual }, "."]],
  } as const;
  return [
    plantingTask(growing, "first frost", "warning", {
      ...shared,
      window: window(warned, warned, warned),
      harm: "tonight",
      rhythm: "warning",
      minutes: 5,
      title: { verb: "Frost from now on:", object, where: null },
      say: [
        how("Have covers ready. Covered for two frost nights, they often win two more mild weeks."),
        why(
          "1 autumn in 10 has had its first frost by today; the usual day is about ",
          { day: frost.usual },
          ".",
        ),
      ],
    }),
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

/** What the first frost would take: told when it becomes possible, picked before it is usual. */
export const FIRST_FROST: Practice = { name: "first frost", pass: "rest", tasks };

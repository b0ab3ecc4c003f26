import { plus, weekdayOf } from "../../base/days/day.ts";
import { degreesC } from "../../base/quantities/quantity.ts";
import { isTender } from "../../crops/crops.ts";
import { chanceOfFrostAfter, sayOdds } from "../climate/frost.ts";
import { anchorOf, type Growing } from "../growth/growing.ts";
import { settingOutDay } from "../growth/starting.ts";
import type { Practice } from "./practice.ts";
import { capital, how, why } from "./say.ts";
import { objectOf, plantingTask, type Task, tasksBehind, window } from "./task.ts";

/** Days before setting out by which the weekend of temptation has come. Source: house rule. */
const TEMPTED_DAYS = 9;

function tasks(growing: Growing): readonly Task[] {
  const frost = growing.plan.site.lastFrost;
  const out = anchorOf(growing, "set out");
  const reckoned = settingOutDay(growing);
  const { fixed, inSince } = growing.planting;
  if (
    !frost ||
    !out ||
    !reckoned ||
    !isTender(growing.crop) ||
    fixed.out !== null ||
    inSince !== null
  )
    return [];
  const tempted = plus(reckoned.day, -TEMPTED_DAYS);
  const saturday = plus(tempted, -((weekdayOf(tempted) + 1) % 7));
  const odds = sayOdds(chanceOfFrostAfter(frost, saturday), "spring");
  const soil = growing.climate.soilC(saturday, growing.bed);
  return [
    plantingTask(growing, "not yet", "1", {
      window: window(saturday, tempted, tempted, "earlier"),
      harm: "this week",
      rhythm: "warning",
      minutes: 5,
      title: { verb: "Not yet:", object: objectOf(growing), where: null },
      say: [
        how(
          "However warm the weekend, don't plant them out yet. The day looks like ",
          { day: out.day },
          ".",
        ),
        why(
          `${capital(odds)} has a frost after today, and the soil is near `,
          { quantity: degreesC(soil) },
          ".",
        ),
      ],
      because: () => [
        ["The last Saturday at least nine days before setting out, ", { day: reckoned.day }, "."],
      ],
      grounds: reckoned.grounds,
      hangsOn: tasksBehind(growing, "set out"),
    }),
  ];
}

/** Told once, on the weekend that tempts a gardener to plant too soon. */
export const NOT_YET: Practice = { name: "not yet", pass: "rest", tasks };

import { capital, type Day, degreesC, plus, weekdayOf } from "../../base/index.ts";
import { isTender } from "../../crops/index.ts";
import { chanceOfFrostAfter, sayOdds } from "../climate/frost.ts";
import { anchorOf, type SowingContext } from "../growth/sowing-context.ts";
import { settingOutDay } from "../growth/starting.ts";
import { definePractice } from "./practice.ts";
import { how, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/** Days before setting out by which the weekend of temptation has come. Source: house rule. */
const TEMPTED_DAYS = 9;

const NAME = "not yet";

function tasks(context: SowingContext): readonly TaskOf<"not yet">[] {
  const frost = context.plan.site.lastFrost;
  const out = anchorOf(context, "set out");
  const decision = settingOutDay(context);
  const { fixed, inSince } = context.planting;
  if (
    !frost ||
    context.climate.underGlass ||
    !out ||
    !decision ||
    !isTender(context.crop) ||
    fixed.out !== null ||
    inSince !== null
  )
    return [];
  const tempted = plus(decision.day, -TEMPTED_DAYS);
  const saturday = plus(tempted, -((weekdayOf(tempted) + 1) % 7));
  const odds = sayOdds(chanceOfFrostAfter(frost, saturday), "spring");
  const soil = context.climate.soilC(saturday, context.bed);
  return [
    plantingTask(context, "not yet", "1", {
      window: window(saturday, tempted, tempted, "earlier"),
      harm: "this week",
      rhythm: "warning",
      minutes: 5,
      title: { verb: "Not yet:", object: objectOf(context), where: null },
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
      because: [
        ["The last Saturday at least nine days before setting out, ", { day: decision.day }, "."],
      ],
      basis: decision.basis,
      hangsOn: anchorTaskIds(context, "set out"),
    }),
  ];
}

/** Days by which a warning may be told sooner, to be told with another. Source: house rule; the weekend before tempts as well. */
const SOONER_DAYS = 7;

/**
 * Warnings whose Saturdays lie so near that they are told on the first of them, without the odds of their own. Other tasks
 * come back as they were; the order is kept.
 */
export function shareWarnings<Job extends TaskOf>(tasks: readonly Job[]): readonly Job[] {
  const saturdays = [...new Set(tasks.filter(isWarning).map(({ window }) => window.earliest))].sort(
    (a, b) => a - b,
  );
  const told = new Map<Day, Day>();
  let first: Day | null = null;
  for (const saturday of saturdays) {
    if (first === null || saturday - first > SOONER_DAYS) first = saturday;
    told.set(saturday, first);
  }
  return tasks.map((task) => {
    const day = isWarning(task) ? (told.get(task.window.earliest) ?? null) : null;
    if (day === null || day === task.window.earliest) return task;
    const say = task.say.filter(({ part }) => part !== "why");
    return { ...task, say, window: { ...task.window, earliest: day } };
  });
}

const isWarning = ({ practice }: TaskOf) => practice === NAME;

/** Told once, on the weekend that tempts a gardener to plant too soon. */
export const NOT_YET_WARNING = definePractice({
  name: NAME,
  words: ["waiting"],
  deeds: [],
  away: { rather: "later" },
  tasks: { rest: tasks },
});

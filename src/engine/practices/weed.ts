import { type Day, earliest, plus } from "../../base/days/day.ts";
import { seasonOf } from "../../garden/model/season.ts";
import { allGrounds } from "../growth/anchors.ts";
import { type Growing, inPlace } from "../growth/growing.ts";
import { reached } from "../growth/milestones.ts";
import { upMilestone } from "../growth/up.ts";
import type { Practice, SharedPractice, WholeGarden } from "./practice.ts";
import { how, why } from "./say.ts";
import { objectOf, plantingTask, sharedTask, type Task, tasksBehind, window } from "./task.ts";

/** Days after slow seed is up until weeds would win. Source: common practice, ten to fourteen days. */
const SLOW_SEED_DAYS = [10, 14] as const;
/** Days from a bed's first planting to its first weeding, and from one to the next. Source: common practice. */
const FIRST_DAYS = 35;
const EVERY_DAYS = 28;

function firstWeeding(growing: Growing): readonly Task[] {
  const up = upMilestone(growing);
  if (!growing.crop.slow || growing.planting.start !== "seed outdoors" || !reached(up)) return [];
  const [least, most] = SLOW_SEED_DAYS;
  return [
    plantingTask(growing, "weed", "first", {
      window: window(plus(up.usual, least), plus(up.usual, 12), plus(up.usual, most + 3)),
      harm: "this week",
      rhythm: "session",
      minutes: 20,
      title: { verb: "Weed between", object: objectOf(growing), where: "bed" },
      say: [
        how("By hand along the rows, holding the soil down round the seedlings; hoe only between."),
        why(
          "Slow seedlings lose to weeds in their first weeks. ",
          up.seen ? "Up on " : "Likely up about ",
          { day: up.usual },
          ".",
        ),
      ],
      because: () => [["Ten to fourteen days after it is up, ", { day: up.usual }, "."]],
      grounds: up.grounds,
      hangsOn: tasksBehind(growing, "start"),
    }),
  ];
}

/** The first weeding of slow seed, before anything else. */
export const WEED: Practice = { name: "weed", pass: "rest", tasks: firstWeeding };

/** First and last day that something grows in a bed this season; null where nothing does. */
function spanOf(garden: WholeGarden, bed: string | null): { from: Day; to: Day } | null {
  const season = seasonOf(garden.plan);
  const starts = garden.growings
    .filter((growing) => growing.planting.bed === bed && !growing.planting.without.includes("weed"))
    .flatMap((growing) => inPlace(growing) ?? [])
    .map((anchor) => anchor.day)
    .filter((day) => day > season.from);
  if (starts.length === 0) return null;
  return { from: earliest(...starts), to: garden.plan.site.firstFrost?.usual ?? season.to };
}

function bedTasks(garden: WholeGarden, bed: string | null): readonly Task[] {
  const span = spanOf(garden, bed);
  if (!span) return [];
  const starts = garden.growings.filter((growing) => growing.planting.bed === bed);
  const grounds = allGrounds(...starts.map((growing) => inPlace(growing)?.grounds ?? []), ["age"]);
  const tasks: Task[] = [];
  for (let number = 1; number <= 6; number++) {
    const due = plus(span.from, FIRST_DAYS + (number - 1) * EVERY_DAYS);
    if (due >= span.to) break;
    tasks.push(
      sharedTask(garden.plan.year, bed, "weed", String(number), {
        window: window(plus(due, -7), due, plus(due, 10), "earlier"),
        harm: "when you can",
        rhythm: "session",
        minutes: 20,
        title: { verb: "Weed", object: bedName(garden, bed), where: null },
        say: [
          how("Go through once with a hoe on a dry day; pull by hand close to the plants."),
          why("Small weeds die at a touch of the hoe; in a month they have roots and seed."),
        ],
        because: () => [
          [
            `Every ${EVERY_DAYS} days from five weeks after the first thing went in, `,
            { day: span.from },
            ".",
          ],
        ],
        grounds,
      }),
    );
  }
  return tasks;
}

function bedName(garden: WholeGarden, bed: string | null): string {
  return garden.plan.beds.find((each) => each.key === bed)?.name ?? "the beds";
}

function tasksOfBeds(garden: WholeGarden): readonly Task[] {
  const beds = garden.plan.beds.filter((bed) => !bed.bags).map((bed) => bed.key);
  return (beds.length > 0 ? beds : [null]).flatMap((bed) => bedTasks(garden, bed));
}

/** Weeding bed by bed, every few weeks while something grows there. */
export const WEED_BEDS: SharedPractice = { name: "weed", tasks: tasksOfBeds };

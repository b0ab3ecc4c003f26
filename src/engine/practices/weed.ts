import { type Day, earliest, plus } from "../../base/index.ts";
import { isTender } from "../../crops/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import { combineBasis } from "../growth/anchors.ts";
import { isReached } from "../growth/milestones.ts";
import { inPlace, type SowingContext } from "../growth/sowing-context.ts";
import { upMilestone } from "../growth/up.ts";
import { deed, verb } from "./deeds.ts";
import { definePractice, type WholeGarden } from "./practice.ts";
import { how, type Sentence, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, plantingTask, sharedTask, type TaskOf, window } from "./task.ts";

/** Days after slow seed is up until weeds would win. Source: common practice, ten to fourteen days. */
const SLOW_SEED_DAYS = [10, 14] as const;
/** Days from a bed's first planting to its first weeding, and from one to the next. Source: common practice. */
const FIRST_DAYS = 35;
const EVERY_DAYS = { bare: 28, mulched: 56 } as const;

/** Days that a bed may be weeded sooner, so that all beds of a fortnight are weeded on one day. Source: house rule. */
const EARLIER_DAYS = 13;

function firstWeeding(context: SowingContext): readonly TaskOf<"weed">[] {
  const up = upMilestone(context);
  if (!context.crop.slow || context.planting.start !== "seed outdoors" || !isReached(up)) return [];
  const [least, most] = SLOW_SEED_DAYS;
  return [
    plantingTask(context, "weed", "first", {
      window: window(plus(up.usual, least), plus(up.usual, 12), plus(up.usual, most + 3)),
      harm: "this week",
      rhythm: "session",
      minutes: 20,
      title: { verb: "Weed between", object: objectOf(context), where: "bed" },
      say: [
        how("By hand along the rows, holding the soil down round the seedlings; hoe only between."),
        why(
          "Slow seedlings lose to weeds in their first weeks. ",
          up.seen ? "Up on " : "Likely up about ",
          { day: up.usual },
          ".",
        ),
      ],
      because: [["Ten to fourteen days after it is up, ", { day: up.usual }, "."]],
      basis: up.basis,
      hangsOn: anchorTaskIds(context, "start"),
    }),
  ];
}

/** First and last day that something grows in a bed this season; null where nothing does. */
function spanOf(garden: WholeGarden, bed: string | null): { from: Day; to: Day } | null {
  const season = seasonOf(garden.plan);
  const starts = garden.contexts
    .filter((context) => context.planting.bed === bed && !context.planting.without.includes("weed"))
    .flatMap((context) => inPlace(context) ?? [])
    .map((anchor) => anchor.day)
    .filter((day) => day > season.from);
  if (starts.length === 0) return null;
  return { from: earliest(...starts), to: garden.plan.site.firstFrost?.usual ?? season.to };
}

function bedTasks(garden: WholeGarden, bed: string | null): readonly TaskOf<"weed">[] {
  const span = spanOf(garden, bed);
  if (!span) return [];
  const starts = garden.contexts.filter((context) => context.planting.bed === bed);
  const basis = combineBasis(...starts.map((context) => inPlace(context)?.basis ?? []), ["age"]);
  const mulch = garden.plan.beds.find(({ key }) => key === bed)?.mulch ?? null;
  const every = mulch === null ? EVERY_DAYS.bare : EVERY_DAYS.mulched;
  const tasks: TaskOf<"weed">[] = [];
  for (let number = 1; number <= 6; number++) {
    const due = plus(span.from, FIRST_DAYS + (number - 1) * every);
    if (due >= span.to) break;
    tasks.push(
      sharedTask(garden.plan.year, bed, "weed", String(number), {
        window: window(plus(due, -EARLIER_DAYS), due, plus(due, 10), "earlier"),
        round: "every other Saturday",
        harm: "when you can",
        rhythm: "session",
        minutes: 20,
        title: { verb: "Weed", object: bedName(garden, bed), where: null },
        say: weedingSentences(mulch, isUnderFilm(garden, bed)),
        because: [
          [
            `Every ${every} days from five weeks after the first thing went in, `,
            { day: span.from },
            ".",
          ],
        ],
        basis,
      }),
    );
  }
  return tasks;
}

/** Whether a bed lies under film for what is tender in it. */
function isUnderFilm({ plan, contexts }: WholeGarden, bed: string | null): boolean {
  const warmed = plan.beds.some(({ key, warmed: film }) => key === bed && film);
  return warmed && contexts.some(({ planting, crop }) => planting.bed === bed && isTender(crop));
}

function weedingSentences(mulch: string | null, film: boolean): readonly Sentence[] {
  if (film)
    return [
      how("Pull what comes up in the holes of the film and along its edges; hoe what lies bare."),
      why("What grows in a hole takes the plant's water, and lifts the film."),
    ];
  if (mulch !== null)
    return [
      how(`Pull the few weeds that come through the ${mulch}, and top it up where soil shows.`),
      why("A mulch keeps most weeds down, as long as it is thick."),
    ];
  return [
    how("Go through once with a hoe on a dry day; pull by hand close to the plants."),
    why("Small weeds die at a touch of the hoe; in a month they have roots and seed."),
  ];
}

function bedName(garden: WholeGarden, bed: string | null): string {
  return garden.plan.beds.find((each) => each.key === bed)?.name ?? "the beds";
}

function tasksOfBeds(garden: WholeGarden): readonly TaskOf<"weed">[] {
  const beds = garden.plan.beds.filter((bed) => !bed.bags).map((bed) => bed.key);
  return (beds.length > 0 ? beds : [null]).flatMap((bed) => bedTasks(garden, bed));
}

/** The first weeding of slow seed, before anything else; then bed by bed, every few weeks while something grows there. */
export const WEED = definePractice({
  name: "weed",
  past: { whole: "weeded" },
  words: ["weeding", "hoeing"],
  deeds: [
    deed([
      ...verb("weeded|hoed|hand-weeded", "weeded|hoed"),
      "(?:weeded|hoed) (?:between|among|around|along|through|round) …",
      "(?:did|done|finished) (?:the )?(?:weeding|hoeing) (?:of|in|on|for|round) …",
    ]),
    deed(
      [
        ...verb("weeded|hoed"),
        "(?:did|done|finished) (?:the )?(?:weeding|hoeing) (?:of|in|on) …",
        "weeded|hoed … through",
        "(?:weeded|hoed) through …",
      ],
      { about: "bed" },
    ),
  ],
  answers: { done: "Weeded today" },
  tasks: { rest: firstWeeding, shared: tasksOfBeds },
});

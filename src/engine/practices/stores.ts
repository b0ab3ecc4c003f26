import { type Day, earliest, joinFirst, latest, plus } from "../../base/index.ts";
import { isCured } from "../growth/ending.ts";
import { isReached } from "../growth/milestones.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { standsUntil } from "./care.ts";
import { deed } from "./deeds.ts";
import { definePractice, type WholeGarden } from "./practice.ts";
import { how, sign, why } from "./sentence.ts";
import { isMany, objectOf, sharedTask, type TaskOf, window } from "./task.ts";

/** Days after the usual first frost, or after the last was brought in where that is sooner, on which stores are looked through. Source: common practice, about monthly; house rule, twice. */
const LOOKS = [60, 120] as const;
/** Days that a look may wait. Source: house rule; one rotten bulb needs weeks to spoil a box. */
const MAY_WAIT_DAYS = 21;
/** So many crops are named, and one more rather than `and 1 more`. */
const NAMED = 5;

/** What a garden puts away for the winter: dried, or in sand. */
const storedOf = ({ contexts }: WholeGarden): readonly SowingContext[] =>
  contexts.filter(
    (context) => context.planting.known && (isCured(context) || standsUntil(context) !== null),
  );

/** Whether it is in before the first look: what is planted in autumn stands in its bed till summer. */
function isInBy(context: SowingContext, day: Day): boolean {
  const ripe = ripeMilestone(context);
  return !isReached(ripe) || ripe.usual <= day;
}

/** By name and each once, in the order of the names, since a plan's order is of no account. */
const namesOf = (stored: readonly SowingContext[]): readonly string[] =>
  [
    ...new Set(stored.map((context) => (isMany(context) ? objectOf(context) : context.crop.many))),
  ].sort();

/** The day from which the stores are full: the last is in, or the frost has come. */
function fullFrom(stored: readonly SowingContext[], frost: Day): Day {
  const days = stored.flatMap((context) => {
    if (!isCured(context)) return [frost];
    const ripe = ripeMilestone(context);
    return isReached(ripe) ? [ripe.usual] : [];
  });
  return days.length === 0 ? frost : earliest(frost, latest(...days));
}

/** Twice a winter, where something is stored; none where there is no frost to store for. */
function tasks(garden: WholeGarden): readonly TaskOf<"check the stores">[] {
  const frost = garden.plan.site.firstFrost;
  if (!frost) return [];
  const first = plus(frost.usual, LOOKS[0]);
  const stored = storedOf(garden).filter((context) => isInBy(context, first));
  const crops = namesOf(stored);
  if (crops.length === 0) return [];
  const full = fullFrom(stored, frost.usual);
  return LOOKS.map((days, i) => {
    const due = plus(full, days);
    return sharedTask(garden.plan.year, null, "check the stores", String(i + 1), {
      window: window(plus(due, -10), due, plus(due, MAY_WAIT_DAYS)),
      harm: "when you can",
      rhythm: "daily",
      minutes: 15,
      indoors: true,
      title: { verb: "Look through", object: "the stores", where: null },
      say: [
        how(
          `Turn over ${joinFirst(crops, crops.length === NAMED + 1 ? NAMED + 1 : NAMED)}. Take out what is soft, mouldy or sprouting, and use that first.`,
        ),
        sign("A sweet or sour smell, or a damp patch."),
        why("One that rots spoils those it touches."),
      ],
      because: [["Counted from when the stores are full, ", { day: full }, "."]],
      basis: ["first frost"],
    });
  });
}

/** What was put away for the winter, looked through while it lasts. */
export const CHECK_THE_STORES = definePractice({
  name: "check the stores",
  past: { whole: "looked through in its stores" },
  words: ["checking stores", "checking the stores"],
  deeds: [
    deed(
      ["(?:checked|looked through|went through|sorted) (?:the )?(?:stores|store|winter stores)"],
      {
        about: "garden",
      },
    ),
  ],
  tasks: { shared: tasks },
});

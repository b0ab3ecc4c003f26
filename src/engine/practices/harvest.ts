import { type Day, earliest, latest, plus } from "../../base/index.ts";
import type { Crop } from "../../crops/index.ts";
import { isLongEnough } from "../climate/sun.ts";
import { springAfter } from "../growth/autumn.ts";
import { lastHarvest } from "../growth/ending.ts";
import { isReached, middle, type ReachedMilestone } from "../growth/milestones.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import { mayRipen, takenUnripe } from "../growth/ripening.ts";
import { inPlace, type SowingContext } from "../growth/sowing-context.ts";
import { winterEndOf } from "../growth/through-winter.ts";
import { deed, verb } from "./deeds.ts";
import { ripeReasons } from "./growth-reasons.ts";
import { lastPicking } from "./last-picking.ts";
import { definePractice } from "./practice.ts";
import { caution, how, type Sentence, sign, why } from "./sentence.ts";
import {
  anchorTaskIds,
  objectOf,
  plantingTask,
  type TaskOf,
  taskIdBefore,
  window,
} from "./task.ts";

/** The kind of work that is picking again and again what would else grow out. */
export const PICKING = "picking";

const lifting = ({ crop }: SowingContext) => (crop.hilling ? ["lifting"] : []);

function harvestSentences({ harvest, overwinter }: Crop, reason: Sentence): readonly Sentence[] {
  const [least, most] = overwinter?.cureWeeks.value ?? [0, 0];
  return [
    how(harvest.how),
    ...(most > 0 ? [how(`Dry them ${least} to ${most} weeks in an airy, shady place.`)] : []),
    sign(harvest.sign),
    reason,
    ...(harvest.caution ? [caution(harvest.caution)] : []),
  ];
}

function first(context: SowingContext, ripe: ReachedMilestone): TaskOf<"harvest"> {
  const { harvest } = context.crop;
  const last = harvest.kind !== "again and again";
  const winterEnd = winterEndOf(context, ripe.usual);
  return plantingTask(context, "harvest", harvest.kind === "cut and come again" ? "cut-1" : "1", {
    window: window(ripe.early, ripe.usual, lastGood(context, ripe)),
    harm: "this week",
    rhythm: "session",
    minutes: 20,
    kinds: last ? lifting(context) : [PICKING],
    title: { verb: harvest.verb, object: objectOf(context), where: "bed" },
    say: harvestSentences(
      context.crop,
      ripe.seen
        ? why("You saw it ready on ", { day: ripe.usual }, ".")
        : why("Likely ready from about ", { day: ripe.early }, "."),
    ),
    because: ripeReasons(context),
    basis: ripe.basis,
    hangsOn: anchorTaskIds(context, "start", "set out"),
    sets:
      last && !winterEnd && (harvest.kind === "once" || cutsAfter(context, ripe).length === 0)
        ? { planting: context.planting.key, sowing: context.sowing, act: "end" }
        : null,
  });
}

/** The last day that does no harm: through the winter, or as long as it keeps, or may still come in a cold season, and no later than is worth it. */
function lastGood(context: SowingContext, ripe: ReachedMilestone): Day {
  const winter = winterEndOf(context, ripe.usual);
  if (winter) return latest(ripe.usual, winter.day);
  const keeps = Math.max(context.crop.harvest.holdsDays.value, ripe.late - ripe.usual);
  const end = lastHarvest(context, ripe.usual) ?? plus(ripe.usual, keeps);
  return earliest(plus(ripe.usual, keeps), latest(end, ripe.usual));
}

/** Cuts after the first, while they are still worth the knife; none in a winter outdoors, when hardly anything grows back. */
function cutsAfter(context: SowingContext, ripe: ReachedMilestone): readonly Day[] {
  const { cuts } = context.crop.harvest;
  if (!cuts || winterEndOf(context, ripe.usual)) return [];
  const times = context.planting.repeat ? cuts.times.value[0] : middle(cuts.times.value);
  const end = lastHarvest(context, ripe.usual);
  const every = middle(cuts.everyDays.value) * growsBack(context, ripe.usual);
  const spring = cutTillSpring(context, ripe);
  return Array.from({ length: times - 1 }, (_, i) => {
    const due = plus(ripe.usual, (i + 1) * every);
    return spring !== null && i === times - 2 ? latest(due, spring) : due;
  }).filter((due) => end === null || due <= end);
}

/** The spring in which what is cut through the winter is cut for the last time, before it bolts; null for all else. */
function cutTillSpring(context: SowingContext, ripe: ReachedMilestone): Day | null {
  const isSlow = growsBack(context, ripe.usual) > 1;
  const stands = winterEndOf(context, ripe.usual)?.by === "spring";
  return isSlow || stands ? springAfter(context, ripe.usual) : null;
}

/** How many times as long leaves take to grow back in days too short to grow. Source: house rule, twice. */
const SLOW = 2;

/** Under glass cuts through the winter lie farther apart. */
function growsBack({ climate }: SowingContext, first: Day): number {
  const { dayHours, underGlass } = climate;
  return underGlass && dayHours && !isLongEnough(dayHours, first) ? SLOW : 1;
}

function laterCuts(context: SowingContext, ripe: ReachedMilestone): readonly TaskOf<"harvest">[] {
  const { cuts, holdsDays, verb, how: method, sign: mark } = context.crop.harvest;
  if (!cuts) return [];
  const every = middle(cuts.everyDays.value) * growsBack(context, ripe.usual);
  const end = lastHarvest(context, ripe.usual);
  return cutsAfter(context, ripe).map((due, i, all) => {
    const last = i === all.length - 1;
    return plantingTask(context, "harvest", `cut-${i + 2}`, {
      window: window(
        plus(due, -4),
        due,
        earliest(plus(due, holdsDays.value), latest(due, end ?? plus(due, holdsDays.value))),
      ),
      harm: "when you can",
      rhythm: "session",
      minutes: 15,
      title: { verb: `${verb} … again`, object: objectOf(context), where: "bed" },
      say: [
        how(
          last
            ? "The last good cut: take all, and clear the row when it bolts or turns bitter."
            : method,
        ),
        sign(mark),
        due > ripe.usual + (i + 1) * every
          ? why("It stands the winter and grows again as the days lengthen.")
          : why(`About ${every} days after the cut before.`),
      ],
      because: [[`Every ${every} days from the first cut, about `, { day: ripe.usual }, "."]],
      basis: ripe.basis,
      hangsOn: taskIdBefore(context, "harvest", "cut-1"),
      after: taskIdBefore(context, "harvest", `cut-${i + 1}`),
      sets: last ? { planting: context.planting.key, sowing: context.sowing, act: "end" } : null,
    });
  });
}

/** How what is not full grown is brought in: tubers when their tops are dead, bulbs to dry under a roof, the rest as it is. */
function howUnripe({ crop }: SowingContext): string {
  if (crop.hilling)
    return "Once frost has blackened the tops, cut them down. Dig one to two weeks later on a dry day, and keep the tubers dark.";
  if (crop.bulbs)
    return "Lift all, tops standing or not, and dry them under a roof. Use thick necks first; only thin ones keep.";
  return "What there is may be small, and is good all the same. Clear the row.";
}

/** Why it is brought in unripe: certain only where the year's curve is. */
function whyUnripe({ climate, crop }: SowingContext): string {
  const grown = climate.rough ? "may not be full grown" : "is not full grown";
  return crop.hilling
    ? "Dead tops feed no more tubers, the skins set in those days, and frozen soil spoils what it holds."
    : `It ${grown} before winter ends it.`;
}

/** What does not get ready before winter, taken for what there is: roots, tubers and leaves are food before that. */
function unripe(context: SowingContext): readonly TaskOf<"harvest">[] {
  const { harvest } = context.crop;
  const began = inPlace(context)?.day ?? null;
  const end = began === null ? null : lastHarvest(context, began);
  const due = takenUnripe(context);
  if (began === null || end === null || due === null) return [];
  return [
    plantingTask(context, "harvest", harvest.kind === "cut and come again" ? "cut-1" : "1", {
      window: window(latest(began, plus(end, -14)), due, end, "earlier"),
      harm: "this week",
      rhythm: "session",
      minutes: 20,
      kinds: lifting(context),
      title: { verb: `${harvest.verb} what there is:`, object: objectOf(context), where: "bed" },
      say: [
        how(howUnripe(context)),
        why(whyUnripe(context)),
        ...(harvest.caution ? [caution(harvest.caution)] : []),
      ],
      because: [["Winter comes before it is ready; ", { day: end }, " is the last day worth it."]],
      basis: context.climate.rough ? ["first frost", "warmth"] : ["first frost"],
      hangsOn: anchorTaskIds(context, "start", "set out"),
      sets: { planting: context.planting.key, sowing: context.sowing, act: "end" },
    }),
  ];
}

function tasks(context: SowingContext): readonly TaskOf<"harvest">[] {
  const ripe = ripeMilestone(context);
  if (isReached(ripe) && mayRipen(context, ripe))
    return [
      first(context, ripe),
      ...laterCuts(context, ripe),
      ...lastPicking(context, ripe, cutsAfter(context, ripe).length > 0),
    ];
  return context.crop.perennial ? [] : unripe(context);
}

/** Bringing it in: once, again and again, or cut and come again. */
export const HARVEST = definePractice({
  name: "harvest",
  past: { whole: "picked", last: "picked for the last time and cleared" },
  words: ["harvesting", "picking", "cutting"],
  deeds: [
    deed(
      [
        "pulled|ripped|tore|yanked|dug … out|up",
        ...verb(
          "cleared(?: out| away)?|pulled out|ripped out|ripped up|grubbed out",
          "cleared(?: out| away)?|pulled out|ripped out|grubbed out|finished|finish|over|composted|on (?:the )?compost",
        ),
        "(?:stopped|finished) (?:cutting|picking|harvesting|pulling) …",
        "(?:dug|dug up|lifted|picked|cut|pulled|ate|had|harvested) (?:the )?(?:last|rest|remainder|last of|rest of|remainder of) …",
        "(?:the )?last (?:row|few|lot|bit) of … (?:up|out|dug|lifted|picked)",
        "(?:the )?(?:last|final) (?:cut of|pick of|picking of|pull of|cutting of|of) …",
      ],
      { step: "last" },
    ),
    deed([
      ...verb(
        "cut|picked|pulled up|pulled|lifted|dug up|dug|harvested|gathered|ate|shelled|hauled in",
        "cut|picked|pulled|lifted|dug up|dug|harvested|gathered",
      ),
      "picking …",
      "… coming (?:daily now|daily|thick and fast|out our ears|out of our ears)",
      "… (?:cropping(?: well)?|out of the ground)",
    ]),
  ],
  answers: { done: "Picked today", notYet: "Not ripe yet" },
  away: { neighbour: { help: "picking", may: ({ kinds }) => kinds.includes(PICKING) } },
  tasks: { rest: tasks },
});

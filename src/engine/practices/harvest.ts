import { type Day, earliest, latest, plus } from "../../base/days/day.ts";
import { isTender } from "../../crops/crops.ts";
import type { Crop, Perennial } from "../../crops/facts.ts";
import { overOn } from "../growth/bearing.ts";
import { lastHarvest } from "../growth/ending.ts";
import { type Growing, inPlace } from "../growth/growing.ts";
import { middle, type Reached, reached } from "../growth/milestones.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import { ripening } from "../growth/ripening.ts";
import { ripeTold } from "./growth-told.ts";
import type { Practice } from "./practice.ts";
import { caution, how, type Sentence, sign, why } from "./say.ts";
import { objectOf, plantingTask, stepBefore, type Task, tasksBehind, window } from "./task.ts";

/** The kind of work that is picking again and again what would else grow out. */
export const PICKING = "picking";

const lifting = ({ crop }: Growing) => (crop.hilling ? ["lifting"] : []);

function said({ harvest, overwinter }: Crop, reason: Sentence): readonly Sentence[] {
  const [least, most] = overwinter?.cureWeeks.value ?? [0, 0];
  return [
    how(harvest.how),
    ...(most > 0 ? [how(`Dry them ${least} to ${most} weeks in an airy, shady place.`)] : []),
    sign(harvest.sign),
    reason,
    ...(harvest.caution ? [caution(harvest.caution)] : []),
  ];
}

function first(growing: Growing, ripe: Reached): Task {
  const { harvest } = growing.crop;
  const last = harvest.kind !== "again and again";
  return plantingTask(growing, "harvest", harvest.kind === "cut and come again" ? "cut-1" : "1", {
    window: window(ripe.early, ripe.usual, lastGood(growing, ripe)),
    harm: "this week",
    rhythm: "session",
    minutes: 20,
    kinds: last ? lifting(growing) : [PICKING],
    title: { verb: harvest.verb, object: objectOf(growing), where: "bed" },
    say: said(
      growing.crop,
      ripe.seen
        ? why("You saw it ready on ", { day: ripe.usual }, ".")
        : why("Likely ready from about ", { day: ripe.early }, "."),
    ),
    because: () => ripeTold(growing),
    grounds: ripe.grounds,
    hangsOn: tasksBehind(growing, "start", "set out"),
    sets:
      last && (harvest.kind === "once" || cutsAfter(growing, ripe).length === 0)
        ? { planting: growing.planting.key, sowing: growing.sowing, act: "end" }
        : null,
  });
}

/** The last day that does no harm: as long as it keeps, or may still come in a cold season, and no later than is worth it. */
function lastGood(growing: Growing, ripe: Reached): Day {
  const keeps = Math.max(growing.crop.harvest.holdsDays.value, ripe.late - ripe.usual);
  const end = lastHarvest(growing, ripe.usual) ?? plus(ripe.usual, keeps);
  return earliest(plus(ripe.usual, keeps), latest(end, ripe.usual));
}

/** Cuts after the first, while they are still worth the knife. */
function cutsAfter(growing: Growing, ripe: Reached): readonly Day[] {
  const { cuts } = growing.crop.harvest;
  if (!cuts) return [];
  const times = growing.planting.repeat ? cuts.times.value[0] : middle(cuts.times.value);
  const end = lastHarvest(growing, ripe.usual);
  return Array.from({ length: times - 1 }, (_, i) =>
    plus(ripe.usual, (i + 1) * middle(cuts.everyDays.value)),
  ).filter((due) => end === null || due <= end);
}

function laterCuts(growing: Growing, ripe: Reached): readonly Task[] {
  const { cuts, holdsDays, verb, how: method, sign: mark } = growing.crop.harvest;
  if (!cuts) return [];
  const every = middle(cuts.everyDays.value);
  const end = lastHarvest(growing, ripe.usual);
  return cutsAfter(growing, ripe).map((due, i, all) => {
    const last = i === all.length - 1;
    return plantingTask(growing, "harvest", `cut-${i + 2}`, {
      window: window(
        plus(due, -4),
        due,
        earliest(plus(due, holdsDays.value), latest(due, end ?? plus(due, holdsDays.value))),
      ),
      harm: "when you can",
      rhythm: "session",
      minutes: 15,
      title: { verb: `${verb} again:`, object: objectOf(growing), where: "bed" },
      say: [
        how(
          last
            ? "The last good cut: take all, and clear the row when it bolts or turns bitter."
            : method,
        ),
        sign(mark),
        why(`About ${every} days after the cut before.`),
      ],
      because: () => [[`Every ${every} days from the first cut, about `, { day: ripe.usual }, "."]],
      grounds: ripe.grounds,
      hangsOn: stepBefore(growing, "harvest", "cut-1"),
      after: stepBefore(growing, "harvest", `cut-${i + 1}`),
      sets: last ? { planting: growing.planting.key, sowing: growing.sowing, act: "end" } : null,
    });
  });
}

/** The last picking of what bears for some weeks and not till frost: it frees its place. */
function lastPicking(growing: Growing, ripe: Reached): readonly Task[] {
  if (growing.crop.perennial) return lastOfTheYear(growing, ripe, growing.crop.perennial);
  const { bearsDays, verb } = growing.crop.harvest;
  const due = overOn(growing);
  if (bearsDays === null || due === null) return [];
  const [least, most] = bearsDays.value;
  return [
    plantingTask(growing, "harvest", "last", {
      window: window(plus(ripe.usual, least), due, plus(due, 14)),
      harm: "when you can",
      rhythm: "session",
      minutes: 15,
      title: { verb: `${verb} the last`, object: objectOf(growing), where: "bed" },
      say: [
        how("Take what is left and clear the plants; the place is free."),
        sign("New flowers and pods grow few and small."),
        why(`It bears for about ${Math.round(most / 7)} weeks.`),
      ],
      because: () => [
        [`It bears for ${most} days from its first harvest, `, { day: ripe.usual }, "."],
      ],
      grounds: ripe.grounds,
      after: stepBefore(growing, "harvest", "1"),
      hangsOn: stepBefore(growing, "harvest", "1"),
      sets: { planting: growing.planting.key, sowing: growing.sowing, act: "end" },
    }),
  ];
}

/** What stands for years is left to grow again after some weeks of cutting; that ends nothing. */
function lastOfTheYear(
  growing: Growing,
  ripe: Reached,
  { harvestWeeks }: Perennial,
): readonly Task[] {
  const [least, most] = harvestWeeks.value;
  return [
    plantingTask(growing, "harvest", "last", {
      window: window(
        plus(ripe.usual, 7 * least),
        plus(ripe.usual, 7 * most),
        plus(ripe.usual, 7 * most + 7),
        "earlier",
      ),
      harm: "when you can",
      rhythm: "session",
      minutes: 10,
      title: {
        verb: `${growing.crop.harvest.verb} the last`,
        object: objectOf(growing),
        where: "bed",
      },
      say: [
        how("Leave what comes from now on to grow."),
        sign("What comes is thinner and smaller than in the first weeks."),
        why(`After ${least} to ${most} weeks the roots need the rest of the summer.`),
      ],
      because: () => [["Counted from the first harvest, about ", { day: ripe.usual }, "."]],
      grounds: ripe.grounds,
      after: stepBefore(growing, "harvest", "1"),
      hangsOn: stepBefore(growing, "harvest", "1"),
    }),
  ];
}

/** What does not get ready before winter, taken for what there is: roots, tubers and leaves are food before that. */
function unripe(growing: Growing): readonly Task[] {
  const { harvest } = growing.crop;
  const began = inPlace(growing)?.day ?? null;
  const end = began === null ? null : lastHarvest(growing, began);
  if (began === null || end === null || isTender(growing.crop) || end <= began) return [];
  return [
    plantingTask(growing, "harvest", harvest.kind === "cut and come again" ? "cut-1" : "1", {
      window: window(latest(began, plus(end, -14)), latest(began, plus(end, -7)), end, "earlier"),
      harm: "this week",
      rhythm: "session",
      minutes: 20,
      kinds: lifting(growing),
      title: { verb: `${harvest.verb} what there is:`, object: objectOf(growing), where: "bed" },
      say: [
        how("It is smaller than it might be, and good all the same. Clear the row."),
        why("It is not full grown before winter ends it."),
        ...(harvest.caution ? [caution(harvest.caution)] : []),
      ],
      because: () => [
        ["Winter comes before it is ready; ", { day: end }, " is the last day worth it."],
      ],
      grounds: ["first frost"],
      hangsOn: tasksBehind(growing, "start", "set out"),
      sets: { planting: growing.planting.key, sowing: growing.sowing, act: "end" },
    }),
  ];
}

function tasks(growing: Growing): readonly Task[] {
  const ripe = ripeMilestone(growing);
  if (reached(ripe) && (ripe.seen || ripening(growing).ripens))
    return [first(growing, ripe), ...laterCuts(growing, ripe), ...lastPicking(growing, ripe)];
  return growing.crop.perennial ? [] : unripe(growing);
}

/** Bringing it in: once, again and again, or cut and come again. */
export const HARVEST: Practice = { name: "harvest", pass: "rest", tasks };

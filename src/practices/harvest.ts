import type { Crop } from "../crops/facts.ts";
import { plus } from "../days/day.ts";
import type { Growing } from "../growth/growing.ts";
import { type Milestone, middle, reached } from "../growth/milestones.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import { ripeTold } from "./growth-told.ts";
import type { Practice } from "./practice.ts";
import { caution, how, type Sentence, sign, why } from "./say.ts";
import { objectOf, plantingTask, stepBefore, type Task, tasksBehind, window } from "./task.ts";

type Ripe = Exclude<Milestone, { readonly none: string }>;

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

function first(growing: Growing, ripe: Ripe): Task {
  const { harvest } = growing.crop;
  const last = harvest.kind !== "again and again";
  return plantingTask(growing, "harvest", harvest.kind === "cut and come again" ? "cut-1" : "1", {
    window: window(
      ripe.early,
      ripe.usual,
      plus(ripe.usual, Math.max(harvest.holdsDays.value, ripe.late - ripe.usual)),
    ),
    harm: "this week",
    rhythm: "session",
    minutes: 20,
    kinds: growing.crop.hilling ? ["lifting"] : [],
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
      last && harvest.kind === "once"
        ? { planting: growing.planting.key, sowing: growing.sowing, act: "end" }
        : null,
  });
}

function laterCuts(growing: Growing, ripe: Ripe): readonly Task[] {
  const { cuts, holdsDays, verb, how: method, sign: mark } = growing.crop.harvest;
  if (!cuts) return [];
  const times = growing.planting.repeat ? cuts.times.value[0] : middle(cuts.times.value);
  const every = middle(cuts.everyDays.value);
  return Array.from({ length: times - 1 }, (_, i) => {
    const due = plus(ripe.usual, (i + 1) * every);
    const last = i === times - 2;
    return plantingTask(growing, "harvest", `cut-${i + 2}`, {
      window: window(plus(due, -4), due, plus(due, holdsDays.value)),
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

function tasks(growing: Growing): readonly Task[] {
  const ripe = ripeMilestone(growing);
  return reached(ripe) ? [first(growing, ripe), ...laterCuts(growing, ripe)] : [];
}

/** Bringing it in: once, again and again, or cut and come again. */
export const HARVEST: Practice = { name: "harvest", pass: "rest", tasks };

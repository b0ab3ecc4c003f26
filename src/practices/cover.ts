import type { CoverFacts, Pest } from "../crops/facts.ts";
import { type Day, earliest, plus } from "../days/day.ts";
import { flowerMilestone } from "../growth/flower.ts";
import { type Growing, inPlace } from "../growth/growing.ts";
import { type Milestone, middle, onDay, type Reached, reached } from "../growth/milestones.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import { upMilestone } from "../growth/up.ts";
import { isRaised } from "../plan/begin.ts";
import type { Practice } from "./practice.ts";
import { sowingNumbers } from "./repeat.ts";
import { how, sign, why } from "./say.ts";
import { objectOf, plantingTask, type Task, tasksBehind, window } from "./task.ts";

/** Days past its span that a cover may stay where no bee must come under it. Source: house rule. */
const MAY_STAY_DAYS = 10;

/** What it keeps off, and why on that day. */
const PESTS: Readonly<Record<Pest, string>> = {
  birds: "Birds pull seedlings as they come.",
  "leaf miners": "Flies lay on the first leaves.",
  "cabbage pests": "White butterflies and root flies find them within the day.",
  "flea beetles": "Small beetles riddle the first leaves.",
  "carrot fly": "The fly lays at the roots as the leaves come.",
  "cucumber beetles": "Striped beetles bring wilt to young plants.",
  "onion fly": "The fly lays at the neck in spring.",
};

/** A cover the plan asks for over a crop that the facts give none: on as it goes into its place, off when the gardener likes. */
function askedFor(growing: Growing): readonly Task[] {
  const { under } = growing.planting;
  const placed = inPlace(growing);
  const thing = under.includes("net") ? "net" : under.includes("fabric") ? "fabric" : null;
  if (thing === null || !placed || growing.sowing > 1 || growing.planting.inSince !== null)
    return [];
  return [
    plantingTask(growing, "cover", "on", {
      window: window(placed.day, placed.day, plus(placed.day, 3), "earlier"),
      harm: "this week",
      rhythm: "session",
      minutes: 10,
      title: titleOf(growing, thing, "over"),
      say: [
        how("On hoops, clear of the leaves, its edges pegged or weighed down all round."),
        why("The plan asks for it, and it goes on the day they go in."),
      ],
      because: () => [["As it goes into its place, ", { day: placed.day }, "."]],
      grounds: placed.grounds,
      needs: [thingsFor(thing)],
      hangsOn: tasksBehind(growing, "start", "set out"),
    }),
  ];
}

const titleOf = (growing: Growing, thing: CoverFacts["with"], end: "over" | "off") => ({
  verb: `${thing === "net" ? "Net" : "Fabric"} ${end}`,
  object: objectOf(growing),
  where: "bed",
});

/** What a cover needs, as a list of things is read. */
export function thingsFor(cover: CoverFacts["with"]): string {
  return cover === "net" ? "a net, hoops and pegs" : "fabric, hoops and pegs";
}

/** The day it goes on: with the plants, or as seed comes up. */
function onOf(growing: Growing, facts: CoverFacts): Reached | null {
  const placed = inPlace(growing);
  if (!placed) return null;
  if (facts.on === "in place" || isRaised(growing.planting.start))
    return onDay(placed.day, placed.grounds);
  const up = upMilestone(growing);
  return reached(up) ? up : null;
}

/** The stage from which its end is counted, for one sowing. */
function offStage(growing: Growing, facts: CoverFacts): Milestone {
  if (facts.off === "flower") return flowerMilestone(growing);
  if (facts.off === "first harvest") return ripeMilestone(growing);
  const placed = inPlace(growing);
  const raised = isRaised(growing.planting.start) && placed;
  return raised ? onDay(placed.day, placed.grounds) : upMilestone(growing);
}

/** The last sowing under the cover that has such a day, `first` where it is the only one. */
function lastUnder(first: Growing, facts: CoverFacts): { growing: Growing; stage: Reached } | null {
  for (const sowing of [...sowingNumbers(first)].reverse()) {
    const growing = sowing === first.sowing ? first : { ...first, sowing };
    const stage = offStage(growing, facts);
    if (reached(stage)) return { growing, stage };
  }
  return null;
}

function covering(growing: Growing, facts: CoverFacts, on: Reached): Task {
  const raised = facts.on === "in place" || isRaised(growing.planting.start);
  return plantingTask(growing, "cover", "on", {
    window: window(
      raised ? on.usual : plus(on.early, -1),
      on.usual,
      plus(on.usual, raised ? 1 : 4),
      "earlier",
    ),
    harm: "this week",
    rhythm: "session",
    minutes: 10,
    title: titleOf(growing, facts.with, "over"),
    say: [
      how(
        facts.with === "net"
          ? "A fine net on hoops, clear of the leaves, its edges pegged or weighed down all round."
          : "Light fabric on hoops, loose enough to grow under, its edges buried all round.",
      ),
      sign(raised ? "They are in: close it the same hour." : "The first seedlings show."),
      why(PESTS[facts.against]),
    ],
    because: () => [
      [raised ? "As they go in, " : "Counted from when it is up, ", { day: on.usual }, "."],
    ],
    grounds: on.grounds,
    needs: [thingsFor(facts.with)],
    hangsOn: tasksBehind(growing, "start", "set out"),
  });
}

/** What wants bees is opened as its flowers open, and never later. */
function uncovering(growing: Growing, facts: CoverFacts, after: Task): readonly Task[] {
  const last = lastUnder(growing, facts);
  if (last === null) return [];
  const { stage } = last;
  const [least, most] = facts.offDays.value;
  const bees = growing.crop.flowers?.forBees === true;
  const day = (days: number): Day => plus(stage.usual, days);
  const due = day(bees ? Math.min(0, middle([least, most])) : middle([least, most]));
  return [
    plantingTask(growing, "cover", "off", {
      window: bees
        ? window(earliest(stage.early, due), due, plus(due, 2), "earlier")
        : window(day(least), due, day(most + MAY_STAY_DAYS)),
      harm: bees ? "this week" : "when you can",
      rhythm: "session",
      minutes: 5,
      title: titleOf(growing, facts.with, "off"),
      say: [
        how(`Take the ${facts.with} off, shake it out and dry it before it is put away.`),
        sign(facts.offSign),
        why(
          bees
            ? "Bees must reach the flowers, or there is no fruit."
            : "They have outgrown what it was for.",
        ),
      ],
      because: () => [["Counted from the last of it, ", { day: stage.usual }, "."]],
      grounds: stage.grounds,
      after: [after.id],
      hangsOn: tasksBehind(last.growing, "start", "set out"),
    }),
  ];
}

function tasks(growing: Growing): readonly Task[] {
  const [facts] = growing.crop.covers;
  if (!facts) return askedFor(growing);
  const on = onOf(growing, facts);
  if (growing.sowing > 1 || growing.planting.inSince !== null || on === null) return [];
  const task = covering(growing, facts, on);
  return [task, ...uncovering(growing, facts, task)];
}

/** Covers on and off by the plant's stage: on over the first sowing, off when the last of them no longer needs it. */
export const COVER: Practice = { name: "cover", pass: "rest", tasks };

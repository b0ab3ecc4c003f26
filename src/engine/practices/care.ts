import { type Day, plus } from "../../base/days/day.ts";
import { degreesC } from "../../base/quantities/quantity.ts";
import type { Care, CarePractice, Said } from "../../crops/facts.ts";
import { saySource } from "../../crops/figures.ts";
import { flowerMilestone } from "../growth/flower.ts";
import { type Growing, inPlace } from "../growth/growing.ts";
import { type Milestone, middle, onDay, type Reached, reached } from "../growth/milestones.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import { upMilestone } from "../growth/up.ts";
import type { Practice } from "./practice.ts";
import { caution, how, lengths, type Piece, sign, why } from "./say.ts";
import { objectOf, plantingTask, type Task, tasksBehind, window } from "./task.ts";

/** Days past its span that a job may wait, by what is lost. Source: house rule. */
const MAY_WAIT_DAYS = { "this week": 4, "when you can": 10 } as const;

/** The stage a job is counted from; none where the planting does not reach it. */
function stageOf(growing: Growing, from: Care["from"]): Milestone {
  const { lastFrost, firstFrost } = growing.plan.site;
  const on = (day: Day | undefined, ground: "last frost" | "first frost"): Milestone =>
    day === undefined ? { none: "there is no frost" } : onDay(day, [ground]);
  switch (from) {
    case "in place": {
      const placed = inPlace(growing);
      return placed && growing.planting.inSince === null
        ? onDay(placed.day, placed.grounds)
        : { none: "it is not in its place this season" };
    }
    case "up":
      return upMilestone(growing);
    case "flower":
      return flowerMilestone(growing);
    case "first harvest":
      return ripeMilestone(growing);
    case "last frost":
      return on(lastFrost?.usual, "last frost");
    case "first frost":
      return on(firstFrost?.usual, "first frost");
  }
}

/** A crop fact's text as a sentence's pieces; its lengths [cm] and temperatures [°C] get the household's units later. */
export function piecesOf(said: Said): readonly Piece[] {
  if (typeof said === "string") return [said];
  return said.map((piece) => {
    if (typeof piece === "string") return piece;
    return "cm" in piece ? lengths(piece.cm) : { quantity: degreesC(piece.tempC) };
  });
}

/** What a crop's own list has under a practice, each once, on the first sowing; none before it is in its place. */
export function careTasks(growing: Growing, practice: CarePractice): readonly Task[] {
  if (growing.sowing > 1) return [];
  const wanted = growing.crop.care.filter((care) => care.practice === practice);
  const placed = wanted.length === 0 ? null : inPlace(growing);
  if (!placed) return [];
  return wanted.flatMap((care) => {
    const stage = stageOf(growing, care.from);
    if (!reached(stage)) return [];
    const due = plus(stage.usual, middle(care.days.value));
    return due < placed.day ? [] : [careTask(growing, care, stage)];
  });
}

function careTask(growing: Growing, care: Care, stage: Reached): Task {
  const [least, most] = care.days.value;
  const day = (days: number) => plus(stage.usual, days);
  return plantingTask(growing, care.practice, care.step, {
    window: window(day(least), day(middle(care.days.value)), day(most + MAY_WAIT_DAYS[care.harm])),
    harm: care.harm,
    rhythm: "session",
    minutes: care.minutes,
    title: { verb: care.verb, object: objectOf(growing), where: "bed" },
    say: [
      how(...piecesOf(care.how)),
      ...(care.sign === null ? [] : [sign(...piecesOf(care.sign))]),
      why(...piecesOf(care.why)),
      ...(care.caution === null ? [] : [caution(...piecesOf(care.caution))]),
    ],
    because: () => [
      [`Counted from ${STAGES[care.from]}, `, { day: stage.usual }, "."],
      [`${saySource(care.days.source)}.`],
    ],
    grounds: stage.grounds,
    needs: care.needs,
    hangsOn: tasksBehind(growing, "start", "set out"),
  });
}

const STAGES: Readonly<Record<Care["from"], string>> = {
  "in place": "the day it is in its place",
  up: "when it is up",
  flower: "its first flowers",
  "first harvest": "its first harvest",
  "last frost": "the usual last frost",
  "first frost": "the usual first frost",
};

const NAMES: readonly CarePractice[] = [
  "feed",
  "stake and train",
  "stop the tops",
  "fill in and blanch",
  "scout",
  "cure and store",
  "yearly",
];

/** The practices whose jobs stand in each crop's own list, one under each name. */
export const CARE: readonly Practice[] = NAMES.map((name) => ({
  name,
  pass: "rest",
  tasks: (growing) => careTasks(growing, name),
}));

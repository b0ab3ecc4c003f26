import { cropFor } from "../../crops/index.ts";
import type { DiaryLine, Planting } from "../model/plan.ts";
import { type DiaryContext, inEach, note, observed } from "./clause.ts";
import type { Observation, ObservedStage } from "./observation.ts";
import { FIRST_FRUIT, STAGE_PHRASES, TOPS_FALL } from "./stages.ts";
import { mayStand, subjectOf } from "./subjects.ts";

/** The stages that were seen, by the first phrase that fits; a note where it fits no planting, null where no phrase does. */
export function stagesIn(
  line: DiaryLine,
  text: string,
  { plans }: DiaryContext,
): readonly Observation[] | null {
  let nearly: readonly Observation[] | null = null;
  for (const { pattern, stage } of STAGE_PHRASES) {
    const name = pattern.exec(text)?.groups?.subject;
    if (name === undefined) continue;
    const observations = inEach(name, (one) => seen(line, one, stage, plans));
    if (observed(observations)) return observations;
    nearly ??= observations;
  }
  return nearly ?? bulbsIn(line, text, plans) ?? firstFruitIn(line, text, plans);
}

function seen(
  line: DiaryLine,
  name: string,
  stage: ObservedStage,
  plans: DiaryContext["plans"],
): Observation {
  const canBe = (planting: Planting) => mayStand(planting, line.day);
  const subject = subjectOf(name, { day: line.day, canBe }, plans);
  if ("why" in subject) return note(line, subject.why);
  const { planting, sowing } = subject;
  return { kind: "seen", day: line.day, planting: planting.key, stage, sowing };
}

/** Crops whose tops fall when they are ripe. */
const BULBS: readonly string[] = ["onion", "shallot"];

function bulbsIn(
  line: DiaryLine,
  text: string,
  plans: DiaryContext["plans"],
): readonly Observation[] | null {
  const name = TOPS_FALL.exec(text)?.groups?.subject;
  if (name === undefined) return null;
  const subject = subjectOf(name, { day: line.day }, plans);
  if ("why" in subject || !BULBS.includes(subject.planting.crop)) return null;
  const { planting, sowing } = subject;
  return [{ kind: "seen", day: line.day, planting: planting.key, stage: "first ripe", sowing }];
}

/** `First tomato`: one fruit of a crop that is eaten for it, or what is cut of one that stands for years. Of others it could be shoots. */
function firstFruitIn(
  line: DiaryLine,
  text: string,
  plans: DiaryContext["plans"],
): readonly Observation[] | null {
  const name = FIRST_FRUIT.exec(text)?.groups?.subject;
  if (name === undefined) return null;
  const subject = subjectOf(name, { day: line.day }, plans);
  if ("why" in subject) return null;
  const crop = cropFor(subject.planting);
  const isOneFruit = crop?.eaten === "fruit" && !name.endsWith("s");
  if (!isOneFruit && !crop?.perennial) return null;
  const { planting, sowing } = subject;
  return [{ kind: "seen", day: line.day, planting: planting.key, stage: "first ripe", sowing }];
}

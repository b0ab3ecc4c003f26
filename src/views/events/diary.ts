import { type Day, sayDay } from "../../base/index.ts";
import { PRACTICES } from "../../engine/index.ts";
import {
  type Observation,
  orphansIn,
  parseDiaryLines,
  resolveConflicts,
  sayOrphan,
} from "../../garden/index.ts";
import type { DiaryLine, Plan } from "../../garden/model/index.ts";
import { sayObservation } from "./diary-sentences.ts";

/** A line of the diary and its observations, each with a remark where it is no longer valid or can't be right. */
export type DiaryLineReport = {
  readonly line: DiaryLine;
  readonly observations: readonly ObservationReport[];
};

/** One observation of a line, in the plan's own names, with a remark. */
export type ObservationReport = { readonly text: string; readonly remarks: readonly string[] };

/** Every line of a garden's diaries in the order they are written, as of a day. `plans` are all its years. */
export function reportDiary(plans: readonly Plan[], today: Day): readonly DiaryLineReport[] {
  const readings = parseDiaryLines(plans, PRACTICES);
  const { remarks } = resolveConflicts(
    readings.flatMap(({ observations }) => observations),
    plans,
    PRACTICES,
  );
  const said = new Map<Observation, string[]>();
  for (const { observation, is } of remarks)
    said.set(observation, [...(said.get(observation) ?? []), is]);
  const lines = readings.map(({ line }) => line);
  const orphans = new Map(orphansIn(lines, plans).map((each) => [each.key, sayOrphan(each)]));
  const orphaned = (observation: Observation) =>
    ("planting" in observation ? orphans.get(observation.planting) : undefined) ?? [];
  const remarksOn = (observation: Observation) => [
    ...(said.get(observation) ?? []),
    ...[orphaned(observation)].flat(),
    ...(observation.day > today ? ["its day is still to come"] : []),
  ];
  return readings.map(({ line, observations }) => ({
    line,
    observations: observations.map((observation) => ({
      text: sayOnDay(observation, line.day, plans),
      remarks: remarksOn(observation),
    })),
  }));
}

/** The observation as a sentence, with its day where the line speaks of another than its own. */
function sayOnDay(observation: Observation, day: Day, plans: readonly Plan[]): string {
  const sentence = sayObservation(observation, plans);
  return observation.day === day ? sentence : `${sentence}, on ${sayDay(observation.day)}`;
}

import { type Day, sayDay, sayQuantity } from "../../base/index.ts";
import { PRACTICES } from "../../engine/index.ts";
import {
  type Observation,
  orphansIn,
  parseDiaryLines,
  resolveConflicts,
  sayOrphan,
  sayPlanting,
} from "../../garden/index.ts";
import type { DiaryLine, Plan } from "../../garden/model/index.ts";

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
    ...(observation.day > today ? ["is dated a day still to come"] : []),
  ];
  return readings.map(({ line, observations }) => ({
    line,
    observations: observations.map((observation) => ({
      text: sayObservation(observation, plans),
      remarks: remarksOn(observation),
    })),
  }));
}

/** `Carrots: up`, in the plan's own names. */
function sayObservation(observation: Observation, plans: readonly Plan[]): string {
  const plantingName = (key: string) => {
    const planting = plans.flatMap(({ plantings }) => plantings).find((each) => each.key === key);
    const [, bed] = /^\d{4}\/bed\/(.+)$/.exec(key) ?? [];
    if (planting) return sayPlanting(planting);
    return bed === undefined ? key.replace(/^\d{4}\/garden$/, "the garden") : bedName(bed);
  };
  const bedName = (key: string) =>
    plans.flatMap(({ beds }) => beds).find((each) => each.key === key)?.name ?? key;
  const nth = (sowing: number | null) => (sowing === null ? "" : `, sowing ${sowing}`);
  const job = (practice: string, step: string | null) =>
    step === null || /^\d+$/.test(step) ? practice : `${practice} (${step})`;
  switch (observation.kind) {
    case "done": {
      const by = plans
        .flatMap(({ people }) => people)
        .find(({ key }) => key === observation.by)?.name;
      return `done: ${job(observation.practice, observation.step)}, ${plantingName(observation.planting)}${by ? `, by ${by}` : ""}`;
    }
    case "seen":
      return `seen: ${plantingName(observation.planting)} ${observation.stage}${nth(observation.sowing)}`;
    case "not yet":
      return `not yet: ${plantingName(observation.planting)}, ${"stage" in observation.of ? (observation.of.stage === "anything" ? "no sign yet" : observation.of.stage) : job(observation.of.practice, observation.of.step)}${nth(observation.sowing)}${observation.until === undefined ? "" : ` until ${sayDay(observation.until)}`}`;
    case "left":
      return `left this year: ${observation.practice}, ${plantingName(observation.planting)}`;
    case "failed":
      return `failed, to be begun again: ${plantingName(observation.planting)}${nth(observation.sowing)}`;
    case "lost":
      return `lost: ${plantingName(observation.planting)}${nth(observation.sowing)}`;
    case "moved":
      return `moved: ${plantingName(observation.planting)} to ${bedName(observation.bed)}`;
    case "bought":
      return `bought as plants: ${plantingName(observation.planting)}`;
    case "measured":
      return sayMeasured(observation, plans, { plantingName, bedName });
    case "undone":
      return `taken back: ${sayObservation(observation.what, plans)}`;
    case "note":
      return observation.why === null
        ? "kept as a note"
        : `kept as a note, since ${observation.why}`;
  }
}

type NameLookup = {
  readonly plantingName: (key: string) => string;
  readonly bedName: (key: string) => string;
};

function sayMeasured(
  observation: Extract<Observation, { readonly kind: "measured" }>,
  plans: readonly Plan[],
  { plantingName, bedName }: NameLookup,
): string {
  const value = sayQuantity(observation.value, plans[plans.length - 1]?.measures ?? "metric");
  if (observation.what === "height")
    return `measured: ${plantingName(observation.planting)} ${value} tall`;
  const where = observation.bed === null ? "" : ` in ${bedName(observation.bed)}`;
  return `measured: ${observation.what}${where} ${value}`;
}

import { capital, sayDay, sayQuantity } from "../../base/index.ts";
import { PRACTICES } from "../../engine/index.ts";
import {
  type NotYet,
  type Observation,
  type ObservedStage,
  sayPlanting,
} from "../../garden/index.ts";
import type { Plan } from "../../garden/model/index.ts";

const STAGE: Readonly<Record<ObservedStage, string>> = {
  up: "up",
  flower: "in flower",
  "first ripe": "ripe",
};

/** What a diary line was understood to say, as a sentence in the plan's own names, without a full stop: `Carrot is up`. */
export function sayObservation(observation: Observation, plans: readonly Plan[]): string {
  return capital(sentenceOf(observation, plans));
}

function sentenceOf(observation: Observation, plans: readonly Plan[]): string {
  switch (observation.kind) {
    case "done":
      return `${subjectOf(observation.planting, plans)} is ${pastOf(observation)}${byWhom(observation.by, plans)}`;
    case "seen":
      return `${sowingOf(observation, plans)} is ${STAGE[observation.stage]}`;
    case "not yet":
      return sayNotYet(observation, plans);
    case "left":
      return `${subjectOf(observation.planting, plans)} is left this year without being ${pastOf({ ...observation, step: null })}`;
    case "failed":
      return `${sowingOf(observation, plans)} came to nothing and is begun again`;
    case "lost":
      return `${sowingOf(observation, plans)} is gone, and its place is free`;
    case "moved":
      return `${subjectOf(observation.planting, plans)} stands in ${bedName(observation.bed, plans)} from now on`;
    case "bought":
      return `${subjectOf(observation.planting, plans)} was bought as plants, so none is raised`;
    case "measured":
      return sayMeasured(observation, plans);
    case "undone":
      return `taken back: ${sentenceOf(observation.what, plans)}`;
    case "note":
      return observation.why === null
        ? "kept as a note"
        : `kept as a note, since ${observation.why}`;
  }
}

type Observed<Kind extends Observation["kind"]> = Extract<Observation, { readonly kind: Kind }>;

function sayNotYet(observation: Observed<"not yet">, plans: readonly Plan[]): string {
  const name = sowingOf(observation, plans);
  if (observation.partly && "practice" in observation.of)
    return `${name} is ${pastOf(observation.of)} in part, and the rest stays open`;
  const until =
    observation.until === undefined ? "" : ` and put off until ${sayDay(observation.until)}`;
  return `${name} is not ${missing(observation.of)} yet${until}`;
}

function missing(of: NotYet): string {
  if ("practice" in of) return pastOf(of);
  return of.stage === "anything" ? "ready" : STAGE[of.stage];
}

function pastOf({
  practice,
  step,
}: {
  readonly practice: string;
  readonly step: string | null;
}): string {
  const past = PRACTICES.find(({ name }) => name === practice)?.past ?? { whole: practice };
  return past[step ?? "whole"] ?? past.whole;
}

function byWhom(by: string | null, plans: readonly Plan[]): string {
  const name = plans.flatMap(({ people }) => people).find(({ key }) => key === by)?.name;
  return name === undefined ? "" : ` by ${name}`;
}

function sowingOf(
  { planting, sowing }: { readonly planting: string; readonly sowing: number | null },
  plans: readonly Plan[],
): string {
  const name = subjectOf(planting, plans);
  return sowing === null ? name : `${name}, sowing ${sowing},`;
}

/** The name of a planting, a bed or the garden by its key. */
function subjectOf(key: string, plans: readonly Plan[]): string {
  const planting = plans.flatMap(({ plantings }) => plantings).find((each) => each.key === key);
  if (planting) return sayPlanting(planting);
  const [, bed] = /^\d{4}\/bed\/(.+)$/.exec(key) ?? [];
  return bed === undefined ? key.replace(/^\d{4}\/garden$/, "the garden") : bedName(bed, plans);
}

function bedName(key: string, plans: readonly Plan[]): string {
  return plans.flatMap(({ beds }) => beds).find((each) => each.key === key)?.name ?? key;
}

function sayMeasured(observation: Observed<"measured">, plans: readonly Plan[]): string {
  const value = sayQuantity(observation.value, plans[plans.length - 1]?.measures ?? "metric");
  switch (observation.what) {
    case "height":
      return `${subjectOf(observation.planting, plans)} stands ${value} tall`;
    case "low":
      return `the night's low was ${value}`;
    case "soil":
      return `the soil${observation.bed === null ? "" : ` in ${bedName(observation.bed, plans)}`} is at ${value}`;
    case "rain": {
      const { days } = observation;
      const span = days === undefined ? "" : days === 1 ? " that day" : ` in ${days} days`;
      return observation.value.si === 0 ? `no rain fell${span}` : `${value} of rain fell${span}`;
    }
  }
}

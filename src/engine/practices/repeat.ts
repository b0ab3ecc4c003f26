import { earliest, plus } from "../../base/days/day.ts";
import { cropFor } from "../../crops/crops.ts";
import type { Outdoors } from "../../crops/facts.ts";
import type { Plan, Planting } from "../../garden/model/plan.ts";
import { allGrounds } from "../growth/anchors.ts";
import type { Growing } from "../growth/growing.ts";
import type { Reckoned } from "../growth/reckoned.ts";
import { plantingOutDay } from "../growth/starting.ts";
import { type Sowing, successionOf } from "../growth/successions.ts";
import type { Practice } from "./practice.ts";
import { why } from "./say.ts";
import { sowingSay } from "./sow-outdoors.ts";
import { objectOf, plantingTask, type Task, window } from "./task.ts";

/** The first sowing that the others are counted from: as the diary has it, else as it is reckoned. */
function firstSowing(growing: Growing, facts: Outdoors): Reckoned {
  const reckoned = plantingOutDay(growing, facts);
  const sown = growing.facts.flatMap((fact) =>
    fact.kind === "done" && fact.practice === "sow outdoors" ? [fact.day] : [],
  );
  return sown.length > 0 ? { ...reckoned, day: earliest(...sown), grounds: ["seen"] } : reckoned;
}

/** Every sowing that a planting wants in its season, the first always among them; one where it is sown but once. */
export function sowingsOf(growing: Growing, facts: Outdoors): readonly Sowing[] {
  return successionOf(growing, firstSowing(growing, facts).day);
}

/** Facts of sowing where it is sown again and again; null where it is not: plants and tubers go in once. */
function sownAgain({ planting, crop }: Growing): Outdoors | null {
  return planting.repeat && planting.start === "seed outdoors" ? crop.outdoors : null;
}

/** Numbers of the sowings that a planting wants in its season, rising, the first always 1. */
export function sowingNumbers(growing: Growing): readonly number[] {
  const facts = sownAgain(growing);
  if (!facts) return [1];
  return sowingsOf(growing, facts).map(({ number }) => number);
}

/** What a garden's growings share; `facts` are those of its whole diary. */
export type Around = Pick<Growing, "climate" | "anchors" | "facts" | "around">;

/** Each sowing of a planting in its plan's garden, the first first; none where the facts do not know the crop. */
export function growingsOf(
  planting: Planting,
  plan: Plan,
  { climate, anchors, facts, around }: Around,
): readonly Growing[] {
  const crop = cropFor(planting);
  if (!crop) return [];
  const first: Growing = {
    plan,
    planting,
    crop,
    bed: plan.beds.find(({ key }) => key === planting.bed) ?? null,
    sowing: 1,
    climate,
    anchors,
    facts: facts.filter((fact) => "planting" in fact && fact.planting === planting.key),
    around,
  };
  return sowingNumbers(first).map((sowing) => (sowing === 1 ? first : { ...first, sowing }));
}

function tasks(growing: Growing): readonly Task[] {
  const facts = sownAgain(growing);
  if (!facts || growing.sowing > 1 || growing.planting.inSince !== null) return [];
  return sowingsOf(growing, facts).flatMap(({ number, day, ripe }) =>
    number === 1 || ripe === null ? [] : [again(growing, facts, { number, day, ripe })],
  );
}

type Again = Sowing & { readonly ripe: NonNullable<Sowing["ripe"]> };

function again(growing: Growing, facts: Outdoors, { number, day: due, ripe }: Again): Task {
  const { planting, crop } = growing;
  const everyDays = planting.repeat?.everyDays ?? 0;
  const first = firstSowing(growing, facts);
  const leeway = Math.floor(everyDays / 3);
  return plantingTask(growing, "repeat", String(number), {
    window: window(plus(due, -leeway), due, plus(due, leeway), "earlier"),
    harm: "when you can",
    rhythm: "session",
    minutes: 15,
    title: { verb: "Sow more", object: objectOf(growing), where: "bed" },
    say: [
      ...sowingSay(growing, facts, due),
      why(
        `Sown now it is ready ${everyDays} days after the one before, about `,
        { day: ripe },
        ".",
      ),
    ],
    because: () => [
      [
        `Sowing ${number}: to be ready ${everyDays} days after the one before it, about `,
        { day: ripe },
        ".",
      ],
      [
        "Counted from the first sowing, ",
        { day: first.day },
        ", by the usual warmth of this place.",
      ],
    ],
    grounds: allGrounds(first.grounds, crop.warmth ? ["warmth"] : ["age"]),
    needs: ["seed"],
    sets: { planting: planting.key, sowing: number, act: "start" },
  });
}

/** The sowings after the first, at even distances. */
export const REPEAT: Practice = { name: "repeat", pass: "start", tasks };

import { plus } from "../days/day.ts";
import type { Growing } from "../growth/growing.ts";
import { plantingOutDay } from "../growth/starting.ts";
import type { Practice } from "./practice.ts";
import { testsTold, whyDecided } from "./reckoning.ts";
import { how, lengths, type Sentence, sign } from "./say.ts";
import { objectOf, plantingTask, type Task, window } from "./task.ts";

/** Days that sprouted tubers may wait. Source: house rule. */
const MAY_WAIT_DAYS = 14;

function howPlanted(growing: Growing): Sentence {
  const { crop, bed } = growing;
  const { hilling, outdoors } = crop;
  if (bed?.bags && hilling)
    return how(
      "Lay ",
      lengths(hilling.bagStartCm.value),
      " of mix in each bag, set the tubers on it with their shoots up, and cover with ",
      lengths(hilling.bagCoverCm.value),
      ". Water.",
    );
  return how(
    "Set them shoots up, ",
    lengths(outdoors?.depthCm.value ?? [10, 10]),
    " deep and ",
    lengths(outdoors?.apartCm.value ?? [30, 30]),
    " apart.",
  );
}

function tasks(growing: Growing): readonly Task[] {
  const { planting, crop } = growing;
  const facts = crop.outdoors;
  if (planting.start !== "tubers" || planting.inSince !== null || !facts) return [];
  const reckoned = plantingOutDay(growing, facts);
  const fixed = planting.fixed.start !== null;
  const guards = { risk: "seed", soilMinC: facts.soilMinC.value } as const;
  const count = planting.amount?.kind === "plants" ? planting.amount.count : 12;
  return [
    plantingTask(growing, "plant", "1", {
      window: window(
        reckoned.day,
        reckoned.day,
        fixed ? reckoned.day : plus(reckoned.day, MAY_WAIT_DAYS),
      ),
      harm: "this week",
      rhythm: "session",
      minutes: 15 + 2 * count,
      kinds: ["lifting"],
      title: { verb: "Plant", object: objectOf(growing), where: "bed" },
      say: [
        howPlanted(growing),
        sign("Shoots are short and stout, and the soil no longer sticks."),
        whyDecided(growing, reckoned, guards),
      ],
      because: testsTold(growing, reckoned, guards),
      grounds: reckoned.grounds,
      needs:
        crop.comesUp.kind === "days" && growing.bed?.bags ? ["tubers", "bags and mix"] : ["tubers"],
      certainty: fixed ? "fixed" : "expected",
      sets: { planting: planting.key, sowing: growing.sowing, act: "start" },
    }),
  ];
}

/** Tubers into row or bag. */
export const PLANT: Practice = { name: "plant", pass: "start", tasks };

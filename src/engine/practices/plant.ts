import type { Start } from "../../crops/index.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { plantingOutDay } from "../growth/starting.ts";
import { outdoorGuards, startParts, whyDecided } from "./date-decision-texts.ts";
import { deed, IN, PLANTED } from "./deeds.ts";
import { definePractice } from "./practice.ts";
import { how, lengthRange, type Sentence, sign } from "./sentence.ts";
import { objectOf, plantingTask, type TaskOf } from "./task.ts";

function howPlanted(context: SowingContext): Sentence {
  const { crop, bed, planting } = context;
  const { hilling, outdoors } = crop;
  const { start } = planting;
  if (start === "sets" || start === "crowns")
    return how(
      `Plant the ${start} `,
      lengthRange(outdoors?.depthCm.value ?? [2, 3]),
      " deep and ",
      lengthRange(outdoors?.apartCm.value ?? [10, 15]),
      ` apart. ${outdoors?.how ?? "Firm them in and water."}`,
    );
  const up = planting.sproutedFirst ? "shoots up" : "eyes up";
  if (bed?.bags && hilling)
    return how(
      "Lay ",
      lengthRange(hilling.bagStartCm.value),
      ` of mix on the bottom of each, set the tubers on it with their ${up}, and cover with `,
      lengthRange(hilling.bagCoverCm.value),
      ". Water.",
    );
  return how(
    `Set them ${up}, `,
    lengthRange(outdoors?.depthCm.value ?? [10, 10]),
    " deep and ",
    lengthRange(outdoors?.apartCm.value ?? [30, 30]),
    " apart.",
  );
}

/** What goes into the ground whole in spring; cloves go in before winter. */
const BEGUN: readonly Start[] = ["tubers", "sets", "crowns"];

function tasks(context: SowingContext): readonly TaskOf<"plant">[] {
  const { planting, crop } = context;
  const facts = crop.outdoors;
  if (!BEGUN.includes(planting.start) || planting.inSince !== null || !facts) return [];
  const decision = plantingOutDay(context, facts);
  const guards = outdoorGuards(context, facts);
  const count = planting.amount?.kind === "plants" ? planting.amount.count : 12;
  return [
    plantingTask(context, "plant", "1", {
      ...startParts(context, decision, guards),
      minutes: 15 + 2 * count,
      kinds: planting.start === "tubers" ? ["lifting"] : [],
      title: { verb: "Plant", object: objectOf(context), where: "bed" },
      say: [
        howPlanted(context),
        sign(
          planting.sproutedFirst
            ? "Shoots are short and stout, and the soil no longer sticks."
            : "The soil no longer sticks.",
        ),
        whyDecided(context, decision, guards),
      ],
      needs:
        planting.start === "tubers" && context.bed?.bags
          ? ["tubers", "bags or tubs, and mix"]
          : [planting.start],
    }),
  ];
}

/** Tubers, sets and crowns into row or bag. */
export const PLANT = definePractice({
  name: "plant",
  past: { whole: "planted" },
  words: ["planting"],
  begins: "once",
  deeds: [
    deed([...PLANTED, ...IN], {
      of: { begun: [...BEGUN, "cloves"], overwinters: false, isNew: true },
    }),
  ],
  answers: { done: "Planted today", notYet: "Too cold or wet yet" },
  tasks: { start: tasks },
});

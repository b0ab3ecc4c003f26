import type { Start } from "../../crops/facts.ts";
import type { Growing } from "../growth/growing.ts";
import { plantingOutDay } from "../growth/starting.ts";
import type { Practice } from "./practice.ts";
import { outdoorGuards, startTold, whyDecided } from "./reckoning.ts";
import { how, lengths, type Sentence, sign } from "./say.ts";
import { objectOf, plantingTask, type Task } from "./task.ts";

function howPlanted(growing: Growing): Sentence {
  const { crop, bed, planting } = growing;
  const { hilling, outdoors } = crop;
  const { start } = planting;
  if (start === "sets" || start === "crowns")
    return how(
      `Plant the ${start} `,
      lengths(outdoors?.depthCm.value ?? [2, 3]),
      " deep and ",
      lengths(outdoors?.apartCm.value ?? [10, 15]),
      ` apart. ${outdoors?.how ?? "Firm them in and water."}`,
    );
  const up = planting.sproutedFirst ? "shoots up" : "eyes up";
  if (bed?.bags && hilling)
    return how(
      "Lay ",
      lengths(hilling.bagStartCm.value),
      ` of mix in each bag, set the tubers on it with their ${up}, and cover with `,
      lengths(hilling.bagCoverCm.value),
      ". Water.",
    );
  return how(
    `Set them ${up}, `,
    lengths(outdoors?.depthCm.value ?? [10, 10]),
    " deep and ",
    lengths(outdoors?.apartCm.value ?? [30, 30]),
    " apart.",
  );
}

/** What goes into the ground whole in spring; cloves go in before winter. */
const PLANTED: readonly Start[] = ["tubers", "sets", "crowns"];

function tasks(growing: Growing): readonly Task[] {
  const { planting, crop } = growing;
  const facts = crop.outdoors;
  if (!PLANTED.includes(planting.start) || planting.inSince !== null || !facts) return [];
  const reckoned = plantingOutDay(growing, facts);
  const guards = outdoorGuards(growing, facts);
  const count = planting.amount?.kind === "plants" ? planting.amount.count : 12;
  return [
    plantingTask(growing, "plant", "1", {
      ...startTold(growing, reckoned, guards),
      minutes: 15 + 2 * count,
      kinds: planting.start === "tubers" ? ["lifting"] : [],
      title: { verb: "Plant", object: objectOf(growing), where: "bed" },
      say: [
        howPlanted(growing),
        sign(
          planting.sproutedFirst
            ? "Shoots are short and stout, and the soil no longer sticks."
            : "The soil no longer sticks.",
        ),
        whyDecided(growing, reckoned, guards),
      ],
      needs:
        planting.start === "tubers" && growing.bed?.bags
          ? ["tubers", "bags and mix"]
          : [planting.start],
    }),
  ];
}

/** Tubers, sets and crowns into row or bag. */
export const PLANT: Practice = { name: "plant", pass: "start", tasks };

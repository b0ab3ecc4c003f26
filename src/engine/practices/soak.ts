import { plus } from "../../base/days/day.ts";
import { anchorOf, type Growing } from "../growth/growing.ts";
import { how, type Sentence, why } from "./say.ts";
import { objectOf, plantingTask, type Task, tasksBehind, window } from "./task.ts";

/** Hours from which a soak begins in the day before its night, and not in its evening. Source: house rule. */
const LONG_SOAK_HOURS = 16;

/** How long it lies in water, as one says it. */
function soakTold([least, most]: readonly [number, number]): Sentence {
  const begin = least >= LONG_SOAK_HOURS ? "this morning" : "this evening";
  return how(
    `Put the seed in a bowl of cool water ${begin}, for ${least} to ${most} hours and no longer. Drain it, and sow it at once.`,
  );
}

/** Hard seed laid in water the day before it is sown outdoors; none for what is sown dry, is no seed, or was sown already. */
export function soak(growing: Growing): readonly Task[] {
  const { planting, crop } = growing;
  const hours = crop.outdoors?.soakHours;
  const start = anchorOf(growing, "start");
  if (!hours || planting.start !== "seed outdoors" || planting.inSince !== null) return [];
  if (!start || start.from === "diary") return [];
  const day = plus(start.day, -1);
  return [
    plantingTask(growing, "things to have", "soak", {
      window: window(day, day, day, "earlier"),
      harm: "when you can",
      rhythm: "daily",
      minutes: 5,
      title: { verb: "Soak seed of", object: objectOf(growing), where: null },
      say: [
        soakTold(hours.value),
        why("Soaked hard seed is up sooner. It is sown ", { day: start.day }, "."),
      ],
      because: () => [["The evening before it is sown, ", { day: start.day }, "."]],
      grounds: start.grounds,
      needs: ["seed"],
      hangsOn: tasksBehind(growing, "start"),
    }),
  ];
}

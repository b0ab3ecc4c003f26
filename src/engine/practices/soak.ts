import { plus } from "../../base/index.ts";
import { anchorOf, type SowingContext } from "../growth/sowing-context.ts";
import { how, type Sentence, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/** Hours from which a soak begins in the day before its night, and not in its evening. Source: house rule. */
const LONG_SOAK_HOURS = 16;

/** Hours up to which it may lie in water from the morning and be sown in the evening. Source: house rule. */
const SHORT_SOAK_HOURS = 8;

/** Soil [°C] below which seed is sown dry. Source: common practice; full of water it rots where it can't grow at once. */
const WARM_ENOUGH_C = 10;

/** How long it lies in water, as one says it. */
function soakSentence([least, most]: readonly [number, number], sameDay: boolean): Sentence {
  const begin = sameDay || least >= LONG_SOAK_HOURS ? "this morning" : "this evening";
  return how(
    `Put the seed in a bowl of cool water ${begin}, for ${least} to ${most} hours and no longer. Drain it, and sow it at once.`,
  );
}

/**
 * Hard seed laid in water the day before it is sown outdoors, or that morning where nobody is about and a short soak is
 * enough; none for what is sown dry, is no seed or was sown already, nor where the soil is still cold.
 */
export function soakTasks(context: SowingContext): readonly TaskOf<"things to have">[] {
  const { planting, crop } = context;
  const hours = crop.outdoors?.soakHours;
  const start = anchorOf(context, "start");
  if (!hours || planting.start !== "seed outdoors" || planting.inSince !== null) return [];
  if (!start || start.from === "diary") return [];
  if (context.climate.soilC(start.day, context.bed) < WARM_ENOUGH_C) return [];
  const before = plus(start.day, -1);
  const sameDay = !context.around(before);
  if (sameDay && hours.value[0] > SHORT_SOAK_HOURS) return [];
  const day = sameDay ? start.day : before;
  return [
    plantingTask(context, "things to have", "soak", {
      window: window(day, day, day, "earlier"),
      harm: "when you can",
      rhythm: "daily",
      minutes: 5,
      title: { verb: "Soak seed of", object: objectOf(context), where: null },
      say: [
        soakSentence(hours.value, sameDay),
        why("Soaked hard seed is up sooner. It is sown ", { day: start.day }, "."),
      ],
      because: [
        [
          sameDay ? "The morning of the day it is sown, " : "The evening before it is sown, ",
          { day: start.day },
          ".",
        ],
      ],
      basis: start.basis,
      needs: ["seed"],
      hangsOn: anchorTaskIds(context, "start"),
    }),
  ];
}

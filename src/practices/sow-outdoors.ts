import type { Outdoors } from "../crops/facts.ts";
import { plus } from "../days/day.ts";
import { upOn } from "../growth/emergence.ts";
import type { Growing } from "../growth/growing.ts";
import { plantingOutDay, type Reckoned } from "../growth/starting.ts";
import { cm } from "../quantities/quantity.ts";
import type { Practice } from "./practice.ts";
import { outdoorGuards, startTold, whyDecided } from "./reckoning.ts";
import { how, lengths, type Sentence, sign } from "./say.ts";
import { objectOf, plantingTask, type Task } from "./task.ts";

/** What a row of seed is sown like, with the day to sow again by where nothing has come up. */
export function sowingSay(
  growing: Growing,
  facts: Outdoors,
  reckoned: Reckoned,
): readonly Sentence[] {
  const { comesUp } = growing.crop;
  const up =
    comesUp.kind === "table"
      ? upOn(comesUp.row, reckoned.day, (day) => growing.climate.soilC(day, growing.bed))
      : null;
  const days = up === null ? null : up - reckoned.day;
  const board = growing.planting.under.includes("board");
  const again =
    days === null
      ? []
      : [
          how(
            "Keep it damp every day until it is up, about ",
            { day: plus(reckoned.day, days) },
            "; nothing by ",
            { day: plus(reckoned.day, Math.ceil(days * 1.5) + 3) },
            ": sow again.",
          ),
        ];
  return [
    how(
      "Sow ",
      lengths(facts.depthCm.value),
      " deep, ",
      lengths(facts.apartCm.value),
      " apart, rows ",
      { quantity: cm(facts.rowsCm.value) },
      ` apart. Water${board ? ", then lay the board over the row." : "."}`,
    ),
    ...again,
    sign("A handful of soil crumbles instead of sticking."),
  ];
}

function tasks(growing: Growing): readonly Task[] {
  const { planting, crop } = growing;
  const facts = crop.outdoors;
  if (planting.start !== "seed outdoors" || planting.inSince !== null || !facts) return [];
  if (growing.sowing > 1) return [];
  const reckoned = plantingOutDay(growing, facts);
  const guards = outdoorGuards(facts);
  return [
    plantingTask(growing, "sow outdoors", "1", {
      ...startTold(growing, reckoned, guards),
      minutes: 20,
      title: { verb: "Sow", object: objectOf(growing), where: "bed" },
      say: [...sowingSay(growing, facts, reckoned), whyDecided(growing, reckoned, guards)],
      needs: planting.under.includes("board") ? ["seed", "a board as long as the row"] : ["seed"],
    }),
  ];
}

/** Seed where it is to grow: once the soil is warm enough for it and the frost that matters is past. */
export const SOW_OUTDOORS: Practice = { name: "sow outdoors", pass: "start", tasks };

import { degreesC, latest, litres, plus } from "../../base/index.ts";
import type { Indoors } from "../../crops/index.ts";
import type { Planting } from "../../garden/model/index.ts";
import { combineBasis } from "../growth/anchors.ts";
import { mixLitres } from "../growth/filling.ts";
import { middle } from "../growth/milestones.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { settingOutDay } from "../growth/starting.ts";
import { isRaisedInShade } from "../growth/summer-raised.ts";
import { traysFor } from "../growth/trays.ts";
import { settingOutGuards, testReasons } from "./date-decision-texts.ts";
import { deed, SOWED } from "./deeds.ts";
import { definePractice } from "./practice.ts";
import { how, lengthRange, type Sentence, sign, why } from "./sentence.ts";
import { objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/** How many trays of cells and how much compost that takes; nothing where the plan names no number of plants. */
function seedCompostSentences(planting: Planting): readonly Sentence[] {
  const cells = traysFor(planting, "cells");
  if (cells === 0) return [];
  const compost = { quantity: litres(mixLitres({ cells, pots: 0 })) };
  return [
    how(`${cells} ${cells === 1 ? "tray" : "trays"} of cells, about `, compost, " of compost."),
  ];
}

function tasks(context: SowingContext): readonly TaskOf<"sow indoors">[] {
  const { planting, crop } = context;
  const facts = crop.indoors;
  if (planting.start !== "seed indoors" || planting.inSince !== null) return [];
  const { settingOut } = crop;
  const out = settingOutDay(context);
  if (!facts || !settingOut || !out) return [];
  const [least, most] = facts.weeksToSettingOut.value;
  const weeks = middle(facts.weeksToSettingOut.value);
  const given = planting.fixed.start;
  const due = given ?? plus(out.day, -7 * weeks);
  const readyOn = latest(out.day, plus(due, 7 * weeks));
  const inShade = isRaisedInShade(context, due);
  return [
    plantingTask(context, "sow indoors", "1", {
      window: given
        ? window(due, due, due)
        : window(plus(out.day, -7 * most), due, plus(out.day, -7 * least)),
      harm: "this week",
      rhythm: "session",
      minutes: 20,
      indoors: true,
      title: inShade
        ? { verb: "Sow … in trays", object: objectOf(context), where: null }
        : { verb: "Sow", object: objectOf(context), where: "indoors" },
      say: [
        seedIn(facts, inShade),
        ...seedCompostSentences(planting),
        sign(
          inShade
            ? "You have a shady, airy place for them, and can water every day."
            : "You have light for them as soon as they show.",
        ),
        why(`They want about ${weeks} weeks before they go out, about `, { day: readyOn }, "."),
      ],
      because: [
        [`Sown ${weeks} weeks before setting out about `, { day: readyOn }, "."],
        ...testReasons(context, out, settingOutGuards(context, settingOut)),
      ],
      basis: given ? ["given"] : combineBasis(out.basis, ["age"]),
      needs: ["seed", "cells and seed compost"],
      certainty: given ? "fixed" : "expected",
      sets: { planting: planting.key, sowing: context.sowing, act: "start" },
    }),
  ];
}

/** How seed goes into its cells; what comes up only in the light is not covered. */
function seedIn({ depthCm, soilTempC }: Indoors, inShade: boolean): Sentence {
  if (inShade)
    return how(
      "Two seeds to a cell, ",
      lengthRange(depthCm.value),
      " deep, outdoors in light shade: a house is too warm and dark now. Keep the cells damp.",
    );
  const warm = { quantity: degreesC(soilTempC.value) };
  if (depthCm.value[1] > 0)
    return how(
      "Two seeds to a cell, ",
      lengthRange(depthCm.value),
      " deep, damp, at about ",
      warm,
      ".",
    );
  return how(
    "A pinch of seed on each cell, pressed in and left uncovered, for it wants light. Damp, at about ",
    warm,
    ".",
  );
}

/** Seed under cover, counted back from the day its plants may go out. */
export const SOW_INDOORS = definePractice({
  name: "sow indoors",
  past: { whole: "sown indoors" },
  words: ["sowing indoors", "starting indoors", "start indoors"],
  begins: "once",
  deeds: [deed(SOWED, { of: { begun: ["seed indoors"], isNew: true } })],
  answers: { done: "Sown today" },
  thingsFor: "sowing indoors",
  tasks: { start: tasks },
});

import { celsius, degreesC, latest, plus } from "../../base/index.ts";
import { firstHigh } from "../climate/first-high.ts";
import { anchorOf, type SowingContext } from "../growth/sowing-context.ts";
import { settingOutDay } from "../growth/starting.ts";
import { traysFor } from "../growth/trays.ts";
import { boxesOut } from "../growth/winter-sown.ts";
import { deed, SOWED, verb } from "./deeds.ts";
import { definePractice } from "./practice.ts";
import { caution, how, sign, why } from "./sentence.ts";
import { anchorTaskIds, objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/** Containers are opened above the one and shut below the other [°C]. Source: common practice, 60 and 40 °F. */
const [OPEN_ABOVE_C, SHUT_BELOW_C] = [celsius(60), celsius(40)];

/** The sun opens lids before the month's mean does [K]. Source: house rule, as with vents. */
const SUNNY_K = 5;

function sow(context: SowingContext): readonly TaskOf<"winter-sow">[] {
  const { planting, plan } = context;
  const frost = plan.site.lastFrost;
  const boxes = boxesOut(context);
  if (!boxes || planting.inSince !== null || !frost) return [];
  const { weeks, day: due, basis } = boxes;
  const given = planting.fixed.start !== null;
  const trays = Math.max(1, traysFor({ ...planting, start: "seed indoors" }, "cells"));
  return [
    plantingTask(context, "winter-sow", "1", {
      window: given ? window(due, due, due) : window(plus(due, -14), due, plus(due, 14)),
      harm: "this week",
      rhythm: "session",
      minutes: 20,
      title: { verb: "Winter-sow", object: objectOf(context), where: null },
      say: [
        how(
          `${trays} clear lidded ${trays === 1 ? "box" : "boxes"}: holes below to drain and above for air, never sealed. Damp compost, seed on it, lid on, and out into the open.`,
        ),
        sign("Frost and snow are still about; they do the seed no harm."),
        given
          ? why("You asked for this day.")
          : why(`About ${weeks} weeks before the usual last frost, `, { day: frost.usual }, "."),
      ],
      because: [
        given
          ? ["You asked for this day, ", { day: due }, "."]
          : [`${weeks} weeks before the usual last frost, `, { day: frost.usual }, "."],
      ],
      basis,
      needs: ["seed", "lidded boxes and seed compost"],
      certainty: given ? "fixed" : "expected",
      sets: { planting: planting.key, sowing: context.sowing, act: "start" },
    }),
  ];
}

function lids(context: SowingContext): readonly TaskOf<"winter-sow">[] {
  if (context.planting.start !== "winter-sown") return [];
  const start = anchorOf(context, "start");
  const out = settingOutDay(context);
  if (!start || !out) return [];
  // The first day on which a sunny one is usually warm enough to open a lid; the day they go out at the latest.
  const days = { from: start.day, to: out.day };
  const from =
    firstHigh(context.climate, days, OPEN_ABOVE_C - SUNNY_K) ?? latest(out.day, start.day);
  return [
    plantingTask(context, "winter-sow", "lids", {
      window: window(plus(from, -7), from, plus(from, 7)),
      harm: "this week",
      rhythm: "daily",
      minutes: 5,
      title: { verb: "Mind the lids of", object: objectOf(context), where: null },
      say: [
        how(
          "From now on open the lids on days above ",
          { quantity: degreesC(OPEN_ABOVE_C) },
          ", and shut them when it falls below ",
          { quantity: degreesC(SHUT_BELOW_C) },
          ". Water when the compost looks pale.",
        ),
        sign("The lid is wet inside and the sun is on it."),
        why("An hour of sun under a shut lid cooks seedlings."),
        caution(
          "Never leave the boxes shut on a bright day away from home; shaded boxes heat less.",
        ),
      ],
      because: [["The first days usually warm enough, until they are set out."]],
      basis: ["time of year"],
      hangsOn: anchorTaskIds(context, "start"),
    }),
  ];
}

/** Seed in lidded boxes out of the house in winter, and lids opened and shut in spring. */
export const WINTER_SOW = definePractice({
  name: "winter-sow",
  past: { whole: "sown in winter boxes", lids: "aired in its winter box" },
  words: ["winter sow", "winter sowing", "winter-sowing"],
  begins: "once",
  deeds: [
    deed([...SOWED, ...verb("winter-sowed|winter-sown|winter sown")], {
      of: { begun: ["winter-sown"], isNew: true },
    }),
    deed(["opened (?:the )?(?:lids|boxes) (?:of|on|over) …", "… (?:lids|boxes) open(?:ed)?"], {
      step: "lids",
      of: { begun: ["winter-sown"] },
    }),
  ],
  answers: { done: "Sown today" },
  thingsFor: "winter sowing",
  tasks: { start: sow, rest: lids },
});

import { cm, type Day, plus } from "../../base/index.ts";
import type { Outdoors } from "../../crops/index.ts";
import { sowApartCm } from "../growth/amounts.ts";
import { refusalOf } from "../growth/limits.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { plantingOutDay } from "../growth/starting.ts";
import { rowPerSowingCm, successionOf } from "../growth/successions.ts";
import { upOutdoors } from "../growth/up.ts";
import { outdoorGuards, startParts, whyDecided } from "./date-decision-texts.ts";
import { deed, IN, PLANTED, SOWED } from "./deeds.ts";
import { definePractice } from "./practice.ts";
import { how, lengthRange, type Sentence, sign, type TextPiece } from "./sentence.ts";
import { objectOf, plantingTask, type TaskOf } from "./task.ts";

/** Days after it should be up on which seed may still be sown again. Source: house rule, a week to look twice. */
const SOW_AGAIN_DAYS = 7;

/** When it should be up, and what to do where it is not: look, and sow again while that still comes to something. */
function upSentences(context: SowingContext, sown: Day): readonly Sentence[] {
  const up = upOutdoors(context, sown);
  if (up === null) return [];
  const by = plus(up.late, SOW_AGAIN_DAYS);
  const again: readonly TextPiece[] =
    refusalOf(context, by) === "too late" ? ["."] : [", and sow again by ", { day: by }, "."];
  return [
    how(
      "Keep it damp every day until it is up, about ",
      { day: up.usual },
      "; nothing by ",
      { day: up.late },
      ": scratch and look",
      ...again,
    ),
  ];
}

/** From so far apart [cm] a few seeds share each place, which stay at their distance. Source: house rule, two feet. */
const PLACES_CM = 60;

/** How far apart seed goes: as the facts say, or thicker where the soil lets too few come up. */
function apartPiece(context: SowingContext, facts: Outdoors, sown: Day): TextPiece {
  const usual = facts.apartCm.value;
  if (usual[0] >= PLACES_CM) return lengthRange(usual);
  const thick = sowApartCm(context, context.climate.soilC(sown, context.bed));
  return thick !== null && thick < usual[0] ? { quantity: cm(thick) } : lengthRange(usual);
}

/** Sown again and again, the row is divided: how long a piece each sowing takes. */
function rowSentences(context: SowingContext, facts: Outdoors): readonly Sentence[] {
  if (!context.planting.repeat) return [];
  const { day } = plantingOutDay(context, facts);
  const piece = rowPerSowingCm(context, successionOf(context, day));
  return piece === null ? [] : [how("This time sow ", { quantity: cm(piece) }, " of row.")];
}

/** How much warmer soil is in the afternoon than over the whole day [K]. Source: house rule; half a summer day's swing, damped at seed depth. */
const AFTERNOON_K = 4;

/** Mean air of days on which soil is hot to the hand [°C]. Source: house rule; spring's warm soil asks for no shade. */
const SUMMER_C = 20;

/** What is done where seed would sleep in the afternoon's soil, though not in the whole day's. */
function warmSoilSentences(
  { climate, bed }: SowingContext,
  { soilMaxC }: Outdoors,
  sown: Day,
): readonly Sentence[] {
  if (soilMaxC === null || climate.airC(sown) < SUMMER_C) return [];
  if (climate.dampSoilC(sown, bed) + AFTERNOON_K <= soilMaxC.value) return [];
  return [
    how("The soil is hot now: sow in the cool of evening, and shade the row until it is up."),
  ];
}

/** What a row of seed is sown like on a day, how much of it, and the day to sow again by where nothing has come up. */
export function sowingSentences(
  context: SowingContext,
  facts: Outdoors,
  sown: Day,
): readonly Sentence[] {
  const board = context.planting.under.includes("board");
  return [
    how(
      "Sow ",
      lengthRange(facts.depthCm.value),
      " deep, ",
      apartPiece(context, facts, sown),
      " apart, rows ",
      { quantity: cm(facts.rowsCm.value) },
      ` apart. Water${board ? ", then lay the board over the row." : "."}`,
    ),
    ...(facts.how === null ? [] : [how(facts.how)]),
    ...warmSoilSentences(context, facts, sown),
    ...rowSentences(context, facts),
    ...upSentences(context, sown),
    sign("A handful of soil crumbles instead of sticking."),
  ];
}

function tasks(context: SowingContext): readonly TaskOf<"sow outdoors">[] {
  const { planting, crop } = context;
  const facts = crop.outdoors;
  if (planting.start !== "seed outdoors" || planting.inSince !== null || !facts) return [];
  if (context.sowing > 1) return [];
  const decision = plantingOutDay(context, facts);
  const guards = outdoorGuards(context, facts);
  return [
    plantingTask(context, "sow outdoors", "1", {
      ...startParts(context, decision, guards),
      minutes: 20,
      title: { verb: "Sow", object: objectOf(context), where: "bed" },
      say: [
        ...sowingSentences(context, facts, decision.day),
        whyDecided(context, decision, guards),
      ],
      needs: planting.under.includes("board") ? ["seed", "a board as long as the row"] : ["seed"],
    }),
  ];
}

/** Seed where it is to grow: once the soil is warm enough for it and the frost that matters is past. */
export const SOW_OUTDOORS = definePractice({
  name: "sow outdoors",
  past: { whole: "sown" },
  words: ["sowing outdoors", "sowing", "sow"],
  begins: "once",
  deeds: [
    deed([...SOWED, ...IN, "… direct"], { of: { begun: ["seed outdoors"], isNew: true } }),
    deed(PLANTED, { of: { begun: ["seed outdoors"], overwinters: false, isNew: true } }),
  ],
  answers: { done: "Sown today", notYet: "Too cold or wet yet" },
  tasks: { start: tasks },
});

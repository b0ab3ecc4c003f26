import { type Day, plus } from "../../base/days/day.ts";
import { cm } from "../../base/quantities/quantity.ts";
import type { Outdoors } from "../../crops/facts.ts";
import { sowApartCm } from "../growth/amounts.ts";
import type { Growing } from "../growth/growing.ts";
import { refusalOf } from "../growth/limits.ts";
import { plantingOutDay } from "../growth/starting.ts";
import { pieceCm, successionOf } from "../growth/successions.ts";
import { upOutdoors } from "../growth/up.ts";
import type { Practice } from "./practice.ts";
import { outdoorGuards, startTold, whyDecided } from "./reckoning.ts";
import { how, lengths, type Piece, type Sentence, sign } from "./say.ts";
import { objectOf, plantingTask, type Task } from "./task.ts";

/** Days after it should be up on which seed may still be sown again. Source: house rule, a week to look twice. */
const SOW_AGAIN_DAYS = 7;

/** When it should be up, and what to do where it is not: look, and sow again while that still comes to something. */
function upTold(growing: Growing, sown: Day): readonly Sentence[] {
  const up = upOutdoors(growing, sown);
  if (up === null) return [];
  const by = plus(up.late, SOW_AGAIN_DAYS);
  const again: readonly Piece[] =
    refusalOf(growing, by) === "too late" ? ["."] : [", and sow again by ", { day: by }, "."];
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

/** How far apart seed goes: as the facts say, or thicker where the soil lets too few come up. */
function apartTold(growing: Growing, facts: Outdoors, sown: Day): Piece {
  const thick = sowApartCm(growing, growing.climate.soilC(sown, growing.bed));
  const usual = facts.apartCm.value;
  return thick !== null && thick < usual[0] ? { quantity: cm(thick) } : lengths(usual);
}

/** Sown again and again, the row is divided: how long a piece each sowing takes. */
function pieceTold(growing: Growing, facts: Outdoors): readonly Sentence[] {
  if (!growing.planting.repeat) return [];
  const { day } = plantingOutDay(growing, facts);
  const piece = pieceCm(growing, successionOf(growing, day));
  return piece === null ? [] : [how("This time sow ", { quantity: cm(piece) }, " of row.")];
}

/** What a row of seed is sown like on a day, how much of it, and the day to sow again by where nothing has come up. */
export function sowingSay(growing: Growing, facts: Outdoors, sown: Day): readonly Sentence[] {
  const board = growing.planting.under.includes("board");
  return [
    how(
      "Sow ",
      lengths(facts.depthCm.value),
      " deep, ",
      apartTold(growing, facts, sown),
      " apart, rows ",
      { quantity: cm(facts.rowsCm.value) },
      ` apart. Water${board ? ", then lay the board over the row." : "."}`,
    ),
    ...(facts.how === null ? [] : [how(facts.how)]),
    ...pieceTold(growing, facts),
    ...upTold(growing, sown),
    sign("A handful of soil crumbles instead of sticking."),
  ];
}

function tasks(growing: Growing): readonly Task[] {
  const { planting, crop } = growing;
  const facts = crop.outdoors;
  if (planting.start !== "seed outdoors" || planting.inSince !== null || !facts) return [];
  if (growing.sowing > 1) return [];
  const reckoned = plantingOutDay(growing, facts);
  const guards = outdoorGuards(growing, facts);
  return [
    plantingTask(growing, "sow outdoors", "1", {
      ...startTold(growing, reckoned, guards),
      minutes: 20,
      title: { verb: "Sow", object: objectOf(growing), where: "bed" },
      say: [...sowingSay(growing, facts, reckoned.day), whyDecided(growing, reckoned, guards)],
      needs: planting.under.includes("board") ? ["seed", "a board as long as the row"] : ["seed"],
    }),
  ];
}

/** Seed where it is to grow: once the soil is warm enough for it and the frost that matters is past. */
export const SOW_OUTDOORS: Practice = { name: "sow outdoors", pass: "start", tasks };

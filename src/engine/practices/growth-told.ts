import type { Day } from "../../base/days/day.ts";
import { degreesC } from "../../base/quantities/quantity.ts";
import { saySource } from "../../crops/figures.ts";
import { clockOf } from "../growth/clock.ts";
import { anchorOf, type Growing } from "../growth/growing.ts";
import { reached } from "../growth/milestones.ts";
import { ownWarmth } from "../growth/own.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import { upMilestone } from "../growth/up.ts";
import type { Piece } from "./say.ts";

type Told = readonly (readonly Piece[])[];

/** How the day it shows above the soil came about, as `why` tells it. */
export function upTold(growing: Growing): Told {
  const up = upMilestone(growing);
  const start = anchorOf(growing, "start");
  if (!reached(up)) return [];
  if (up.seen) return [["It was seen up on ", { day: up.usual }, "."]];
  const spread = ["Likely up about ", ...inSeasons(up)];
  return start ? [spread, soilWhenSown(growing, start.day)] : [spread];
}

/** A milestone's usual day, and those of a warm and a cold season. */
function inSeasons({ early, usual, late }: Days): readonly Piece[] {
  const warm = [", in a warm season ", { day: early }];
  return [{ day: usual }, ...warm, ", in a cold one ", { day: late }, "."];
}

type Days = { readonly early: Day; readonly usual: Day; readonly late: Day };

function soilWhenSown({ climate, bed, crop, planting }: Growing, sown: Day): readonly Piece[] {
  if (crop.comesUp.kind === "days") return ["Tubers and cloves go by days, whatever the soil."];
  if (planting.start === "seed indoors")
    return [
      "Indoors the seed is kept at ",
      { quantity: degreesC(crop.indoors?.soilTempC.value ?? 20) },
      ".",
    ];
  if (planting.start === "winter-sown")
    return [
      "Sown ",
      { day: sown },
      " in boxes outdoors, about as cold as the soil; it waits there for spring.",
    ];
  const soil = { quantity: degreesC(climate.soilC(sown, bed)) };
  return ["Sown ", { day: sown }, " into soil near ", soil, "; each day counts by its warmth."];
}

/** How the day of the first harvest came about, as `why` tells it: from when warmth counts, whose days, and the seasons' spread. */
export function ripeTold(growing: Growing): Told {
  const ripe = ripeMilestone(growing);
  if (!reached(ripe)) return [];
  if (ripe.seen) return [["It was seen ready on ", { day: ripe.usual }, "."]];
  if (growing.crop.overwinter)
    return [["Ready about ", { day: ripe.usual }, ", counted from the last frost of its spring."]];
  return [["Ready about ", ...inSeasons(ripe)], ...countedTold(growing)];
}

function countedTold(growing: Growing): Told {
  const { crop, planting } = growing;
  const clock = clockOf(growing);
  if ("none" in clock) return [];
  const days = Math.round(clock.days);
  if (!crop.warmth) return [[`Counted ${days} days from `, { day: clock.usual }, "."]];
  const own = ownWarmth(growing, clock.days);
  if (own)
    return [
      [
        "Counted from ",
        { day: clock.usual },
        `, with as much warmth as it took here in ${own.year} in place of the packet's days.`,
      ],
    ];
  const whose = planting.days === null ? saySource(crop.harvest.days.source) : "the plan";
  return [
    [
      "Counted from ",
      { day: clock.usual },
      `: ${days} days more of those that ${whose} gives, taken at a mean of `,
      { quantity: degreesC(crop.warmth.packetC.value) },
      ", which is an assumption; a cooler day counts for less, a warmer one for more.",
    ],
    [
      "Warmth counts above ",
      { quantity: degreesC(crop.warmth.baseC.value) },
      `: ${saySource(crop.warmth.baseC.source)}.`,
    ],
  ];
}

import { type Day, degreesC } from "../../base/index.ts";
import { clockOf } from "../growth/clock.ts";
import { isReached } from "../growth/milestones.ts";
import { ownWarmth } from "../growth/own-warmth.ts";
import { ripeMilestone } from "../growth/ripe.ts";
import { anchorOf, type SowingContext } from "../growth/sowing-context.ts";
import { upMilestone } from "../growth/up.ts";
import type { ReasonLines, TextPiece } from "./sentence.ts";
import { sourcePieces } from "./source-pieces.ts";

/** How the day it shows above the soil came about, as `why` tells it. */
export function upReasons(context: SowingContext): ReasonLines {
  const up = upMilestone(context);
  const start = anchorOf(context, "start");
  if (!isReached(up)) return [];
  if (up.seen) return [["It was seen up on ", { day: up.usual }, "."]];
  const spread = ["Likely up about ", ...inSeasons(up)];
  const guess = roughly(context);
  return start ? [spread, ...guess, soilWhenSown(context, start.day)] : [spread, ...guess];
}

const roughly = ({ climate }: SowingContext): ReasonLines =>
  climate.rough ? [["That is a rough guess from your frost dates."]] : [];

/** A milestone's usual day, and those of a warm and a cold season. */
function inSeasons({ early, usual, late }: SeasonSpread): readonly TextPiece[] {
  const warm = [", in a warm season ", { day: early }];
  return [{ day: usual }, ...warm, ", in a cold one ", { day: late }, "."];
}

type SeasonSpread = { readonly early: Day; readonly usual: Day; readonly late: Day };

function soilWhenSown(
  { climate, bed, crop, planting }: SowingContext,
  sown: Day,
): readonly TextPiece[] {
  if (crop.comesUp.kind === "days")
    return [
      crop.comesUp.inSoilC && !bed?.bags
        ? "Shoots take their days in warm soil, and longer in cold."
        : "Tubers and cloves go by days, whatever the soil.",
    ];
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
export function ripeReasons(context: SowingContext): ReasonLines {
  const ripe = ripeMilestone(context);
  if (!isReached(ripe)) return [];
  if (ripe.seen) return [["It was seen ready on ", { day: ripe.usual }, "."]];
  if (context.crop.overwinter)
    return [["Ready about ", { day: ripe.usual }, ", counted from the last frost of its spring."]];
  return [["Ready about ", ...inSeasons(ripe)], ...roughly(context), ...countReasons(context)];
}

function countReasons(context: SowingContext): ReasonLines {
  const { crop, planting } = context;
  const clock = clockOf(context);
  if ("none" in clock) return [];
  const days = Math.round(clock.days);
  if (!crop.warmth) return [[`Counted ${days} days from `, { day: clock.usual }, "."]];
  const own = ownWarmth(context, clock.days);
  if (own)
    return [
      [
        "Counted from ",
        { day: clock.usual },
        `, with as much warmth as it took here in ${own.year} in place of the packet's days.`,
      ],
    ];
  const whose = planting.days === null ? sourcePieces(crop.harvest.days.source) : ["the plan"];
  return [
    [
      "Counted from ",
      { day: clock.usual },
      `: ${days} days more of those that `,
      ...whose,
      " gives, taken at a mean of ",
      { quantity: degreesC(crop.warmth.packetC.value) },
      ", which is an assumption; a cooler day counts for less, a warmer one for more.",
    ],
    [
      "Warmth counts above ",
      { quantity: degreesC(crop.warmth.baseC.value) },
      ": ",
      ...sourcePieces(crop.warmth.baseC.source),
      ".",
    ],
  ];
}

import { type Day, sayDay } from "../../base/index.ts";
import type { FrostDates, Plan } from "../../garden/model/index.ts";
import { chanceOn, edgeAt, type FrostField, type FrostSeason, xAtChance } from "./drift.ts";
import { autumnOdds, springOdds } from "./frost-text.ts";
import { type Box, type LabelRequest, placeLabels } from "./labels.ts";
import { xInside } from "./scale.ts";
import type { PictureSheet } from "./sheet.ts";
import type { TextSpot } from "./svg.ts";

/** What stands in the clear between the drifts: each date with its odds, and how long the clear time is. */
export function frostDateLabels(
  { site }: Plan,
  field: FrostField,
  sheet: PictureSheet,
): readonly string[] {
  const { lastFrost, firstFrost } = site;
  const { scale, topPx, groundPx } = field;
  if (!lastFrost || !firstFrost) return [];
  const within: Box = {
    x: scale.leftPx,
    y: topPx - sheet.namePx,
    widthPx: scale.rightPx - scale.leftPx,
    heightPx: groundPx - topPx + sheet.namePx,
  };
  const requests = [
    ...labelRequestsOf(lastFrost, "spring", { field, sheet }),
    ...labelRequestsOf(firstFrost, "autumn", { field, sheet }),
    ...lengthLabelRequest(lastFrost.usual, firstFrost.usual, { field, sheet }),
  ];
  return placeLabels(requests, within).svg;
}

type FrostLabelSpace = { readonly field: FrostField; readonly sheet: PictureSheet };

/** The three dates, the usual one first, since it must be there; dates that fall together once. */
function labelRequestsOf(
  dates: FrostDates,
  frostSeason: FrostSeason,
  space: FrostLabelSpace,
): readonly LabelRequest[] {
  const days = [...new Set([dates.usual, dates.early, dates.late])];
  return days.map((day) => {
    const which = day === dates.usual ? "usual" : day === dates.early ? "early" : "late";
    const odds = frostSeason === "spring" ? springOdds(dates, day) : autumnOdds(dates, day);
    return {
      lines: [
        [
          { text: sayDay(day), ink: "ink", look: "name" },
          { text: which, ink: "pencil", look: "aside" },
        ],
        [{ text: odds, ink: "pencil", look: "plain" }],
      ],
      places: placesOf(dates, frostSeason, { ...space, day }),
    };
  });
}

/** Steps up and down [px] by which a date's words move until they find room. */
const STEPS = [0, -12, -24, -40, 14, -56, -72];

/** Places on the clear side of a date's mark, each clear of the drift there. */
function placesOf(
  dates: FrostDates,
  frostSeason: FrostSeason,
  { field, sheet, day }: FrostLabelSpace & { readonly day: Day },
): readonly (readonly TextSpot[])[] {
  const { namePx, smallPx } = sheet;
  const { y } = edgeAt(dates, frostSeason, { day, field });
  return STEPS.map((step) => {
    const lowest =
      chanceOn(dates, frostSeason, day) - (step + 1.4 * smallPx) / (field.groundPx - field.topPx);
    const edge = xAtChance(dates, frostSeason, { chance: lowest, field });
    const [x, from] =
      frostSeason === "spring" ? [edge + 8, "start" as const] : [edge - 8, "end" as const];
    return [
      { x, y: y + step, sizePx: namePx, from },
      { x, y: y + step + 1.2 * smallPx, sizePx: smallPx, from },
    ];
  });
}

/** How long the clear time is in a usual year, in the middle of it. */
function lengthLabelRequest(
  last: Day,
  first: Day,
  { field, sheet }: FrostLabelSpace,
): readonly LabelRequest[] {
  const { scale, topPx, groundPx } = field;
  const x = (xInside(scale, last) + xInside(scale, first)) / 2;
  const text = `${first - last} days between the usual frosts`;
  const places = [0.28, 0.7, 0.05, 0.85].map((share): readonly TextSpot[] => [
    { x, y: topPx + share * (groundPx - topPx), sizePx: sheet.namePx, from: "middle" },
  ]);
  return [{ lines: [[{ text, ink: "ink", look: "aside" }]], places }];
}

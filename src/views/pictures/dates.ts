import { type Day, sayDay } from "../../base/days/day.ts";
import type { FrostDates, Plan } from "../../garden/model/plan.ts";
import { chanceOn, edgeAt, type Field, type Part, xAtChance } from "./drift.ts";
import { type Box, setLabels, type Wish } from "./labels.ts";
import { xInside } from "./scale.ts";
import type { Sheet } from "./sheet.ts";
import { autumnOdds, springOdds } from "./told.ts";
import type { Spot } from "./write.ts";

/** What stands in the clear between the drifts: each date with its odds, and how long the clear time is. */
export function datesNamed({ site }: Plan, field: Field, sheet: Sheet): readonly string[] {
  const { lastFrost, firstFrost } = site;
  const { scale, topPx, groundPx } = field;
  if (!lastFrost || !firstFrost) return [];
  const within: Box = {
    x: scale.leftPx,
    y: topPx - sheet.namePx,
    widthPx: scale.rightPx - scale.leftPx,
    heightPx: groundPx - topPx + sheet.namePx,
  };
  const wishes = [
    ...wishesOf(lastFrost, "spring", { field, sheet }),
    ...wishesOf(firstFrost, "autumn", { field, sheet }),
    ...lengthWish(lastFrost.usual, firstFrost.usual, { field, sheet }),
  ];
  return setLabels(wishes, within).written;
}

type Drawn = { readonly field: Field; readonly sheet: Sheet };

/** The three dates, the usual one first, since it must be there; dates that fall together once. */
function wishesOf(dates: FrostDates, part: Part, drawn: Drawn): readonly Wish[] {
  const days = [...new Set([dates.usual, dates.early, dates.late])];
  return days.map((day) => {
    const which = day === dates.usual ? "usual" : day === dates.early ? "early" : "late";
    const odds = part === "spring" ? springOdds(dates, day) : autumnOdds(dates, day);
    return {
      lines: [
        [
          { text: sayDay(day), ink: "ink", look: "name" },
          { text: which, ink: "pencil", look: "aside" },
        ],
        [{ text: odds, ink: "pencil", look: "plain" }],
      ],
      places: placesOf(dates, part, { ...drawn, day }),
    };
  });
}

/** Steps up and down [px] by which a date's words move until they find room. */
const STEPS = [0, -12, -24, -40, 14, -56, -72];

/** Places on the clear side of a date's mark, each clear of the drift there. */
function placesOf(
  dates: FrostDates,
  part: Part,
  { field, sheet, day }: Drawn & { readonly day: Day },
): readonly (readonly Spot[])[] {
  const { namePx, smallPx } = sheet;
  const { y } = edgeAt(dates, part, { day, field });
  return STEPS.map((step) => {
    const lowest =
      chanceOn(dates, part, day) - (step + 1.4 * smallPx) / (field.groundPx - field.topPx);
    const edge = xAtChance(dates, part, { chance: lowest, field });
    const [x, from] = part === "spring" ? [edge + 8, "start" as const] : [edge - 8, "end" as const];
    return [
      { x, y: y + step, sizePx: namePx, from },
      { x, y: y + step + 1.2 * smallPx, sizePx: smallPx, from },
    ];
  });
}

/** How long the clear time is in a usual year, in the middle of it. */
function lengthWish(last: Day, first: Day, { field, sheet }: Drawn): readonly Wish[] {
  const { scale, topPx, groundPx } = field;
  const x = (xInside(scale, last) + xInside(scale, first)) / 2;
  const text = `${first - last} days between the usual frosts`;
  const places = [0.28, 0.7, 0.05, 0.85].map((share): readonly Spot[] => [
    { x, y: topPx + share * (groundPx - topPx), sizePx: sheet.namePx, from: "middle" },
  ]);
  return [{ lines: [[{ text, ink: "ink", look: "aside" }]], places }];
}

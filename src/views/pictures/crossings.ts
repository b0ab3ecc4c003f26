import { type Day, degreesC, type Measures, sayDay, sayQuantity } from "../../base/index.ts";
import { type LabelArea, type LabelMark, type LabelSide, labelBeside } from "./beside.ts";
import { yOf } from "./degrees.ts";
import type { Box } from "./labels.ts";
import { cutTo, namesThatFit, wrapped } from "./measure.ts";
import { sampleDays, shows, xInside, xOf } from "./scale.ts";
import type { Sketch } from "./sketch.ts";
import type { SoilWait } from "./soil-waits.ts";
import { element, plainLine, type TextRun } from "./svg.ts";
import { soilIn } from "./warmth.ts";

/**
 * The crops that wait for the soil, at the day the usual line reaches it, and what was measured; crops that never wait
 * have no mark, and words without room are only in the description.
 */
export function crossings(
  sketch: Sketch,
  waiting: readonly SoilWait[],
  area: LabelArea,
): readonly string[] {
  const taken: Box[] = [...area.taken];
  const marks = [
    ...waiting.flatMap((each) => waitingMarks(each, sketch, area)),
    ...measuredMarks(sketch, area),
  ];
  return marks.flatMap((mark) => [...labelBeside(mark, area, taken), mark.dot]);
}

/** Least room for words under the curve [px]; with less they may run over its far side. */
const LEAST_ROOM_PX = 110;

/** Least room for words before a mark [px]; with less each would be cut to a letter or two. */
const LEAST_WORD_PX = 64;

/** Where a mark's words begin [px] and how wide they may be: from the day on which even a cool season is that warm to the autumn day on which it no longer is. */
function underCurve(
  sketch: Sketch,
  { soilC, day }: { readonly soilC: number; readonly day: Day },
  { field }: LabelArea,
): { readonly at: number; readonly roomPx: number } {
  const { scale } = field;
  const soil = soilIn(sketch, null);
  const warm = sampleDays(scale, 1).filter((each) => each >= day && soil(each).coolC >= soilC);
  const at = Math.min((scale.leftPx + scale.rightPx) / 2, xInside(scale, warm[0] ?? day) + 14);
  const roomPx = xInside(scale, warm[warm.length - 1] ?? scale.to) - at - 6;
  return { at, roomPx: roomPx < LEAST_ROOM_PX ? scale.rightPx - at : roomPx };
}

function waitingMarks(
  { names, soilC, film, day, always }: SoilWait,
  sketch: Sketch,
  area: LabelArea,
): readonly LabelMark[] {
  const { field, sheet } = area;
  if (day === null || always || !shows(field.scale, day)) return [];
  const { at, roomPx } = underCurve(sketch, { soilC, day }, area);
  const details = [
    `${temperatureLabel(soilC, sketch.plan.measures)}, from ${sayDay(day)}`,
    ...(film ? ["under film"] : []),
  ];
  const [x, y] = [xOf(field.scale, day), yOf(field, soilC)];
  const lines = (widthPx: number): LabelSide["lines"] => [
    ...namesThatFit(names.map(capital), { widthPx, sizePx: sheet.namePx, lines: 3 }).map(
      (text): readonly TextRun[] => [{ text, ink: "ink", look: "name" }],
    ),
    ...details
      .flatMap((text) => wrapped(text, widthPx, sheet.smallPx))
      .map((text): readonly TextRun[] => [{ text, ink: "pencil", look: "plain" }]),
  ];
  const under = (onPx: number): readonly LabelSide[] =>
    onPx > roomPx / 2 ? [] : [{ from: "start", at: at + onPx, lines: lines(roomPx - onPx) }];
  const leftPx = x - 13 - field.scale.leftPx;
  const before: readonly LabelSide[] =
    leftPx < LEAST_WORD_PX ? [] : [{ from: "end", at: x - 13, lines: lines(leftPx) }];
  return [
    {
      x,
      y,
      sides: [...NEAR.flatMap(under), ...before, ...FAR.flatMap(under)],
      dot: element("circle", { class: "plant", cx: x, cy: y, r: 4.5 }),
    },
  ];
}

/** Steps along [px] by which words move on under the curve where a line crosses them, before and after they are tried on the curve's other side. */
const [NEAR, FAR] = [
  [0, 24, 48],
  [72, 96],
];

const capital = (name: string, i: number) =>
  i === 0 ? name.charAt(0).toUpperCase() + name.slice(1) : name;

/** What the diary measured, as rings at their own day and warmth; their words outside the curve if there is room. */
function measuredMarks(
  { year: { observations }, plan }: Sketch,
  { field, sheet }: LabelArea,
): readonly LabelMark[] {
  const { scale } = field;
  return observations.flatMap((observation) => {
    if (
      observation.kind !== "measured" ||
      observation.what !== "soil" ||
      !shows(scale, observation.day)
    )
      return [];
    const [x, y] = [xOf(scale, observation.day), yOf(field, observation.value.si)];
    const bed = plan.beds.find(({ key }) => key === observation.bed);
    const details = [
      temperatureLabel(observation.value.si, plan.measures),
      sayDay(observation.day),
      ...(bed ? [plainLine(bed.name)] : []),
    ];
    const side = (from: LabelSide["from"], roomPx: number): LabelSide => ({
      from,
      at: from === "start" ? x + 13 : x - 13,
      lines: details.map((text) => [
        { text: cutTo(text, roomPx, sheet.smallPx), ink: "pencil", look: "aside" },
      ]),
    });
    const [left, right] = [
      side("end", x - 13 - scale.leftPx),
      side("start", scale.rightPx - x - 13),
    ];
    const spring = x < (scale.leftPx + scale.rightPx) / 2;
    const dot = element("circle", { class: "ink-line", "stroke-width": 2, cx: x, cy: y, r: 4.5 });
    return [{ x, y, sides: spring ? [left, right] : [right, left], dot }];
  });
}

function temperatureLabel(tempC: number, measures: Measures): string {
  return sayQuantity(degreesC(tempC), measures);
}

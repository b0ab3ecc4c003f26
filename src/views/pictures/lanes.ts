import type { BedRow, Plant } from "./beds.ts";
import { type Box, boxOf, clash } from "./labels.ts";
import { cutTo, widthOf } from "./measure.ts";
import { type Scale, xInside } from "./scale.ts";
import type { TextRun } from "./svg.ts";

/** A planting in its lane, with its words and the x [px] they begin at. */
export type LanePlant = {
  readonly plant: Plant;
  readonly runs: readonly TextRun[];
  readonly x: number;
};

/** One line of soil of a bed, with plantings that follow each other and leave each other's words room. */
export type Lane = readonly LanePlant[];

/** Space between two words of different plants [px]. */
const GAP_PX = 12;

type LaneDraft = { readonly lane: LanePlant[]; readonly shapes: Box[]; readonly words: Box[] };

/** A bed's plantings in as few lanes as they need, in the plan's order; a bed with none has one empty lane. */
export function lanesOf(
  row: BedRow,
  scale: Scale,
  sizes: { readonly namePx: number },
): readonly Lane[] {
  const room = { scale, sizePx: sizes.namePx };
  const lanes: LaneDraft[] = [];
  for (const plant of row.plants) {
    const shape = shapeOf(plant, scale);
    const runs = runsOf(plant, scale, sizes);
    const found = lanes.find((draft) => addToLane(draft, { plant, runs, shape }, room));
    if (found) continue;
    const fresh: LaneDraft = { lane: [], shapes: [], words: [] };
    addToLane(fresh, { plant, runs, shape }, room);
    lanes.push(fresh);
  }
  return lanes.length === 0 ? [[]] : lanes.map(({ lane }) => lane);
}

type UnplacedPlant = {
  readonly plant: Plant;
  readonly runs: readonly TextRun[];
  readonly shape: Box;
};

/** Puts a planting into a lane where its drawing and its words find room; says whether they did. */
function addToLane(
  { lane, shapes, words }: LaneDraft,
  { plant, runs, shape }: UnplacedPlant,
  { scale, sizePx }: { readonly scale: Scale; readonly sizePx: number },
): boolean {
  if (shapes.some((other) => clash(other, shape))) return false;
  const widthPx = boxOf({ x: 0, y: 0, sizePx, from: "start" }, runs).widthPx;
  const last = scale.rightPx - widthPx;
  const candidates = [shape.x, shape.x + shape.widthPx - widthPx, last];
  for (const x of candidates.map((each) => Math.max(scale.leftPx, Math.min(each, last)))) {
    const box = { x, y: 0, widthPx: widthPx + GAP_PX, heightPx: 1 };
    if (words.some((other) => clash(other, box))) continue;
    lane.push({ plant, runs, x });
    shapes.push(shape);
    words.push(box);
    return true;
  }
  return false;
}

/** The stretch of the lane its sowings take, from the first day to the last; none at all where it is not drawn. */
function shapeOf({ lives }: Plant, scale: Scale): Box {
  const starts = lives.map((life) => xInside(scale, life.starts));
  const ends = lives.map((life) => xInside(scale, life.gone));
  const x = starts.length === 0 ? scale.leftPx : Math.min(...starts);
  const widthPx = starts.length === 0 ? 0 : Math.max(...ends) - x;
  return { x, y: 0, widthPx, heightPx: 1 };
}

/** Share of a lane that a name keeps at the least where its days want room too. */
const LEAST_NAME_SHARE = 0.4;

/**
 * Its name and its days: both whole, or its days shorter or in brief, or the name cut to make room for them; where that would leave
 * no name, the name alone.
 */
function runsOf(
  { name, days, shorter, brief }: Plant,
  scale: Scale,
  { namePx }: { readonly namePx: number },
): readonly TextRun[] {
  const roomPx = scale.rightPx - scale.leftPx - GAP_PX;
  const left = (wording: string) => roomPx - widthOf(` ${wording}`, namePx);
  const wording = [days, shorter, brief].filter(Boolean);
  const details =
    wording.find((each) => widthOf(name, namePx) <= left(each)) ??
    wording.find((each) => left(each) >= LEAST_NAME_SHARE * roomPx);
  const text = cutTo(name, details === undefined ? roomPx : left(details), namePx);
  const own: TextRun = { text, ink: "ink", look: "name" };
  return details === undefined ? [own] : [own, { text: details, ink: "pencil", look: "plain" }];
}

import { allFree, type Box, boxOf, clash, inside } from "../labels.ts";
import { widthOf } from "../measure.ts";
import { type TextRun, type TextSpot, textLine } from "../svg.ts";
import { type BedContent, groundBoxes, isMarked } from "./bed-content.ts";
import { type DrawnBlock, type DrawnRows, headOf } from "./draw-rows.ts";
import { markBoxes } from "./marks.ts";
import type { Place } from "./places.ts";

/** Names written in a bed, the stretches of their own rows that they lie on [px], and those that found no room. */
export type BlockNames = {
  readonly svg: readonly string[];
  readonly named: number;
  readonly covered: readonly Box[];
  readonly left: readonly string[];
};

/**
 * The name of each block above its rows, else behind them, else on them where they are sown by the row: what is counted is
 * never hidden. None touches what is drawn of another, or its name.
 */
export function nameBlocks(
  shown: readonly DrawnBlock[],
  strips: readonly Box[],
  content: BedContent,
): BlockNames {
  const svg: string[] = [];
  const names: Box[] = [];
  const covered: Box[] = [];
  const left: string[] = [];
  for (const block of shown) {
    const { name } = block.place.standing;
    const others = shown.filter((other) => other !== block).flatMap(({ rows }) => rows.extents);
    const run = runOf(block.place, content);
    const spots = groundBoxes(block.place, content).flatMap((box) => spotsFor(block, box, content));
    const frames = shown
      .filter((other) => other !== block)
      .flatMap((other) => markBoxes(other, content));
    const own = markBoxes(block, content);
    const taken = [...others, ...names, ...frames];
    const spot = spots.find((each) => {
      const box = boxOf(each, [run]);
      const cut = own.some((frame) => clash(frame, box) && !inside(box, frame));
      return !cut && strips.some((strip) => allFree([box], strip, taken));
    });
    if (spot) {
      const box = boxOf(spot, [run]);
      svg.push(textLine(spot, run));
      names.push(box);
      covered.push(fromItsLeft(box, block, content));
    } else left.push(name);
  }
  const named = svg.length;
  const free = freeSpot(shown, strips, content);
  const run = { text: "free", ink: "pencil", look: "aside" } as const;
  if (free && allFree([boxOf(free, [run])], free.strip, names)) svg.push(textLine(free, run));
  return { svg, named, covered, left };
}

/** A name's room on its own rows: no stump of a row stands left of it. */
function fromItsLeft(box: Box, { place }: DrawnBlock, content: BedContent): Box {
  const ground = groundBoxes(place, content).find(
    ({ y, heightPx }) => y < box.y + box.heightPx && box.y < y + heightPx,
  );
  const x = ground && box.x - ground.x < 2 * LEFT_PX ? Math.min(ground.x, box.x) : box.x;
  return { ...box, x, widthPx: box.x + box.widthPx - x + 2 };
}

/** What is marked is written stronger. */
function runOf({ standing }: Place, { note }: BedContent): TextRun {
  return { text: standing.name, ink: "ink", look: isMarked(standing, note) ? "name" : "plain" };
}

/** Space left of a name [px]. */
const LEFT_PX = 5;

/** Where the name of a block may stand, its box in one of the bed's strips given. */
function spotsFor(
  { place: { standing, block }, rows }: DrawnBlock,
  box: Box,
  content: BedContent,
): readonly TextSpot[] {
  const { wordsPx: sizePx } = content;
  const wide = widthOf(standing.name, sizePx);
  const at = (x: number, y: number): TextSpot => ({ x, y, sizePx, from: "start" });
  const middle = box.y + box.heightPx / 2 + sizePx * 0.28;
  const head = headOf(block, content);
  const above = box.y + Math.max(head, sizePx) - sizePx * 0.26;
  const end = box.x + box.widthPx - wide - LEFT_PX;
  const on = [at(box.x + LEFT_PX, middle), at(box.x + (box.widthPx - wide) / 2, middle)];
  const spots = [
    ...(head > 0 ? [at(box.x + LEFT_PX, above), at(end, above)] : []),
    ...behind(rows, box).map(({ x, y }) => at(x, y + sizePx * 0.28)),
    ...(standing.amount?.kind === "plants" ? [] : on),
  ];
  return spots;
}

/** Behind the last plant of the rows in a box, at the middle of them. */
function behind(
  { extents }: DrawnRows,
  ground: Box,
): readonly { readonly x: number; readonly y: number }[] {
  const here = extents.filter(({ y }) => y >= ground.y && y <= ground.y + ground.heightPx);
  if (here.length === 0) return [];
  const x = Math.max(...here.map((box) => box.x + box.widthPx)) + LEFT_PX;
  const ys = here.map(({ y, heightPx }) => y + heightPx / 2);
  return [{ x, y: (Math.min(...ys) + Math.max(...ys)) / 2 }];
}

/** Where free ground is called so: below all that is drawn, where that is the matter and there is room for the word. */
function freeSpot(
  shown: readonly DrawnBlock[],
  strips: readonly Box[],
  { note, wordsPx: sizePx }: BedContent,
): (TextSpot & { readonly strip: Box }) | null {
  const [strip] = strips;
  if (note.freeCm === null || !strip) return null;
  const end = strip.y + strip.heightPx;
  const inStrip = shown.flatMap(({ rows }) => rows.extents).filter(({ y }) => y < end);
  const low = Math.max(strip.y, ...inStrip.map(({ y, heightPx }) => y + heightPx));
  if (end - low < sizePx * 1.4) return null;
  const y = (low + end) / 2 + sizePx * 0.28;
  return { x: strip.x + LEFT_PX, y, sizePx, from: "start", strip };
}

import type { Bed } from "../../../garden/model/index.ts";
import { element } from "../svg.ts";
import { type BedContent, boxesOf, type DrawnBed, isMarked } from "./bed-content.ts";
import { drawRows, rowsOn, widerFor } from "./draw-rows.ts";
import { sizeOf } from "./ground.ts";
import { drawMark } from "./marks.ts";
import { nameBlocks } from "./names.ts";
import { type Place, placesIn } from "./places.ts";
import { standsOn } from "./standing.ts";
import { walls } from "./walls.ts";

/** A bed on the ground: its soil and edge, the rows that stand in it on the day, and their names. */
export function drawBed(bed: Bed, content: BedContent): DrawnBed {
  const shown = shownPlaces(bed, content).map((place) => ({ place, rows: rowsOn(place, content) }));
  const strips = boxesOf({ x: 0, y: 0, ...sizeOf(bed) }, content);
  const names = nameBlocks(shown, strips, content);
  return {
    svg: [
      walls(bed, content),
      ...shown.flatMap(({ rows }) => drawRows(rows, names.covered)),
      ...shown.flatMap((block) => drawMark(block, content)),
      ...(names.svg.length > 0 ? [element("g", { class: "in-bed" }, ...names.svg)] : []),
    ],
    named: names.named,
    unnamed: names.left,
  };
}

/** The places of what stands on the day, and of what is marked though it does not stand yet. */
export function shownPlaces(bed: Bed, content: BedContent): readonly Place[] {
  const { standing, note, day } = content;
  const wider = widerFor(content);
  const places = placesIn(standing, sizeOf(bed), { wider, freeCm: note.freeCm ?? 0 });
  return places.filter(({ standing: each }) => standsOn(each, day) || isMarked(each, note));
}

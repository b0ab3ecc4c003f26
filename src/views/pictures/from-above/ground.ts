import type { Bed } from "../../../garden/model/index.ts";
import type { BedSize } from "./block.ts";

/** A length on the ground [cm] times this is its length in the drawing [px]. */
export type GroundScale = { readonly pxPerCm: number };

/** The room that beds have to stand in [px]. */
export type ShelfRoom = { readonly widthPx: number; readonly gapPx: number };

/** Size of a bed that says none [cm]. Source: house rule, a common raised bed; the drawing says that it is a stand-in. */
const STAND_IN: BedSize = { lengthCm: 240, widthCm: 120 };

/** The size of a bed [cm], a stand-in where it says none. */
export function sizeOf({ lengthCm, widthCm }: Bed): BedSize {
  return lengthCm && widthCm ? { lengthCm: lengthCm.si, widthCm: widthCm.si } : STAND_IN;
}

/** Whether the plan says how large a bed is; of bags it always does. */
export function isSized({ bags, lengthCm, widthCm }: Bed): boolean {
  return bags !== null || (lengthCm !== null && widthCm !== null);
}

/**
 * How a bed lies in the drawing [px]: in one strip, or in several below each other where it is longer than the sheet is
 * wide; `stripPx` is one of them. Bags lie in rows, `pitchPx` from middle to middle.
 */
export type Outline = {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly strips: number;
  readonly stripPx: number;
  readonly pitchPx: number;
};

/** Space between the strips of a bed that goes on below [px]. */
export const STRIP_GAP_PX = 7;

/** Distance of bags from middle to middle, as a share of what they are across. Source: house rule. */
const BAG_PITCH = 1.18;

/** The outline of a bed at a scale, in the width there is. */
export function outlineOf(bed: Bed, { pxPerCm }: GroundScale, { widthPx }: ShelfRoom): Outline {
  if (bed.bags) return bagsOutline(bed.bags, pxPerCm, widthPx);
  const { lengthCm, widthCm } = sizeOf(bed);
  const strips = Math.max(1, Math.ceil((lengthCm * pxPerCm) / widthPx - 1e-6));
  const stripPx = widthCm * pxPerCm;
  return {
    widthPx: Math.min(widthPx, lengthCm * pxPerCm),
    heightPx: strips * stripPx + (strips - 1) * STRIP_GAP_PX,
    strips,
    stripPx,
    pitchPx: 0,
  };
}

function bagsOutline(
  { across, count }: NonNullable<Bed["bags"]>,
  pxPerCm: number,
  widthPx: number,
): Outline {
  const pitchPx = across.si * pxPerCm * BAG_PITCH;
  const inRow = Math.max(1, Math.min(count, Math.floor(widthPx / pitchPx)));
  const strips = Math.ceil(count / inRow);
  return {
    widthPx: inRow * pitchPx,
    heightPx: strips * pitchPx,
    strips,
    stripPx: pitchPx,
    pitchPx,
  };
}

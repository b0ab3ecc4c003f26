import type { Bed } from "../../../garden/model/index.ts";
import { element, tenth } from "../svg.ts";
import type { BedContent } from "./bed-content.ts";
import { isSized, STRIP_GAP_PX, sizeOf } from "./ground.ts";

/**
 * Distance of a tunnel's hoops, of a greenhouse's bars, and width of a cold frame's lights [cm]. Source: house rule, about as
 * they are built.
 */
const [HOOPS_CM, BARS_CM, LIGHTS_CM] = [100, 60, 90];

type Ground = Pick<BedContent, "at" | "outline" | "pxPerCm">;

/** A bed's soil with its edge, as what it is: boards, glass, hoops, or dashed where its size is a stand-in. */
export function walls(bed: Bed, ground: Ground): string {
  const { at, outline } = ground;
  const wholePx = sizeOf(bed).lengthCm * ground.pxPerCm;
  const strips = Array.from({ length: outline.strips }, (_, i) => ({
    x: at.x,
    y: at.y + i * (outline.stripPx + STRIP_GAP_PX),
    width: Math.min(outline.widthPx, wholePx - i * outline.widthPx),
    height: outline.stripPx,
    i,
  }));
  return strips.map((strip) => stripOf(bed, strip, ground)).join("");
}

type Strip = Record<"x" | "y" | "width" | "height" | "i", number>;

function stripOf(bed: Bed, { i, ...box }: Strip, { outline, pxPerCm }: Ground): string {
  const edge = { class: "soil-line", "stroke-width": 1.6 };
  const ends = { begins: i === 0, ends: i === outline.strips - 1 };
  const dashed = isSized(bed) ? {} : { "stroke-dasharray": "6 4" };
  const glass = bed.kind === "greenhouse";
  return [
    element("rect", { class: "earth", ...box }),
    glass ? roofOf(bed, box, pxPerCm) : hoopsOf(bed, box, pxPerCm),
    element("path", { ...edge, ...dashed, d: edgeOf(box, ends) }),
    glass ? element("rect", { ...edge, "stroke-width": 1, ...grown(box, 3) }) : "",
  ].join("");
}

type Rect = Omit<Strip, "i">;

const grown = ({ x, y, width, height }: Rect, by: number): Rect => ({
  ...{ x: x - by, y: y - by },
  ...{ width: width + 2 * by, height: height + 2 * by },
});

/** The bars and ridge of a greenhouse, the hoops of a tunnel, or the lights of a cold frame and the edge they are hinged at. */
function roofOf(bed: Bed, box: Rect, pxPerCm: number): string {
  if (bed.house === "film") return across(box, HOOPS_CM * pxPerCm, "");
  const isFrame = bed.house === "frame";
  const y = isFrame ? box.y + HINGE_PX : box.y + box.height / 2;
  const d = `M${tenth(box.x)} ${tenth(y)}H${tenth(box.x + box.width)}`;
  return (
    across(box, (isFrame ? LIGHTS_CM : BARS_CM) * pxPerCm, "") +
    element("path", { class: "pencil-line", "stroke-width": 0.6, "stroke-opacity": "0.5", d })
  );
}

/** Where the hinges of a cold frame are, from its upper edge [px]. */
const HINGE_PX = 2.5;

/** The hoops of cloches that stand over a whole bed. */
function hoopsOf({ covers }: Bed, box: Rect, pxPerCm: number): string {
  return covers.includes("cloche") ? across(box, BARS_CM * pxPerCm, "3 3") : "";
}

/** Thin lines across a bed, as even as may be about so far apart [px]. */
function across({ x, y, width, height }: Rect, apartPx: number, dashes: string): string {
  const count = Math.max(1, Math.round(width / Math.max(8, apartPx)));
  const d = Array.from({ length: count - 1 }, (_, i) => {
    const at = x + ((i + 1) * width) / count;
    return `M${tenth(at)} ${tenth(y)}v${tenth(height)}`;
  }).join("");
  const look = { class: "pencil-line", "stroke-width": 0.6, "stroke-opacity": "0.5" };
  return element(
    "path",
    dashes === "" ? { ...look, d } : { ...look, "stroke-dasharray": dashes, d },
  );
}

/** The edge of a strip: straight at the ends of the bed, torn where it goes on in another strip. */
function edgeOf(
  { x, y, width, height }: Rect,
  { begins, ends }: { readonly begins: boolean; readonly ends: boolean },
): string {
  const [right, low] = [x + width, y + height];
  const teeth = Math.max(2, Math.round(height / 7));
  const torn = (at: number, down: boolean) =>
    Array.from({ length: teeth }, (_, i) => {
      const share = (i + 1) / teeth;
      const toY = down ? y + share * height : low - share * height;
      const middle = down ? toY - height / teeth / 2 : toY + height / teeth / 2;
      return `L${tenth(at + (i % 2 === 0 ? 2.5 : -2.5))} ${tenth(middle)}L${tenth(at)} ${tenth(toY)}`;
    }).join("");
  const down = ends ? `V${tenth(low)}` : torn(right, true);
  const up = begins ? "Z" : torn(x, false);
  return `M${tenth(x)} ${tenth(y)}H${tenth(right)}${down}H${tenth(x)}${up}`;
}

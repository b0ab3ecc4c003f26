import { joinWords, type Measures, sayQuantity } from "../../../base/index.ts";
import type { Bed } from "../../../garden/model/index.ts";
import { plainLine } from "../svg.ts";
import { type BedDetails, detailsOf, namesIn } from "./details.ts";
import type { BedsSketch } from "./sketch.ts";

const HOUSES = { glass: "greenhouse", film: "tunnel", frame: "cold frame" } as const;

/** What a bed is and how large: `12 × 4 ft`, `6 of 16 in`, `tunnel, 30 × 10 ft`, `no size given`. */
export function sizeText({ bags, lengthCm, widthCm, house }: Bed, measures: Measures): string {
  const kind = house === null ? "" : `${HOUSES[house]}, `;
  if (bags) {
    const across = sayQuantity(bags.across, measures);
    return bags.count === 1 ? `${across} across` : `${bags.count} of ${across}`;
  }
  if (!lengthCm || !widthCm) return `${kind}no size given`;
  const [length, width] = [sayQuantity(lengthCm, measures), sayQuantity(widthCm, measures)];
  const unit = width.slice(width.lastIndexOf(" "));
  return `${kind}${length.endsWith(unit) ? length.slice(0, -unit.length) : length} × ${width}`;
}

/** A bed in words: its name and size, and what stands in it and is said of it. */
export type BedInWords = { readonly name: string; readonly text: string };

/** The drawing in words: each bed that it shows in its order, then what stands in no bed. */
export function bedsInWords(sketch: BedsSketch): readonly BedInWords[] {
  const { plan } = sketch;
  const { beds, rest } = detailsOf(sketch);
  const told = beds.map((details) => ({
    name: `${plainLine(details.bed.name)}, ${sizeText(details.bed, plan.measures)}`,
    text: textOf(details, sketch, "Empty"),
  }));
  const text = textOf(rest, sketch, "");
  return text === "" ? told : [...told, { name: "In no bed", text }];
}

/** What stands there and is said of it; `none` where nothing does. */
export function textOf(
  details: BedDetails<Bed | null>,
  sketch: BedsSketch,
  none: "Empty" | "",
): string {
  const names = namesIn(details, sketch);
  const first = joinWords([...names.slice(0, 1), ...names.slice(1).map(asInSentence)]) || none;
  return [...(first === "" ? [] : [`${first}.`]), ...details.note.lines].join(" ");
}

/** A name within a sentence: `beets`. */
export function asInSentence(name: string): string {
  return name.charAt(0).toLowerCase() + name.slice(1);
}

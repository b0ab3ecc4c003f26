import { celsius, degreesC } from "../../base/index.ts";
import { type Source, saySource } from "../../crops/index.ts";
import type { TextPiece } from "./sentence.ts";

/** A temperature as a source gives it. */
const FAHRENHEIT = /(?<degrees>\d+(?:\.\d+)?) °F/g;

/** Where a figure is from, its temperatures as quantities, so that a household reads them in its own degrees. */
export function sourcePieces(source: Source): readonly TextPiece[] {
  const text = saySource(source);
  const pieces: TextPiece[] = [];
  let from = 0;
  for (const found of text.matchAll(FAHRENHEIT)) {
    pieces.push(text.slice(from, found.index), {
      quantity: degreesC(celsius(Number(found.groups?.degrees))),
    });
    from = found.index + found[0].length;
  }
  return [...pieces, text.slice(from)].filter((piece) => piece !== "");
}

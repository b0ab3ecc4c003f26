import { frostPicture } from "./frost.ts";
import { seasonPicture } from "./season.ts";
import type { PictureSubject, Sketch } from "./sketch.ts";
import { soilPicture } from "./soil.ts";
import { weatherPicture } from "./weather.ts";

/** One picture of a garden's year as the text of an SVG file; equal input gives equal bytes. */
export function drawPicture(subject: PictureSubject, sketch: Sketch): string {
  switch (subject) {
    case "frost":
      return frostPicture(sketch);
    case "soil":
      return soilPicture(sketch);
    case "season":
      return seasonPicture(sketch);
    case "weather":
      return weatherPicture(sketch);
  }
}

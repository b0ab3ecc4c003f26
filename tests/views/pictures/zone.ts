import { drawBeds } from "../../../src/views/pictures/from-above/picture.ts";
import { drawPicture } from "../../../src/views/pictures/picture.ts";
import { QUARRY } from "../../gardens.ts";
import { sketchOf } from "./drawn.ts";
import { bedsSketchOf } from "./from-above/beds.ts";

/** The beds and three pictures one behind the other, made in this process's own time zone. */
export function allPictures(): string {
  const sketch = sketchOf(QUARRY);
  const beds = drawBeds(bedsSketchOf(QUARRY, "2027-06-20"))?.svg ?? "";
  const rest = (["frost", "soil", "season"] as const)
    .map((each) => drawPicture(each, sketch))
    .join("");
  return `${beds}${rest}`;
}

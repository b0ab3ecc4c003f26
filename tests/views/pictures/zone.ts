import { drawPicture } from "../../../src/views/pictures/picture.ts";
import { QUARRY } from "../../gardens.ts";
import { sketchOf } from "./drawn.ts";

/** All three pictures one behind the other, made in this process's own time zone. */
export function allPictures(): string {
  const sketch = sketchOf(QUARRY);
  return (["frost", "soil", "season"] as const).map((each) => drawPicture(each, sketch)).join("");
}

import { expect, test } from "vitest";
import { clash, inside } from "../../../src/views/pictures/labels.ts";
import { drawPicture } from "../../../src/views/pictures/picture.ts";
import { drawnFor, samples } from "../../depth.ts";
import { anyPlan } from "../../properties/plans.ts";
import { labelsOf, read, sketchOf, viewOf } from "./drawn.ts";

/** What is wrong with a picture's words: those that leave it, and pairs that touch. */
function wrongIn(svg: string): readonly string[] {
  const tag = read(svg);
  const whole = { x: 0, y: 0, ...viewOf(tag) };
  const labels = labelsOf(tag);
  const touching = labels.flatMap((one, i) =>
    labels
      .slice(i + 1)
      .flatMap((two) => (clash(one.box, two.box) ? [`${one.text} | ${two.text}`] : [])),
  );
  return [...labels.filter(({ box }) => !inside(box, whole)).map(({ text }) => text), ...touching];
}

test("pictures of any garden are well formed, and their words keep apart", {
  timeout: 60_000,
}, () => {
  const roll = drawnFor(11);
  for (let i = 0; i < samples(12, 4); i++) {
    const text = anyPlan(roll);
    const on = `2027-${String(1 + Math.floor(roll() * 12)).padStart(2, "0")}-15`;
    for (const subject of ["frost", "soil", "season"] as const)
      for (const form of ["phone", "page"] as const) {
        const svg = drawPicture(subject, sketchOf(text, form, on));
        expect(wrongIn(svg), `${subject} ${form} ${on}\n${text}`).toEqual([]);
        expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      }
  }
});

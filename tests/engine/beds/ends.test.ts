import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/days/day.ts";
import { isTender } from "../../../src/crops/crops.ts";
import type { Life } from "../../../src/engine/beds/planting-record.ts";
import { killingFrost } from "../../../src/engine/climate/frost.ts";
import { plantingsIn } from "../../../src/engine/year.ts";
import { drawnFor, samples } from "../../depth.ts";
import { QUARRY } from "../../gardens.ts";
import { anyPlan } from "../../properties/plans.ts";
import { GARDENS, on, sketchOf } from "../../views/pictures/drawn.ts";

const lives = (text: string, crop: string): readonly Life[] =>
  plantingsIn(sketchOf(text).year).find(({ planting }) => planting.crop === crop)?.lives ?? [];

test("what frost kills goes with the frosts of autumn, between the early date and the late one", () => {
  const [tomato] = lives(QUARRY, "tomato");
  const frost = sketchOf(QUARRY).plan.site.firstFrost;
  expect([tomato?.ends, tomato?.gone]).toEqual([frost?.early, frost?.late]);
  const [shore] = lives(GARDENS["no frost"] ?? "", "tomato");
  expect(shore?.gone).toBeGreaterThan(shore?.ends ?? 0);
});

describe("what does not ripen here", () => {
  const text = (GARDENS["two months without frost"] ?? "").replace(
    "- carrot\n",
    "- carrot: 110 days\n",
  );
  const frost = sketchOf(text).plan.site.firstFrost?.usual ?? on("2027-01-01");

  test("is not ready, and grows and fades until what ends it", () => {
    const [corn] = lives(text, "corn");
    expect([corn?.ready, corn?.gone]).toEqual([false, frost]);
    expect(corn?.ends).toBe(corn?.full);
    const [carrot] = lives(text, "carrot");
    expect(carrot?.ready).toBe(false);
    expect(carrot?.gone).toBeGreaterThan(frost);
    expect(carrot?.gone).toBeLessThanOrEqual(plus(frost, 28));
  });

  test("is told apart from what is merely not told", () => {
    const [told] = lives(QUARRY, "carrot");
    const [untold] = lives(QUARRY.replace("under a board", "without harvest"), "carrot");
    expect([told?.ready, untold?.ready]).toEqual([true, true]);
  });
});

test("nothing that frost does not kill is drawn past the last day worth a harvest", () => {
  const text = GARDENS["two months without frost"] ?? "";
  const { plan } = sketchOf(text);
  const grown = plantingsIn(sketchOf(text).year).filter(({ crop }) => crop && !isTender(crop));
  const { firstFrost } = plan.site;
  if (!firstFrost) throw new RangeError("the garden has frost");
  const killing = killingFrost(firstFrost, plan.site.killingFrost);
  expect(grown.flatMap((each) => each.lives).length).toBeGreaterThan(5);
  for (const { lives: own } of grown)
    for (const { ends, gone } of own)
      expect(gone).toBeLessThanOrEqual(Math.max(plus(killing, 14), plus(ends, 4)));
});

test("a planting is ready only where the feed tells its harvest, unless the plan leaves that out", () => {
  const roll = drawnFor(23);
  let [ready, not] = [0, 0];
  for (let i = 0; i < samples(40, 24); i++) {
    const text = i < 4 ? (Object.values(GARDENS)[i + 2] ?? "") : anyPlan(roll);
    const sketch = sketchOf(text);
    for (const { planting, lives: own } of plantingsIn(sketch.year)) {
      const told = sketch.year.scheduled.some(
        ({ task }) => task.subject.key === planting.key && task.practice === "harvest",
      );
      const some = own.some((life) => life.ready);
      if (some) ready += 1;
      else not += 1;
      if (some && !planting.without.includes("harvest")) expect(told, text).toBe(true);
    }
  }
  expect(ready).toBeGreaterThan(20);
  expect(not).toBeGreaterThan(3);
});

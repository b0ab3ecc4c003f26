import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/days/day.ts";
import { occupancyIn, shareOn, spansOn } from "../../../src/engine/beds/occupancy.ts";
import { bedOf, grownIn } from "./gardens.ts";

function standing(...crops: readonly string[]) {
  const grown = grownIn(bedOf(crops));
  const bed = grown[0]?.plan.beds[0];
  return bed ? occupancyIn(bed, grown) : [];
}

describe("what stands in a bed", () => {
  test("takes half its room while it is young, all of it then, and none before and after", () => {
    const [carrot] = standing("carrot: 4 rows");
    const [span] = carrot?.spans ?? [];
    if (!carrot || !span) throw new Error("no carrot");
    expect(span.from < span.fullFrom && span.fullFrom < span.ends && span.ends < span.gone).toBe(
      true,
    );
    const shares = [plus(span.from, -1), span.from, span.fullFrom, span.ends].map((day) =>
      shareOn(carrot, day),
    );
    expect(shares).toEqual([0, carrot.share && carrot.share / 2, carrot.share, 0]);
    expect(spansOn(carrot, span.from)).toEqual([span]);
  });

  test("is there from the day it is set out, and not while it is raised", () => {
    const [tomato] = standing("tomato: 6 plants, from seed indoors");
    const [life] = grownIn(bedOf(["tomato: 6 plants, from seed indoors"]))[0]?.lives ?? [];
    expect(tomato?.spans[0]?.from).toBe(life?.out);
    expect(tomato?.spans[0]?.from).toBeGreaterThan(life?.starts ?? 0);
  });

  test("shares a row among its sowings, and plants not", () => {
    const most = (line: string) => {
      const [each] = standing(line);
      const days = each?.spans.flatMap(({ from, fullFrom: wide }) => [from, wide]) ?? [];
      return Math.max(...days.map((day) => (each && shareOn(each, day)) ?? 0)) / (each?.share ?? 1);
    };
    expect(most("lettuce: 2 rows, every 14 days, 4 times")).toBe(1);
    expect(most("lettuce: 8 plants, from seed outdoors, every 14 days, 4 times")).toBeGreaterThan(
      1,
    );
  });

  test("takes nobody knows how much where the plan gives no amount", () => {
    const [carrot] = standing("carrot");
    expect(carrot?.share).toBeNull();
    expect(carrot && shareOn(carrot, carrot.spans[0]?.from ?? plus(0 as never, 0))).toBeNull();
  });
});

import { describe, expect, test } from "vitest";
import { SOW_OUTDOORS } from "../../../src/engine/practices/sow-outdoors.ts";
import { isoDay, normalsOf, QUARRY } from "../../gardens.ts";
import { withCrops } from "../../winters.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { ending, toldWith } from "./garden.ts";
import { said, tasksIn, titles, told, windowsOf } from "./told.ts";

const COOL = Array<number>(12).fill(10);
/** A crop at 50 °F all year, so that the frost alone decides when it is sown. */
const sowing = (name: string, given: Given = {}) => {
  const { site } = growingOf(QUARRY, name).plan;
  const cool = { ...site, normals: normalsOf(COOL, COOL) };
  return growingOf(QUARRY, name, { plan: { site: cool }, ...given });
};

test("seeds that share a place keep its distance, however few come up", () => {
  const squash = toldWith(["pumpkin: 2 plants, from seed outdoors"]);
  expect(ending(squash, "/sow-outdoors/1").task.say[0]?.pieces).toContainEqual({
    quantity: expect.objectContaining({ si: 152.4 }),
  });
});

describe("sowing beets where they grow", () => {
  test("is three weeks before the last frost in warm soil, and may wait two", () => {
    expect(windowsOf(SOW_OUTDOORS, sowing("beet"))).toEqual(["1 04-15 04-15 04-29"]);
    expect(titles(tasksIn(SOW_OUTDOORS, sowing("beet")))).toEqual(["Sow beets [bed]"]);
  });

  test("waits for the soil in the lane", () => {
    const lane = growingOf(QUARRY, "beet");
    expect(said(tasksIn(SOW_OUTDOORS, lane)[0])).toContain("The soil should have warmed to 45 °F.");
  });

  test("says how deep, how far apart and how far the rows", () => {
    expect(said(tasksIn(SOW_OUTDOORS, sowing("beet"))[0])).toContain(
      "Sow ½ in deep, 1 to 2 in apart, rows 18 in apart. Water.",
    );
  });

  test("keeps them damp until they are up, and names the day to sow again by", () => {
    expect(said(tasksIn(SOW_OUTDOORS, sowing("beet"))[0])).toContain(
      "Keep it damp every day until it is up, about 2 May; nothing by 10 May: scratch and look, and sow again by 17 May.",
    );
  });

  test("names no such day where the soil is too cold to say", () => {
    const ice = Array<number>(12).fill(1);
    const site = { ...sowing("beet").plan.site, normals: normalsOf(ice, ice) };
    const cold = sowing("beet", { plan: { site } });
    expect(said(tasksIn(SOW_OUTDOORS, cold)[0])).not.toContain("sow again");
    expect(said(tasksIn(SOW_OUTDOORS, cold)[0])).toContain(
      "the season is too short to wait longer",
    );
  });

  test("says what belongs to its sowing, where the facts have that", () => {
    const { outdoors } = growingOf(QUARRY, "beet").crop;
    if (!outdoors) throw new Error("beets are sown outdoors");
    const block = { ...outdoors, how: "Sow in a block, not in one long row." };
    const of = (crop: NonNullable<Given["crop"]>) =>
      said(tasksIn(SOW_OUTDOORS, growingOf(QUARRY, "beet", { crop }))[0]);
    expect(of({ outdoors: block })).toContain("how: Sow in a block");
    expect(of({ outdoors: { ...outdoors, how: null } })).not.toContain("block");
  });

  test("goes by soil that crumbles", () => {
    expect(said(tasksIn(SOW_OUTDOORS, sowing("beet"))[0])).toContain(
      "sign: A handful of soil crumbles instead of sticking.",
    );
  });

  test("is on the day the gardener fixed, and on no other", () => {
    const fixed = sowing("beet", {
      planting: { fixed: { start: isoDay("2027-05-08"), out: null } },
    });
    expect(windowsOf(SOW_OUTDOORS, fixed)).toEqual(["1 05-08 05-08 05-08"]);
  });

  test("tells each test of its day", () => {
    expect(told(tasksIn(SOW_OUTDOORS, sowing("beet"))[0])).toContain(
      "3 weeks before that is 15 Apr",
    );
  });
});

describe("sowing carrots under a board", () => {
  test("lays it once they are watered", () => {
    const [task] = tasksIn(SOW_OUTDOORS, sowing("carrot"));
    expect(said(task)).toContain("Water, then lay the board over the row.");
    expect(task?.needs).toContain("a board as long as the row");
  });

  test("lays none where the plan says none", () => {
    const bare = sowing("carrot", { planting: { under: [] } });
    expect(said(tasksIn(SOW_OUTDOORS, bare)[0])).not.toContain("board");
  });
});

test("seed that sleeps in hot soil is sown in the evening and shaded, and not once it is cool", () => {
  const plan = (day: string) => withCrops("mediterranean", [`lettuce: 2 rows, sow ${day}`]);
  const text = (day: string) => said(tasksIn(SOW_OUTDOORS, growingOf(plan(day), "lettuce"))[0]);
  expect(text("10 Sep")).toContain("sow in the cool of evening, and shade the row until it is up");
  expect(text("20 Oct")).not.toContain("shade");
});

describe("nothing is sown outdoors", () => {
  test("but the first sowing, by this practice", () => {
    expect(tasksIn(SOW_OUTDOORS, { ...sowing("lettuce"), sowing: 2 })).toEqual([]);
  });

  test("that begins indoors, or is in since before", () => {
    expect(
      windowsOf(SOW_OUTDOORS, sowing("lettuce", { planting: { start: "seed indoors" } })),
    ).toEqual([]);
    const since = sowing("beet", { planting: { inSince: isoDay("2027-03-01") } });
    expect(windowsOf(SOW_OUTDOORS, since)).toEqual([]);
  });
});

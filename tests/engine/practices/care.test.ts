import { describe, expect, test } from "vitest";
import { CARE, careTasks, piecesOf } from "../../../src/engine/practices/care.ts";
import { growingOf } from "../growth/growing.ts";
import { ending, planWith, toldWith } from "./garden.ts";

describe("what a crop's own list asks for", () => {
  test("is told under seven names, all in the last pass", () => {
    expect(CARE).toHaveLength(7);
    for (const { pass } of CARE) expect(pass).toBe("rest");
  });

  test("counts from its stage: leeks are hilled three to four weeks after they are set out, then again", () => {
    const placed = toldWith(["leek: 40 plants, from seed indoors"]);
    const out = ending(placed, "/set-out/1").day;
    const first = ending(placed, "/fill-in-and-blanch/1").task.window;
    expect([first.earliest - out, first.due - out]).toEqual([21, 25]);
    expect(ending(placed, "/fill-in-and-blanch/2").day).toBeGreaterThan(first.due);
  });

  test("is nothing before the planting is in its place", () => {
    expect(careTasks(growingOf(planWith(["leek: 40 plants"]), "leek"), "feed")).toEqual([]);
  });

  test("is dropped where the plan goes without it", () => {
    const placed = toldWith(["leek: 40 plants, from seed indoors, without feeding"]);
    expect(placed.filter(({ task }) => task.practice === "feed")).toEqual([]);
  });

  test("keeps lengths and warmth apart from words, for the household's units", () => {
    expect(piecesOf("Feed it.")).toEqual(["Feed it."]);
    expect(piecesOf(["To ", { cm: [5, 5] }, "."])).toHaveLength(3);
    expect(piecesOf([{ tempC: 14 }])[0]).toHaveProperty("quantity");
  });
});

import { describe, expect, test } from "vitest";
import { STAKE_AND_TRAIN } from "../../../src/engine/practices/stake-and-train.ts";
import { ending, toldWith } from "./garden.ts";

describe("what a crop climbs", () => {
  test("stands on the day it is sown, and not a week later", () => {
    const placed = toldWith(["pole bean: 1 row"]);
    const sown = ending(placed, "/sow-outdoors/1").day;
    const { window } = ending(placed, "/stake-and-train/support").task;
    expect([window.earliest, window.due, window.latest]).toEqual([sown, sown, sown + 7]);
  });

  test("belongs to setting out where plants go in", () => {
    const placed = toldWith(["pole bean: 1 row", "tomato: 6 plants, bought"]);
    expect(ending(placed, "tomato/set-out/1").task.needs).toContain(
      "a stake or cage for each plant",
    );
    expect(placed.filter(({ task }) => task.id.endsWith("tomato/stake-and-train/support"))).toEqual(
      [],
    );
  });

  test("is nothing for what stands by itself", () => {
    expect(STAKE_AND_TRAIN.name).toBe("stake and train");
    expect(toldWith(["beet: 1 row"]).filter(({ task }) => task.step === "support")).toEqual([]);
  });
});

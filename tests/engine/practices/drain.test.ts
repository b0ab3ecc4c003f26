import { describe, expect, test } from "vitest";
import { DRAIN } from "../../../src/engine/practices/drain.ts";
import { isoDay } from "../../gardens.ts";
import { ending, toldWith, wordsOf } from "./garden.ts";

describe("draining the lines", () => {
  test("comes before the usual first frost, where a bed has drip, and leaves backflow to the rules", () => {
    const drain = ending(
      toldWith(["beet: 1 row"], "    drip: 12 gal an hour\n"),
      "/garden/drain-the-lines/1",
    );
    expect(drain.task.window.due).toBe(isoDay("2027-09-29"));
    expect(wordsOf(drain)).toContain("backflow");
  });

  test("is nothing without drip", () => {
    expect(toldWith(["beet: 1 row"]).filter(({ task }) => task.practice === DRAIN.name)).toEqual(
      [],
    );
  });
});

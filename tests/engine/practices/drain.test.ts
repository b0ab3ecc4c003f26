import { describe, expect, test } from "vitest";
import { DRAIN } from "../../../src/engine/practices/drain.ts";
import { ending, toldWith, wordsOf } from "./garden.ts";
import { windows } from "./told.ts";

describe("draining the lines", () => {
  test("comes before the usual first frost, where a bed has drip, and leaves backflow to the rules", () => {
    const drain = ending(
      toldWith(["beet: 1 row"], "    drip: 12 gal an hour\n"),
      "/garden/drain-the-lines/1",
    );
    expect(windows([drain.task])).toEqual(["1 09-19 09-29 10-09"]);
    expect(wordsOf(drain)).toContain("backflow");
  });

  test("is nothing without drip", () => {
    expect(toldWith(["beet: 1 row"]).filter(({ task }) => task.practice === DRAIN.name)).toEqual(
      [],
    );
  });
});

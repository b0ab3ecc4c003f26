import { describe, expect, test } from "vitest";
import { isAnswer } from "../../../src/garden/diary/answers.ts";
import { restoreTaps, tapsOf } from "../../../src/host/web/taps.ts";
import { inDays, placedOf } from "../../engine/schedule/given.ts";

const words = (placed: ReturnType<typeof placedOf>) =>
  tapsOf(placed, () => "Oda").taps.map((tap) => `${tap.words}: ${tap.says}`);

describe("the answers to a job", () => {
  test("are in its own words: done, not yet, left this year", () => {
    expect(words(placedOf())).toEqual([
      "Thinned today: done",
      "Not tall enough yet: not yet",
      "Leave it this year: left this year",
    ]);
    expect(words(placedOf({}, { practice: "scout" }))[0]).toBe("Done today: done");
  });

  test("of a board begin with the green that shows under it", () => {
    expect(words(placedOf({}, { practice: "board" }))[0]).toBe("I see green: up");
  });

  test("leave out no sowing for the year: that is the plan's to say", () => {
    const sets = { planting: "2027/beet", sowing: 1, act: "start" } as const;
    expect(words(placedOf({}, { practice: "sow outdoors", sets }))).toEqual([
      "Sown today: done",
      "Too cold or wet yet: not yet",
    ]);
  });

  test("of what is done are its undoing alone, beside who did it and when", () => {
    const done = { day: inDays(0), by: "oda" };
    expect(tapsOf(placedOf({ done }), () => "Oda")).toEqual({
      task: "2027/beet/thin/1",
      said: "Done 8 May, Oda.",
      taps: [{ words: "Undo", says: "undo: done" }],
    });
  });

  test("are all understood by the diary", () => {
    for (const practice of ["thin", "board", "harvest"])
      for (const { says } of tapsOf(placedOf({}, { practice }), () => "").taps)
        expect(isAnswer(says), says).toBe(true);
  });
});

test("a job that was left this year can be had back, and no other that is gone", () => {
  const line = (text: string, task = "2027/beet/thin/1") => ({
    ...{ id: 1, day: inDays(0), person: null, saidAt: 0 },
    ...{ text, task },
  });
  expect(restoreTaps([line("left this year")], "2027/beet/thin/1")).toEqual({
    task: "2027/beet/thin/1",
    said: "Left this year, said 8 May.",
    taps: [{ words: "Undo", says: "undo: left this year" }],
  });
  const back = [line("left this year"), line("undo: left this year")];
  expect(restoreTaps(back, "2027/beet/thin/1")).toBeNull();
  expect(restoreTaps([line("left this year")], "2027/carrot/thin/1")).toBeNull();
});

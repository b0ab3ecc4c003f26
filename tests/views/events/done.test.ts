import { describe, expect, test } from "vitest";
import {
  DONE_MARK,
  doneLines,
  openOnes,
  textWithDone,
  titleWithDone,
} from "../../../src/views/events/done.ts";
import { voiceOf } from "../../../src/views/events/sentences.ts";
import { inDays, placedOf, SATURDAY } from "../../engine/schedule/given.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const PLAN = planOf(QUARRY);
const VOICE = voiceOf(PLAN, "household");
const DONE = { day: SATURDAY, by: "oda" };
const thin = (object: string, done: { day: typeof SATURDAY; by: string | null } | null = null) =>
  placedOf({ done }, { id: object, title: { verb: "Thin", object, where: "bed" } });

test("what is open is what is not done", () => {
  const [beets, kale] = [thin("beets", DONE), thin("kale")];
  expect(openOnes([beets, kale])).toEqual([kale]);
});

describe("a title", () => {
  test("names what is open, and all with the mark where nothing is", () => {
    expect(titleWithDone([thin("beets", DONE), thin("kale")], PLAN)).toBe("Thin kale, Root bed");
    expect(titleWithDone([thin("beets", DONE), thin("kale", DONE)], PLAN)).toBe(
      `${DONE_MARK}Thin beets and kale, Root bed`,
    );
  });
});

describe("a text", () => {
  test("is how to do what is open, then what is done, by whom", () => {
    expect(textWithDone([thin("beets", DONE), thin("kale")], PLAN, VOICE).split("\n")).toEqual([
      "To one every three inches.",
      "Fine till Saturday 15 May.",
      "✓ Thin beets, Root bed. Done 8 May, Oda.",
    ]);
  });

  test("says to readers that it is done and not by whom", () => {
    const reader = voiceOf(PLAN, "reader");
    expect(textWithDone([thin("beets", DONE), thin("kale")], PLAN, reader)).toMatch(
      /Done 8 May\.$/,
    );
  });

  test("of what is all done says when, each on its day", () => {
    const other = { day: inDays(1), by: null };
    const text = textWithDone([thin("beets", DONE), thin("kale", other)], PLAN, VOICE);
    expect(text).toContain("Done 8 May, Oda.");
    expect(text).toContain("Done 9 May.");
    expect(text).not.toContain("Fine till");
  });

  test("has done ones alike in one line", () => {
    expect(
      doneLines([thin("beets", DONE), thin("kale", DONE), thin("leeks")], PLAN, VOICE),
    ).toEqual(["✓ Thin beets and kale, Root bed. Done 8 May, Oda."]);
  });
});

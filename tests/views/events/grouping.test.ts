import { describe, expect, test } from "vitest";
import {
  groupsAlike,
  groupsBy,
  inIdOrder,
  isAlikeTask,
  leadFirst,
} from "../../../src/views/events/grouping.ts";
import { inDays, placedOf, windowOf } from "../../engine/schedule/given.ts";

const beet = placedOf({}, { id: "2027/beet/thin/1" });
const carrot = placedOf({}, { id: "2027/carrot/thin/1" });
const ids = (group: readonly (typeof beet)[]) => group.map(({ task }) => task.id);

describe("tasks of one event", () => {
  test("are alike by practice, verb and people, whatever the crop", () => {
    expect(isAlikeTask(beet, carrot)).toBe(true);
    expect(isAlikeTask(beet, placedOf({ people: ["oda"] }))).toBe(false);
    expect(isAlikeTask(beet, placedOf({}, { practice: "weed" }))).toBe(false);
  });

  test("stand on one day, in the order of their first ones", () => {
    const later = placedOf({ day: inDays(1) }, { id: "2027/leek/thin/1" });
    expect(groupsAlike([carrot, later, beet], isAlikeTask).map(ids)).toEqual([
      ["2027/carrot/thin/1", "2027/beet/thin/1"],
      ["2027/leek/thin/1"],
    ]);
    expect([...groupsBy([carrot, later, beet], ({ day }) => day).values()].map(ids)).toEqual([
      ["2027/carrot/thin/1", "2027/beet/thin/1"],
      ["2027/leek/thin/1"],
    ]);
  });

  test("are led by the one that led before, else by the smallest id", () => {
    const led = { day: inDays(0), window: windowOf(7, 7), people: [], days: [], note: null };
    const before = { "2027/carrot/thin/1": { ...led, lead: true } };
    expect(ids(leadFirst([carrot, beet], {}))).toEqual(ids(inIdOrder([carrot, beet])));
    expect(ids(leadFirst([beet, carrot], before))[0]).toBe("2027/carrot/thin/1");
  });
});

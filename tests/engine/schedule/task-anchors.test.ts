import { describe, expect, test } from "vitest";
import { anchorKey } from "../../../src/engine/growth/anchors.ts";
import { withTaskAnchors } from "../../../src/engine/schedule/task-anchors.ts";
import { isoDay, QUARRY, tellOf } from "../../gardens.ts";

const told = (text: string) => tellOf(text, { on: "2027-05-25" }).scheduled;
const START = anchorKey("2027/carrot", 1, "start");

describe("the anchor of a placed task", () => {
  test("is the day it was placed on, with the task's own basis", () => {
    const placed = told(QUARRY);
    const sown = placed.find(({ task }) => task.id === "2027/carrot/sow-outdoors/1");
    expect(withTaskAnchors(new Map(), placed).get(START)).toEqual({
      day: sown?.day,
      from: "placed",
      basis: sown?.task.basis,
      task: "2027/carrot/sow-outdoors/1",
    });
    expect(sown?.task.basis).toContain("soil");
  });

  test("is the diary's once it is done, and hangs on having been seen alone", () => {
    const placed = told(`${QUARRY}diary:\n  - 2 May: carrots sown\n`);
    expect(withTaskAnchors(new Map(), placed).get(START)).toMatchObject({
      day: isoDay("2027-05-02"),
      from: "diary",
      basis: ["seen"],
    });
  });
});

test("what was known before stays, unless a task sets the same act", () => {
  const before = {
    day: isoDay("2027-01-01"),
    from: "given",
    basis: ["given"],
    task: null,
  } as const;
  const kept = anchorKey("2026/garlic", 1, "start");
  const all = withTaskAnchors(
    new Map([
      [kept, before],
      [START, before],
    ]),
    told(QUARRY),
  );
  expect(all.get(kept)).toBe(before);
  expect(all.get(START)?.from).toBe("placed");
});

import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { householdOf } from "../../../src/engine/schedule/household.ts";
import { withSownUnsaid } from "../../../src/engine/schedule/sown-unsaid.ts";
import type { Observation } from "../../../src/garden/diary/observation.ts";
import { QUARRY, tellOf } from "../../gardens.ts";
import { growingOf } from "../growth/growing.ts";
import { inDays, SATURDAY, taskOf, windowOf } from "./given.ts";

const startOf = (lines: readonly string[], id = "2027/carrot/sow-outdoors/1") => {
  const diary = `diary:\n${lines.map((line) => `  - ${line}\n`).join("")}`;
  const { scheduled } = tellOf(`${QUARRY}${diary}`, { on: "2027-01-02" });
  const start = scheduled.find(({ task }) => task.id === id);
  return start?.done ? `done ${isoOf(start.done.day)}` : start && isoOf(start.day);
};

const sow = taskOf({
  id: "2027/carrot/sow-outdoors/1",
  practice: "sow outdoors",
  window: windowOf(0, 14, "later", SATURDAY),
  sets: { planting: "2027/carrot", sowing: 1, act: "start" },
});
const contexts = [growingOf(QUARRY, "carrot")];
const upOn = (days: number): Observation => ({
  ...{ kind: "seen", day: inDays(days), planting: "2027/carrot", stage: "up", sowing: null },
});
const doneAt = (days: number) => [
  ...withSownUnsaid(new Map(), [sow], {
    ...{ observations: [upOn(days)], contexts },
    household: householdOf([], []),
  }).keys(),
];

describe("a row that is up and was never said to be sown", () => {
  test("was sown, as long ago as its seed took, and is not told to be sown again", () => {
    expect(startOf([])).toBe("2027-04-24");
    expect(startOf(["2027-04-26: carrots up"])).toMatch(/^done 2027-0[34]-/);
  });

  test("was sown before, where nobody was there to sow it between its day and the green", () => {
    const away = (line: string) => {
      const text = `${QUARRY}diary:\n  - ${line}\naway:\n  - everybody, 24 Apr to 7 May\n`;
      const { scheduled } = tellOf(text, { on: "2027-01-02" });
      const start = scheduled.find(({ task }) => task.id === "2027/carrot/sow-outdoors/1");
      return start?.done ? `done ${isoOf(start.done.day)}` : start && isoOf(start.day);
    };
    expect(away("3 May: carrots up")).toMatch(/^done 2027-04-/);
    expect(away("5 June: carrots up")).toBe("2027-05-08");
  });

  test("was sown on the day that the diary says, where it says one", () => {
    expect(startOf(["2027-04-10: sowed the carrots", "2027-04-28: carrots up"])).toBe(
      "done 2027-04-10",
    );
    expect(startOf(["2027-04-21: carrots up", "2027-05-02: sowed the carrots"])).toBe(
      "done 2027-05-02",
    );
  });

  test("leaves the garlic of this October, and a second sowing, to come", () => {
    expect(startOf(["2027-03-20: garlic up"], "2027/garlic/overwinter/plant")).toMatch(/^2027-10-/);
    expect(startOf(["2027-05-03: lettuce up"], "2027/lettuce/repeat/2")).toMatch(/^2027-0[56]-/);
  });

  test("is one that was due about then and can't have come up from its own day", () => {
    expect(doneAt(4)).toEqual([]);
    expect(doneAt(2)).toEqual([sow.id]);
    expect(doneAt(-45)).toEqual([sow.id]);
    expect(doneAt(-46)).toEqual([]);
  });
});

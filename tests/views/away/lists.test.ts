import { describe, expect, test } from "vitest";
import type { Task } from "../../../src/engine/practices/all.ts";
import { householdOf } from "../../../src/engine/schedule/household.ts";
import type { ScheduledTask } from "../../../src/engine/schedule/scheduled-task.ts";
import type { Absence } from "../../../src/garden/model/plan.ts";
import type { Leave } from "../../../src/views/away/leave.ts";
import { awayListFor, buildAwayLists } from "../../../src/views/away/lists.ts";
import { IMRE, inDays, personOf, placedOf, windowOf } from "../../engine/schedule/given.ts";

const ODA = personOf("oda");
const SPAN = { from: inDays(3), to: inDays(9) };
const ALL: Leave = { ...SPAN, away: ["imre", "oda"], home: [], alone: [SPAN] };
const ONE: Leave = { ...SPAN, away: ["imre"], home: ["oda"], alone: [] };

const placedFor = (leave: Leave, given: Partial<ScheduledTask>, task: Partial<Task> = {}) => {
  const absences: Absence[] = leave.away.map((person) => ({ person, ...SPAN }));
  const household = householdOf([IMRE, ODA], absences);
  return awayListFor(placedOf(given, task), leave, { household, today: inDays(-30) });
};
/** A window that ends so many days after SATURDAY, from so many before. */
const until = (days: number, before = 7) => windowOf(before, days);

describe("a job in the days of an absence", () => {
  const inside = { day: inDays(5) };

  test("is theirs who are at home and have it", () => {
    expect(placedFor(ONE, { ...inside, people: ["oda"] })).toBe("home");
    expect(placedFor(ONE, { ...inside, people: [] }, { rhythm: "warning" })).toBe("home");
  });

  test("is a neighbour's where nobody has it and it wants no knowledge", () => {
    for (const task of [
      { practice: "water", rhythm: "daily" },
      { practice: "harden off", rhythm: "timed" },
      { practice: "first frost", step: "warning", rhythm: "warning" },
      { practice: "harvest", kinds: ["picking"] },
    ] as const)
      expect(placedFor(ALL, inside, task), task.practice).toBe("neighbour");
  });

  test("waits where its last good day is after it", () => {
    expect(placedFor(ALL, { ...inside, window: until(10) })).toBe("waits");
    expect(placedFor(ALL, { ...inside, window: until(9) })).not.toBe("waits");
  });

  test("is done before where it may be, and is late where it may not", () => {
    expect(placedFor(ALL, { ...inside, window: until(8) })).toBe("before");
    expect(placedFor(ALL, { ...inside, window: windowOf(1, 2, "later", inDays(5)) })).toBe("back");
  });

  test("is a board off rather than on", () => {
    const board = { practice: "board", step: "off", harm: "tonight" } as const;
    expect(placedFor(ALL, { ...inside, window: until(20) }, board)).toBe("before");
    const later = windowOf(1, 9, "later", inDays(5));
    expect(placedFor(ALL, { ...inside, window: later }, board)).toBe("neighbour");
  });

  test("that tells only to wait, waits", () => {
    const notYet = { practice: "not yet", rhythm: "warning" } as const;
    expect(placedFor(ALL, { ...inside, window: until(5) }, notYet)).toBe("waits");
  });

  test("is in none once it is done", () => {
    expect(placedFor(ALL, { ...inside, done: { day: inDays(5), by: null } })).toBeNull();
  });
});

describe("a job before an absence", () => {
  const early = { day: inDays(0), people: ["imre"], window: until(6) };

  test("must not slip where its last good day falls into it", () => {
    expect(placedFor(ALL, early)).toBe("before");
    expect(placedFor(ALL, { ...early, window: until(12) })).toBeNull();
  });

  test("that harms little is told only where nobody else can do it", () => {
    expect(placedFor(ALL, early, { harm: "when you can" })).toBe("before");
    expect(placedFor(ONE, early, { harm: "when you can" })).toBeNull();
    expect(placedFor(ONE, early, { harm: "when you can", whose: "imre" })).toBe("before");
  });

  test("is not told weeks ahead, nor once its day is past, nor to another", () => {
    expect(placedFor(ALL, { ...early, day: inDays(-20), window: until(6, 30) })).toBeNull();
    expect(placedFor(ONE, { ...early, people: ["oda"] })).toBeNull();
    const household = householdOf([IMRE, ODA], []);
    expect(awayListFor(placedOf(early), ALL, { household, today: inDays(1) })).toBeNull();
  });

  test("is told whatever its last day where a row would die of it", () => {
    expect(placedFor(ALL, { ...early, window: until(0) }, { harm: "tonight" })).toBe("before");
  });
});

describe("a job after an absence", () => {
  const after = { day: inDays(12), people: ["imre"] };

  test("that was due in it waits while it does no harm, and is late else", () => {
    expect(placedFor(ALL, { ...after, window: windowOf(2, 9, "later", inDays(5)) })).toBe("waits");
    expect(placedFor(ALL, { ...after, window: windowOf(2, 4, "later", inDays(5)) })).toBe("back");
  });

  test("that was due after it is none of its", () => {
    expect(placedFor(ALL, { ...after, window: windowOf(2, 4, "later", inDays(11)) })).toBeNull();
  });

  test("of watering is a neighbour's where more than half its week is empty", () => {
    const water = { practice: "water", rhythm: "daily" } as const;
    const week = (due: number) => ({
      ...after,
      day: inDays(due + 6),
      window: windowOf(0, 6, "earlier", inDays(due)),
    });
    expect(placedFor(ALL, week(6), water)).toBe("neighbour");
    expect(placedFor(ALL, week(7), water)).toBe("waits");
  });
});

test("lists hold something for each of them", () => {
  expect(buildAwayLists((list) => [list])).toEqual({
    before: ["before"],
    home: ["home"],
    neighbour: ["neighbour"],
    waits: ["waits"],
    back: ["back"],
  });
});

import { describe, expect, test } from "vitest";
import type { Day } from "../../../src/base/days/day.ts";
import { doneTasksOf } from "../../../src/engine/schedule/done.ts";
import type { Observation } from "../../../src/garden/diary/observation.ts";
import { inDays, SATURDAY, taskOf, windowOf } from "./given.ts";

function line(given: {
  readonly practice: string;
  readonly step?: string;
  readonly day?: Day;
  readonly by?: string;
  readonly planting?: string;
}): Observation {
  return {
    kind: "done",
    day: given.day ?? SATURDAY,
    planting: given.planting ?? "2027/beet",
    practice: given.practice,
    step: given.step ?? null,
    by: given.by ?? null,
  };
}

const thin = (step: string, due: Day) =>
  taskOf({ id: `2027/beet/thin/${step}`, step, window: windowOf(7, 7, "later", due) });
const sowing = (number: number) =>
  taskOf({
    id: number === 1 ? "2027/beet/sow-outdoors/1" : `2027/beet/repeat/${number}`,
    practice: number === 1 ? "sow outdoors" : "repeat",
    step: String(number),
    window: windowOf(0, 14, "later", inDays(14 * (number - 1))),
    sets: { planting: "2027/beet", sowing: number, act: "start" },
  });
const ids = (done: ReadonlyMap<string, unknown>) => [...done.keys()];

describe("a line of the diary", () => {
  test("does the task of its planting and practice, on its day and by whom it says", () => {
    const done = doneTasksOf([thin("1", SATURDAY)], [line({ practice: "thin", by: "oda" })]);
    expect(done.get("2027/beet/thin/1")).toEqual({ day: SATURDAY, by: "oda" });
  });

  test("without a step means the earliest due one", () => {
    const tasks = [thin("2", inDays(20)), thin("1", SATURDAY)];
    expect(ids(doneTasksOf(tasks, [line({ practice: "thin" })]))).toEqual(["2027/beet/thin/1"]);
  });

  test("means the next one where an earlier line has taken the first", () => {
    const tasks = [thin("1", SATURDAY), thin("2", inDays(20))];
    const lines = [line({ practice: "thin", day: inDays(22) }), line({ practice: "thin" })];
    expect(doneTasksOf(tasks, lines).get("2027/beet/thin/2")?.day).toBe(inDays(22));
  });

  test("about a bed or the garden means the job that is due nearest, and none long before", () => {
    const water = [0, 7, 14].map((days) =>
      taskOf({
        id: `2027/garden/water/week-${days}`,
        subject: { kind: "garden", key: "2027/garden" },
        practice: "water",
        step: `week-${days}`,
        window: windowOf(3, 3, "later", inDays(days)),
      }),
    );
    const watered = (...days: readonly number[]) =>
      ids(
        doneTasksOf(
          water,
          days.map((n) => line({ practice: "water", planting: "2027/garden", day: inDays(n) })),
        ),
      );
    expect(watered(8)).toEqual(["2027/garden/water/week-7"]);
    expect(watered(8, 9)).toEqual(["2027/garden/water/week-7", "2027/garden/water/week-14"]);
    expect(watered(-17)).toEqual(["2027/garden/water/week-0"]);
    expect(watered(-18)).toEqual([]);
  });

  test("that seed was sown in boxes does the sowing, and that lids were opened does not", () => {
    const sown = taskOf({
      id: "2027/beet/winter-sow/1",
      practice: "winter-sow",
      step: "1",
      sets: { planting: "2027/beet", sowing: 1, act: "start" },
    });
    expect(ids(doneTasksOf([sown], [line({ practice: "winter-sow" })]))).toEqual([sown.id]);
    expect(ids(doneTasksOf([sown], [line({ practice: "winter-sow", step: "lids" })]))).toEqual([]);
  });

  test("with a step means that step", () => {
    const tasks = [thin("1", SATURDAY), thin("2", inDays(20))];
    expect(ids(doneTasksOf(tasks, [line({ practice: "thin", step: "2" })]))).toEqual([
      "2027/beet/thin/2",
    ]);
  });

  test("finds the step of a later sowing by its end", () => {
    const task = taskOf({
      id: "2027/beet/board/sowing-2-off",
      practice: "board",
      step: "sowing-2-off",
    });
    expect(ids(doneTasksOf([task], [line({ practice: "board", step: "off" })]))).toEqual([task.id]);
  });

  test("does nothing for another planting", () => {
    const other = line({ practice: "thin", planting: "2027/carrot" });
    expect(doneTasksOf([thin("1", SATURDAY)], [other]).size).toBe(0);
  });

  test("does nothing for another practice", () => {
    expect(doneTasksOf([thin("1", SATURDAY)], [line({ practice: "weed" })]).size).toBe(0);
  });

  test("that only saw something does nothing", () => {
    const seen: Observation = {
      kind: "seen",
      day: SATURDAY,
      planting: "2027/beet",
      stage: "up",
      sowing: null,
    };
    expect(doneTasksOf([thin("1", SATURDAY)], [seen]).size).toBe(0);
  });
});

describe("a line that says sown or planted", () => {
  test("means whatever puts that planting into the soil", () => {
    const indoors = taskOf({
      id: "2027/tomato/sow-indoors/1",
      subject: { kind: "planting", key: "2027/tomato" },
      practice: "sow indoors",
      sets: { planting: "2027/tomato", sowing: 1, act: "start" },
    });
    const said = line({ practice: "sow outdoors", planting: "2027/tomato" });
    expect(ids(doneTasksOf([indoors], [said]))).toEqual([indoors.id]);
  });

  test("with a number means that sowing", () => {
    const said = line({ practice: "repeat", step: "2" });
    expect(ids(doneTasksOf([sowing(1), sowing(2)], [said]))).toEqual(["2027/beet/repeat/2"]);
  });

  test("twice means the first and then the second sowing", () => {
    const lines = [
      line({ practice: "sow outdoors" }),
      line({ practice: "sow outdoors", day: inDays(15) }),
    ];
    const done = doneTasksOf([sowing(1), sowing(2)], lines);
    expect(done.get("2027/beet/sow-outdoors/1")?.day).toBe(SATURDAY);
    expect(done.get("2027/beet/repeat/2")?.day).toBe(inDays(15));
  });

  test("does not mulch the garlic that was planted", () => {
    const mulch = taskOf({
      id: "2027/garlic/overwinter/mulch",
      subject: { kind: "planting", key: "2027/garlic" },
      practice: "overwinter",
      step: "mulch",
    });
    const said = line({ practice: "overwinter", step: "plant", planting: "2027/garlic" });
    expect(doneTasksOf([mulch], [said]).size).toBe(0);
  });
});

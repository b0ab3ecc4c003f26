import { describe, expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import type { Observation } from "../../../src/garden/diary/observation.ts";
import { parseDiary } from "../../../src/garden/diary/parse.ts";
import { isActObservation, resolveConflicts } from "../../../src/garden/diary/resolve-conflicts.ts";
import { PLAN } from "../plan/canonical.ts";

const at = { file: "f", line: 1, column: 1 };
const factsOf = (...lines: readonly (readonly [number, string])[]) =>
  parseDiary(
    lines.map(([date, text]) => ({ day: dayOrThrow(2027, 5, date), text, at })),
    [PLAN],
    PRACTICES,
  );
const settled = (...lines: readonly (readonly [number, string])[]) =>
  resolveConflicts(factsOf(...lines), [PLAN], PRACTICES);
const kinds = (...lines: readonly (readonly [number, string])[]) =>
  settled(...lines).observations.map(
    ({ kind, day }) => `${kind} ${day - dayOrThrow(2027, 5, 0 + 1) + 1}`,
  );
const remarks = (...lines: readonly (readonly [number, string])[]) =>
  settled(...lines).remarks.map(({ is }) => is);

describe("of two lines that contradict each other the later counts", () => {
  test("what was seen, and then was not there after all", () => {
    expect(kinds([20, "carrots up"], [22, "carrots not up"])).toEqual(["not yet 22"]);
    expect(remarks([20, "carrots up"], [22, "carrots not up"])).toEqual([
      "no longer holds: 22 May says otherwise",
    ]);
  });

  test("by its day, wherever it is written", () => {
    expect(kinds([22, "carrots not up"], [20, "carrots up"])).toEqual(["not yet 22"]);
    expect(kinds([20, "carrots not up"], [22, "carrots up"])).toEqual(["not yet 20", "seen 22"]);
  });

  test("and on one day by where it is written", () => {
    expect(kinds([20, "carrots up"], [20, "carrots not up"])).toEqual(["not yet 20"]);
    expect(kinds([20, "carrots not up"], [20, "carrots up"])).toEqual(["not yet 20", "seen 20"]);
  });

  test("what was raised, once its plants are bought, and what was lost, once it is sown again", () => {
    const { observations } = settled(
      [2, "tomatoes sown"],
      [9, "tomatoes up"],
      [12, "bought 6 tomato plants"],
      [20, "slugs ate the beets"],
      [22, "sowed the beets again"],
    );
    expect(observations.map(({ kind }) => kind)).toEqual(["bought", "failed", "done"]);
  });

  test("a stage seen twice, but for what is sown again", () => {
    expect(kinds([20, "carrots up"], [24, "carrots up"])).toEqual(["seen 24"]);
    expect(kinds([20, "lettuce up"], [24, "lettuce up"])).toEqual(["seen 20", "seen 24"]);
  });
});

describe("leaving a job", () => {
  const left = (task: string, date: number): Observation => ({
    kind: "left",
    day: dayOrThrow(2027, 6, date),
    planting: "beets",
    practice: "thin",
    task,
    text: "left this year",
  });
  const tasks = (...facts: readonly Observation[]) =>
    resolveConflicts(facts, [PLAN], PRACTICES).observations.map((fact) =>
      "task" in fact ? fact.task : null,
    );

  test("leaves another job of its practice left", () => {
    expect(tasks(left("beets/thin/1", 1), left("beets/thin/2", 2))).toEqual([
      "beets/thin/1",
      "beets/thin/2",
    ]);
  });

  test("twice is once", () => {
    expect(tasks(left("beets/thin/1", 1), left("beets/thin/1", 2))).toEqual(["beets/thin/1"]);
  });
});

describe("a line taken back", () => {
  test("is the newest before it that said the same", () => {
    expect(kinds([20, "carrots up"], [21, "undo: carrots up"])).toEqual([]);
    expect(kinds([3, "beets thinned"], [9, "beets thinned"], [9, "undo: beets thinned"])).toEqual([
      "done 3",
    ]);
  });

  test("that nobody said is told", () => {
    expect(remarks([21, "undo: carrots up"])).toEqual(["nothing before it said so"]);
    const tapped = { task: "2027/beet/thin/1", by: null };
    const lines = [
      { day: dayOrThrow(2027, 5, 3), text: "done", at, answers: tapped },
      { day: dayOrThrow(2027, 5, 4), text: "undo: beets thinned", at },
    ];
    expect(
      resolveConflicts(parseDiary(lines, [PLAN], PRACTICES), [PLAN], PRACTICES).observations,
    ).toEqual([]);
  });
});

describe("what failed", () => {
  test("takes what was done and seen of it along", () => {
    expect(kinds([3, "carrots sown"], [20, "carrots up"], [28, "carrots failed"])).toEqual([
      "failed 28",
    ]);
    expect(kinds([28, "carrots failed"], [30, "carrots sown"])).toEqual(["failed 28", "done 30"]);
  });

  test("of one sowing leaves the others", () => {
    expect(kinds([20, "lettuce 1 up"], [24, "lettuce 2 up"], [28, "lettuce 2 failed"])).toEqual([
      "seen 20",
      "failed 28",
    ]);
  });
});

describe("what cannot be so", () => {
  test("is told: work on what was lost, sown after it was up", () => {
    expect(remarks([10, "beets lost"], [12, "beets thinned"])).toEqual([
      "was lost on 10 May, so it moves nothing",
    ]);
    expect(remarks([20, "carrots up"], [22, "carrots sown"])).toEqual([
      "comes after 20 May, when it was up",
    ]);
  });
});

test("nothing is dropped that no remark names", () => {
  const facts = factsOf([20, "carrots up"], [22, "carrots not up"], [23, "prose"]);
  const { observations: held, remarks: said } = resolveConflicts(facts, [PLAN], PRACTICES);
  expect([...held, ...said.map(({ observation: fact }) => fact)].length).toBe(facts.length);
  expect(facts.filter(isActObservation).length).toBe(1);
});

test("a flood of lines is settled in a time that grows with their number", () => {
  const of = (count: number, text: string) =>
    factsOf(...Array.from({ length: count }, (_, i) => [1 + (i % 28), text] as const));
  const cost = (facts: readonly Observation[]) => {
    const before = process.cpuUsage();
    resolveConflicts(facts, [PLAN], PRACTICES);
    return process.cpuUsage(before).user / 1000;
  };
  for (const text of ["weeded the carrots", "slugs ate the beets", "carrots up", "a fox came by"])
    expect(cost(of(4000, text)), text).toBeLessThan(300);
});

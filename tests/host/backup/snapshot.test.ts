import { describe, expect, test } from "vitest";
import { readSnapshot } from "../../../src/host/backup/snapshot.ts";
import { snapshotOf } from "./archived.ts";

const wrongIn = (over: Parameters<typeof snapshotOf>[0]) =>
  readSnapshot(JSON.stringify(snapshotOf(over))).wrong;

test("a good one is read, and what it does not know is left out", () => {
  const { snapshot, wrong } = readSnapshot(JSON.stringify({ ...Object(snapshotOf()), more: 1 }));
  expect(wrong).toBeNull();
  expect(snapshot?.diary).toHaveLength(1);
  expect(Object.keys(snapshot ?? {})).not.toContain("more");
});

const LINE = { id: 1, day: "2027-05-08", text: "done", task: "t", person: null, saidAt: 1000 };
const TASK = {
  ...{ day: 20_000, people: [], days: [], lead: false, note: null },
  window: { earliest: 20_000, due: 20_000, latest: 20_001, better: "earlier" },
};

describe("what is wrong is told with its place", () => {
  test.each([
    [{ form: 2 }, "form: not 1: it was made by another Sowbell"],
    [{ diary: [LINE, { ...LINE, id: 2, day: "2027-02-30" }] }, "diary 2 day: no such day"],
    [{ diary: [LINE, LINE] }, "diary: not in order"],
    [{ diary: [{ ...LINE, text: "x".repeat(301) }] }, "diary 1 text: longer than 300 letters"],
    [{ diary: [{ ...LINE, id: 20_001 }] }, "diary 1 id: more than 20000"],
    [{ owner: 0 }, "owner: less than 1"],
    [
      { tasks: { "2027/beet/thin/1": { ...TASK, day: 9e9 } } },
      "tasks 2027/beet/thin/1 day: more than 115740",
    ],
    [{ versions: Array(20_001).fill(null) }, "versions: more than 20000"],
  ])("%j", (over, wrong) => {
    expect(wrongIn(over)).toBe(wrong);
  });

  test("a published task as it is stored is none of it", () => {
    expect(wrongIn({ tasks: { a: TASK } })).toBeNull();
  });

  test("no JSON, and JSON nested without end", () => {
    expect(readSnapshot("{").wrong).toBe("it is no JSON");
    expect(readSnapshot("[".repeat(1_000_000)).wrong).toBe("it is no JSON");
    expect(readSnapshot("null").wrong).toContain("Expected Object");
  });
});

import { describe, expect, test } from "vitest";
import { PRACTICES, SHARED_PRACTICES } from "../../../src/engine/practices/all.ts";
import { PASSES } from "../../../src/engine/practices/practice.ts";
import { slugOf } from "../../../src/engine/practices/task.ts";
import { ALONE, QUARRY, tellOf } from "../../gardens.ts";

const TASKS = tellOf(QUARRY, { on: "2027-03-01" }).scheduled.map(({ task }) => task);

describe("the practices", () => {
  test("go by the trade's names", () => {
    expect([...new Set(PRACTICES.map(({ name }) => name))]).toEqual([
      "things to have",
      "sow indoors",
      "winter-sow",
      "sow outdoors",
      "plant",
      "repeat",
      "pot on",
      "harden off",
      "not yet",
      "set out",
      "board",
      "stake and train",
      "feed",
      "stop the tops",
      "fill in and blanch",
      "scout",
      "cure and store",
      "yearly",
      "weed",
      "thin",
      "hill",
      "harvest",
      "first frost",
      "overwinter",
    ]);
    expect(SHARED_PRACTICES.map(({ name }) => name)).toEqual([
      "warm the bed",
      "cover",
      "weed",
      "water",
      "first frost",
      "greenhouse",
      "close the bed",
      "drain the lines",
      "test the soil",
    ]);
  });

  test("run each in one of the passes, and what starts a clock in the first", () => {
    expect(PRACTICES.every(({ pass }) => PASSES.includes(pass))).toBe(true);
    const first = PRACTICES.filter(({ pass }) => pass === "start").map(({ name }) => name);
    expect(first).toEqual([
      "sow indoors",
      "winter-sow",
      "sow outdoors",
      "plant",
      "repeat",
      "overwinter",
    ]);
  });

  test("all have work in the canonical garden, or in one beside it for what it does not grow", () => {
    const others = tellOf(
      `${ALONE}crops:\n  - leek: 20 plants\n  - calendula: 4 plants, winter-sown\n  - rhubarb: 1 crowns\n`,
      { on: "2027-03-01" },
    ).scheduled.map(({ task }) => task);
    const done = new Set([...TASKS, ...others].map(({ practice }) => practice));
    expect(PRACTICES.filter(({ name }) => !done.has(name)).map(({ name }) => name)).toEqual([]);
  });
});

describe("every task of the canonical garden", () => {
  test("has an id of its subject, its practice and its step, once", () => {
    expect(new Set(TASKS.map(({ id }) => id)).size).toBe(TASKS.length);
    const odd = TASKS.filter(
      ({ id, subject, practice, step }) => id !== `${subject.key}/${slugOf(practice)}/${step}`,
    );
    expect(odd).toEqual([]);
  });

  test("has its window in order", () => {
    const odd = TASKS.filter(
      ({ window: { earliest, due, latest } }) => earliest > due || due > latest,
    );
    expect(odd.map(({ id }) => id)).toEqual([]);
  });

  test("tells something and why, in sentences that end", () => {
    expect(TASKS.filter(({ say }) => say.length === 0)).toEqual([]);
    expect(TASKS.filter(({ because }) => because.length === 0)).toEqual([]);
    const ends = TASKS.flatMap(({ say, because }) => [
      ...say.map(({ pieces }) => pieces),
      ...because,
    ]);
    const open = ends.filter((pieces) => !/[.!?]$/.test(String(pieces.at(-1))));
    expect(open).toEqual([]);
  });

  test("is plain data, the same after it was stored as JSON", () => {
    expect(JSON.parse(JSON.stringify(TASKS))).toEqual(TASKS);
  });

  test("hangs on tasks that there are, and on none after itself in time to be done", () => {
    const ids = new Set(TASKS.map(({ id }) => id));
    const loose = TASKS.flatMap(({ hangsOn }) => hangsOn.filter((id) => !ids.has(id)));
    expect(loose).toEqual([]);
  });

  test("takes a number of minutes that a text may say", () => {
    expect(TASKS.filter(({ minutes }) => ![5, 10, 15, 20, 30, 45, 60].includes(minutes))).toEqual(
      [],
    );
  });

  test("says no word of the machinery", () => {
    const pieces = TASKS.flatMap(({ say, title }) => [
      title.verb,
      title.object,
      ...say.flatMap((sentence) => sentence.pieces.filter((piece) => typeof piece === "string")),
    ]);
    const machinery = /emergence|window|rung|threshold|degree.day|milestone|anchor|overdue/i;
    expect(pieces.filter((piece) => machinery.test(piece))).toEqual([]);
  });
});

describe("a practice that a planting drops", () => {
  const ids = (text: string) =>
    tellOf(text, { on: "2027-03-01" }).scheduled.map(({ task }) => task.id);
  const without = ALONE.replace("beet: 2 rows", "beet: 2 rows, without thinning");

  test("leaves no task", () => {
    expect(ids(ALONE)).toContain("2027/beet/thin/1");
    expect(ids(without)).not.toContain("2027/beet/thin/1");
  });

  test("leaves every other task where it was", () => {
    expect(ids(without)).toEqual(ids(ALONE).filter((id) => id !== "2027/beet/thin/1"));
  });
});

import { describe, expect, test } from "vitest";
import { neighbourHelp, PRACTICES, practiceOf } from "../../../src/engine/practices/all.ts";
import { PASSES } from "../../../src/engine/practices/practice.ts";
import { slugOf } from "../../../src/engine/practices/task.ts";
import { ALONE, QUARRY, tellOf } from "../../gardens.ts";
import { withCrops } from "../../winters.ts";

const TASKS = tellOf(QUARRY, { on: "2027-03-01" }).scheduled.map(({ task }) => task);

describe("the practices", () => {
  test("go by the trade's names, each once", () => {
    const names = PRACTICES.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(practiceOf(name).name).toBe(name);
  });

  test("have work, and what starts a clock stands in the first pass", () => {
    for (const { name, tasks } of PRACTICES)
      expect(
        Object.keys(tasks).every((pass) => [...PASSES, "shared"].includes(pass)),
        name,
      ).toBe(true);
    expect(PRACTICES.filter(({ tasks }) => Object.keys(tasks).length === 0)).toEqual([]);
    const first = PRACTICES.filter(({ tasks }) => tasks.start).map(({ name }) => name);
    expect(first).toEqual([
      "sow indoors",
      "winter-sow",
      "sow outdoors",
      "plant",
      "repeat",
      "overwinter",
    ]);
    expect(PRACTICES.filter(({ begins }) => begins !== null).map(({ name }) => name)).toEqual(
      first,
    );
  });

  test("all have work in the canonical garden, or in one beside it for what it does not grow", () => {
    const others = tellOf(
      `${ALONE}crops:\n  - leek: 20 plants\n  - calendula: 4 plants, winter-sown\n  - rhubarb: 1 crowns\n`,
      { on: "2027-03-01" },
    ).scheduled.map(({ task }) => task);
    const hot = tellOf(withCrops("mediterranean", ["tomato: 3 plants"]), { on: "2027-03-01" });
    const heat = hot.scheduled.map(({ task }) => task);
    const done = new Set([...TASKS, ...others, ...heat].map(({ practice }) => practice));
    const ofPlantings = PRACTICES.filter(({ tasks }) => PASSES.some((pass) => tasks[pass]));
    expect(ofPlantings.filter(({ name }) => !done.has(name)).map(({ name }) => name)).toEqual([]);
  });

  test("have the words of their buttons", () => {
    for (const { name, answers } of PRACTICES)
      for (const words of [answers.done, answers.notYet, answers.up ?? "I see it"])
        expect(words, name).toMatch(/^[A-Z].{2,22}$/);
    expect(practiceOf("thin").answers).toEqual({
      done: "Thinned today",
      notYet: "Not tall enough yet",
      up: null,
    });
    expect(PRACTICES.filter(({ answers }) => answers.up).map(({ name }) => name)).toEqual([
      "board",
    ]);
  });

  test("leave a neighbour what wants no knowledge of gardening", () => {
    const helped = new Set(
      TASKS.filter((task) => neighbourHelp(task) !== null).map(({ practice }) => practice),
    );
    expect([...helped].sort()).toEqual(["board", "first frost", "harden off", "harvest", "water"]);
  });

  test("are a closed list to the compiler", () => {
    // @ts-expect-error: no practice is called so
    expect(() => practiceOf("thinn")).toThrow("no practice is called thinn");
    // @ts-expect-error: nor can a task be of one
    expect(TASKS.some(({ practice }) => practice === "thinn")).toBe(false);
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

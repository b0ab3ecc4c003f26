import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { tellOf } from "../gardens.ts";
import { once } from "../once.ts";
import { formatMarked, keepMarks, type MarkedTask, parseMarked, writtenTasks } from "./marked.ts";

/*
 * Five whole gardens as they were last read aloud, task by task, and marked. Where what is told changes on purpose,
 * `GOLDEN=write npx vitest run --config tests/vitest.config.ts tests/golden` writes them anew: what has other days or
 * other words is `new` then, and the test fails until somebody has read it and marked it right, doubtful or wrong.
 */
const FOLDER = join(import.meta.dirname, "gardens");
const NAMES = readdirSync(FOLDER)
  .filter((name) => name.endsWith(".yaml"))
  .map((name) => name.replace(".yaml", ""));

/** The greatest share of doubtful tasks in one garden. */
const MOST_DOUBTFUL = 0.05;

const fileOf = (name: string) => join(FOLDER, `${name}.txt`);

function storedTasks(name: string): readonly MarkedTask[] {
  return existsSync(fileOf(name)) ? parseMarked(readFileSync(fileOf(name), "utf8")) : [];
}

test("the five are there", () => {
  expect(NAMES.sort()).toEqual(["cold", "maritime", "mediterranean", "southern", "very-short"]);
});

describe.each(NAMES)("%s", (name) => {
  const scheduled = once(() => {
    const text = readFileSync(join(FOLDER, `${name}.yaml`), "utf8");
    return tellOf(text, { on: "2027-01-02" });
  });

  test("every window holds its due day", () => {
    for (const { task } of scheduled().scheduled) {
      expect(task.window.earliest, task.id).toBeLessThanOrEqual(task.window.due);
      expect(task.window.due, task.id).toBeLessThanOrEqual(task.window.latest);
    }
  });

  test("is told as it was last read, day for day and word for word", () => {
    const tasks = keepMarks(writtenTasks(scheduled().year), storedTasks(name));
    if (process.env.GOLDEN === "write") writeFileSync(fileOf(name), formatMarked(tasks));
    expect(formatMarked(tasks)).toBe(readFileSync(fileOf(name), "utf8"));
  });

  test("is right: nothing unread, nothing wrong, little that is doubtful", () => {
    const stored = storedTasks(name);
    const marked = (mark: string) => stored.filter((task) => task.mark === mark);
    expect(stored.length).toBeGreaterThan(100);
    expect(marked("new").map(({ id }) => id)).toEqual([]);
    expect(marked("wrong").map(({ id, reason }) => `${id}: ${reason}`)).toEqual([]);
    expect(marked("doubtful").every(({ reason }) => reason !== "")).toBe(true);
    expect(marked("doubtful").length / stored.length).toBeLessThan(MOST_DOUBTFUL);
  });
});

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { tellOf } from "../gardens.ts";

const FOLDER = join(import.meta.dirname, "gardens");
const NAMES = readdirSync(FOLDER)
  .filter((name) => name.endsWith(".yaml"))
  .sort();

/** Five whole gardens: cold, maritime, Mediterranean, southern, very short. */
describe.each(NAMES)("%s", (name) => {
  test("is read without a problem, and every window holds its due day", () => {
    const text = readFileSync(join(FOLDER, name), "utf8");
    const { scheduled } = tellOf(text, { on: "2027-01-02" });
    expect(scheduled.length).toBeGreaterThan(100);
    for (const { task } of scheduled) {
      expect(task.window.earliest, task.id).toBeLessThanOrEqual(task.window.due);
      expect(task.window.due, task.id).toBeLessThanOrEqual(task.window.latest);
    }
  });
});

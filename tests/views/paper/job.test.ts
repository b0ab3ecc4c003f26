import { describe, expect, test } from "vitest";
import { type JobSpace, sheetJobOf } from "../../../src/views/paper/job.ts";
import { planOf, QUARRY, tellOf } from "../../gardens.ts";

const SOWN = `${QUARRY}diary:\n  - 2 May: carrots sown by Oda\n`;
const WIDE: JobSpace = { letters: 200, signs: true };
const job = (text: string, ids: readonly string[], room = WIDE) => {
  const { scheduled: placed } = tellOf(text, { on: "2027-04-01" });
  const all = ids.map((id) => {
    const found = placed.find(({ task }) => task.id === `2027/${id}`);
    if (!found) throw new Error(`no task ${id}`);
    return found;
  });
  return sheetJobOf(all, planOf(text), room);
};

describe("a job on paper", () => {
  test("says what, how, the sign, how long and till when", () => {
    const hill = job(QUARRY, ["potato/hill/1"]);
    expect(hill.title).toBe("Hill potatoes, Bags");
    expect(hill.how[0]).toMatch(/^Add 3 in of mix round the shoots/);
    expect(hill.sign).toMatch(/^Right when: shoots stand/);
    expect(hill.caution).toBe("Wet mix is heavy: lift with two.");
    expect([hill.minutes, hill.done]).toEqual([45, ""]);
    expect(hill.till).toMatch(/^[A-Z][a-z]{2} \d+ May$/);
  });

  test("with little room keeps the first sentence and drops the sign", () => {
    const hill = job(QUARRY, ["potato/hill/1"], { letters: 10, signs: false });
    expect(hill.how).toEqual([
      "Add 3 in of mix round the shoots: about 3 gal each, 17 gal for all 6.",
    ]);
    expect(hill.sign).toBe("");
  });

  test("that is done says when and by whom, and waits for nothing", () => {
    const sow = job(SOWN, ["carrot/sow-outdoors/1"]);
    expect([sow.done, sow.till, sow.sign]).toEqual(["done 2 May, Oda", "", ""]);
  });

  test("of like ones done differently has a line for each way and all their time", () => {
    const sow = job(QUARRY, ["beet/sow-outdoors/1", "lettuce/sow-outdoors/1"]);
    expect(sow.how.map((line) => line.split(":")[0])).toEqual([
      "Beets, Root bed",
      "Lettuce, Salad bed",
    ]);
    expect(sow.minutes).toBeGreaterThan(job(QUARRY, ["beet/sow-outdoors/1"]).minutes ?? 0);
    const weeds = job(QUARRY, ["bed/root-bed/weed/1", "bed/salad-bed/weed/1"]);
    expect(weeds.how.length).toBe(1);
  });
});

import { describe, expect, test } from "vitest";
import { how, why } from "../../../src/engine/practices/sentence.ts";
import type { ScheduledTask } from "../../../src/engine/schedule/scheduled-task.ts";
import { hardeningText, hardeningTitle } from "../../../src/views/events/hardening.ts";
import { voiceOf } from "../../../src/views/events/sentences.ts";
import { inDays, placedOf } from "../../engine/schedule/given.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const household = voiceOf(planOf(QUARRY), "household");
const reader = voiceOf(planOf(QUARRY), "reader");

type Given = {
  readonly hours: number;
  readonly out?: string;
  readonly back?: string;
  readonly on?: number;
};

/** The carrying out and the bringing in of one crop, out from ten. */
function rungs(crop: string, { hours, out = "imre", back = out, on = 9 }: Given): ScheduledTask[] {
  const run = `2027/${crop}/1`;
  const task = (part: "out" | "in", from: number, person: string) =>
    placedOf(
      { at: { from, to: from + 15 }, people: [person] },
      {
        id: `2027/${crop}/harden-off/${part}-1`,
        rhythm: "timed",
        timed: { run, part, lasts: hours * 60 },
        title: {
          verb: hours === 0 ? "Leave out overnight:" : part === "out" ? "Carry out" : "Bring in",
          object: crop,
          where: null,
        },
        say:
          part === "in"
            ? [how("Back inside.")]
            : [
                how(`Out for ${hours} hours.`),
                how("Water first."),
                why("Out for good about ", { day: inDays(on) }, "."),
              ],
      },
    );
  const start = task("out", 600, out);
  return hours === 0 ? [start] : [start, task("in", 600 + hours * 60, back)];
}

describe("what hardens off on one day", () => {
  test("is titled by all that does, and as a night where nothing comes in again", () => {
    expect(hardeningTitle([...rungs("basil", { hours: 4 }), ...rungs("leeks", { hours: 0 })])).toBe(
      "Harden off basil and leeks",
    );
    expect(hardeningTitle(rungs("basil", { hours: 0 }))).toBe("Leave out overnight: basil");
  });

  test("is told by the hours it is out, alike together, then what holds for all, once", () => {
    const all = [
      ...rungs("basil", { hours: 4 }),
      ...rungs("peppers", { hours: 4 }),
      ...rungs("melons", { hours: 1 }),
    ];
    expect(hardeningText(all, household, 450).split("\n")).toEqual([
      "10:00 to 14:00, basil and peppers: Out for 4 hours.",
      "10:00 to 11:00, melons: Out for 1 hours.",
      "Water first.",
      "Back inside.",
      "Out for good about 17 May.",
    ]);
  });

  test("says beside each when it stays out, where they differ", () => {
    const all = [...rungs("basil", { hours: 4 }), ...rungs("melons", { hours: 1, on: 12 })];
    const text = hardeningText(all, household, 450);
    expect(text).toContain("basil: Out for 4 hours. Out for good about 17 May.");
    expect(text).toContain("melons: Out for 1 hours. Out for good about 20 May.");
  });

  test("says who carries out and who brings in, where no one does both", () => {
    const text = hardeningText(rungs("basil", { hours: 4, back: "oda" }), household, 450);
    expect(text).toContain("10:00 (Imre) to 14:00 (Oda), basil");
  });

  test("tells a reader neither hours nor people", () => {
    const text = hardeningText(rungs("basil", { hours: 4, back: "oda" }), reader, 450);
    expect(text).toMatch(/^Basil: Out for 4 hours\./);
    expect(text).not.toMatch(/\d\d:\d\d|Imre|Oda/);
  });

  test("says that it is done, once all is, and by whom to the household alone", () => {
    const done = rungs("basil", { hours: 4 }).map((each) => ({
      ...each,
      at: null,
      done: { day: inDays(0), by: "imre" },
    }));
    expect(hardeningText(done, household, 450)).toMatch(/^Done 8 May, Imre\.\nBasil: Out for 4/);
    expect(hardeningText(done, reader, 450)).toMatch(/^Done 8 May\.\nBasil/);
    expect(hardeningText(done, household, 450)).not.toContain("for good");
  });

  test("is no longer than it may be", () => {
    const all = ["basil", "peppers", "melons"].flatMap((crop, i) => rungs(crop, { hours: i + 1 }));
    expect(hardeningText(all, household, 120).length).toBeLessThanOrEqual(120);
  });
});

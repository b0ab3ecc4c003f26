import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { applyObservations } from "../../../src/engine/schedule/apply-observations.ts";
import { ALONE, tellOf } from "../../gardens.ts";
import { inDays, SATURDAY, taskOf, windowOf } from "./given.ts";

/** Each task's due day by its id, as the canonical garden has it with these lines in its diary. */
function dueOf(...lines: readonly string[]) {
  const diary =
    lines.length === 0 ? "" : `diary:\n${lines.map((line) => `  - ${line}\n`).join("")}`;
  const { scheduled: placed } = tellOf(`${ALONE}${diary}`, { on: "2027-06-01" });
  return new Map(placed.map(({ task }) => [task.id, isoOf(task.window.due).slice(5)]));
}
const PLAIN = dueOf();

describe("what was not ready", () => {
  test("is looked at again three days on", () => {
    const due = dueOf("20 June: beets too small to thin");
    expect(due.get("2027/beet/thin/1")).toBe("06-23");
    expect(due.get("2027/carrot/thin/1")).toBe(PLAIN.get("2027/carrot/thin/1"));
  });

  test("stays where it is due later anyway", () => {
    const due = dueOf("20 May: beets too small to thin");
    expect(due.get("2027/beet/thin/1")).toBe(PLAIN.get("2027/beet/thin/1"));
  });
});

describe("what is left this year", () => {
  test("is told no more, and the rest of the planting is", () => {
    const due = dueOf("1 June: left the thinning of the beets this year");
    expect(due.has("2027/beet/thin/1")).toBe(false);
    expect(due.has("2027/beet/harvest/1")).toBe(true);
  });
});

describe("what was lost", () => {
  test("has no work after that day, and frees its place", () => {
    const due = dueOf("1 July: slugs ate the beets");
    const mine = [...due].filter(([id]) => id.startsWith("2027/beet/"));
    expect(mine.length).toBeGreaterThan(0);
    expect(mine.every(([, day]) => day < "07-01")).toBe(true);
  });
});

describe("what failed", () => {
  const due = dueOf("3 May: carrots sown", "4 June: carrots failed");

  test("is sown again from the next day on, and the chain with it", () => {
    expect(due.get("2027/carrot/sow-outdoors/1")).toBe("06-05");
    expect((due.get("2027/carrot/thin/1") ?? "") > (PLAIN.get("2027/carrot/thin/1") ?? "")).toBe(
      true,
    );
  });

  test("says so", () => {
    const { scheduled: placed } = tellOf(`${ALONE}diary:\n  - 4 June: carrots failed\n`, {
      on: "2027-06-01",
    });
    const sow = placed.find(({ task }) => task.id === "2027/carrot/sow-outdoors/1");
    expect(JSON.stringify(sow?.task.say)).toContain("came to nothing");
  });

  test("moves nothing of other plantings", () => {
    expect(due.get("2027/beet/sow-outdoors/1")).toBe(PLAIN.get("2027/beet/sow-outdoors/1"));
  });
});

describe("what was moved", () => {
  test("stands in its new bed", () => {
    const { scheduled: placed } = tellOf(
      `${ALONE}diary:\n  - 1 June: moved the beets to the South bed\n`,
      {
        on: "2027-06-01",
      },
    );
    expect(placed.find(({ task }) => task.id === "2027/beet/thin/1")?.task.bed).toBe("south-bed");
  });
});

describe("an inch of rain", () => {
  test("leaves out that week's water", () => {
    const weeks = (text: string) =>
      tellOf(text, { on: "2027-06-01" }).scheduled.filter(({ task }) => task.practice === "water")
        .length;
    expect(weeks(`${ALONE}diary:\n  - 13 July: 2 in of rain\n`)).toBe(weeks(ALONE) - 1);
  });
});

describe("what was measured", () => {
  test("moves thinning to the day it is tall enough", () => {
    const due = dueOf("20 May: beets up", "26 May: beets 3 in tall");
    expect(
      (due.get("2027/beet/thin/1") ?? "") <
        (dueOf("20 May: beets up").get("2027/beet/thin/1") ?? ""),
    ).toBe(true);
  });
});

describe("several lines about one planting", () => {
  test("all count: one job is left, and later the rest is lost", () => {
    const due = dueOf(
      "1 June: left the thinning of the beets this year",
      "1 July: slugs ate the beets",
    );
    const mine = [...due].filter(([id]) => id.startsWith("2027/beet/"));
    expect(due.has("2027/beet/thin/1")).toBe(false);
    expect(mine.every(([, day]) => day < "07-01")).toBe(true);
  });

  test("build on each other: what failed and then had to wait keeps the two weeks of a new sowing", () => {
    const sets = { planting: "2027/beet", sowing: 1, act: "start" } as const;
    const sow = taskOf({ practice: "sow outdoors", sets, window: windowOf(3, 1) });
    const about = { planting: "2027/beet", sowing: null, text: "" } as const;
    const [next] = applyObservations(
      [sow],
      [
        { kind: "failed", day: inDays(1), ...about },
        { kind: "not yet", day: inDays(2), ...about, of: { practice: "sow outdoors", step: null } },
      ],
      new Map(),
    );
    expect(next?.window).toEqual({
      ...{ earliest: inDays(3), due: inDays(5), latest: inDays(16), better: "later" },
    });
    expect(next?.certainty).toBe("expected");
  });

  test("what is lost on the very day a job is due has that job no more", () => {
    const lost = { kind: "lost", planting: "2027/beet", sowing: null, text: "" } as const;
    const left = (day: number) =>
      applyObservations([taskOf()], [{ ...lost, day: inDays(day) }], new Map()).length;
    expect(taskOf().window.due).toBe(SATURDAY);
    expect([left(-1), left(0), left(1)]).toEqual([0, 0, 1]);
  });
});

import { describe, expect, test } from "vitest";
import { dayOrThrow, isoOf } from "../../../src/base/days/day.ts";
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

describe("a start that had to wait", () => {
  const beet = "2027/beet/sow-outdoors/1";

  test("is looked at again three days on, from when it was due", () => {
    const [month, date] = (PLAIN.get(beet) ?? "").split("-").map(Number);
    const wet = isoOf(dayOrThrow(2027, month ?? 1, (date ?? 1) + 1)).slice(5);
    const due = dueOf(`2027-${wet}: too wet to sow beets`).get(beet);
    expect(due).toBe(isoOf(dayOrThrow(2027, month ?? 1, (date ?? 1) + 4)).slice(5));
    expect(dueOf("1 April: too wet to sow beets").get(beet)).toBe(PLAIN.get(beet));
  });

  test("waits until the day that the gardener said, and says that it was put off", () => {
    expect(dueOf("13 May: put off the beets until 5 June").get(beet)).toBe("06-05");
    const { scheduled } = tellOf(`${ALONE}diary:\n  - 13 May: put off the beets until 5 June\n`, {
      on: "2027-05-14",
    });
    const sow = scheduled.find(({ task }) => task.id === beet);
    expect(JSON.stringify(sow?.task.say)).toContain("You put it off on ");
    expect(isoOf(sow?.day ?? dayOrThrow(2027, 1, 1)).slice(5)).toBe("06-05");
  });

  test("is the sowing nearest to that day, where there are several", () => {
    const ids = [...PLAIN.keys()].filter((id) => /^2027\/lettuce\/(?:sow|repeat)/.test(id));
    const [, second] = ids.map((id) => [id, PLAIN.get(id) ?? ""] as const);
    const due = dueOf(`2027-${second?.[1]}: too wet to sow lettuce`);
    expect(ids.filter((id) => due.get(id) !== PLAIN.get(id))).toContain(second?.[0]);
    expect(due.get(ids[0] ?? "")).toBe(PLAIN.get(ids[0] ?? ""));
  });

  test("was done long ago where it was due more than a month before", () => {
    expect(dueOf("20 August: too wet to sow beets").get(beet)).toBe(PLAIN.get(beet));
  });
});

describe("what was sown again", () => {
  test("begins on that day, and everything of it counts from there", () => {
    const due = dueOf(
      "3 May: carrots sown",
      "20 May: carrots up",
      "4 June: sowed the carrots again",
    );
    const plain = dueOf("3 May: carrots sown", "20 May: carrots up");
    expect((due.get("2027/carrot/thin/1") ?? "") > (plain.get("2027/carrot/thin/1") ?? "")).toBe(
      true,
    );
  });

  test("is due the next day where mice ate the seed", () => {
    expect(dueOf("20 May: mice ate the carrot seed").get("2027/carrot/sow-outdoors/1")).toBe(
      "05-21",
    );
  });
});

describe("what was bought", () => {
  const due = dueOf("3 April: tomatoes sown", "12 May: bought 6 tomato plants");

  test("is no longer ordered, sown or potted on, and is set out under the same id", () => {
    const mine = [...due.keys()].filter((id) => id.startsWith("2027/tomato/"));
    expect(mine).toContain("2027/tomato/set-out/1");
    expect(mine.filter((id) => /sow-indoors|pot-on|order|harden/.test(id))).toEqual([]);
    expect([...PLAIN.keys()].some((id) => id.startsWith("2027/tomato/sow-indoors"))).toBe(true);
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

describe("what was lost of several sowings", () => {
  const early = dueOf("20 May: slugs ate the lettuce");
  const lettuce = [...early.keys()].filter((id) => id.startsWith("2027/lettuce/"));

  test("leaves those that go in later, with all their work", () => {
    expect(lettuce).toContain("2027/lettuce/repeat/2");
    expect(lettuce).toContain("2027/lettuce/thin/sowing-2-1");
    expect(lettuce.some((id) => /\/harvest\/sowing-3-/.test(id))).toBe(true);
  });

  test("drops the work of those that stood", () => {
    const after = lettuce.filter((id) => (early.get(id) ?? "") >= "05-20");
    expect(after.filter((id) => !/sowing-|repeat|things-to-have/.test(id))).toEqual([]);
    const all = dueOf("30 Aug: slugs ate the lettuce");
    const late = [...all].filter(([id, day]) => id.startsWith("2027/lettuce/") && day >= "08-30");
    expect(late).toEqual([]);
  });
});

describe("an inch of rain", () => {
  test("leaves out that week's water for the beds; bags, which it hardly reaches, still want some", () => {
    const inJuly = (text: string) =>
      tellOf(text, { on: "2027-06-01" }).events.find(({ key }) => /water\/week-28/.test(key))?.text;
    expect(inJuly(ALONE)).toContain("Give the beds");
    const rained = inJuly(`${ALONE}diary:\n  - 13 July: 2 in of rain\n`);
    expect(rained).not.toContain("Give the beds");
    expect(rained).toContain("Bags: about");
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

  test("what is done in part stays open for the rest", () => {
    const of = { practice: "thin", step: null };
    const about = { kind: "not yet", planting: "2027/beet", sowing: null, of } as const;
    const task = taskOf({ practice: "thin", window: windowOf(3, 1) });
    const [next] = applyObservations(
      [task],
      [{ ...about, day: inDays(1), partly: true }],
      new Map(),
    );
    expect(next?.window.due).toBe(inDays(4));
    expect(JSON.stringify(next?.say)).toContain("the rest is still to do");
  });

  test("what is lost on the very day a job is due has that job no more", () => {
    const lost = { kind: "lost", planting: "2027/beet", sowing: null, text: "" } as const;
    const left = (day: number) =>
      applyObservations([taskOf()], [{ ...lost, day: inDays(day) }], new Map()).length;
    expect(taskOf().window.due).toBe(SATURDAY);
    expect([left(-1), left(0), left(1)]).toEqual([0, 0, 1]);
  });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { buildSchedule, horizonAt } from "../../../src/app/build.ts";
import { type Day, isoOf, plus } from "../../../src/base/days/day.ts";
import { lastFrostAt } from "../../../src/engine/climate/frost.ts";
import { STOP_DAYS } from "../../../src/engine/growth/stopping.ts";
import type { Task } from "../../../src/engine/practices/all.ts";
import {
  SETTING_OUT,
  SHARE_WITHIN_DAYS,
  shareLadders,
} from "../../../src/engine/practices/set-out.ts";
import { plantingTask } from "../../../src/engine/practices/task.ts";
import type { Site } from "../../../src/garden/model/plan.ts";
import { ALONE, isoDay, normalsOf, planOf, QUARRY, tellOf } from "../../gardens.ts";
import { withCrops } from "../../winters.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { said, tasksIn, titles, told, windowsOf } from "./told.ts";

const WARM = Array<number>(12).fill(20);
const COLD = Array<number>(12).fill(5);
const SITE = growingOf(QUARRY, "tomato").plan.site;
const warm = { ...SITE, normals: normalsOf(WARM, WARM) };
const cold = { ...SITE, normals: normalsOf(COLD, COLD) };

/** Tomatoes sown indoors on 9 April, in soil that is warm all year. */
const tomatoes = (given: Given = {}) =>
  growingOf(QUARRY, "tomato", { acts: { start: "2027-04-09" }, plan: { site: warm }, ...given });

describe("setting tomatoes out", () => {
  test("is on the frost day at 1 spring in 10, and may wait ten days", () => {
    expect(windowsOf(SETTING_OUT, tomatoes())).toEqual(["1 05-21 05-21 05-31"]);
    expect(titles(tasksIn(SETTING_OUT, tomatoes()))).toEqual(["Set out tomatoes [bed]"]);
  });

  test("says how far apart, with everything that belongs to that hour", () => {
    const [task] = tasksIn(SETTING_OUT, tomatoes());
    expect(said(task)).toContain(
      "how: Drive the stake first.\nhow: Cut a cross in the film for each.\nhow: Set them 18 in apart. Plant deep",
    );
    expect(said(task)).toContain("sign: A grey day or late afternoon");
    expect(task?.needs).toEqual(["soft ties", "a watering can", "a stake or cage for each plant"]);
  });

  test("puts up no stake where a trellis stands", () => {
    const text = QUARRY.replace("tomato: 6 plants", "tomato: 6 plants, on a trellis");
    const { scheduled } = tellOf(text, { on: "2027-01-01" });
    const task = scheduled.find(({ task: { id } }) => id === "2027/tomato/set-out/1")?.task;
    expect(said(task)).not.toContain("stake");
    expect(task?.needs).toEqual(["soft ties", "a watering can"]);
  });

  test("tells the odds", () => {
    const [task] = tasksIn(SETTING_OUT, tomatoes());
    expect(said(task)).toContain("Only 1 spring in 10 still has a frost after this.");
    expect(told(task)).toContain("Frost comes after 21 May in 1 spring in 10.");
  });

  test("waits for plants sown late to be old enough", () => {
    const late = tomatoes({ acts: { start: "2027-05-01" } });
    expect(windowsOf(SETTING_OUT, late)).toEqual(["1 06-05 06-05 06-11"]);
    expect(said(tasksIn(SETTING_OUT, late)[0])).toContain("They are only now old enough.");
  });

  test("in soil that stays cold is under hoops on the stop day, and not a day later", () => {
    const held = tomatoes({ plan: { site: cold } });
    expect(windowsOf(SETTING_OUT, held)).toEqual(["1 06-11 06-11 06-11"]);
    expect(said(tasksIn(SETTING_OUT, held)[0])).toContain(
      "caution: The soil is cold still: plant under hoops",
    );
  });

  test("is on the day the gardener fixed, and on no other", () => {
    const fixed = tomatoes({ planting: { fixed: { start: null, out: isoDay("2027-06-01") } } });
    expect(windowsOf(SETTING_OUT, fixed)).toEqual(["1 06-01 06-01 06-01"]);
    expect(tasksIn(SETTING_OUT, fixed)[0]?.certainty).toBe("fixed");
  });

  test("is not before the day the gardener asked", () => {
    const asked = tomatoes({ planting: { notBefore: isoDay("2027-06-08") } });
    expect(windowsOf(SETTING_OUT, asked)).toEqual(["1 06-08 06-08 06-11"]);
  });

  test("takes three minutes a plant and ten", () => {
    expect(tasksIn(SETTING_OUT, tomatoes())[0]?.minutes).toBe(30);
  });
});

describe("plants that were bought", () => {
  const bought = tomatoes({ acts: {}, planting: { start: "plants" } });

  test("are told to get used to the open first, where they come from under glass", () => {
    expect(said(tasksIn(SETTING_OUT, bought)[0])).toContain(
      "caution: Get tomatoes from under glass used to the open first",
    );
    expect(said(tasksIn(SETTING_OUT, tomatoes())[0])).not.toContain("under glass");
  });

  test("go out on the same day, of whatever age", () => {
    expect(windowsOf(SETTING_OUT, bought)).toEqual(["1 05-21 05-21 05-31"]);
  });

  test("have no ladder to share", () => {
    expect(tasksIn(SETTING_OUT, bought)[0]?.kinds).toEqual([]);
  });
});

describe("nothing is set out", () => {
  test("that grows from seed in its bed", () => {
    expect(windowsOf(SETTING_OUT, growingOf(QUARRY, "lettuce"))).toEqual([]);
  });

  test("that is not sown yet, or in since before", () => {
    expect(windowsOf(SETTING_OUT, tomatoes({ acts: {} }))).toEqual([]);
    expect(
      windowsOf(SETTING_OUT, tomatoes({ planting: { inSince: isoDay("2027-05-01") } })),
    ).toEqual([]);
  });
});

test("tomatoes may wait ten days in a long season, however late the gardener wants them out", () => {
  const usual = isoDay("2027-12-15");
  const firstFrost = { early: usual, usual, late: usual, given: 3 } as const;
  const given = { notBefore: isoDay("2027-07-01"), days: 60 };
  const windows = (site: Site) =>
    windowsOf(SETTING_OUT, tomatoes({ plan: { site }, planting: given }))[0];
  expect(windows({ ...warm, firstFrost })).toBe("1 07-01 07-01 07-11");
  expect(windows(warm)).toBe("1 07-01 07-01 07-01");
});

describe("over any climate, in the whole garden", () => {
  const month = fc.integer({ min: -15, max: 22 });
  const climates = fc.record({
    lowC: fc.array(month, { minLength: 12, maxLength: 12 }),
    swing: fc.integer({ min: 0, max: 14 }),
    moved: fc.integer({ min: -30, max: 30 }),
  });

  /** The lane's site with other months and its last frost so many days later. */
  function siteOf({ lowC, swing, moved }: { lowC: number[]; swing: number; moved: number }): Site {
    const { lastFrost } = SITE;
    if (!lastFrost) throw new Error("the lane has frost");
    const [early, usual, late] = [lastFrost.early, lastFrost.usual, lastFrost.late].map((day) =>
      plus(day, moved),
    );
    if (!early || !usual || !late) throw new Error("three dates");
    return {
      ...SITE,
      normals: normalsOf(
        lowC,
        lowC.map((low) => low + swing),
      ),
      lastFrost: { early, usual, late, given: 3 },
    };
  }

  const placedIn = (site: Site) => {
    const garden = { id: "lane", plans: [planOf(ALONE, { site })] };
    const horizon = horizonAt(garden, Date.UTC(2027, 1, 1));
    return buildSchedule(garden, horizon, {}).scheduled.filter(
      ({ task }) => task.crop === "tomato",
    );
  };

  test("tomatoes go out no earlier than their frost day and no later than the stop day", () => {
    fc.assert(
      fc.property(climates, (climate) => {
        const site = siteOf(climate);
        const frost = site.lastFrost && lastFrostAt(site.lastFrost, 0.1);
        const out = placedIn(site).find(({ task }) => task.practice === "set out");
        if (frost === null || !out) return false;
        const { earliest, latest } = out.task.window;
        const stop = Math.max(frost + STOP_DAYS, (site.firstFrost?.usual ?? 0) - 42);
        return earliest >= frost && out.day >= frost && latest <= stop;
      }),
      { numRuns: 40 },
    );
  });

  test("the last night of their ladder ends on the day they go out", () => {
    fc.assert(
      fc.property(climates, (climate) => {
        const tasks = placedIn(siteOf(climate));
        const out = tasks.find(({ task }) => task.practice === "set out");
        const rungs = tasks.filter(({ task }) => task.practice === "harden off");
        return out !== undefined && Math.max(...rungs.map(({ day }) => day)) === plus(out.day, -1);
      }),
      { numRuns: 40 },
    );
  });
});

const [LONE] = tasksIn(SETTING_OUT, tomatoes());

/** Setting-out tasks of several tender plantings, due so many days after 21 May, fine for so many more. */
function several(...dues: readonly (readonly [number, number])[]): readonly Task[] {
  return dues.map(([after, more], i) => {
    if (!LONE) throw new Error("tomatoes are set out");
    const due = plus(LONE.window.due, after);
    const window = { ...LONE.window, earliest: due, due, latest: plus(due, more) };
    return { ...LONE, id: `2027/tomato-${i}/set-out/1`, window };
  });
}
const dues = (tasks: readonly Task[]) => tasks.map(({ window }) => isoOf(window.due).slice(5));

describe("plants that go out within four days of each other", () => {
  test("share the latest of their days", () => {
    expect(SHARE_WITHIN_DAYS).toBe(4);
    expect(dues(shareLadders(several([0, 10], [4, 10], [2, 10])))).toEqual([
      "05-25",
      "05-25",
      "05-25",
    ]);
  });

  test("are placed together", () => {
    const shared = shareLadders(several([0, 10], [4, 10]));
    expect(new Set(shared.map(({ together }) => together))).toEqual(
      new Set(["2027/tomato-0/set-out/1"]),
    );
  });

  test("keep their own days when they lie five apart", () => {
    expect(dues(shareLadders(several([0, 10], [5, 10])))).toEqual(["05-21", "05-26"]);
    expect(shareLadders(several([0, 10], [5, 10])).every(({ together }) => together === null)).toBe(
      true,
    );
  });

  test("do not hold one past the last day that does it no harm", () => {
    expect(dues(shareLadders(several([0, 2], [4, 10])))).toEqual(["05-21", "05-25"]);
  });

  test("leave a day alone that the gardener fixed", () => {
    const [one, two] = several([0, 10], [3, 10]);
    if (!one || !two) throw new Error("two tasks");
    const fixed = { ...one, certainty: "fixed" } as const;
    expect(dues(shareLadders([fixed, two]))).toEqual(["05-21", "05-24"]);
  });

  test("leave other tasks as they were, in their order", () => {
    const other = plantingTask(tomatoes(), "harvest", "1", {
      window: { ...several([0, 1])[0]?.window } as Task["window"],
      harm: "this week",
      rhythm: "session",
      title: { verb: "Pick", object: "tomatoes", where: "bed" },
      say: [],
      basis: [],
    });
    const [one, two] = several([0, 10], [4, 10]);
    if (!one || !two) throw new Error("two tasks");
    const shared = shareLadders([one, other, two]);
    expect(shared.map(({ id }) => id)).toEqual([one.id, other.id, two.id]);
    expect(shared[1]).toBe(other);
  });

  test("are held by none past its last day and moved earlier by none, for any plants", () => {
    const plants = fc.array(
      fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 12 })),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(plants, (all) => {
        const before = several(...all);
        return shareLadders(before).every((task, i) => {
          const own = before[i]?.window;
          return own !== undefined && task.window.due >= own.due && task.window.due <= own.latest;
        });
      }),
    );
  });
});

describe("plants that nobody is there to harden off", () => {
  const setOut = (away: string) => {
    const { scheduled } = tellOf(away === "" ? ALONE : `${ALONE}away:\n  - everybody, ${away}\n`, {
      on: "2027-01-02",
    });
    const find = (end: RegExp) => scheduled.filter(({ task }) => end.test(task.id));
    const [out] = find(/tomato\/set-out\/1$/);
    const rungs = find(/tomato\/harden-off\/out-/).map(({ day }) => day);
    return { day: out?.day ?? 0, out, rungs: rungs.sort((a, b) => a - b) };
  };
  const plain = setOut("");
  const span = (from: number, to: number) =>
    `${isoOf(plus(plain.day as Day, from))} to ${isoOf(plus(plain.day as Day, to))}`;

  test("go out later, after a ladder without a gap, where that does no harm", () => {
    const moved = setOut(span(-9, -4));
    expect(moved.day).toBeGreaterThan(plain.day);
    expect(moved.day - plain.day).toBeLessThanOrEqual(10);
    expect(JSON.stringify(moved.out?.task.say)).toContain("nobody is there to harden them off");
    const days = [...moved.rungs, moved.day];
    const gaps = days.slice(1).map((day, i) => day - (days[i] ?? 0));
    expect(Math.max(...gaps)).toBeLessThanOrEqual(3);
  });

  test("go out on their day after a weekend away", () => {
    expect(setOut(span(-6, -5)).day).toBe(plain.day);
  });

  test("go out on their day where waiting would not help before it does harm", () => {
    const long = setOut(span(-9, 20));
    expect(JSON.stringify(long.out?.task.say)).not.toContain("nobody is there");
  });
});

test("collars lie flat against root flies, and stand as rings where only cutworms bite", () => {
  const kale = ["kale: 6 plants, from seed indoors"];
  const out = (garden: string) =>
    tellOf(withCrops(garden, kale), { on: "2027-01-02" }).scheduled.find(({ task }) =>
      task.id.endsWith("kale/set-out/1"),
    )?.task;
  expect(said(out("maritime"))).toContain("Lay a collar flat round each stem");
  expect(said(out("southern"))).toContain("a ring of card into the soil round each. Water in and");
});

import { describe, expect, test } from "vitest";
import { buildSchedule, horizonAt } from "../../src/app/build.ts";
import { type Day, plus } from "../../src/base/days/day.ts";
import { startOf } from "../../src/base/days/instants.ts";
import type { Task } from "../../src/engine/practices/all.ts";
import type { FrostDates, Plan } from "../../src/garden/model/plan.ts";
import { ALONE, isoDay, planOf } from "../gardens.ts";

/**
 * Carrots are sown late, so that they stand till frost whenever it comes. Nobody is named, so placing adds nothing; normals are given, so frost dates do not warm the air. */
const PLAN = planOf(
  ALONE.replace(
    "      - tomato: 6 plants, from seed indoors\n",
    "      - tomato: 6 plants, from seed indoors\n      - name: hoop tomato\n        crop: tomato\n        plants: 3\n        from: bought\n",
  )
    .replace(
      "      - beet: 2 rows\n",
      "      - beet: 2 rows\n      - name: fixed beet\n        crop: beet\n        rows: 1\n        sow: 20 May\n",
    )
    .replace(
      "      - carrot: 3 rows, under a board\n",
      "      - carrot: 3 rows, under a board, sow 10 May\n",
    )
    .replace(
      "      - lettuce: 2 rows",
      "      - name: late lettuce\n        crop: lettuce\n        rows: 1\n        after: lettuce\n      - lettuce: 2 rows",
    ),
);

const FROST = ["last frost", "first frost"];

function shifted(dates: FrostDates | null, days: number): FrostDates | null {
  if (dates === null) return null;
  const by = (day: Day) => plus(day, days);
  return { ...dates, early: by(dates.early), usual: by(dates.usual), late: by(dates.late) };
}

function tasksOf(days: number): ReadonlyMap<string, Task> {
  const { site } = PLAN;
  const lastFrost = shifted(site.lastFrost, days);
  const firstFrost = shifted(site.firstFrost, days);
  const plan: Plan = { ...PLAN, site: { ...site, lastFrost, firstFrost } };
  const garden = { id: "quarry-lane", plans: [plan] };
  const at = startOf(isoDay("2027-01-01"), site.clock);
  const { scheduled: placed } = buildSchedule(garden, horizonAt(garden, at), {});
  return new Map(placed.map(({ task }) => [task.id, task]));
}

const STILL = tasksOf(0);
const kindOf = ({ basis }: Task) => {
  if (!basis.some((ground) => FROST.includes(ground))) return "none";
  return basis.every((ground) => FROST.includes(ground) || ground === "age") ? "alone" : "some";
};
const SHIFTS = Array.from({ length: 21 }, (_, i) => i - 10).filter((days) => days !== 0);

/** Tasks of one kind whose due day moved otherwise than `right` allows, as lines. */
function wrong(kind: ReturnType<typeof kindOf>, right: (moved: number, days: number) => boolean) {
  return SHIFTS.flatMap((days) => {
    const now = tasksOf(days);
    return [...STILL.values()]
      .filter((task) => kindOf(task) === kind)
      .flatMap((task) => {
        const then = now.get(task.id);
        const moved = then ? then.window.due - task.window.due : 0;
        return right(moved, days) ? [] : [`${task.id} by ${moved} of ${days}: ${task.basis}`];
      });
  });
}

describe("when the frost dates move by n days", () => {
  test("there are tasks of every kind to look at", () => {
    const kinds = [...STILL.values()].map(kindOf);
    for (const kind of ["none", "alone", "some"])
      expect(kinds.filter((each) => each === kind).length, kind).toBeGreaterThan(3);
  });

  test("what hangs on frost alone moves by exactly n", () => {
    expect(wrong("alone", (moved, days) => moved === days)).toEqual([]);
  });

  test("what hangs on frost and more moves by nought to n", () => {
    const between = (moved: number, days: number) =>
      days > 0 ? moved >= 0 && moved <= days : moved <= 0 && moved >= days;
    expect(wrong("some", between)).toEqual([]);
  });

  test("what does not hang on frost stays where it is", () => {
    expect(wrong("none", (moved) => moved === 0)).toEqual([]);
  });
});

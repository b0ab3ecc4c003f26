import { describe, expect, test } from "vitest";
import { dayOrThrow, isoOf } from "../../../src/base/days/day.ts";
import { startOf } from "../../../src/base/days/instants.ts";
import { horizonOf } from "../../../src/engine/schedule/horizon.ts";
import { planOn } from "../../../src/garden/model/season.ts";
import { least, PLAN, planOf } from "../../garden/plan/canonical.ts";

const DENVER = "America/Denver";
const noon = (month: number, date: number, year = 2027) =>
  startOf(dayOrThrow(year, month, date), DENVER) + 12 * 3_600_000;
const alone = planOf(least("crops:\n  - carrot"));

describe("the plan of a day", () => {
  const next = { ...alone, year: 2028, site: moved(alone, 366) };

  test("is the one whose season it falls in", () => {
    expect(planOn([alone, next], dayOrThrow(2027, 6, 1))).toBe(alone);
    expect(planOn([alone, next], dayOrThrow(2028, 6, 1))).toBe(next);
  });

  test("is the last one's after all seasons and the first one's before them", () => {
    expect(planOn([alone, next], dayOrThrow(2031, 6, 1))).toBe(next);
    expect(planOn([alone, next], dayOrThrow(2020, 6, 1))).toBe(alone);
  });

  test("is a programmer's mistake where there is no plan", () => {
    expect(() => planOn([], dayOrThrow(2027, 6, 1))).toThrow(RangeError);
  });
});

function moved(plan: typeof alone, days: number): typeof alone.site {
  const { lastFrost, firstFrost } = plan.site;
  const by = (dates: typeof lastFrost) =>
    dates && {
      ...dates,
      early: (dates.early + days) as typeof dates.early,
      usual: (dates.usual + days) as typeof dates.usual,
      late: (dates.late + days) as typeof dates.late,
    };
  return { ...plan.site, lastFrost: by(lastFrost), firstFrost: by(firstFrost) };
}

describe("the first day a feed shows", () => {
  const first = (month: number, date: number, year = 2027) =>
    isoOf(horizonOf([alone], noon(month, date, year)).firstDay);

  test("is six months ago in spring", () => {
    expect(first(5, 8)).toBe("2026-11-01");
  });

  test("is the first month of the season in autumn", () => {
    expect(first(10, 20)).toBe("2027-01-01");
  });

  test("moves on the first of a month only", () => {
    expect(first(4, 30)).toBe("2026-10-01");
    expect(first(5, 1)).toBe("2026-11-01");
    expect(first(5, 31)).toBe("2026-11-01");
  });

  test("leaves the last plan's season behind once that is over", () => {
    expect(first(3, 10, 2028)).toBe("2027-09-01");
    expect(first(11, 10, 2028)).toBe("2028-01-01");
    expect(first(6, 10, 2031)).toBe("2030-12-01");
  });
});

describe("the day open work is told on", () => {
  test("is the next day with the person's gardening hours", () => {
    const { openDays } = horizonOf([PLAN], noon(5, 6));
    expect(openDays).toEqual({ imre: dayOrThrow(2027, 5, 8), oda: dayOrThrow(2027, 5, 9) });
  });

  test("is today where today has some", () => {
    expect(horizonOf([PLAN], noon(5, 9)).openDays.oda).toBe(dayOrThrow(2027, 5, 9));
  });

  test("is today for whoever gives no hours", () => {
    const plan = { ...PLAN, people: PLAN.people.map((person) => ({ ...person, gardens: [] })) };
    expect(horizonOf([plan], noon(5, 6)).openDays.imre).toBe(dayOrThrow(2027, 5, 6));
  });
});

describe("a horizon holds", () => {
  test("till the month ends where nobody is named", () => {
    expect(horizonOf([alone], noon(5, 8)).until).toBe(startOf(dayOrThrow(2027, 6, 1), DENVER));
  });

  test("till the day after somebody's next working day", () => {
    expect(horizonOf([PLAN], noon(5, 6)).until).toBe(startOf(dayOrThrow(2027, 5, 9), DENVER));
  });

  test("and is the same up to its last millisecond, and another from then on", () => {
    const { until, ...rest } = horizonOf([PLAN], noon(5, 6));
    expect(horizonOf([PLAN], until - 1)).toEqual({ until, ...rest });
    expect(horizonOf([PLAN], until)).not.toEqual({ until, ...rest });
  });

  test("by the garden's clock and not by ours", () => {
    const tokyo = { ...alone, site: { ...alone.site, clock: "Asia/Tokyo" } };
    const { until } = horizonOf([tokyo], noon(5, 8));
    expect(new Date(until).toISOString()).toBe("2027-05-31T15:00:00.000Z");
  });

  test("only where there is a plan", () => {
    expect(() => horizonOf([], noon(5, 8))).toThrow(RangeError);
  });
});

import { describe, expect, test } from "vitest";
import type { Day } from "../../../src/base/days/day.ts";
import type { AwayNeed } from "../../../src/views/away/away-need.ts";
import { needsOf } from "../../../src/views/away/needs.ts";
import { awayOf, LUSH } from "./given.ts";

const CABBAGES = "cabbage: 6 plants, from seed indoors";
const { plan, year, scheduled } = awayOf(LUSH);
const dayOf = (id: string) => {
  const found = scheduled.find(({ task }) => task.id === `2027/${id}`);
  if (!found) throw new Error(`no task ${id}`);
  return found.day;
};
/** What is needed of one kind between two days, as counts of days. */
const needs = (from: number, to: number, kind: AwayNeed["kind"]) =>
  needsOf(year, plan, { from: from as Day, to: to as Day }).filter((need) => need.kind === kind);

describe("trays", () => {
  const out = dayOf("tomato/set-out/1");

  test("stand indoors until their days outdoors begin, and are hardened off after that", () => {
    const sown = dayOf("tomato/sow-indoors/1");
    expect(needs(sown + 5, sown + 9, "trays")).toEqual([
      { kind: "trays", plants: ["tomatoes"], hardeningFloorC: null },
    ]);
    expect(needs(out - 2, out - 1, "trays")).toEqual([
      { kind: "trays", plants: ["tomatoes"], hardeningFloorC: 10 },
    ]);
  });

  test("are there till the morning of the day the plants go out", () => {
    expect(needs(out, out + 3, "trays")).toHaveLength(1);
  });

  test("of hardy plants stand indoors on the day their days outdoors begin, and not on the next", () => {
    const away = awayOf(
      LUSH.replace("      - beet: 2 rows\n", `      - beet: 2 rows\n      - ${CABBAGES}\n`),
    );
    const outdoors = away.scheduled
      .filter(({ task }) => task.practice === "harden off" && task.subject.key === "2027/cabbage")
      .filter(({ task }) => task.rhythm !== "timed");
    const first = Math.min(...outdoors.map(({ day }) => day));
    const hardened = (from: number) =>
      needsOf(away.year, away.plan, { from: from as Day, to: (from + 1) as Day }).some(
        (need) =>
          need.kind === "trays" &&
          need.hardeningFloorC !== null &&
          need.plants.includes("cabbages"),
      );
    expect([hardened(first), hardened(first + 1)]).toEqual([false, true]);
  });

  test("are no more once the plants are out, and the greenhouse needs no air for them", () => {
    expect(needs(out - 2, out - 1, "vents")).toHaveLength(1);
    expect(needs(out + 1, out + 5, "trays")).toEqual([]);
    expect(needs(out + 1, out + 5, "vents")).toEqual([]);
  });
});

describe("what bears", () => {
  const beans = dayOf("bean/harvest/1");
  const bean = { task: "2027/bean/harvest/1", left: "grows out" };

  test("is told from its first harvest to its end", () => {
    expect(needs(beans + 1, beans + 3, "pick")).toContainEqual(expect.objectContaining(bean));
    expect(needs(beans - 20, beans - 15, "pick")).not.toContainEqual(expect.objectContaining(bean));
    const end = scheduled.find(
      ({ task }) => task.sets?.planting === "2027/bean" && task.sets.act === "end",
    );
    if (!end) throw new Error("beans have no end");
    expect(needs(end.day + 1, end.day + 5, "pick")).not.toContainEqual(
      expect.objectContaining(bean),
    );
  });

  test("is nothing of what stands for years once it is left to grow", () => {
    const years = awayOf(
      LUSH.replace("      - beet: 2 rows\n", "      - rhubarb: 2 crowns, in since 20 Apr 2024\n"),
    );
    const last = years.scheduled.find(({ task }) => task.id === "2027/rhubarb/harvest/last");
    if (!last) throw new Error("no last rhubarb");
    const picked = (day: number) =>
      needsOf(years.year, years.plan, { from: day as Day, to: day as Day }).some(
        (need) => need.kind === "pick" && need.task === "2027/rhubarb/harvest/1",
      );
    expect([picked(last.day - 3), picked(last.day + 1)]).toEqual([true, false]);
  });

  test("differs in how it takes being left", () => {
    const left = (id: string, days = 1) => {
      const day = dayOf(id) + days;
      return needs(day, day, "pick").find(
        (need) => need.kind === "pick" && need.task === `2027/${id}`,
      );
    };
    expect(left("tomato/harvest/1")).toMatchObject({ left: "ripens", bed: "south-bed" });
    expect(left("lettuce/harvest/cut-1")).toMatchObject({ left: "stands" });
    expect(needs(dayOf("beet/harvest/1"), dayOf("beet/harvest/1") + 1, "pick")).not.toContainEqual(
      expect.objectContaining({ task: "2027/beet/harvest/1" }),
    );
  });
});

describe("what may come up", () => {
  test("is told in the days it is likely, with the board that is still on it", () => {
    const off = dayOf("carrot/board/off");
    expect(needs(off - 3, off + 3, "up")).toContainEqual(
      expect.objectContaining({ plants: "carrots", bed: "root-bed", board: true }),
    );
    expect(needs(off + 1, off + 1, "up")).not.toContainEqual(
      expect.objectContaining({ plants: "carrots", board: true }),
    );
    expect(needs(off + 60, off + 70, "up")).not.toContainEqual(
      expect.objectContaining({ plants: "carrots" }),
    );
  });

  test("is nothing of what was raised indoors", () => {
    const sown = dayOf("tomato/sow-indoors/1");
    expect(needs(sown, sown + 30, "up")).not.toContainEqual(
      expect.objectContaining({ plants: "tomatoes" }),
    );
  });
});

import { describe, expect, test } from "vitest";
import { type Day, weekdayOf } from "../../../src/base/days/day.ts";
import { BOARD, BOARD_OFF_BY_DAYS } from "../../../src/engine/practices/board.ts";
import { isoDay, normalsOf, QUARRY, tellOf } from "../../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { said, stepOf, tasksIn, titles, told, windowsOf } from "./told.ts";

const carrots = (given: Given = {}) =>
  growingOf(QUARRY, "carrot", { acts: { start: "2027-05-03" }, ...given });

const between = (from: string, to: string) => (day: Day) => day < isoDay(from) || day > isoDay(to);

describe("a board over carrots sown on 3 May", () => {
  test("is looked under from the first likely day, and off when they are likely up", () => {
    expect(windowsOf(BOARD, carrots())).toEqual([
      "look 05-15 05-16 05-16",
      "off 05-16 05-19 05-24",
    ]);
    expect(titles(tasksIn(BOARD, carrots()))).toEqual([
      "Look under board: carrots [bed]",
      "Board off carrots [bed]",
    ]);
  });

  test("is looked under each evening: any green means off tonight", () => {
    const look = said(stepOf(BOARD, carrots(), "look"));
    expect(look).toContain("lift an edge each evening");
    expect(look).toContain("sign: Any green at all means off tonight.");
  });

  test("is a matter of tonight, for anybody about", () => {
    for (const task of tasksIn(BOARD, carrots())) {
      expect(task.harm).toBe("tonight");
      expect(task.rhythm).toBe("daily");
    }
  });

  test("is off on the day they were seen up, with nothing left to look under", () => {
    const seen = carrots({ acts: { start: "2027-05-03", up: "2027-05-15" } });
    expect(windowsOf(BOARD, seen)).toEqual(["off 05-15 05-15 05-15"]);
    expect(said(tasksIn(BOARD, seen)[0])).toContain("why: Green was seen on 15 May.");
    expect(told(tasksIn(BOARD, seen)[0])).toContain("Sown 3 May, up on 15 May;");
  });

  test("is off on the day they were seen up, though that be after day 21", () => {
    const seen = carrots({ acts: { start: "2027-04-27", up: "2027-05-19" } });
    expect(windowsOf(BOARD, seen)).toEqual(["off 05-19 05-19 05-19"]);
  });

  test("is off by day 21, though the seed be slower", () => {
    expect(BOARD_OFF_BY_DAYS).toBe(21);
    const slow = carrots({ crop: { comesUp: { kind: "table", row: "parsley", standsIn: null } } });
    expect(windowsOf(BOARD, slow).at(-1)).toMatch(/^off \S+ 05-24 05-24$/);
  });

  test("is off by day 21 where the soil is too cold to say when anything shows", () => {
    const ice = Array<number>(12).fill(0);
    const site = { ...carrots().plan.site, normals: normalsOf(ice, ice) };
    const cold = carrots({ plan: { site } });
    expect(windowsOf(BOARD, cold)).toEqual(["off 05-19 05-24 05-24"]);
    expect(said(tasksIn(BOARD, cold)[0])).toContain("green or not");
  });
});

describe("a board that nobody can look under each evening", () => {
  const away = carrots({ around: between("2027-05-18", "2027-05-24") });

  test("is off on the last day on which somebody is about, and kept damp", () => {
    expect(windowsOf(BOARD, away)).toEqual(["off 05-04 05-16 05-16"]);
    expect(said(tasksIn(BOARD, away)[0])).toContain("Nobody can look under it every evening");
  });

  test("is off before they go, where they are gone on the first likely day too", () => {
    const gone = carrots({ around: between("2027-05-15", "2027-05-26") });
    expect(windowsOf(BOARD, gone)).toEqual(["off 05-04 05-14 05-14"]);
  });

  test("is off on a Sunday for those who have only Sundays", () => {
    const sundays = carrots({ around: (day) => weekdayOf(day) === 7 });
    expect(windowsOf(BOARD, sundays)).toEqual(["off 05-04 05-16 05-16"]);
  });
});

describe("no board", () => {
  test("is told of where the plan lays none", () => {
    expect(windowsOf(BOARD, carrots({ planting: { under: [] } }))).toEqual([]);
  });

  test("is told of before the seed is in", () => {
    expect(windowsOf(BOARD, growingOf(QUARRY, "carrot"))).toEqual([]);
  });
});

test("the diary's carrots up moves the board's day in the whole garden", () => {
  const day = (text: string) =>
    tellOf(text, { on: "2027-05-01" }).scheduled.find(
      ({ task }) => task.id === "2027/carrot/board/off",
    )?.task.window.due;
  const seen = `${QUARRY}diary:\n  - 17 May: carrots up\n`;
  expect(day(seen)).toBe(isoDay("2027-05-17"));
  expect(day(QUARRY)).not.toBe(isoDay("2027-05-17"));
});

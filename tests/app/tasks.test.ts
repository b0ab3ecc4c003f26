import { expect, test } from "vitest";
import { morningList, tasksAsJson } from "../../src/app/tasks.ts";
import { SPRING, TODAY } from "./reports.ts";

const { year } = SPRING;

test("as JSON every task stands in day order, with days a reader of ISO dates knows", () => {
  const tasks = tasksAsJson(year, year.plans);
  expect(tasks).toHaveLength(year.scheduled.length);
  const days = tasks.map(({ day }) => day);
  expect(days).toEqual(days.toSorted());
  expect(tasks.find(({ id }) => id === "2027/beet/thin/1")).toMatchObject({
    title: "Thin beets, Root bed",
    planting: "2027/beet",
  });
});

test("the morning's list has today first, with details, then the week, then the rest", () => {
  const lines = morningList(year, year.plans, TODAY);
  const heads = lines.filter((line) => /^(?:Today|The week|Later|Still)/.test(line));
  expect(heads).toEqual(["Today, Saturday 8 May", "The week ahead", "Later"]);
  expect(lines.some((line) => line.startsWith("    However warm "))).toBe(true);
});

test("of plans that were not asked for nothing is told", () => {
  expect(tasksAsJson(year, [])).toEqual([]);
});

test("plants are carried out before they are brought in", () => {
  const ids = tasksAsJson(year, year.plans).map(({ id }) => id);
  const out = ids.filter((id) => id.includes("/harden-off/out-"));
  expect(out.length).toBeGreaterThan(0);
  for (const id of out) {
    const back = ids.indexOf(id.replace("/out-", "/in-"));
    if (back >= 0) expect(ids.indexOf(id), id).toBeLessThan(back);
  }
});

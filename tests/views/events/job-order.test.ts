import { describe, expect, test } from "vitest";
import {
  inBedOrder,
  indoorsLast,
  inHarmOrder,
  minutesOf,
  needsDaylight,
  weightiestFirst,
  worstFirst,
} from "../../../src/views/events/job-order.ts";
import { placedOf } from "../../engine/schedule/given.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const PLAN = planOf(QUARRY);
const job = (id: string, task: Parameters<typeof placedOf>[1] = {}) =>
  placedOf({}, { id, ...task });
const ids = (jobs: readonly { readonly task: { readonly id: string } }[]) =>
  jobs.map((each) => each.task.id);

const SETS = { act: "set out", planting: "2027/kale", sowing: 1 } as const;

describe("the order one walks", () => {
  test("is under a roof first, then bed by bed as the plan has them", () => {
    const jobs = [
      job("a", { bed: "garlic-bed" }),
      job("b", { bed: null }),
      job("c", { bed: "bags" }),
      job("d", { bed: "south-bed", indoors: true }),
    ];
    expect(ids(inBedOrder(jobs, PLAN))).toEqual(["d", "c", "a", "b"]);
  });

  test("is by id within a bed", () => {
    expect(ids(inBedOrder([job("b"), job("a")], PLAN))).toEqual(["a", "b"]);
  });

  test("has things to get before the beds, and in a bed what comes off and out, goes in, and goes over it", () => {
    const bed = "root-bed";
    const jobs = [
      job("2027/bed/root-bed/cover/on", { bed, practice: "cover", step: "on" }),
      job("2027/kale/feed/1", { bed, practice: "feed" }),
      job("2027/kale/set-out/1", { bed, practice: "set out", sets: SETS }),
      job("2027/leek/cover/off", { bed, practice: "cover", step: "off" }),
      job("2027/leek/harvest/1", { bed, practice: "harvest" }),
      job("2027/pea/things-to-have/cover-on", { bed, practice: "things to have" }),
    ];
    expect(ids(inBedOrder(jobs, PLAN))).toEqual([
      "2027/pea/things-to-have/cover-on",
      "2027/leek/cover/off",
      "2027/leek/harvest/1",
      "2027/kale/set-out/1",
      "2027/kale/feed/1",
      "2027/bed/root-bed/cover/on",
    ]);
  });

  test("puts what has most to lose first where that is asked", () => {
    const jobs = [
      job("a", { harm: "when you can" }),
      job("b", { harm: "tonight" }),
      job("c", { harm: "this week" }),
    ];
    expect(ids(inHarmOrder(jobs, PLAN))).toEqual(["b", "c", "a"]);
  });
});

test("after sunset what is done under a roof comes last, which needs no daylight", () => {
  const jobs = [
    job("pot", { indoors: true }),
    job("sow"),
    job("get", { practice: "things to have" }),
  ];
  expect(ids(indoorsLast(jobs))).toEqual(["sow", "pot", "get"]);
  expect(jobs.map(needsDaylight)).toEqual([false, true, false]);
});

test("the worst comes first, and else the order stays", () => {
  const jobs = [job("b"), job("a"), job("c", { harm: "tonight" })];
  expect(ids(worstFirst(jobs))).toEqual(["c", "b", "a"]);
});

test("groups weigh by harm, then by what begins a crop, then by minutes; things to get the least", () => {
  const groups = [
    [job("get", { practice: "things to have", minutes: 60 })],
    [job("net", { minutes: 10 })],
    [job("weed", { minutes: 20 }), job("weed too", { minutes: 20 })],
    [job("sow", { minutes: 5, sets: SETS })],
    [job("board", { harm: "tonight", minutes: 5 })],
  ];
  expect(ids(weightiestFirst(groups).flat())).toEqual([
    "board",
    "sow",
    "weed",
    "weed too",
    "net",
    "get",
  ]);
});

test("minutes are added up", () => {
  expect(minutesOf([job("a"), job("b", { minutes: 10 })])).toBe(30);
});

import { describe, expect, test } from "vitest";
import { plus, weekdayOf } from "../../src/base/days/day.ts";
import { flowerMilestone } from "../../src/engine/growth/flower.ts";
import { isReached } from "../../src/engine/growth/milestones.ts";
import { ripeMilestone } from "../../src/engine/growth/ripe.ts";
import type { SowingContext } from "../../src/engine/growth/sowing-context.ts";
import type { ScheduledTask } from "../../src/engine/schedule/scheduled-task.ts";
import { drawnFor, samples } from "../depth.ts";
import { gardenOf, planOf } from "../gardens.ts";
import { once } from "../once.ts";
import { dawn, toldAt } from "./feeds.ts";
import { grownIn } from "./grown.ts";
import { anyTrade } from "./trade.ts";

/** Tools and small things that stand in any shed. */
const EVERYDAY = [
  "a watering can",
  "a hoe",
  "a bucket",
  "a knife",
  "shears",
  "string",
  "a pot of soapy water",
  "slips",
];

const GARDENS = samples(24, 12);
const gardens = once(() => {
  const roll = drawnFor(23);
  return Array.from({ length: GARDENS }, () => anyTrade(roll, 15)).map((text) => {
    const told = toldAt(gardenOf(text), dawn("2027-01-01"));
    return { told, contexts: grownIn(planOf(text), told) };
  });
});

type Told = { readonly growing: SowingContext; readonly mine: readonly ScheduledTask[] };

const each = once((): readonly Told[] =>
  gardens().flatMap(({ told, contexts }) =>
    contexts
      .filter(({ sowing }) => sowing === 1)
      .map((growing) => ({
        growing,
        mine: told.scheduled.filter(({ task }) => task.subject.key === growing.planting.key),
      })),
  ),
);

const taskOf = ({ mine }: Told, practice: string, step: string) =>
  mine.find(({ task }) => task.practice === practice && task.step === step);
const nameOf = ({ growing }: Told) => `${growing.planting.key} ${growing.planting.start}`;
const breaking = (rule: (told: Told) => boolean) =>
  [
    ...new Set(
      each()
        .filter((told) => !rule(told))
        .map(nameOf),
    ),
  ].sort();

describe("any crops of the trade in any garden", () => {
  test("are many, and nearly all of them begin", () => {
    expect(each().length).toBeGreaterThan(GARDENS * 10);
    expect(new Set(each().map(({ growing }) => growing.crop.key)).size).toBeGreaterThan(45);
  });

  test("no cover stays closed over a crop in flower that wants bees", () => {
    const closed = breaking((each) => {
      const on = taskOf(each, "cover", "on");
      if (!on || !each.growing.crop.flowers?.forBees) return true;
      const off = taskOf(each, "cover", "off");
      const flower = flowerMilestone(each.growing);
      return off !== undefined && (!isReached(flower) || off.day <= plus(flower.usual, 3));
    });
    expect(closed).toEqual([]);
  });

  test("nothing is set out before its things were named", () => {
    const early = breaking((each) => {
      const out = taskOf(each, "set out", "1");
      const things = each.mine.filter(({ task }) => task.practice === "things to have");
      return !out || things.every(({ task, day }) => task.step !== "set-out" || day <= out.day);
    });
    expect(early).toEqual([]);
  });

  test("every thing that a job needs, everyday tools aside, was named before it", () => {
    const unnamed = gardens().flatMap(({ told }) =>
      told.scheduled.flatMap(({ task, day }) => {
        const before = told.scheduled.filter(
          (each) =>
            (each.task.subject.key === task.subject.key || each.task.subject.kind === "garden") &&
            each.day <= day,
        );
        const named = new Set(before.flatMap((each) => each.task.brings));
        return task.needs
          .filter((need) => !EVERYDAY.includes(need) && !named.has(need))
          .map((need) => `${task.id}: ${need}`);
      }),
    );
    expect(unnamed).toEqual([]);
  });

  test("things are named on Saturdays, where nobody's days are in the way", () => {
    const ready = gardens()
      .flatMap(({ told }) => told.scheduled)
      .filter(({ task }) => task.title.verb === "…: get things ready");
    expect(ready.length).toBeGreaterThan(GARDENS * 4);
    expect(ready.filter(({ day }) => weekdayOf(day) !== 6).map(({ task }) => task.id)).toEqual([]);
  });

  test("nothing is harvested before it may be ripe", () => {
    const early = breaking((each) => {
      const first = each.mine.find(
        ({ task }) => task.practice === "harvest" && !task.title.verb.includes("what there is"),
      );
      const ripe = ripeMilestone(each.growing);
      return !first || !isReached(ripe) || first.day >= plus(ripe.early, -1);
    });
    expect(early).toEqual([]);
  });

  test("every hold ends: what is not in the ground yet has its day this season", () => {
    const held = breaking((each) => {
      const { start } = each.growing.planting;
      if (start === "seed indoors" || start === "winter-sown" || start === "plants")
        return taskOf(each, "set out", "1") !== undefined;
      return each.mine.some(({ task }) => task.sets?.act === "start");
    });
    expect(held).toEqual([]);
  });

  test("every task is told within its days, or says why not", () => {
    const late = gardens()
      .flatMap(({ told }) => told.scheduled)
      .filter(
        ({ day, window, note }) => note === null && (day < window.earliest || day > window.latest),
      )
      .map(({ task }) => task.id);
    expect(late).toEqual([]);
  });

  test("every text keeps to its length and to plain words", () => {
    const MACHINERY =
      /\b(emergence|window|rung|threshold|degree.days?|milestone|anchor|overdue|undefined|null|NaN)\b/i;
    const odd = gardens()
      .flatMap(({ told }) => told.events)
      .filter(
        ({ kind, title, text }) =>
          [...title].length > 50 ||
          text.length > (kind === "session" || kind === "open" ? 900 : 450) ||
          MACHINERY.test(`${title} ${text}`) ||
          !/[.!?…]$/.test(text.trim()),
      )
      .map(({ title, text }) => `${title}: ${text}`);
    expect([...new Set(odd)]).toEqual([]);
  });
});

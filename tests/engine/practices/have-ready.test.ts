import { describe, expect, test } from "vitest";
import { type Day, weekdayOf } from "../../../src/base/days/day.ts";
import type { PracticeName } from "../../../src/engine/practices/all.ts";
import { haveReadyTasks } from "../../../src/engine/practices/have-ready.ts";
import { sharedTask, window } from "../../../src/engine/practices/task.ts";
import { isoDay, QUARRY, tellOf } from "../../gardens.ts";
import { growingOf } from "../growth/growing.ts";
import { ending, planWith, toldWith, wordsOf } from "./garden.ts";
import { said } from "./told.ts";

const day = isoDay("2027-05-21");
const job = (practice: PracticeName, needs: readonly string[], on: Day = day) => ({
  day: on,
  task: sharedTask(2027, "south-bed", practice, "1", {
    window: window(on, on, on),
    harm: "this week",
    rhythm: "session",
    title: { verb: "Do", object: "South bed", where: null },
    say: [],
    basis: ["soil"],
    needs,
  }),
});

describe("what must be at hand", () => {
  test("is looked for a week before, the day before at the latest, with its things and that day", () => {
    const [task] = haveReadyTasks(2027, [job("cover", ["a net, hoops and pegs"])], []);
    expect(task?.window).toMatchObject({ due: day - 7, latest: day - 1, better: "earlier" });
    expect(said(task)).toContain("how: A net, hoops and pegs, by 21 May.");
    expect(task).toMatchObject({ brings: ["a net, hoops and pegs"], harm: "when you can" });
    expect(task?.hangsOn).toEqual(["2027/bed/south-bed/cover/1"]);
  });

  test("leaves out what stands there or is at hand for the planting", () => {
    const needed = (has: string) => {
      const crops = `crops:\n  - cucumber: 4 plants, bought${has}\n  - cabbage: 4 plants${has}\n`;
      return tellOf(`${QUARRY}${crops}`, { on: "2027-01-01" })
        .scheduled.filter(({ task }) => task.practice === "things to have")
        .flatMap(({ task }) => task.brings)
        .filter((thing) => /trellis|collars/.test(thing));
    };
    expect(needed("")).toEqual(expect.arrayContaining(["a trellis or netting", "collars of card"]));
    expect(needed(", on a trellis, with collars")).toEqual([]);
  });

  test("leaves out everyday tools, and what was named before", () => {
    const jobs = [
      job("cover", ["a hoe"]),
      job("set out", ["stakes and ties", "a watering can"]),
      job("stake and train", ["stakes and ties"], isoDay("2027-05-28")),
    ];
    expect(haveReadyTasks(2027, jobs, []).map(({ brings }) => brings)).toEqual([
      ["stakes and ties"],
    ]);
  });

  test("is one for the garden where it serves every crop in turn", () => {
    const [task, ...rest] = haveReadyTasks(
      2027,
      [job("feed", ["compost"], isoDay("2027-06-01")), job("feed", ["compost"])],
      [],
    );
    expect(rest).toEqual([]);
    expect(task).toMatchObject({ id: "2027/garden/things-to-have/feed-compost" });
    expect(task?.title.object).toBe("feeding");
    expect(said(task)).toContain("by 21 May, first for South bed.");
  });

  test("is nothing for a planting that drops it", () => {
    const dropped = growingOf(QUARRY, "tomato", { planting: { without: ["things to have"] } });
    const task = {
      ...job("set out", ["stakes"]).task,
      subject: { kind: "planting", key: dropped.planting.key },
    } as const;
    expect(haveReadyTasks(2027, [{ task, day }], [dropped])).toEqual([]);
    expect(haveReadyTasks(2027, [{ task, day }], [growingOf(QUARRY, "tomato")])).toHaveLength(1);
  });

  test("stands on a Saturday, every other one", () => {
    const ready = toldWith(["pea: 1 row", "tomato: 6 plants, bought"]).filter(
      ({ task }) => task.round !== null,
    );
    expect(ready.length).toBeGreaterThan(3);
    expect(ready.every(({ day: on }) => weekdayOf(on) === 6)).toBe(true);
    expect(new Set(ready.map(({ day: on }) => on % 14)).size).toBe(1);
  });

  test("of several crops on one Saturday is one event", () => {
    const { events } = tellOf(
      planWith(["cabbage: 6 plants, bought", "broccoli: 6 plants, bought"]),
      {
        on: "2027-01-01",
      },
    );
    const ready = events.filter(({ title }) => title.endsWith(": get things ready"));
    expect(ready.some(({ title }) => /cabbages/i.test(title) && /broccoli/i.test(title))).toBe(
      true,
    );
  });

  test("of bags says how much mix, which fills them all summer", () => {
    const { scheduled: placed } = tellOf(QUARRY, { on: "2027-01-01" });
    const ready = ending(placed, "2027/potato/things-to-have/plant-1");
    expect(said(ready.task)).toContain("how: About 75 gal of mix in all.");
    expect(ready.task.brings).toContain("bagged mix");
  });
});

test("what one crop wants for several jobs of a fortnight is told once, and nothing by two names", () => {
  const placed = toldWith(["kale: 6 plants, from seed indoors"]);
  const ready = placed.filter(({ task }) => task.id.startsWith("2027/kale/things-to-have/"));
  const days = ready.flatMap(({ task, day }) => (task.step === "order" ? [] : [day]));
  expect(new Set(days).size).toBe(days.length);
  expect(ready.map(wordsOf).join("\n")).toContain("A net, hoops and pegs; collars of card, by ");
});

test("compost and a cover are named before a bed is closed", () => {
  const placed = toldWith(["beet: 1 row"]);
  const ready = ending(placed, "/garden/things-to-have/close-the-bed-compost");
  expect(wordsOf(ready)).toContain("Compost; leaves or straw");
  expect(ready.day).toBeLessThan(ending(placed, "/close-the-bed/1").day);
});

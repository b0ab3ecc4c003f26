import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  anchorTaskIds,
  isMany,
  MINUTES,
  objectOf,
  plantingTask,
  roundMinutes,
  sharedTask,
  slugOf,
  type TaskParts,
  taskIdBefore,
  window,
} from "../../../src/engine/practices/task.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { growingOf } from "../growth/growing.ts";

const DAY = isoDay("2027-06-13");
const TELLING: TaskParts = {
  window: window(DAY, DAY, DAY),
  harm: "this week",
  rhythm: "session",
  title: { verb: "Thin", object: "beets", where: "bed" },
  say: [],
  basis: ["soil", "age", "soil"],
};
const beets = growingOf(QUARRY, "beet", { acts: { start: "2027-05-03" } });

describe("minutes", () => {
  test.each([
    [1, 5],
    [5, 5],
    [6, 10],
    [21, 30],
    [46, 60],
    [300, 60],
  ])("%d are told as %d", (minutes, told) => {
    expect(roundMinutes(minutes)).toBe(told);
  });

  test("are one of seven a text may say", () => {
    fc.assert(
      fc.property(fc.nat(500), (minutes) => MINUTES.some((m) => m === roundMinutes(minutes))),
    );
  });
});

describe("a window", () => {
  test("has its ends put in order round the due day", () => {
    const [early, due, late] = [isoDay("2027-06-10"), DAY, isoDay("2027-06-22")];
    expect(window(late, due, early)).toEqual({
      earliest: due,
      due,
      latest: due,
      better: "later",
    });
    expect(window(early, due, late, "earlier")).toEqual({
      earliest: early,
      due,
      latest: late,
      better: "earlier",
    });
  });
});

describe("a planting's task", () => {
  test("has the id of its planting, practice and step", () => {
    expect(plantingTask(beets, "harden off", "out-1", TELLING).id).toBe(
      "2027/beet/harden-off/out-1",
    );
    expect(slugOf("harden off")).toBe("harden-off");
  });

  test("of a second sowing carries its number in its step", () => {
    const task = plantingTask({ ...beets, sowing: 2 }, "thin", "1", TELLING);
    expect(task.id).toBe("2027/beet/thin/sowing-2-1");
    expect(task.step).toBe("sowing-2-1");
  });

  test("stands in its bed and names its crop", () => {
    const { subject, bed, crop } = plantingTask(beets, "thin", "1", TELLING);
    expect({ subject, bed, crop }).toEqual({
      subject: { kind: "planting", key: "2027/beet" },
      bed: "root-bed",
      crop: "beet",
    });
  });

  test("has plain defaults: ten minutes, nothing to bring, whoever fits", () => {
    const task = plantingTask(beets, "thin", "1", TELLING);
    expect(task.minutes).toBe(10);
    expect([task.needs, task.kinds, task.hangsOn]).toEqual([[], [], []]);
    expect([task.together, task.whose, task.timed, task.sets]).toEqual([null, null, null, null]);
    expect(task.certainty).toBe("expected");
  });

  test("names each ground once", () => {
    expect(plantingTask(beets, "thin", "1", TELLING).basis).toEqual(["soil", "age"]);
  });

  test("is the person's whose planting it is", () => {
    const odas = growingOf(QUARRY, "beet", { planting: { whose: "oda" } });
    expect(plantingTask(odas, "thin", "1", TELLING).whose).toBe("oda");
  });
});

describe("a shared task", () => {
  test("is the bed's, by year and bed", () => {
    const task = sharedTask(2027, "root-bed", "weed", "1", TELLING);
    expect(task.id).toBe("2027/bed/root-bed/weed/1");
    expect(task.subject).toEqual({ kind: "bed", key: "2027/bed/root-bed" });
  });

  test("is the garden's where it is no bed's", () => {
    const task = sharedTask(2027, null, "weed", "1", TELLING);
    expect(task.id).toBe("2027/garden/weed/1");
    expect(task.subject.kind).toBe("garden");
  });
});

describe("a planting in a title", () => {
  const named = (planting: Parameters<typeof growingOf>[2]) =>
    objectOf(growingOf(QUARRY, "beet", planting));

  test("is the crop in the plural", () => {
    expect(named({ planting: { written: "beet" } })).toBe("beets");
  });

  test("is the name of the trade that the gardener wrote", () => {
    expect(named({ planting: { written: "beetroot" } })).toBe("beetroot");
  });

  test("is in the plural too where a kind of it is written", () => {
    expect(named({ planting: { written: "table beet" } })).toBe("table beets");
    expect(named({ planting: { written: "Sugar Beet" } })).toBe("Sugar beets");
  });

  test("is in the plural by the gardener's own word for it", () => {
    const courgette = growingOf(QUARRY, "tomato", {
      crop: {
        one: "summer squash",
        many: "summer squash",
        alsoCalled: ["courgette", "courgettes"],
      },
      planting: { written: "Courgette" },
    });
    expect(objectOf(courgette)).toBe("courgettes");
    expect(isMany(courgette)).toBe(true);
  });

  test("is one or many by its last word", () => {
    const many = (given: Parameters<typeof growingOf>[2]) =>
      isMany(growingOf(QUARRY, "beet", given));
    expect(many({ planting: { name: "winter beets" } })).toBe(true);
    expect(many({ planting: { name: "the late row" } })).toBe(false);
    expect(many({ crop: { one: "basil", many: "basil" }, planting: { written: "basil" } })).toBe(
      false,
    );
  });

  test("is its own name where it has one", () => {
    expect(named({ planting: { name: "winter beets" } })).toBe("winter beets");
  });
});

describe("what a task hangs on", () => {
  test("are the tasks that placed its acts, none for what nobody placed", () => {
    expect(anchorTaskIds(beets, "start")).toEqual([]);
    const anchors = new Map(
      [...beets.anchors].map(([key, each]) => [key, { ...each, task: "2027/beet/sow-outdoors/1" }]),
    );
    expect(anchorTaskIds({ ...beets, anchors }, "start", "set out")).toEqual([
      "2027/beet/sow-outdoors/1",
    ]);
  });

  test("and must not come before is told by the step's id", () => {
    expect(taskIdBefore(beets, "thin", "1")).toEqual(["2027/beet/thin/1"]);
    expect(taskIdBefore({ ...beets, sowing: 3 }, "harvest", "cut-1")).toEqual([
      "2027/beet/harvest/sowing-3-cut-1",
    ]);
    expect(taskIdBefore(beets, "thin", undefined)).toEqual([]);
  });
});

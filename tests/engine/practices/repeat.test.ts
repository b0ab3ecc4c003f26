import { describe, expect, test } from "vitest";
import { MOST_SOWINGS } from "../../../src/engine/growth/anchors.ts";
import { REPEAT, sowingNumbers } from "../../../src/engine/practices/repeat.ts";
import { ALONE, isoDay, normalsOf, QUARRY, tellOf } from "../../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { said, tasksIn, titles, told, windows } from "./told.ts";

const COOL = Array<number>(12).fill(15);
/** Lettuce in soil that is warm enough all year and never too warm, so that it begins 8 April. */
const lettuce = (given: Given = {}) => {
  const { site } = growingOf(QUARRY, "lettuce").plan;
  const mild = { ...site, normals: normalsOf(COOL, COOL) };
  return growingOf(QUARRY, "lettuce", { plan: { site: mild }, ...given });
};
const sown = (sowing: number, given: Given = {}) =>
  tasksIn(REPEAT, lettuce(given)).filter(({ step }) => step === String(sowing));

describe("the sowings of lettuce, every 14 days, three times", () => {
  test("are numbered from one", () => {
    expect(sowingNumbers(lettuce())).toEqual([1, 2, 3]);
  });

  test("come every 14 days where it is always as warm, and bear a few days either way", () => {
    expect(windows(sown(2))).toEqual(["2 04-18 04-22 04-26"]);
    expect(windows(sown(3))).toEqual(["3 05-02 05-06 05-10"]);
  });

  test("are told from the second on, by the same practice of one planting", () => {
    expect(sown(1)).toEqual([]);
    expect(tasksIn(REPEAT, { ...lettuce(), sowing: 2 })).toEqual([]);
    expect(sown(3).map(({ id }) => id)).toEqual(["2027/lettuce/repeat/3"]);
    expect(titles(sown(3))).toEqual(["Sow more lettuce [bed]"]);
  });

  test("are none where plants go out that were raised or bought, or tubers go in", () => {
    for (const start of ["seed indoors", "plants", "tubers"] as const) {
      const raised = lettuce({ planting: { start } });
      expect(sowingNumbers(raised)).toEqual([1]);
      expect(tasksIn(REPEAT, raised)).toEqual([]);
    }
  });

  test("each start a clock of their own", () => {
    expect(sown(3)[0]?.sets).toEqual({ planting: "2027/lettuce", sowing: 3, act: "start" });
  });

  test("are sown like the first, and say why and from when they are counted", () => {
    expect(said(sown(2)[0])).toContain("how: Sow ¼ in deep");
    expect(said(sown(2)[0])).toContain("Sown now it is ready 14 days after the one before");
    expect(told(sown(2)[0])).toContain("Counted from the first sowing, 8 Apr");
  });
});

describe("sowings without an end", () => {
  const every = (everyDays: number) =>
    sowingNumbers(lettuce({ planting: { repeat: { everyDays, times: null } } }));

  test("go on while there is time before the frost, and in a winter as mild as here before its middle", () => {
    expect(every(28)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9]);
  });

  test("are a dozen at the most", () => {
    expect(MOST_SOWINGS).toBe(12);
    expect(every(7)).toHaveLength(12);
  });

  test("pause in heat and in soil too warm for seed to wake, and keep their numbers after", () => {
    const june = COOL.map((mean, month) => (month === 5 ? 35 : mean));
    const hot = normalsOf(june, june);
    const site = { ...lettuce().plan.site, normals: hot };
    const numbers = sowingNumbers(
      lettuce({ plan: { site }, planting: { repeat: { everyDays: 14, times: null } } }),
    );
    for (const spoilt of [2, 3, 4, 5, 6]) expect(numbers).not.toContain(spoilt);
    expect(numbers).toContain(1);
    expect(numbers).toContain(9);
  });

  test("go on in autumn, however many a long hot summer leaves out", () => {
    const summer = COOL.map((mean, month) => (month >= 4 && month <= 7 ? 35 : mean));
    const site = { ...lettuce().plan.site, normals: normalsOf(summer, summer) };
    const numbers = sowingNumbers(
      lettuce({ plan: { site }, planting: { repeat: { everyDays: 7, times: null } } }),
    );
    expect(numbers.length).toBeLessThanOrEqual(MOST_SOWINGS);
    expect(numbers.filter((number) => number > MOST_SOWINGS).length).toBeGreaterThan(2);
  });

  test("count half a year where there is no frost", () => {
    const site = { ...lettuce().plan.site, lastFrost: null, firstFrost: null };
    const given = { plan: { site }, planting: { repeat: { everyDays: 30, times: null } } };
    expect(sowingNumbers(lettuce(given))).toEqual([1, 2, 3, 4, 5, 6, 7]);
  });
});

describe("one sowing alone", () => {
  test("is that of a planting that is not repeated, or begins indoors", () => {
    expect(sowingNumbers(lettuce({ planting: { repeat: null } }))).toEqual([1]);
    expect(sowingNumbers(lettuce({ planting: { start: "seed indoors" } }))).toEqual([1]);
  });

  test("is that of what is in the ground since before", () => {
    expect(sown(2, { planting: { inSince: isoDay("2027-03-01") } })).toEqual([]);
  });
});

test("sown later than reckoned, the sowings after it move as well", () => {
  const day = (text: string, id: string) =>
    tellOf(text, { on: "2027-04-01" }).scheduled.find(({ task }) => task.id === id)?.day;
  const diary = `${ALONE}diary:\n  - 20 May: lettuce sown\n`;
  expect(day(diary, "2027/lettuce/sow-outdoors/1")).toBe(isoDay("2027-05-20"));
  const [second, third] = ["2027/lettuce/repeat/2", "2027/lettuce/repeat/3"];
  expect(day(diary, second)).toBe(isoDay("2027-06-12"));
  expect(day(diary, third)).toBe(isoDay("2027-06-29"));
  for (const id of [second, third])
    expect(day(diary, id)).toBeGreaterThan(Number(day(ALONE, id)) + 3);
});

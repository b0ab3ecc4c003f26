import { describe, expect, test } from "vitest";
import { plus, sayDay } from "../../src/base/days/day.ts";
import { CROPS } from "../../src/crops/crops.ts";
import { lastFrostAt } from "../../src/engine/climate/frost.ts";
import type { ScheduledTask } from "../../src/engine/schedule/scheduled-task.ts";
import { isoDay, planOf, QUARRY, tellOf } from "../gardens.ts";
import { once } from "../once.ts";

const HEAD = QUARRY.slice(0, QUARRY.indexOf("people:"));
const PLANTINGS = CROPS.map(({ many }) => `  - ${many}: 20 plants`).join("\n");
/** The lane with one of everything, and the same with a summer of eleven weeks. */
const LANE = `${HEAD}crops:\n${PLANTINGS}\n`;
const SHORT = LANE.replace("20 Apr, 6 May, 21 May", "1 Jun, 10 Jun, 20 Jun").replace(
  "about 2 Oct",
  "about 26 Aug",
);
const on = "2027-01-01";

const told = (text: string) => tellOf(text, { on }).scheduled;
const plantingOf = ({ task }: ScheduledTask) => task.subject.key;
const wordsOf = ({ task }: ScheduledTask) =>
  task.say
    .flatMap(({ pieces }) => pieces)
    .filter((piece) => typeof piece === "string")
    .join(" ");

describe.each([
  ["the lane", LANE, "2027-10-30"],
  ["a summer of eleven weeks", SHORT, "2027-09-23"],
] as const)("one of every crop in %s", (_, text, last) => {
  const placed = once(() => told(text));
  const harvests = () => placed().filter(({ task }) => task.practice === "harvest");
  const full = () => harvests().filter(({ task }) => !task.title.verb.includes("what there is"));

  test("is ordered without a word of not ripening where it is harvested in full", () => {
    const doubted = placed().filter(
      (each) => each.task.step === "order" && wordsOf(each).includes("not ready here"),
    );
    const ready = new Set(full().map(plantingOf));
    const inTime = (key: string) =>
      full().some((each) => plantingOf(each) === key && each.task.window.due <= isoDay(last));
    expect(doubted.map(plantingOf).filter((key) => ready.has(key) && inTime(key))).toEqual([]);
  });

  test("is told no day of harvest past the last one worth it, but for what winters", () => {
    const winters = CROPS.filter(({ winter, overwinter }) => winter ?? overwinter);
    const late = harvests().filter(
      ({ task }) =>
        !winters.some(({ key }) => key === task.crop) && task.window.latest > isoDay(last),
    );
    const { firstFrost } = planOf(text).site;
    expect(late.map(({ task }) => task.id)).toEqual([]);
    expect(firstFrost && plus(firstFrost.usual, 28)).toBe(isoDay(last));
  });

  test("is told frost days that are the odds' own", () => {
    const { lastFrost } = planOf(text).site;
    if (!lastFrost) throw new Error("the lane has frost");
    const own = { "1 spring in 10": lastFrostAt(lastFrost, 0.1), "1 spring in 2": lastFrost.usual };
    const said = placed().flatMap(({ task }) =>
      task.because.flatMap(([first, day, odds]) => {
        if (first !== "Frost comes after " || typeof day !== "object" || !("day" in day)) return [];
        const so = Object.entries(own).find(([chance]) => String(odds).includes(chance));
        return [`${task.id} ${so ? day.day === so[1] || sayDay(day.day) : odds}`];
      }),
    );
    expect(said.length).toBeGreaterThan(10);
    expect(said.filter((each) => !each.endsWith(" true"))).toEqual([]);
  });

  test("has each sown thing hardy against frost brought in, full grown or not", () => {
    const standing = CROPS.filter(({ perennial, overwinter }) => perennial || overwinter);
    const sown = placed().filter(
      ({ task }) => task.sets?.act === "start" && !standing.some(({ key }) => key === task.crop),
    );
    const got = new Set(
      [...harvests(), ...placed().filter(({ task }) => task.sets?.act === "end")].map(plantingOf),
    );
    expect(sown.map(plantingOf).filter((key) => !got.has(key))).toEqual([]);
  });
});

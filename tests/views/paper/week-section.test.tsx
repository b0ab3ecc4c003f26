import { describe, expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import type { SheetJob } from "../../../src/views/paper/job.ts";
import type { SheetLadder } from "../../../src/views/paper/ladder.ts";
import { WeekSection } from "../../../src/views/paper/week-section.tsx";
import type { SheetDay } from "../../../src/views/paper/weeks.ts";
import { parse, textIn } from "../pictures/xml.ts";
import { looking } from "./paper.ts";

const SATURDAY = dayOrThrow(2027, 5, 8);
const PEOPLE = [
  { key: "imre", name: "Imre", letters: "I" },
  { key: "oda", name: "Oda", letters: "O" },
];

const job = (over: Partial<SheetJob>): SheetJob => ({
  ...{ title: "Thin beets", how: [], sign: "", caution: "", who: [], minutes: 20 },
  ...{ hour: "", till: "", done: "" },
  ...over,
});

function weekOf(day: Partial<SheetDay>, ladders: readonly SheetLadder[] = []) {
  const days = [{ day: SATURDAY, warnings: [], jobs: [], ...day }];
  const week = { from: dayOrThrow(2027, 5, 3), to: dayOrThrow(2027, 5, 9), days, ladders };
  return parse(String(<WeekSection week={week} people={PEOPLE} />));
}

const textsOf = (look: string, ...args: Parameters<typeof weekOf>) =>
  looking(weekOf(...args), look).map(textIn);

describe("a week of the sheet", () => {
  test("is headed by its days and names a day once, in words for every job of it", () => {
    expect(textsOf("name", {})).toEqual(["3 to 9 May"]);
    const week = weekOf({ jobs: [job({}), job({})] });
    expect(looking(week, "day").map(({ attributes }) => attributes.class)).toEqual([
      "day",
      "day again",
    ]);
    expect(looking(week, "day").map(textIn)).toEqual(["Sat 8", "Sat 8"]);
  });

  test("says a job with its hour, its length and the letters of who does it", () => {
    const jobs = [
      job({ hour: "10:00", who: ["oda", "imre"] }),
      job({ minutes: 90 }),
      job({ minutes: null }),
    ];
    expect(textsOf("what", { jobs })).toEqual([
      "Thin beets10:00, 20 minI O",
      "Thin beetsabout 1.5 hours",
      "Thin beets",
    ]);
  });

  test("has no element for what a job does not say", () => {
    const week = weekOf({ jobs: [job({ minutes: null })] });
    for (const look of ["how", "sign", "caution", "till", "time", "who"])
      expect(looking(week, look)).toEqual([]);
  });

  test("has the last good day below the line to write on, and of what is done when it was", () => {
    const jobs = [
      job({ till: "Thu 13 May" }),
      job({ till: "Thu 13 May", done: "done 7 May, Oda" }),
    ];
    expect(textsOf("till", { jobs })).toEqual(["fine till Thu 13 May", "done 7 May, Oda"]);
    expect(textsOf("box", { jobs })).toEqual(["", "x"]);
  });

  test("has warnings in a frame with their day, and nothing to tick", () => {
    const warnings = [job({ title: "Frost", how: ["Cover beans."] })];
    expect(textsOf("warning", { warnings })).toEqual(["Frost (Sat 8)Cover beans."]);
    expect(textsOf("box", { warnings })).toEqual([]);
  });

  test("has a ladder's days one after another, each with a box", () => {
    const rung = {
      day: SATURDAY,
      hours: "10:00 to 11:00",
      who: ["oda"],
      how: "Shade.",
      done: true,
    };
    const ladder = { title: "Harden off leeks", how: "Out of the wind.", rungs: [rung] };
    expect(textsOf("ladder", {}, [ladder])).toEqual([
      "Harden off leeksOut of the wind.xSat 8 10:00 to 11:00O Shade.",
    ]);
  });
});

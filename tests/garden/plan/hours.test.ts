import { describe, expect, it } from "vitest";
import type { Problem } from "../../../src/base/problems/problem.ts";
import { minuteOfTime, readHours, weekdayNamed } from "../../../src/garden/plan/hours.ts";
import { wordsAt } from "../../../src/garden/plan/tree.ts";

const at = { file: "f", line: 1, column: 1 };
const ALL_DAY = { from: 0, to: 1440 };

function hours(text: string): string {
  const told: Problem[] = [];
  const found = readHours(wordsAt(text, at), ALL_DAY, told);
  if (told.length > 0) return `${told[0]?.code}: ${told[0]?.shouldBe}`;
  return found.map(({ weekday: day, from, to }) => `${day} ${from / 60}-${to / 60}`).join(", ");
}

describe("days and hours in words", () => {
  it("reads single days with hours, in weekday order", () => {
    expect(hours("Sat 9-12 and Wed 18-19")).toBe("3 18-19, 6 9-12");
    expect(hours("Wed 18 to 19, Sat 9:30-12")).toBe("3 18-19, 6 9.5-12");
  });

  it("reads weekdays from an hour on and weekends all day", () => {
    const day = [1, 2, 3, 4, 5].map((n) => `${n} 17.5-24`).join(", ");
    expect(hours("weekdays from 17:30 and weekends")).toBe(`${day}, 6 0-24, 7 0-24`);
    expect(hours("weekends and weekdays from 17:30")).toBe(`${day}, 6 0-24, 7 0-24`);
  });

  it("reads every day but some", () => {
    expect(hours("every day but Tue")).toBe("1 0-24, 3 0-24, 4 0-24, 5 0-24, 6 0-24, 7 0-24");
    expect(hours("every day but Tue and Wed")).toBe("1 0-24, 4 0-24, 5 0-24, 6 0-24, 7 0-24");
    expect(hours("every day except Sundays from 7")).toBe(
      [1, 2, 3, 4, 5, 6].map((n) => `${n} 7-24`).join(", "),
    );
  });

  it("gives named days the hours written after them", () => {
    expect(hours("Mon and Wed 18-19")).toBe("1 18-19, 3 18-19");
    expect(hours("Sat 9-12 and 14-16")).toBe("6 9-12, 6 14-16");
  });

  it("reads spans of days, over the week's end too", () => {
    expect(hours("Mon-Wed 8-9")).toBe("1 8-9, 2 8-9, 3 8-9");
    expect(hours("Sat to Mon until 8")).toBe("1 0-8, 6 0-8, 7 0-8");
  });

  it("reads twelve-hour clocks", () => {
    expect(hours("Wed 6-8pm")).toBe("3 18-20");
    expect(hours("Wed 6pm-8pm")).toBe("3 18-20");
    expect(hours("Sat 9-1pm")).toBe("6 9-13");
    expect(hours("Sat 9am to noon")).toMatch(/^hours-unclear/);
    expect(hours("Sat from 6pm")).toBe("6 18-24");
  });

  it("refuses hours that run backwards or that no clock shows", () => {
    for (const text of [
      "Sat 12-9",
      "Sat 9-9",
      "Sat 25-26",
      "Sat 9:75-10",
      "Sat from 24",
      "Sat until 0",
      "Sat 13pm-14pm",
      "9-12",
      "often",
      "",
    ])
      expect(hours(text), text).toMatch(/^hours-unclear/);
  });

  it("offers the nearest day", () => {
    expect(hours("Wensday 18-19")).toBe("hours-unclear: Did you mean Wednesday");
    expect(hours("weekdys")).toBe("hours-unclear: Did you mean weekdays");
  });

  it("knows weekdays by three letters or more, and minutes of both clocks", () => {
    expect([
      weekdayNamed("Tue"),
      weekdayNamed("tuesdays"),
      weekdayNamed("T"),
      weekdayNamed("Tux"),
    ]).toEqual([2, 2, null, null]);
    expect([
      minuteOfTime("9"),
      minuteOfTime("9", "30"),
      minuteOfTime("6", undefined, "pm"),
      minuteOfTime("12", undefined, "am"),
    ]).toEqual([540, 570, 1080, 0]);
    expect([
      minuteOfTime("24"),
      minuteOfTime("24", "1"),
      minuteOfTime("0", undefined, "pm"),
    ]).toEqual([1440, null, null]);
  });
});

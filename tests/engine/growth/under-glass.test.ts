import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { degreesC } from "../../../src/base/quantities/quantity.ts";
import { climateOf } from "../../../src/engine/climate/climate.ts";
import { frostsAt } from "../../../src/engine/climate/frosts-at.ts";
import { dayHoursOf } from "../../../src/engine/climate/sun.ts";
import type { SowingContext } from "../../../src/engine/growth/sowing-context.ts";
import { glassEnd, lastLongDay, lightTests } from "../../../src/engine/growth/under-glass.ts";
import { isoDay, QUARRY, tellOf } from "../../gardens.ts";
import { once } from "../../once.ts";
import { growingOf } from "./growing.ts";

const tomato = growingOf(QUARRY, "tomato");
const under = (keptAboveC: number | null): SowingContext => {
  const bed = tomato.bed && {
    ...tomato.bed,
    kind: "greenhouse" as const,
    keptAbove: keptAboveC === null ? null : degreesC(keptAboveC),
  };
  return { ...tomato, bed, climate: climateOf(tomato.plan, []).at(bed) };
};

describe("light under glass", () => {
  test("lets nothing begin there before days of ten hours, and asks nothing of the open", () => {
    expect(lightTests(tomato)).toEqual([]);
    expect(lightTests(under(null))).toEqual([{ basis: "time of year", day: isoDay("2027-02-09") }]);
    const climate = { ...under(null).climate, dayHours: null };
    expect(lightTests({ ...under(null), climate })).toEqual([]);
  });

  test("has a last day of ten hours in autumn, and none where no day is shorter", () => {
    expect(isoOf(lastLongDay(under(null), isoDay("2027-06-01")) ?? isoDay("2027-01-01"))).toBe(
      "2027-11-02",
    );
    const climate = { ...under(null).climate, dayHours: dayHoursOf(20) };
    expect(lastLongDay({ ...under(null), climate }, isoDay("2027-06-01"))).toBeNull();
  });
});

describe("the end of what bears under glass", () => {
  test("is the frost that gets in, or two weeks after the last day of ten hours", () => {
    const { firstFrost } = frostsAt(tomato.plan.site, under(null).bed);
    expect(glassEnd(under(null))).toEqual({ day: firstFrost?.usual, by: "frost" });
    expect(glassEnd(under(10))).toEqual({ day: isoDay("2027-11-16"), by: "short days" });
    const climate = { ...under(10).climate, dayHours: null };
    expect(glassEnd({ ...under(10), climate })).toBeNull();
  });
});

const garden = (name: string) =>
  once(() => {
    const text = readFileSync(
      join(import.meta.dirname, `../../golden/gardens/${name}.yaml`),
      "utf8",
    );
    return tellOf(text, { on: "2027-01-02" }).scheduled;
  });
const [maritime, short] = [garden("maritime"), garden("very-short")];
const dayOf = (all: ReturnType<typeof maritime>, id: string) => {
  const found = all.find(({ task }) => task.id === `2027/${id}`);
  return found ? isoOf(found.task.window.due) : null;
};

describe("whole gardens with glass", () => {
  test("plant an unheated greenhouse in a maritime spring weeks before the open ground", () => {
    expect(dayOf(maritime(), "tomato/set-out/1")).toBe("2027-04-22");
    expect(dayOf(maritime(), "pepper/set-out/1")?.slice(0, 7)).toBe("2027-05");
    expect(dayOf(maritime(), "cucumber/set-out/1")?.slice(0, 7)).toBe("2027-05");
    expect(dayOf(maritime(), "tomato/sow-indoors/1")?.slice(0, 7)).toBe("2027-03");
  });

  test("ripen tomatoes, peppers and cucumbers in there, in a maritime summer and in a tunnel far north", () => {
    for (const all of [maritime(), short()])
      for (const crop of ["tomato", "pepper", "cucumber"])
        expect(dayOf(all, `${crop}/harvest/1`)?.slice(0, 7), crop).toMatch(/2027-0[78]/);
  });

  test("pick till frost gets in or days are short, and not by the first frost outdoors", () => {
    expect(dayOf(short(), "tomato/first-frost/pick")).toBe("2027-09-18");
    expect(dayOf(maritime(), "tomato/first-frost/pick")).toBe("2027-11-06");
  });

  test("have no ladder of hardening off outdoors, no warning of frost, and no nets in there", () => {
    const glass = maritime().filter(({ task }) =>
      /^2027\/(?:tomato|pepper|cucumber|winter-lettuce)\//.test(task.id),
    );
    const practices = glass.map(({ task: { practice, step } }) => `${practice} ${step}`);
    expect(
      practices.filter((each) => /^(?:harden off (?:out|in)|cover|not yet)/.test(each)),
    ).toEqual([]);
    const warning = maritime().find(({ task }) => task.id === "2027/garden/first-frost/warning");
    expect(JSON.stringify(warning?.task.say)).not.toMatch(/tomato|pepper|cucumber/);
  });
});

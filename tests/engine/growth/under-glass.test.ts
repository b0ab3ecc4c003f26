import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { degreesC } from "../../../src/base/quantities/quantity.ts";
import { climateOf } from "../../../src/engine/climate/climate.ts";
import { frostsAt } from "../../../src/engine/climate/frosts-at.ts";
import { dayHoursOf } from "../../../src/engine/climate/sun.ts";
import type { SowingContext } from "../../../src/engine/growth/sowing-context.ts";
import {
  glassEnd,
  lastLongDay,
  lightTests,
  winterPicking,
} from "../../../src/engine/growth/under-glass.ts";
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
    expect(lightTests(under(null))).toEqual([{ basis: "time of year", day: isoDay("2027-03-18") }]);
    const { crop } = growingOf(QUARRY, "beet");
    expect(lightTests({ ...under(null), crop })).toEqual([
      { basis: "time of year", day: isoDay("2027-02-09") },
    ]);
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

describe("leaf crops under glass in winter", () => {
  const lettuce = (): SowingContext => {
    const growing = growingOf(QUARRY, "lettuce");
    const bed = growing.bed && { ...growing.bed, kind: "greenhouse" as const, keptAbove: null };
    return { ...growing, bed, climate: growing.climate.at(bed) };
  };
  const from = isoDay("2027-09-10");

  test("are picked from the last day of ten hours, if they are half grown by then", () => {
    const light = lastLongDay(lettuce(), from);
    expect(winterPicking(lettuce(), from, { daily: () => 1, wanted: 100 })).toBe(light);
    expect(winterPicking(lettuce(), from, { daily: () => 1, wanted: 120 })).toBeNull();
  });

  test("and not in the open, nor what is picked whole", () => {
    const open = growingOf(QUARRY, "lettuce");
    expect(winterPicking(open, from, { daily: () => 1, wanted: 100 })).toBeNull();
    const { crop } = growingOf(QUARRY, "beet");
    expect(winterPicking({ ...lettuce(), crop }, from, { daily: () => 1, wanted: 100 })).toBeNull();
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
    expect(JSON.stringify(warning?.task.say ?? [])).not.toMatch(/tomato|pepper|cucumber/);
  });

  test("pinch out tomatoes by the end of August, and are watered from planting to autumn", () => {
    expect(dayOf(maritime(), "tomato/stop-the-tops/1")).toMatch(/^2027-0(8-2|8-3|9-0)/);
    const weeks = maritime().flatMap(({ task }) =>
      task.practice === "water" ? [isoOf(task.window.due)] : [],
    );
    expect(weeks[0]).toMatch(/^2027-0(4-2|5-0)/);
    expect(weeks.at(-1)).toMatch(/^2027-(09-2|10)/);
  });

  test("cut lettuce sown in September all winter, more seldom than in summer", () => {
    const cuts = ["cut-1", "cut-2", "cut-3"].map((cut) =>
      dayOf(maritime(), `winter-lettuce/harvest/${cut}`),
    );
    expect(cuts.map((day) => day?.slice(0, 7))).toEqual(["2027-10", "2027-12", "2028-03"]);
  });

  test("plant peppers in a house kept at 60 °F as soon as it is warm in there, with no ladder", () => {
    const text = readFileSync(join(import.meta.dirname, "../../golden/gardens/cold.yaml"), "utf8");
    const hot = text.replace(
      "beds:\n",
      "beds:\n  Hot house:\n    is: greenhouse, 12 x 8 ft, kept above 60 °F\n    crops:\n      - name: glass peppers\n        crop: pepper\n        plants: 6\n        from: seed indoors\n",
    );
    const all = tellOf(hot, { on: "2027-01-02" }).scheduled;
    expect(dayOf(all, "glass-peppers/set-out/1")).toMatch(/2027-0[34]/);
    expect(dayOf(all, "glass-peppers/sow-indoors/1")).toMatch(/2027-0[12]/);
    const rungs = all.filter(({ task }) => task.id.startsWith("2027/glass-peppers/harden-off"));
    expect(rungs).toEqual([]);
  });
});

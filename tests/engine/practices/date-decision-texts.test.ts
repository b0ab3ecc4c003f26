import { describe, expect, test } from "vitest";
import { houseRule } from "../../../src/crops/figures.ts";
import type { DateDecision } from "../../../src/engine/growth/date-decision.ts";
import { settingOutDay } from "../../../src/engine/growth/starting.ts";
import {
  type Guards,
  outdoorGuards,
  settingOutGuards,
  startParts,
  testReasons,
  whyDecided,
} from "../../../src/engine/practices/date-decision-texts.ts";
import { seasonOf } from "../../../src/garden/model/season.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { words } from "./told.ts";

const GUARDS: Guards = {
  chance: 0.1,
  soilMinC: houseRule(12.8, "for a test"),
  weeks: 0,
  whenUp: false,
};

const reckonedBy = (...tests: DateDecision["tests"]): DateDecision => ({
  day: isoDay("2027-05-21"),
  early: isoDay("2027-05-21"),
  late: isoDay("2027-05-21"),
  basis: [],
  tests,
  stop: null,
  stopped: false,
});
const FROST = { basis: "last frost", day: isoDay("2027-05-21") } as const;
const SOIL = { basis: "soil", day: isoDay("2027-05-25") } as const;
const GIVEN = { basis: "given", day: isoDay("2027-06-08") } as const;
const FREE = { basis: "place free", day: isoDay("2027-06-10") } as const;

const tomatoes = (given: Given = {}) => growingOf(QUARRY, "tomato", given);
const ROUGH = { plan: { site: { ...tomatoes().plan.site, normals: null } } };

const decided = (reckoned: DateDecision, given: Given = {}, guards = GUARDS) =>
  words([whyDecided(tomatoes(given), reckoned, guards)]);
const tests = (reckoned: DateDecision, given: Given = {}, guards = GUARDS) =>
  testReasons(tomatoes(given), reckoned, guards)
    .map((pieces) => words([{ part: "why", for: "all", pieces }]))
    .join("\n");

describe("the one reason that decided", () => {
  test("is the frost, by its odds", () => {
    expect(decided(reckonedBy(FROST))).toBe(
      "why: Only 1 spring in 10 still has a frost after this.",
    );
  });

  test("is the frost still to come, for what may go in before it", () => {
    expect(decided(reckonedBy(FROST), {}, { ...GUARDS, weeks: -3 })).toBe(
      "why: About 3 weeks before the usual last frost, as early as it may go in.",
    );
  });

  test("is the soil, by its temperature, where that came later", () => {
    expect(decided(reckonedBy(FROST, SOIL))).toBe("why: The soil should have warmed to 55 °F.");
  });

  test("is the plan, where the gardener asked for later", () => {
    expect(decided(reckonedBy(FROST, SOIL, GIVEN))).toBe("why: You asked for 8 June.");
    const waits: Given = { planting: { notBefore: GIVEN.day } };
    expect(decided(reckonedBy(FROST, GIVEN), waits)).toBe("why: You said not before 8 June.");
  });

  test("is the chance that is left, and fabric to keep at hand where it is great", () => {
    const at = (chance: number) => decided(reckonedBy(FROST), {}, { ...GUARDS, chance });
    expect(at(0.5)).toBe(
      "why: Half of all springs still have a frost after this; keep fabric handy.",
    );
    expect(at(0.3)).toBe("why: 1 spring in 3 still has a frost after this; keep fabric handy.");
    expect(at(0.01)).toBe("why: Hardly any spring still has a frost after this.");
  });

  test("is what is left weeks after that day, for what waits so long", () => {
    const later = { ...FROST, day: isoDay("2027-06-04") };
    const weeks = decided(reckonedBy(later), {}, { ...GUARDS, weeks: 2 });
    expect(weeks).toBe("why: Hardly any spring still has a frost after this.");
  });

  test("is the thaw, for what needs no more than that", () => {
    const thawed = decided(reckonedBy(FROST, SOIL), {}, { ...GUARDS, soilMinC: null });
    expect(thawed).toBe("why: The ground should have thawed and drained.");
  });

  test("is the place, where that was free last of all", () => {
    expect(decided(reckonedBy(FROST, GIVEN, FREE))).toBe("why: Its place is free now.");
  });

  test("is the short season, where the hold ended in cold soil", () => {
    expect(decided({ ...reckonedBy(SOIL), stopped: true })).toBe(
      "why: The soil is still cold, but the season is too short to wait longer.",
    );
  });

  test("is the time of year where nothing else is known", () => {
    const none = { basis: "time of year", day: isoDay("2027-01-01") } as const;
    expect(decided(reckonedBy(none))).toBe("why: It is the time of year.");
  });
});

describe("the tests a day had to pass", () => {
  test("are all told, the one that decided first", () => {
    expect(tests(reckonedBy(FROST, GIVEN, SOIL)).split("\n")).toEqual([
      "why: You asked for 8 June.",
      "why: The soil is at 55 °F from about 25 May.",
      "why: 55 °F is the figure of house rule: for a test.",
      "why: Frost comes after 21 May in 1 spring in 10.",
      "why: The last frost here: early 20 Apr, usual 6 May, late 21 May.",
    ]);
  });

  test("say that the soil never gets so warm, and no day, where no usual year has one", () => {
    const never = { basis: "soil", day: seasonOf(tomatoes().plan).to } as const;
    expect(tests(reckonedBy(FROST, never))).toContain(
      "why: The soil never gets to 55 °F in a usual year.",
    );
  });

  test("count the weeks from the frost that the crop may go in before, or waits after", () => {
    expect(tests(reckonedBy(FROST), {}, { ...GUARDS, chance: 0.5, weeks: -2 })).toContain(
      "why: Frost comes after 4 June in 1 spring in 2; 2 weeks before that is 21 May.",
    );
    expect(tests(reckonedBy(FROST), {}, { ...GUARDS, weeks: 1 })).toContain(
      "why: Frost comes after 14 May in 1 spring in 10; a week after that is 21 May.",
    );
  });

  test("tell the soil's spread where the soil decided", () => {
    const [early, day, late] = [isoDay("2027-05-15"), SOIL.day, isoDay("2027-06-02")];
    const reckoned = { ...reckonedBy(FROST, SOIL), day, early, late };
    expect(tests(reckoned)).toContain(
      "from about 25 May; a warm season makes it 15 May, a cold one makes it 2 June.",
    );
    expect(tests({ ...reckoned, day: FROST.day })).not.toContain("a warm season");
  });

  test("tell of no warm or cold season that moves nothing, nor of one that never gets there", () => {
    const [early, late] = [isoDay("2027-05-15"), isoDay("2028-01-18")];
    const soil = { ...reckonedBy(FROST, SOIL), day: SOIL.day };
    expect(tests({ ...soil, early: SOIL.day, late: SOIL.day })).toContain("from about 25 May.");
    expect(tests({ ...soil, early, late })).toContain(
      "; a warm season makes it 15 May, a cold one never gets that far.",
    );
    expect(tests({ ...soil, early: SOIL.day, late })).toContain(
      "; a cold season never gets that far.",
    );
  });

  test("tell from when it is past what makes it bolt", () => {
    const past = (basis: "heat" | "day length") =>
      tests(reckonedBy({ basis: basis, day: isoDay("2027-08-10") }));
    expect(past("heat")).toBe("why: From 10 Aug on it is past the heat.");
    expect(past("day length")).toContain("the long days no longer make it bolt");
    const hardy: Given = { crop: { frost: houseRule("very hardy", "for a test") } };
    const cold = reckonedBy({ basis: "cold", day: isoDay("2027-08-10") });
    expect(tests(cold, hardy)).toContain("the cold no longer makes it bolt");
    expect(decided(cold, hardy)).toBe("why: Sown earlier, the cold would make it bolt.");
  });

  test("tell tender crops of mild nights instead, where there is no frost", () => {
    const cold = reckonedBy({ basis: "cold", day: isoDay("2027-03-20") });
    expect(tests(cold)).toBe("why: Nights are mild enough from about 20 Mar on.");
    expect(decided(cold)).toBe("why: Nights should be mild enough for them from now on.");
  });

  test("tell the frost of the odds, and what is sown so as to be up no sooner", () => {
    const sown = { basis: "last frost", day: isoDay("2027-05-01"), frost: isoDay("2027-05-06") };
    const guards = { ...GUARDS, chance: 0.5, whenUp: true };
    const said = (weeks: number) =>
      tests(reckonedBy(sown as DateDecision["tests"][number]), {}, { ...guards, weeks }).split(
        "\n",
      )[0];
    expect(said(0)).toBe(
      "why: Frost comes after 6 May in 1 spring in 2; sown 1 May, it is not up before that.",
    );
    expect(said(1)).toBe(
      "why: Frost comes after 6 May in 1 spring in 2; sown 1 May, it is not up before a week after that day.",
    );
  });

  test("tell from when plants raised indoors are old enough", () => {
    const old = { basis: "age", day: isoDay("2027-05-28") } as const;
    expect(tests(reckonedBy(old))).toBe("why: They are old enough from 28 May.");
  });

  test("tell when the place is free", () => {
    expect(tests(reckonedBy(FREE))).toContain("free from 10 June");
  });

  test("say where the soil is a rough guess", () => {
    expect(tests(reckonedBy(SOIL), ROUGH)).toContain("a rough guess from your frost dates");
  });

  test("tell the stop day first where the hold ended there", () => {
    const held = { ...reckonedBy(SOIL), stop: isoDay("2027-06-11"), stopped: true };
    expect(tests(held).split("\n")[0]).toBe("why: It is held no later than 11 June.");
  });
});

describe("what a start is tested against", () => {
  const { crop } = tomatoes();
  const beet = growingOf(QUARRY, "beet");

  test("is the plan's chance for seed, and on the day it is up for what frost kills", () => {
    const guards = beet.crop.outdoors && outdoorGuards(beet, beet.crop.outdoors);
    expect(guards).toMatchObject({ chance: 0.5, weeks: -3, whenUp: false });
    const tender = { ...beet, crop: { ...beet.crop, frost: tomatoes().crop.frost } };
    const outdoors = beet.crop.outdoors;
    expect(outdoors && outdoorGuards(tender, outdoors).whenUp).toBe(true);
  });

  test("is the plan's chance for raised plants that frost kills, and the usual date for others", () => {
    expect(crop.settingOut && settingOutGuards(tomatoes(), crop.settingOut)).toMatchObject({
      chance: 0.1,
      weeks: 0,
    });
    const hardy = { ...tomatoes(), crop: { ...crop, frost: beet.crop.frost } };
    expect(crop.settingOut && settingOutGuards(hardy, crop.settingOut).chance).toBe(0.5);
  });

  test("gives a start two weeks, and none where the gardener fixed the day", () => {
    const { day } = reckonedBy(FROST);
    expect(startParts(beet, reckonedBy(FROST), GUARDS)).toMatchObject({
      window: { earliest: day, due: day, latest: isoDay("2027-06-04") },
      certainty: "expected",
      sets: { act: "start" },
    });
    const planting = { ...beet.planting, fixed: { start: day, out: null } };
    expect(startParts({ ...beet, planting }, reckonedBy(FROST), GUARDS)).toMatchObject({
      window: { latest: day },
      certainty: "fixed",
    });
  });
});

test("the canonical tomatoes are decided by the frost", () => {
  const reckoned = settingOutDay(tomatoes());
  expect(reckoned && decided(reckoned)).toContain("1 spring in 10");
});

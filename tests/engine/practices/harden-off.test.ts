import { describe, expect, test } from "vitest";
import { HARDEN_OFF } from "../../../src/engine/practices/harden-off.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { withCrops } from "../../winters.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { said, stepOf, tasksIn, titles, told, windowsOf } from "./told.ts";

const tomatoes = (given: Given = {}) =>
  growingOf(QUARRY, "tomato", {
    acts: { start: "2027-04-09", "set out": "2027-05-21" },
    ...given,
  });
const lettuces = (given: Given = {}) =>
  growingOf(QUARRY, "lettuce", {
    acts: { start: "2027-03-15", "set out": "2027-04-12" },
    planting: { start: "seed indoors" },
    ...given,
  });

describe("hardening tomatoes off", () => {
  test("is a carrying out and a bringing in for eight days, then two nights left out", () => {
    const steps = tasksIn(HARDEN_OFF, tomatoes()).map(({ step }) => step);
    expect(steps).toEqual([
      ...[1, 2, 3, 4, 5, 6, 7, 8].flatMap((n) => [`out-${n}`, `in-${n}`]),
      "out-9",
      "out-10",
    ]);
  });

  test("names its titles for the lock screen", () => {
    const all = titles(tasksIn(HARDEN_OFF, tomatoes()));
    expect(all[0]).toBe("Carry out tomatoes");
    expect(all[1]).toBe("Bring in tomatoes");
    expect(all.at(-1)).toBe("Leave out overnight: tomatoes");
  });

  test("has each rung on its day alone", () => {
    expect(windowsOf(HARDEN_OFF, tomatoes())[0]).toBe("out-1 05-11 05-11 05-11");
    expect(windowsOf(HARDEN_OFF, tomatoes()).at(-1)).toBe("out-10 05-20 05-20 05-20");
  });

  test("loses plants tonight that are not brought in", () => {
    expect(stepOf(HARDEN_OFF, tomatoes(), "in-3")?.harm).toBe("tonight");
    expect(stepOf(HARDEN_OFF, tomatoes(), "out-3")?.harm).toBe("this week");
  });

  test("tells a carrying out and its bringing in as one run of so many minutes", () => {
    const out = stepOf(HARDEN_OFF, tomatoes(), "out-3")?.timed;
    const back = stepOf(HARDEN_OFF, tomatoes(), "in-3")?.timed;
    expect(out).toEqual({ run: "2027/tomato/3", part: "out", lasts: 180 });
    expect(back).toEqual({ run: "2027/tomato/3", part: "in", lasts: 180 });
  });

  test("begins in full shade out of the wind, and comes to early sun", () => {
    expect(said(stepOf(HARDEN_OFF, tomatoes(), "out-1"))).toContain(
      "Out for one hour, in full shade and out of the wind.",
    );
    expect(said(stepOf(HARDEN_OFF, tomatoes(), "out-5"))).toContain("5 hours: early sun");
    expect(said(stepOf(HARDEN_OFF, tomatoes(), "out-7"))).toContain("Out all day, in full sun");
  });

  test("repeats the hours of a day held back, and never goes back to one", () => {
    expect(said(stepOf(HARDEN_OFF, tomatoes(), "out-4"))).toContain(
      "A cold or windy day: give the last hours again instead.",
    );
  });

  test("leaves them out at night above 50 °F, and less water", () => {
    const night = said(stepOf(HARDEN_OFF, tomatoes(), "out-9"));
    expect(night).toContain("if it stays above 50 °F; if not, bring them in");
    expect(night).toContain("why: Out for good about 21 May.");
  });

  test("is counted back from setting out, and says so", () => {
    expect(told(stepOf(HARDEN_OFF, tomatoes(), "out-1"))).toBe(
      "Counted back from setting out, 21 May.",
    );
  });

  test("takes the gardener's own number of days, four at the least", () => {
    const count = (hardenDays: number) =>
      tasksIn(HARDEN_OFF, tomatoes({ planting: { hardenDays } })).filter(({ step }) =>
        step.startsWith("out"),
      ).length;
    expect(count(7)).toBe(7);
    expect(count(1)).toBe(4);
  });
});

describe("hardening lettuce off", () => {
  test("is two events: days out for a week, nights for the last two", () => {
    expect(windowsOf(HARDEN_OFF, lettuces())).toEqual([
      "days 04-03 04-05 04-07",
      "nights 04-09 04-10 04-11",
    ]);
    expect(titles(tasksIn(HARDEN_OFF, lettuces()))).toEqual([
      "Start hardening off lettuce",
      "Leave out overnight: lettuce",
    ]);
  });

  test("leaves it out at night, under fabric where that is colder than it likes", () => {
    expect(said(stepOf(HARDEN_OFF, lettuces(), "nights"))).toContain(
      "under fabric where it falls below 45 °F, and back in before a hard frost.",
    );
  });

  test("is for anybody about", () => {
    expect(tasksIn(HARDEN_OFF, lettuces()).every(({ rhythm }) => rhythm === "daily")).toBe(true);
  });
});

describe("nothing is hardened off", () => {
  test("that was bought, or sown where it grows", () => {
    expect(tasksIn(HARDEN_OFF, tomatoes({ planting: { start: "plants" } }))).toEqual([]);
    expect(
      tasksIn(HARDEN_OFF, growingOf(QUARRY, "beet", { acts: { start: "2027-05-03" } })),
    ).toEqual([]);
  });

  test("before it is known when it goes out", () => {
    expect(tasksIn(HARDEN_OFF, tomatoes({ acts: { start: "2027-04-09" } }))).toEqual([]);
  });

  test("that stands in the ground since before", () => {
    expect(tasksIn(HARDEN_OFF, tomatoes({ planting: { inSince: isoDay("2027-04-01") } }))).toEqual(
      [],
    );
  });
});

test("what is raised outdoors in summer's warmth needs no hardening", () => {
  const broccoli = (start: string) =>
    growingOf(withCrops("mediterranean", ["broccoli: 8 plants, set out 1 Oct"]), "broccoli", {
      acts: { start, "set out": "2027-10-01" },
    });
  expect(tasksIn(HARDEN_OFF, broccoli("2027-08-21"))).toEqual([]);
  expect(tasksIn(HARDEN_OFF, broccoli("2027-02-01"))).toHaveLength(2);
});

import { describe, expect, test } from "vitest";
import { weekdayOf } from "../../../src/base/days/day.ts";
import type { SowingContext } from "../../../src/engine/growth/sowing-context.ts";
import type { WholeGarden } from "../../../src/engine/practices/practice.ts";
import { WEED } from "../../../src/engine/practices/weed.ts";
import { ALONE, QUARRY, tellOf } from "../../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { said, sharedIn, tasksIn, titles, windows, windowsOf } from "./told.ts";

const SOWN = { acts: { start: "2027-05-03" } };
const carrots = growingOf(QUARRY, "carrot", { acts: { start: "2027-05-03", up: "2027-05-20" } });

describe("the first weeding of slow seed", () => {
  test("is ten to fourteen days after carrots were seen", () => {
    expect(windowsOf(WEED, carrots)).toEqual(["first 05-30 06-01 06-06"]);
    expect(titles(tasksIn(WEED, carrots))).toEqual(["Weed between carrots [bed]"]);
    expect(said(tasksIn(WEED, carrots)[0])).toContain("Up on 20 May.");
  });

  test("is by hand, holding the soil down", () => {
    expect(said(tasksIn(WEED, carrots)[0])).toContain("holding the soil down round the seedlings");
  });

  test("is not told of quick seed, or before it is sown", () => {
    expect(windowsOf(WEED, growingOf(QUARRY, "beet", SOWN))).toEqual([]);
    expect(windowsOf(WEED, growingOf(QUARRY, "carrot"))).toEqual([]);
  });
});

function gardenWith(contexts: readonly SowingContext[], given: Given = {}): WholeGarden {
  const { plan, climate, around } = growingOf(QUARRY, "beet", given);
  return { plan, climate, contexts: contexts, anchors: new Map(), observations: [], around };
}

test("a bed under film is weeded in its holes and along its edges", () => {
  const tomatoes = growingOf(QUARRY, "tomato", {
    acts: { start: "2027-04-09", "set out": "2027-06-09" },
  });
  const beets = growingOf(QUARRY, "beet", SOWN);
  const [film] = sharedIn(WEED, gardenWith([tomatoes])).filter(({ bed }) => bed === "south-bed");
  const [bare] = sharedIn(WEED, gardenWith([beets])).filter(({ bed }) => bed === "root-bed");
  expect(said(film)).toContain("in the holes of the film");
  expect(said(bare)).toContain("Go through once with a hoe");
});

test("all beds of a fortnight are weeded on one Saturday, where somebody is there on it", () => {
  const days = tellOf(ALONE, { on: "2027-01-02" })
    .scheduled.filter(({ task }) => task.practice === "weed" && task.subject.kind === "bed")
    .map(({ day }) => day);
  expect(days.length).toBeGreaterThan(10);
  expect(new Set(days.map((day) => (day - (days[0] ?? 0)) % 14))).toEqual(new Set([0]));
  expect(days.map(weekdayOf)).toEqual(days.map(() => 6));
});

describe("weeding bed by bed", () => {
  const tasks = sharedIn(WEED, gardenWith([growingOf(QUARRY, "beet", SOWN)]));

  test("begins five weeks after the first thing went in, and is every four weeks to the frost", () => {
    expect(windows(tasks)).toEqual([
      "1 05-25 06-07 06-17",
      "2 06-22 07-05 07-15",
      "3 07-20 08-02 08-12",
      "4 08-17 08-30 09-09",
      "5 09-14 09-27 10-07",
    ]);
  });

  test("is not told of the frost's own day, and is on the day before it", () => {
    const counts = ["2027-05-08", "2027-05-07"].map((start) => {
      const sown = growingOf(QUARRY, "beet", { acts: { start } });
      return sharedIn(WEED, gardenWith([sown])).length;
    });
    expect(counts).toEqual([4, 5]);
  });

  test("is half as often under a mulch, of what comes through it", () => {
    const { plan } = growingOf(QUARRY, "beet", SOWN);
    const mulched = plan.beds.map((bed) => ({ ...bed, mulch: "straw" }));
    const of = (given: Given) =>
      sharedIn(WEED, gardenWith([growingOf(QUARRY, "beet", { ...SOWN, ...given })], given));
    const [bare, straw] = [of({}), of({ plan: { beds: mulched } })];
    expect(straw.length).toBeLessThan(bare.length);
    expect(straw[0]?.window).toEqual(bare[0]?.window);
    expect(said(straw[0])).toContain("come through the straw");
  });

  test("says why it is worth the while now", () => {
    expect(said(tasks[0])).toContain("why: Small weeds die at a touch of the hoe");
  });

  test("names the bed, by an id that no planting changes", () => {
    expect(titles(tasks)[0]).toBe("Weed Root bed");
    expect(tasks[0]?.id).toBe("2027/bed/root-bed/weed/1");
  });

  test("counts from what went in first", () => {
    const both = [
      growingOf(QUARRY, "beet", SOWN),
      growingOf(QUARRY, "carrot", { acts: { start: "2027-04-20" } }),
    ];
    expect(windows(sharedIn(WEED, gardenWith(both)))[0]).toBe("1 05-12 05-25 06-04");
  });

  test("counts from setting out where plants were raised elsewhere", () => {
    const out = growingOf(QUARRY, "tomato", {
      acts: { start: "2027-04-09", "set out": "2027-05-21" },
    });
    expect(windows(sharedIn(WEED, gardenWith([out])))[0]).toBe("1 06-12 06-25 07-05");
  });

  test("is not told of bags, or of a bed with nothing in it", () => {
    const potatoes = growingOf(QUARRY, "potato", SOWN);
    expect(sharedIn(WEED, gardenWith([potatoes]))).toEqual([]);
    expect(sharedIn(WEED, gardenWith([]))).toEqual([]);
  });

  test("leaves a planting out that goes without", () => {
    const without = growingOf(QUARRY, "beet", { ...SOWN, planting: { without: ["weed"] } });
    expect(sharedIn(WEED, gardenWith([without]))).toEqual([]);
  });

  test("is of the beds at large where the plan names none", () => {
    const plan = { ...carrots.plan, beds: [] };
    const loose = { ...carrots, planting: { ...carrots.planting, bed: null }, bed: null };
    const shared = sharedIn(WEED, { ...gardenWith([loose]), plan });
    expect(titles(shared)[0]).toBe("Weed the beds");
    expect(shared[0]?.id).toBe("2027/garden/weed/1");
  });

  test("has no frost to stop at in a place without, but stops after half a year", () => {
    const site = { ...carrots.plan.site, lastFrost: null, firstFrost: null };
    const garden = gardenWith([growingOf(QUARRY, "beet", { ...SOWN, plan: { site } })], {
      plan: { site },
    });
    expect(sharedIn(WEED, garden)).toHaveLength(6);
  });
});

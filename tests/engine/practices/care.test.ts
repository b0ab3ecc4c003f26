import { describe, expect, test } from "vitest";
import { CROPS } from "../../../src/crops/crops.ts";
import { commonPractice } from "../../../src/crops/figures.ts";
import { anchorKey } from "../../../src/engine/growth/anchors.ts";
import { practiceOf } from "../../../src/engine/practices/all.ts";
import { careTasks, piecesOf } from "../../../src/engine/practices/care.ts";
import { isoDay, tellOf } from "../../gardens.ts";
import { due, dueDays, withCrops } from "../../winters.ts";
import { always, growingOf } from "../growth/growing.ts";
import { ending, planWith, toldWith } from "./garden.ts";

describe("what a crop's own list asks for", () => {
  test("is told under the practice that it names, in the last pass", () => {
    const named = new Set(CROPS.flatMap(({ care }) => care.map(({ practice }) => practice)));
    expect(named.size).toBe(7);
    for (const name of named) expect(Object.keys(practiceOf(name).tasks)).toEqual(["rest"]);
  });

  test("counts from its stage: leeks are earthed up seven to nine weeks after they are set out, then again", () => {
    const placed = toldWith(["leek: 40 plants, from seed indoors"]);
    const out = ending(placed, "/set-out/1").day;
    const first = ending(placed, "/fill-in-and-blanch/1").task.window;
    expect([first.earliest - out, first.due - out]).toEqual([49, 56]);
    expect(ending(placed, "/fill-in-and-blanch/2").day).toBeGreaterThan(first.due);
  });

  test("pinches no vine whose fruits are ripe and cut before that", () => {
    const days = dueDays(
      withCrops("southern", ["pumpkin: 2 plants, from seed outdoors", "tomato: 2 plants"]),
    );
    expect(due(days, "pumpkin/stop-the-tops/1")).toBe("-");
    expect(due(days, "tomato/stop-the-tops/1")).not.toBe("-");
  });

  test("is nothing before the planting is in its place", () => {
    expect(careTasks(growingOf(planWith(["leek: 40 plants"]), "leek"), "feed")).toEqual([]);
  });

  test("is asked for from the very day it is in its place, and not for a day before", () => {
    const [fed] = growingOf(planWith(["leek: 40 plants"]), "leek").crop.care;
    if (!fed) throw new Error("leeks have care");
    const inDays = (days: number) =>
      careTasks(
        growingOf(planWith(["leek: 40 plants"]), "leek", {
          acts: { "set out": "2027-05-20" },
          crop: { care: [{ ...fed, from: "in place", days: commonPractice([days, days]) }] },
        }),
        fed.practice,
      ).length;
    expect([inDays(-1), inDays(0), inDays(1)]).toEqual([0, 1, 1]);
  });

  test("is told of the first sowing alone, whatever others there are", () => {
    const context = growingOf(planWith(["leek: 40 plants"]), "leek", {
      acts: { "set out": "2027-05-20" },
    });
    const inPlace = [...context.anchors.values()];
    const sowings = [1, 2].flatMap((sowing) =>
      inPlace.map(
        (anchor) => [anchorKey(context.planting.key, sowing, "set out"), anchor] as const,
      ),
    );
    const both = { ...context, anchors: new Map(sowings) };
    const jobs = (sowing: number) => careTasks({ ...both, sowing }, "fill in and blanch").length;
    expect([jobs(1), jobs(2)]).toEqual([2, 0]);
  });

  test("is dropped where the plan goes without it", () => {
    const placed = toldWith(["leek: 40 plants, from seed indoors, without feeding"]);
    expect(placed.filter(({ task }) => task.practice === "feed")).toEqual([]);
  });

  test("keeps lengths and warmth apart from words, for the household's units", () => {
    expect(piecesOf("Feed it.", "elsewhere")).toEqual(["Feed it."]);
    expect(piecesOf(["To ", { cm: [5, 5] }, "."], "elsewhere")).toHaveLength(3);
    expect(piecesOf([{ tempC: 14 }], "elsewhere")[0]).toHaveProperty("quantity");
  });
});

describe("what is told only in some places and years", () => {
  const potatoes = planWith(["potato: 10 tubers"]);
  const steps = (text: string, name: string, start: string) =>
    careTasks(growingOf(text, name, { acts: { start, up: start, "set out": start } }), "scout").map(
      ({ say }) => say.flatMap(({ pieces }) => pieces).join(""),
    );
  const inDublin = (text: string) => text.replace("America/Denver", "Europe/Dublin");

  test("is a look for beetles, where they live", () => {
    expect(steps(potatoes, "potato", "2027-05-08").join()).toContain("striped beetles");
    expect(steps(inDublin(potatoes), "potato", "2027-05-08")).toEqual([]);
  });

  test("has the animals of its region, raccoons in America alone", () => {
    const corn = planWith(["corn: 40 plants"]);
    expect(steps(corn, "corn", "2027-06-01").join()).toContain("raccoons");
    expect(steps(inDublin(corn), "corn", "2027-06-01").join()).toContain("badgers");
    const tasmania = corn.replace("America/Denver", "Australia/Hobart");
    expect(steps(tasmania, "corn", "2027-06-01").join()).toContain("possums");
  });

  const yearly = (inSince: string | null, site = {}) =>
    careTasks(
      growingOf(planWith(["strawberry: 20 plants"]), "strawberry", {
        acts: { start: inSince ?? "2027-04-10", "set out": inSince ?? "2027-04-10" },
        planting: { inSince: inSince === null ? null : isoDay(inSince) },
        plan: site,
      }),
      "yearly",
    ).map(({ step }) => step);

  test("is no net and no straw over strawberries that bear nothing in their first summer", () => {
    expect(yearly(null)).toEqual(["first-flowers", "mulch"]);
    expect(yearly("2025-08-15")).toEqual(["uncover", "net", "straw", "runners", "mulch"]);
  });

  test("is no winter straw where the ground does not freeze", () => {
    expect(yearly("2025-08-15", { site: always(5) })).toEqual(["net", "straw", "runners"]);
  });
});

test("artichokes rest and are cut down where summers are hot, and not elsewhere", () => {
  const plan = (garden: string) => withCrops(garden, ["artichoke: 4 plants, in since 1 Oct 2025"]);
  const cut = (garden: string) => due(dueDays(plan(garden)), "artichoke/yearly/rest");
  expect(cut("mediterranean")).toMatch(/^2027-0[67]-/);
  expect(cut("maritime")).toBe("-");
});

describe("the yearly work of a fruit tree", () => {
  const steps = (crop: string, frost: string) => {
    const text = `garden: T\nyear: 2027\nplace:\n  clock: Europe/Madrid\n  latitude: 36.8\n  last frost: ${frost}\n  first frost: ${frost === "none" ? "none" : "about 2 Nov"}\ncrops:\n  - ${crop}\n`;
    return tellOf(text, { on: "2027-01-01" })
      .scheduled.filter(({ task }) => task.practice === "yearly")
      .map(({ task }) => task.step)
      .sort();
  };

  test("counts from spring where there is no frost to count from", () => {
    expect(steps("apple: 2 trees, in since 1 Nov 2020", "none")).toEqual(["feed", "prune", "thin"]);
  });

  test("is done as the diary says that it was pruned", () => {
    const text = `garden: Orchard\nyear: 2027\nplace:\n  clock: Europe/Dublin\n  latitude: 53\n  last frost: about 1 Apr\n  first frost: about 1 Nov\ncrops:\n  - apple: 2 trees, in since 1 Nov 2020\ndiary:\n  - 2 Mar: pruned the apples\n`;
    const { scheduled } = tellOf(text, { on: "2027-03-03" });
    const done = scheduled.filter((each) => each.done).map(({ task }) => task.id);
    expect(done).toEqual(["2027/apple/yearly/prune"]);
  });

  test("has no fruit to thin or to net before it bears", () => {
    expect(steps("plum: 1 tree, in since 1 Nov 2026", "about 1 Apr")).toEqual(["fallen", "feed"]);
    expect(steps("plum: 1 tree, in since 1 Nov 2020", "about 1 Apr")).toContain("thin");
  });
});

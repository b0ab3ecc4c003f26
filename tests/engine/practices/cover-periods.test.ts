import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import type { CoverDay } from "../../../src/engine/practices/cover-days.ts";
import { coversOf, underCover } from "../../../src/engine/practices/cover-periods.ts";
import { THIN } from "../../../src/engine/practices/thin.ts";
import { isoDay, QUARRY, tellOf } from "../../gardens.ts";
import { withCrops } from "../../winters.ts";
import { growingOf } from "../growth/growing.ts";
import { ending, wordsOf } from "./garden.ts";
import { tasksIn } from "./told.ts";

const due = (day: CoverDay | null | undefined) => (day ? isoOf(day.window.due).slice(5) : null);
const acts = { start: "2027-05-03", up: "2027-05-20" };

describe("a planting's covers", () => {
  test("are those of its crop, from the day each goes on to the day it comes off", () => {
    const [net] = coversOf(growingOf(QUARRY, "beet", { acts }));
    expect([net?.against, net?.thing, due(net?.on), due(net?.off)]).toEqual([
      "leaf miners",
      "net",
      "05-20",
      "06-15",
    ]);
  });

  test("are what the plan asks for where the crop has none, with no day to come off", () => {
    const [net] = coversOf(growingOf(QUARRY, "carrot", { acts, planting: { under: ["net"] } }));
    expect([net?.against, due(net?.on), due(net?.off)]).toEqual([null, "05-03", null]);
  });

  test("are those of the first sowing, which the later ones stand under", () => {
    expect(coversOf({ ...growingOf(QUARRY, "beet", { acts }), sowing: 2 })).toEqual([]);
  });
});

describe("a net against the carrot fly", () => {
  const carrot = (garden: "maritime" | "mild") =>
    growingOf(
      withCrops(garden === "maritime" ? "maritime" : "mediterranean", ["carrot: 2 rows"]),
      "carrot",
      { acts },
    );

  test("lies from the first green till the last of the row is out, and says so", () => {
    const [net] = coversOf(carrot("maritime"));
    expect([net?.against, due(net?.on)]).toEqual(["carrot fly", "05-20"]);
    expect(net?.offWhy).toContain("whatever stands in the soil");
    expect((net?.off?.window.due ?? 0) - (net?.on.window.due ?? 0)).toBeGreaterThan(80);
  });

  test("is not asked for in hot summers, nor where the fly is rare", () => {
    expect(coversOf(carrot("mild"))).toEqual([]);
    expect(coversOf(growingOf(QUARRY, "carrot", { acts }))).toEqual([]);
  });
});

describe("a sowing's tasks", () => {
  const beets = growingOf(QUARRY, "beet", { acts });
  const under = (growing: typeof beets) =>
    underCover(growing, tasksIn(THIN, growing)).map((task) => task.under);

  test("are under the net while it is on", () => {
    expect(under(beets)).toEqual(["root-bed|leaf miners"]);
  });

  test("are under none before it is on, without it, and for a crop that has none", () => {
    const early = tasksIn(THIN, beets).map((task) => ({
      ...task,
      window: { ...task.window, due: isoDay("2027-05-10") },
    }));
    expect(underCover(beets, early).map((task) => task.under)).toEqual([null]);
    const without = growingOf(QUARRY, "beet", { acts, planting: { without: ["cover"] } });
    expect(under(without)).toEqual([null]);
    expect(under(growingOf(QUARRY, "carrot", { acts }))).toEqual([null, null]);
  });
});

describe("in a garden of warm summers and mild winters", () => {
  const { scheduled } = tellOf(
    withCrops("southern", [
      "kale: 6 plants, from seed indoors",
      "courgette: 2 plants, from seed indoors",
      "lettuce: 2 rows, every 14 days, 3 times",
    ]),
    { on: "2027-01-02" },
  );
  const off = (key: string) => ending(scheduled, `/${key}/cover/off`);

  test("kale stays under its net till nights are cold, whatever its first harvest", () => {
    expect(isoOf(off("kale").task.window.due)).toMatch(/^2028-05-/);
    expect(wordsOf(off("kale"))).toContain("Nothing that the net keeps off flies any more.");
  });

  test("fabric that keeps off no beetle comes off before it is hot", () => {
    expect(isoOf(off("summer-squash").task.window.due)).toMatch(/^2027-1[12]-/);
    expect(wordsOf(off("summer-squash"))).toContain("on a hot day they would cook");
  });

  test("fabric against beetles comes off before the heat of a hot summer too", () => {
    const told = tellOf(withCrops("mediterranean", ["eggplant: 4 plants"]), { on: "2027-01-01" });
    const task = told.scheduled.find(({ task: { id } }) =>
      id.endsWith("/eggplant/cover/off"),
    )?.task;
    expect(task && isoOf(task.window.due)).toMatch(/^2027-05-/);
  });

  test("the sign is looked for in the last sowing", () => {
    expect(wordsOf(off("lettuce"))).toContain("In the last sowing too, the plants stand");
  });
});

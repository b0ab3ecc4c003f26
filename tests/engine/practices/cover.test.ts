import { describe, expect, test } from "vitest";
import type { CoverFacts, Crop } from "../../../src/crops/facts.ts";
import { commonPractice } from "../../../src/crops/figures.ts";
import type { SowingContext } from "../../../src/engine/growth/sowing-context.ts";
import type { Task } from "../../../src/engine/practices/all.ts";
import { COVER } from "../../../src/engine/practices/cover.ts";
import { isoDay, QUARRY, tellOf } from "../../gardens.ts";
import { wholeGarden, withCrops } from "../../winters.ts";
import { anchor, type Given, growingOf } from "../growth/growing.ts";
import { said, sharedIn, titles, windows } from "./told.ts";

/** Covers of a garden with nothing but these in it. */
function tasksOf(...contexts: readonly SowingContext[]): readonly Task[] {
  const { plan, climate, around } = growingOf(QUARRY, "beet");
  return sharedIn(COVER, {
    plan,
    climate,
    contexts: contexts,
    anchors: new Map(),
    observations: [],
    around,
  });
}

const windowsOf = (...contexts: readonly SowingContext[]) => windows(tasksOf(...contexts));
const stepOf = (growing: SowingContext, step: string) =>
  tasksOf(growing).find((task) => task.step === step);

const beets = growingOf(QUARRY, "beet", { acts: { start: "2027-05-03", up: "2027-05-20" } });

describe("a net over what stood the winter", () => {
  test("goes on as new leaves grow, and not as it goes in", () => {
    const { scheduled } = tellOf(withCrops("maritime", ["onion: 80 sets, plant 25 Sep"]), {
      on: "2027-01-02",
    });
    const on = scheduled.find(({ task }) => task.id === "2027/onion/cover/on");
    expect(JSON.stringify(on?.task.say)).toContain("New leaves grow after the winter.");
  });

  test("comes off what it was kept on for the sake of another with a sign of that", () => {
    const { scheduled } = tellOf(wholeGarden("maritime"), { on: "2027-01-02" });
    const off = scheduled.find(({ task }) => task.id === "2027/brussels-sprouts/cover/off");
    expect(JSON.stringify(off?.task.say)).toContain("It is time for spring cabbage too");
  });
});

describe("a net over beets seen up on 20 May", () => {
  test("goes on at once and comes off when they stand a hand high", () => {
    expect(windowsOf(beets)).toEqual(["on 05-19 05-20 05-24", "off 06-11 06-15 06-29"]);
    expect(titles(tasksOf(beets))).toEqual(["Net over beets [bed]", "Net off beets [bed]"]);
  });

  test("goes on this week and comes off when there is time", () => {
    expect(tasksOf(beets).map(({ harm }) => harm)).toEqual(["this week", "when you can"]);
  });

  test("says what it is against, and what to bring", () => {
    expect(said(stepOf(beets, "on"))).toContain("It keeps off the flies whose grubs tunnel");
    expect(stepOf(beets, "on")?.needs).toEqual(["a net, hoops and pegs"]);
  });

  test("has the plants' own sign for coming off", () => {
    expect(said(stepOf(beets, "off"))).toContain("sign: The plants have five or six leaves");
  });

  test("says why it may come off", () => {
    expect(said(stepOf(beets, "off"))).toContain("why: They have outgrown");
  });

  test("never comes off before it went on", () => {
    expect(stepOf(beets, "off")?.after).toEqual(["2027/beet/cover/on"]);
  });
});

describe("a cover that the plan asks for", () => {
  const acts = { start: "2027-05-03", "set out": "2027-05-21" };
  const tomatoes = growingOf(QUARRY, "tomato", { acts, planting: { under: ["fabric"] } });

  test("goes on the day they go into their place, over a crop that needs none", () => {
    expect(windowsOf(tomatoes)).toEqual(["on 05-21 05-21 05-24", "off 06-04 06-11 06-21"]);
    expect(titles(tasksOf(tomatoes))).toEqual([
      "Fabric over tomatoes [bed]",
      "Fabric off tomatoes [bed]",
    ]);
  });

  test("is laid in place of the one its crop is usually under, and never left out", () => {
    const under: Given = { acts: { start: "2027-05-03", up: "2027-05-20" } };
    const fabric = growingOf(QUARRY, "beet", { ...under, planting: { under: ["fabric"] } });
    expect(titles(tasksOf(fabric))).toEqual(["Fabric over beets [bed]", "Fabric off beets [bed]"]);
    expect(tasksOf(fabric).map(({ id }) => id)).toEqual(tasksOf(beets).map(({ id }) => id));
    const both = growingOf(QUARRY, "beet", { ...under, planting: { under: ["net", "cloche"] } });
    expect(
      tasksOf(both)
        .map(({ step }) => step)
        .sort(),
    ).toEqual(["off", "off-cloche", "on", "on-cloche"]);
  });

  test("of cloches goes on two weeks before, to warm the soil, and comes off when frosts are over", () => {
    const under: Given = { acts: { start: "2027-04-20" }, planting: { under: ["cloche"] } };
    const carrots = growingOf(QUARRY, "carrot", under);
    expect(windowsOf(carrots)).toEqual(["on 04-02 04-06 04-13", "off 05-14 05-21 05-31"]);
    expect(said(stepOf(carrots, "on"))).toContain("open the ends on sunny mornings");
    expect(said(stepOf(carrots, "off"))).toContain("Take the cloches off, wash them");
  });

  test("of cloches goes over what was sown late before the first frost, and over nothing sown for summer", () => {
    const sown = (start: string): Given => ({
      acts: { start },
      planting: { under: ["cloche"] },
    });
    const late = growingOf(QUARRY, "carrot", sown("2027-08-20"));
    expect(windowsOf(late)[0]).toBe("on 09-15 09-22 10-02");
    expect(said(stepOf(late, "on"))).toContain("first frost is about 2 Oct");
    expect(windowsOf(growingOf(QUARRY, "carrot", sown("2027-07-02")))).toEqual([]);
  });

  test("lies from autumn to spring over what was sown in an earlier year, and is only taken off", () => {
    const inSince = isoDay("2026-09-20");
    const given: Given = {
      acts: { start: "2026-09-20" },
      planting: { under: ["fabric"], inSince },
    };
    expect(windowsOf(growingOf(QUARRY, "carrot", given))).toEqual(["off 05-14 05-21 05-31"]);
  });

  test("lies over the harvest of what stands for years, each year", () => {
    const years = QUARRY.replace(
      "beet: 2 rows",
      "strawberry: 20 plants, in since 1 May 2025, under a net",
    );
    const berries = growingOf(years, "strawberry", { acts: { start: "2025-05-01" } });
    expect(tasksOf(berries).map(({ step }) => step)).toEqual(["on", "off"]);
  });

  test("is none where nobody asks, or before they are in", () => {
    expect(tasksOf(growingOf(QUARRY, "tomato", { acts }))).toEqual([]);
    expect(tasksOf(growingOf(QUARRY, "tomato", { planting: { under: ["net"] } }))).toEqual([]);
  });
});

describe("a net over several sowings", () => {
  const again = growingOf(QUARRY, "beet", {
    acts: { start: "2027-05-03", up: "2027-05-20" },
    planting: { repeat: { everyDays: 21, times: 2 } },
  });
  const { anchors } = growingOf(QUARRY, "beet", { acts: { up: "2027-06-10" } });
  const second = [...anchors].map(([key, anchor]) => [key.replace("|1|", "|2|"), anchor] as const);
  const both = { ...again, anchors: new Map([...again.anchors, ...second]) };

  test("goes on over the first and comes off when the last stands a hand high", () => {
    expect(windowsOf(both)).toEqual(["on 05-19 05-20 05-24", "off 07-02 07-06 07-20"]);
  });

  test("comes off by the first where no later one has a day yet", () => {
    expect(windowsOf(again)[1]).toBe("off 06-11 06-15 06-29");
  });
});

describe("no net", () => {
  test("is told for carrots", () => {
    const carrots = growingOf(QUARRY, "carrot", { acts: { start: "2027-05-03" } });
    expect(windowsOf(carrots)).toEqual([]);
  });

  test("is told again for a second sowing under the same one", () => {
    const second = {
      ...growingOf(QUARRY, "lettuce", { acts: { start: "2027-05-03" } }),
      sowing: 2,
    };
    expect(windowsOf(second)).toEqual([]);
  });

  test("is told for raised lettuce before it is set out", () => {
    const given: Given = { acts: { start: "2027-04-03" }, planting: { start: "seed indoors" } };
    const acts = { ...given.acts, "set out": "2027-05-10" };
    expect(windowsOf(growingOf(QUARRY, "lettuce", { ...given, acts }))[0]).toMatch(/^on 05-10/);
  });

  test("is told before they are sown", () => {
    expect(windowsOf(growingOf(QUARRY, "beet"))).toEqual([]);
  });
});

const days = (least: number, most: number) => commonPractice<[number, number]>([least, most]);
const FLEAS: CoverFacts = {
  against: "flea beetles",
  with: "fabric",
  on: "in place",
  off: "up",
  offDays: days(30, 40),
  offSign: "The leaves are as long as a hand.",
};
const BEETLES: CoverFacts = {
  ...FLEAS,
  against: "cucumber beetles",
  off: "flower",
  offDays: days(0, 0),
};

/** A crop of the root bed with those covers, up on 20 May. */
const covered = (name: string, crop: Partial<Crop>, given: Given = {}) =>
  growingOf(QUARRY, name, {
    acts: { start: "2027-05-03", up: "2027-05-20", "first ripe": "2027-07-20" },
    ...given,
    crop,
  });

describe("a cover against what flies and crawls in", () => {
  const fleas = covered("beet", { covers: [FLEAS] });

  test("goes on the day it is sown, its edges buried", () => {
    expect(windowsOf(fleas)).toEqual(["on 05-03 05-03 05-06", "off 06-19 06-24 07-09"]);
    expect(said(stepOf(fleas, "on"))).toContain("Bury its edges in soil all round");
    expect(stepOf(fleas, "on")?.needs).toEqual(["fabric, hoops and pegs"]);
  });

  test("is warned of where they wintered in that soil", () => {
    expect(said(stepOf(fleas, "on"))).toContain(
      "caution: Leave the fabric off where radishes, cabbages or their kin grew",
    );
  });

  test("is left off by who goes without", () => {
    const without = covered("beet", { covers: [FLEAS] }, { planting: { without: ["cover"] } });
    expect(tasksOf(without)).toEqual([]);
  });
});

describe("a cover over what bees must reach", () => {
  const flowers = { daysBeforeHarvest: days(20, 30), forBees: true };
  const squash = (covers: readonly CoverFacts[], given: Given = {}) =>
    covered("beet", { covers, flowers }, given);

  test("comes off as the first flower opens, on the early side", () => {
    expect(windowsOf(squash([BEETLES]))[1]).toBe("off 06-20 06-25 06-27");
    expect(said(stepOf(squash([BEETLES]), "off"))).toContain("Bees must reach the flowers");
    expect(stepOf(squash([BEETLES]), "off")?.harm).toBe("this week");
  });

  test("comes off then, though the facts would leave it till harvest", () => {
    const long: CoverFacts = { ...BEETLES, off: "first harvest" };
    expect(windowsOf(squash([long]))[1]).toBe("off 06-20 06-25 06-27");
  });

  test("comes off the day a flower was seen", () => {
    const acts = { start: "2027-05-03", up: "2027-05-20", flower: "2027-06-12" };
    expect(windowsOf(squash([BEETLES], { acts }))[1]).toBe("off 06-12 06-12 06-14");
  });

  test("never goes on over what flowers already", () => {
    const acts = { start: "2027-05-03", flower: "2027-05-02" };
    expect(tasksOf(squash([BEETLES], { acts }))).toEqual([]);
  });

  test("comes off for bees where the plan alone asked for it", () => {
    const asked = squash([], { planting: { under: ["net"] } });
    expect(windowsOf(asked)).toEqual(["on 05-03 05-03 05-06", "off 06-20 06-25 06-27"]);
    const fabric = squash([], { planting: { under: ["fabric"] } });
    expect(windowsOf(fabric)[1]).toBe("off 05-17 05-24 06-03");
  });
});

describe("plantings of one bed against the same pest", () => {
  const beet = covered("beet", { covers: [FLEAS] });
  const later = { start: "2027-05-10", up: "2027-05-25" };
  const carrot = covered("carrot", { covers: [FLEAS] }, { acts: later });
  const ids = (...contexts: readonly SowingContext[]) => tasksOf(...contexts).map(({ id }) => id);

  test("share a net that the first puts on, and that comes off all of them when the last may", () => {
    const shared = ["on 05-03 05-03 05-06", "on 05-10 05-10 05-13"];
    const off = "off 06-24 06-29 07-14";
    expect(windowsOf(beet, carrot)).toEqual([...shared, off, off]);
    expect(windowsOf(carrot, beet)).toEqual([...shared, off, off]);
  });

  test("that are cleared long before the rest have nothing taken off", () => {
    const { plan, climate, around } = growingOf(QUARRY, "beet");
    const garden = (...ends: readonly (readonly [string, string])[]) =>
      sharedIn(COVER, {
        ...{ plan, climate, around, contexts: [beet, carrot], observations: [] },
        anchors: new Map(ends.map(([key, day]) => [key, anchor(isoDay(day))])),
      });
    const off = (...ends: readonly (readonly [string, string])[]) =>
      windows(garden(...ends).filter(({ step }) => step === "off"));
    const last = "off 06-24 06-29 07-14";
    expect(off(["2027/beet|1|end", "2027-06-10"])).toEqual([last]);
    expect(off(["2027/beet|1|end", "2027-06-25"])).toEqual([last, last]);
    expect(off(["2027/beet|1|end", "2027-06-10"], ["2027/carrot|1|end", "2027-06-12"])).toEqual([
      "off 06-12 06-13 06-19",
    ]);
  });

  test("say so: the later goes under what is there, and all come off on one day", () => {
    const [, under, ...off] = tasksOf(beet, carrot);
    expect(said(under)).toContain(
      "Lift the fabric, tuck the carrots under, and bury the edges again.",
    );
    expect(under?.needs).toEqual([]);
    expect(new Set(off.map(({ together }) => together))).toEqual(new Set(["2027/beet/cover/off"]));
    expect(off[1]?.after).toEqual(["2027/carrot/cover/on"]);
  });

  test("keep each their ids, wherever they stand", () => {
    const ways = ["beet/cover/on", "carrot/cover/on", "beet/cover/off", "carrot/cover/off"];
    expect(ids(beet, carrot)).toEqual(ways.map((way) => `2027/${way}`));
  });

  test("have each their own where the first is off by then, or another pest is meant", () => {
    const much = { start: "2027-07-10", up: "2027-07-20" };
    const second = covered("carrot", { covers: [FLEAS] }, { acts: much });
    const apart = (...both: readonly SowingContext[]) =>
      tasksOf(...both).map(({ needs }) => needs.length);
    expect(apart(beet, second)).toEqual([1, 0, 1, 0]);
    const fly: CoverFacts = { ...FLEAS, against: "carrot fly" };
    expect(apart(beet, covered("carrot", { covers: [fly] }))).toEqual([1, 0, 1, 0]);
  });

  test("share it where one goes in on the very day the other may be uncovered, and not a day later", () => {
    const sownOn = (start: string) => {
      const acts = { start, up: start };
      return tasksOf(beet, covered("carrot", { covers: [FLEAS] }, { acts })).filter(
        ({ needs }) => needs.length > 0,
      ).length;
    };
    expect([sownOn("2027-06-24"), sownOn("2027-06-25")]).toEqual([1, 2]);
  });

  test("let bees in to what flowers, while the rest stays under", () => {
    const flowers = { daysBeforeHarvest: days(20, 30), forBees: true };
    const bees = covered("carrot", { covers: [{ ...FLEAS, off: "first harvest" }], flowers });
    const off = tasksOf(beet, bees).filter(({ step }) => step === "off");
    expect(off.map(({ id }) => id)).toEqual(["2027/carrot/cover/off", "2027/beet/cover/off"]);
    expect(said(off[0])).toContain("Lift the fabric off these alone");
  });
});

describe("two covers of one crop", () => {
  test("that would lie over each other are one, till the later comes off", () => {
    const miners: CoverFacts = { ...FLEAS, against: "leaf miners", offDays: days(50, 60) };
    expect(windowsOf(covered("beet", { covers: [FLEAS, miners] }))).toEqual([
      "on 05-03 05-03 05-06",
      "off 07-09 07-14 07-29",
    ]);
  });

  test("that come one after the other have ids of their own", () => {
    const short: CoverFacts = { ...FLEAS, offDays: days(-10, -10) };
    const birds: CoverFacts = { ...FLEAS, against: "birds", with: "net", on: "up" };
    const steps = tasksOf(covered("beet", { covers: [short, birds] })).map(({ step }) => step);
    expect(steps).toEqual(["on", "off", "on-birds", "off-birds"]);
  });
});

describe("a net over several crops of a bed", () => {
  const crops = ["pea: 2 rows", "lettuce: 2 rows, every 14 days, 4 times"];
  const { scheduled } = tellOf(withCrops("very-short", crops), { on: "2027-01-02" });
  const off = (key: string) =>
    scheduled.find(({ task }) => task.id === `2027/${key}/cover/off`)?.task;

  test("comes off peas that have outgrown it weeks before the last lettuce", () => {
    const [peas, lettuce] = [off("pea"), off("lettuce")];
    expect(peas && lettuce && lettuce.window.due - peas.window.due).toBeGreaterThan(28);
    expect(said(peas)).toContain("Lift the net off these alone");
    expect(said(lettuce)).toContain("how: Take the net off");
  });
});

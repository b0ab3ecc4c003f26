import { describe, expect, test } from "vitest";
import { THINGS_TO_HAVE } from "../../../src/engine/practices/things-to-have.ts";
import { isoDay, QUARRY, tellOf } from "../../gardens.ts";
import { due, dueDays, withCrops } from "../../winters.ts";
import { growingOf } from "../growth/growing.ts";
import { said, stepOf, tasksIn, titles, windowsOf } from "./told.ts";

const carrots = growingOf(QUARRY, "carrot", { acts: { start: "2027-05-03" } });
const potatoes = growingOf(QUARRY, "potato", { acts: { start: "2027-05-03" } });
const tomatoes = growingOf(QUARRY, "tomato", {
  acts: { start: "2027-04-09", "set out": "2027-05-21" },
});
const garlic = growingOf(QUARRY, "garlic", { acts: { start: "2027-10-27" } });

describe("ordering", () => {
  test("is once, in the dead of winter", () => {
    expect(windowsOf(THINGS_TO_HAVE, carrots)[0]).toBe("order 01-15 01-25 02-15");
    expect(said(stepOf(THINGS_TO_HAVE, carrots, "order"))).toContain("First wanted about 3 May.");
  });

  test("brings what the day it begins needs", () => {
    const brings = [carrots, potatoes, garlic].map((growing) =>
      stepOf(THINGS_TO_HAVE, growing, "order")?.brings.join(),
    );
    expect(brings).toEqual(["seed", "tubers", "seed garlic"]);
  });

  test("is three weeks before it is needed, where that comes first", () => {
    const early = growingOf(QUARRY, "carrot", { acts: { start: "2027-02-10" } });
    expect(windowsOf(THINGS_TO_HAVE, early)[0]).toBe("order 01-10 01-20 01-31");
  });

  test("of seed garlic is two months ahead, since it sells out", () => {
    expect(windowsOf(THINGS_TO_HAVE, garlic)[0]).toBe("order 08-18 08-28 09-18");
  });

  test("of what goes in in autumn waits till the shops have it", () => {
    const days = dueDays(
      withCrops("maritime", ["onion: 80 sets, plant 25 Sep", "broad bean: 2 rows, sow 5 Nov"]),
    );
    expect(due(days, "onion/things-to-have/order")).toMatch(/^2027-0[78]-/);
    expect(due(days, "broad-bean/things-to-have/order")).toMatch(/^2027-09-/);
  });

  test("of sets says how many and which, and looks for none kept from last year", () => {
    const autumn = withCrops("maritime", ["onion: 80 sets, plant 25 Sep"]);
    const sets = growingOf(autumn, "onion", { acts: { start: "2027-09-25" } });
    const text = said(stepOf(THINGS_TO_HAVE, sets, "order"));
    expect(text).toContain("80 sets.");
    expect(text).toContain("for autumn planting");
    expect(text).not.toContain("last year");
  });

  test("names the crop where the planting's own name does not", () => {
    const named = (name: string) =>
      titles(
        tasksIn(
          THINGS_TO_HAVE,
          growingOf(QUARRY, "carrot", { acts: { start: "2027-05-03" }, planting: { name } }),
        ),
      )[0];
    expect(named("long row")).toBe("Order seed: long row (carrot)");
    expect(named("early carrots")).toBe("Order seed: early carrots");
  });

  test("is in July in the south", () => {
    const { site } = growingOf(QUARRY, "carrot").plan;
    const month = (early: string, usual: string, late: string) => ({
      early: isoDay(early),
      usual: isoDay(usual),
      late: isoDay(late),
      given: 3 as const,
    });
    const south = {
      ...site,
      latitude: -43,
      lastFrost: month("2027-09-20", "2027-10-05", "2027-10-20"),
      firstFrost: month("2028-04-05", "2028-04-20", "2028-05-05"),
    };
    const sown = growingOf(QUARRY, "carrot", {
      acts: { start: "2027-10-01" },
      plan: { site: south },
    });
    expect(windowsOf(THINGS_TO_HAVE, sown)[0]).toBe("order 07-15 07-25 08-15");
  });

  test("names the variety", () => {
    const early = growingOf(QUARRY, "potato", {
      acts: { start: "2027-05-03" },
      planting: { variety: "early red" },
    });
    expect(titles(tasksIn(THINGS_TO_HAVE, early))[0]).toContain("(early red)");
  });

  test("says for which kind of onion the days are, where the plan names none", () => {
    const ordered = (crop: string) =>
      tellOf(`${QUARRY}crops:\n  - ${crop}\n`, { on: "2027-01-02" })
        .scheduled.filter(({ task }) => task.id.endsWith("things-to-have/order"))
        .filter(({ task }) => task.crop === "onion")
        .map(({ task }) => said(task))
        .join();
    expect(ordered("onion: 80 sets")).toContain("how: Days here are for long-day kinds.");
    expect(ordered("onion: long-day red, 80 sets")).not.toContain("Days here");
  });

  test("is of seed, tubers or bulbs, and of nothing for plants", () => {
    const order = (growing: typeof carrots) =>
      titles(tasksIn(THINGS_TO_HAVE, growing)).find((title) => title.startsWith("Order"));
    expect(order(carrots)).toContain("seed");
    expect(order(potatoes)).toContain("tubers");
    expect(order(garlic)).toContain("bulbs");
    const bought = growingOf(QUARRY, "tomato", {
      acts: { "set out": "2027-05-21" },
      planting: { start: "plants" },
    });
    expect(order(bought)).toBeUndefined();
  });
});

describe("ordering what is too slow for the place", () => {
  const order = (days: number) =>
    said(
      stepOf(
        THINGS_TO_HAVE,
        growingOf(QUARRY, "tomato", {
          acts: { start: "2027-04-09", "set out": "2027-05-21" },
          planting: { days },
        }),
        "order",
      ),
    );

  test("says so in January, with the longest that is quick enough", () => {
    const fits = Number(/look for a kind of (\d+) days or fewer/.exec(order(130))?.[1]);
    expect(fits).toBeGreaterThan(60);
    expect(order(fits + 2)).toContain("not ready here before winter ends it");
    expect(order(fits)).not.toContain("not ready here");
  });
});

describe("how much to order", () => {
  const order = (growing: typeof carrots) => said(stepOf(THINGS_TO_HAVE, growing, "order"));

  test("is seeds in round numbers, by the length of row", () => {
    expect(order(carrots)).toContain("how: About 1000 seeds.");
  });

  test("is seeds for all sowings of what is sown again, each its piece of the row", () => {
    const acts = { start: "2027-05-03" };
    const lettuce = growingOf(QUARRY, "lettuce", { acts });
    expect(order(lettuce)).toMatch(/About \d+ seeds for 3 sowings\./);
    const once = order(growingOf(QUARRY, "lettuce", { acts, planting: { repeat: null } }));
    const count = (text: string) => Number(/About (\d+) seeds/.exec(text)?.[1]);
    expect(count(order(lettuce))).toBeLessThan(3 * count(once));
    expect(count(order(lettuce))).toBeGreaterThanOrEqual(count(once));
  });

  test("is seeds for each sowing of so many plants", () => {
    const acts = { start: "2027-05-03" };
    const amount = { kind: "plants", count: 30 } as const;
    expect(order(growingOf(QUARRY, "lettuce", { acts, planting: { amount } }))).toContain(
      "About 1000 seeds for 3 sowings.",
    );
  });

  test("is two seeds to a cell of what is raised indoors", () => {
    expect(order(tomatoes)).toContain("how: About 20 seeds.");
  });

  test("is tubers as they are planted, and bulbs for the cloves", () => {
    expect(order(potatoes)).toContain("how: 18 seed tubers.");
    expect(order(garlic)).toContain("how: 8 bulbs, about 60 cloves.");
    const few = {
      ...garlic,
      planting: { ...garlic.planting, amount: { kind: "plants", count: 8 } },
    };
    expect(order(few as typeof garlic)).toContain("how: 1 bulb, about 8 cloves.");
  });

  test("is not told where the plan does not say how much it grows", () => {
    const bare = { ...carrots, planting: { ...carrots.planting, amount: null } };
    expect(order(bare)).not.toContain("seeds");
  });
});

describe("how much there is room for", () => {
  const order = (text: string, name: string) =>
    said(stepOf(THINGS_TO_HAVE, growingOf(text, name, { acts: { start: "2027-05-03" } }), "order"));

  test("is told where the plan names no amount and the bed is the crop's alone", () => {
    const alone = QUARRY.replace(
      "      - lettuce: 2 rows, every 14 days, 3 times",
      "      - lettuce",
    );
    expect(order(alone, "lettuce")).toContain("how: The bed holds about 64.");
  });

  test("is not told where it shares its bed, or the bed has no size", () => {
    const shared = QUARRY.replace("- beet: 2 rows", "- beet");
    expect(order(shared, "beet")).not.toContain("holds about");
    const sizeless = QUARRY.replace("  Salad bed:\n    is: 8 x 4 ft\n", "  Salad bed:\n").replace(
      "lettuce: 2 rows, every 14 days, 3 times",
      "lettuce",
    );
    expect(order(sizeless, "lettuce")).not.toContain("holds about");
  });
});

describe("sprouting", () => {
  test("of potatoes begins four weeks before they are planted", () => {
    const [, sprout] = windowsOf(THINGS_TO_HAVE, potatoes);
    expect(sprout).toBe("sprout 03-29 04-05 04-15");
    expect(said(stepOf(THINGS_TO_HAVE, potatoes, "sprout"))).toContain("egg boxes, eyes up");
  });

  test("is not told where the plan does not ask for it", () => {
    const plain = { ...potatoes, planting: { ...potatoes.planting, sproutedFirst: false } };
    expect(stepOf(THINGS_TO_HAVE, plain, "sprout")).toBeUndefined();
  });
});

describe("nothing is to be had", () => {
  test("for what is in since before", () => {
    const since = { ...carrots, planting: { ...carrots.planting, inSince: isoDay("2027-03-01") } };
    expect(windowsOf(THINGS_TO_HAVE, since)).toEqual([]);
  });

  test("again for a second sowing", () => {
    expect(windowsOf(THINGS_TO_HAVE, { ...carrots, sowing: 2 })).toEqual([]);
  });

  test("before a day is known", () => {
    expect(windowsOf(THINGS_TO_HAVE, growingOf(QUARRY, "carrot"))).toEqual([]);
  });
});

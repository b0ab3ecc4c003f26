import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { chanceOf } from "../../../src/engine/beds/chances.ts";
import {
  autumnAfter,
  frozenFrom,
  winterOpens,
  wintersYoung,
} from "../../../src/engine/growth/autumn.ts";
import { growsOnFrom, winterEndOf } from "../../../src/engine/growth/through-winter.ts";
import { isoDay } from "../../gardens.ts";
import { due, dueDays, withCrops } from "../../winters.ts";
import { growingOf } from "./growing.ts";

const inSince = withCrops("maritime", [
  "shallot: 30 sets, in since 14 Oct 2026",
  "broad bean: 2 rows, in since 5 Nov 2026",
  "garlic: 60 cloves, in since 20 Oct 2026",
]);
const SOWN = [
  "shallot: 30 sets, plant 14 Oct",
  "broad bean: 2 rows, sow 5 Nov",
  "onion: 80 sets, plant 25 Sep",
  "spinach: 2 rows, sow 20 Sep",
  "corn salad: 2 rows, sow 25 Aug",
  "spring cabbage: 10 plants, sow 1 Aug",
];
const STANDING = [
  "kale: 6 plants, from seed indoors",
  "leek: 40 plants, from seed indoors",
  "parsnip: 2 rows",
  "brussels sprouts: 6 plants, from seed indoors",
  "swede: 2 rows",
  "sprouting broccoli: 4 plants",
  "chard: 1 row",
];

describe("a cool spring by the sea", () => {
  const days = dueDays(
    withCrops("maritime", ["potato: 16 tubers", "strawberry: 20 plants, in since 15 Aug 2025"]),
  );

  test("brings potatoes up late in cold soil, and they are hilled and fed when shoots stand", () => {
    expect(due(days, "potato/plant/1")).toMatch(/^2027-0(3-2|3-3|4-0)/);
    expect(due(days, "potato/hill/1")).toMatch(/^2027-05-[01]/);
    expect(due(days, "potato/feed/1")).toMatch(/^2027-05-[01]/);
  });

  test("ripens strawberries in June, with straw and net before that", () => {
    expect(due(days, "strawberry/harvest/1")).toMatch(/^2027-06-[12]/);
    expect(due(days, "strawberry/yearly/straw")).toMatch(/^2027-0(5-[23]|6-0)/);
    expect(due(days, "strawberry/yearly/net")).toMatch(/^2027-06-[01]/);
  });
});

describe("what is picked through the winter", () => {
  const starts = (head: string) => dueDays(withCrops(head, STANDING));

  test("goes in half a year before the first frost where summers are cool and winters mild", () => {
    const days = starts("maritime");
    expect(due(days, "kale/sow-indoors/1")).toMatch(/^2027-04-/);
    expect(due(days, "brussels-sprouts/set-out/1")).toMatch(/^2027-05-/);
    expect(due(days, "leek/sow-indoors/1")).toMatch(/^2027-03-|^2027-02-2/);
    expect(due(days, "leek/set-out/1")).toMatch(/^2027-05-/);
    expect(due(days, "rutabaga/sow-outdoors/1")).toMatch(/^2027-05-/);
    expect(due(days, "parsnip/sow-outdoors/1")).toMatch(/^2027-0[34]-/);
  });

  test("goes in as early as it may where the winter ends it, and by the gardener's own day", () => {
    expect(due(starts("cold"), "kale/set-out/1") < "2027-05-10").toBe(true);
    const asked = dueDays(withCrops("maritime", ["swede: 2 rows, not before 1 Apr"]));
    expect(due(asked, "rutabaga/sow-outdoors/1")).toMatch(/^2027-04-0/);
  });
});

describe("what went in in autumn", () => {
  test("and is in since October is harvested in its next summer, with its jobs of spring", () => {
    const days = dueDays(inSince);
    expect(due(days, "shallot/harvest/1")).toMatch(/^2027-0[67]-/);
    expect(due(days, "broad-bean/harvest/1")).toMatch(/^2027-06-/);
    expect(due(days, "broad-bean/stake-and-train/support")).toMatch(/^2027-03-/);
    expect(due(days, "broad-bean/stop-the-tops/1")).toMatch(/^2027-0[56]-/);
    expect(due(days, "garlic/harvest/1")).toMatch(/^2027-0[67]-/);
  });

  test("by the plan is neither lifted nor pinched before the spring after it", () => {
    const days = dueDays(withCrops("maritime", SOWN));
    const early = Object.entries(days).filter(
      ([id, day]) =>
        /^(shallot|broad-bean|onion|spring-cabbage)\/(harvest|stop|feed)/.test(id) &&
        day < "2028-03-01",
    );
    expect(early).toEqual([]);
    expect(due(days, "shallot/harvest/1")).toMatch(/^2028-0[67]-/);
    expect(due(days, "onion/harvest/1")).toMatch(/^2028-0[67]-/);
    expect(due(days, "broad-bean/harvest/1")).toMatch(/^2028-06-/);
    expect(due(days, "spring-cabbage/harvest/1")).toMatch(/^2028-0[345]-/);
  });

  test("and is picked through the winter ends as it flowers in spring", () => {
    const days = dueDays(withCrops("maritime", SOWN));
    expect(due(days, "spinach/harvest/last")).toMatch(/^2028-05-/);
    expect(due(days, "corn-salad/harvest/cut-1")).toMatch(/^2027-1[12]-/);
    expect(due(days, "corn-salad/harvest/cut-2")).toBe("-");
    expect(due(days, "corn-salad/harvest/last")).toMatch(/^2028-0[456]-/);
  });

  test("has the net against the onion fly in spring, and no bed is closed over it", () => {
    const days = dueDays(withCrops("maritime", SOWN));
    expect(due(days, "onion/cover/on")).toMatch(/^2028-03-/);
    expect(due(days, "bed/a-bed/close-the-bed/1")).toBe("-");
  });

  test("is hardy crops in their time alone, unless the gardener gave the day", () => {
    const spinach = growingOf(withCrops("maritime", ["spinach: 2 rows"]), "spinach");
    expect(wintersYoung(spinach, isoDay("2027-06-20"))).toBe(false);
    expect(wintersYoung(spinach, isoDay("2027-09-20"))).toBe(true);
    const beans = growingOf(withCrops("maritime", ["bush beans: 2 rows"]), "bean");
    expect(wintersYoung(beans, isoDay("2027-11-05"))).toBe(false);
    const cold = growingOf(withCrops("cold", ["broad bean: 1 row"]), "broad-bean");
    expect(wintersYoung(cold, isoDay("2027-10-10"))).toBe(false);
    const given = growingOf(withCrops("cold", ["broad bean: 1 row, sow 10 Oct"]), "broad-bean");
    expect(wintersYoung(given, isoDay("2027-10-10"))).toBe(true);
  });

  test("waits for its time in autumn where it is too late for this year's harvest", () => {
    const beans = growingOf(withCrops("maritime", ["broad bean: 2 rows"]), "broad-bean");
    const chance = chanceOf(beans, isoDay("2027-09-20"));
    expect(chance?.verdict).toBe("not yet");
    expect(chance?.opens && isoOf(chance.opens)).toBe("2027-10-18");
    expect(winterOpens(beans, isoDay("2027-09-20"))).toBe(isoDay("2027-10-18"));
    const cold = growingOf(withCrops("cold", ["broad bean: 2 rows"]), "broad-bean");
    expect(winterOpens(cold, isoDay("2027-09-20"))).toBeNull();
  });

  test("grows on four weeks before the last frost", () => {
    const shallot = growingOf(inSince, "shallot", { acts: { start: "2026-10-14" } });
    const day = growsOnFrom(shallot);
    expect(day && isoOf(day)).toBe("2027-03-15");
    expect(growsOnFrom(growingOf(inSince, "garlic", { acts: { start: "2026-10-20" } }))).toBeNull();
  });
});

describe("what stands the winter", () => {
  test("is picked through a mild one, and ends as it flowers in spring", () => {
    const days = dueDays(withCrops("maritime", STANDING));
    for (const key of ["kale", "leek", "parsnip", "brussels-sprouts", "rutabaga", "chard"])
      expect(due(days, `${key}/harvest/last`), key).toMatch(/^2028-04-/);
    expect(due(days, "sprouting-broccoli/harvest/1")).toMatch(/^2028-0[1-4]-/);
  });

  test("is not dug before the first frosts where those make it sweet", () => {
    const days = dueDays(withCrops("maritime", STANDING));
    for (const key of ["parsnip", "brussels-sprouts", "rutabaga"])
      expect(due(days, `${key}/harvest/1`), key).toMatch(/^2027-10-/);
  });

  test("is dug before the soil freezes where it does, and picked till hard cold", () => {
    const days = dueDays(withCrops("cold", STANDING));
    for (const key of ["kale", "leek", "chard"])
      expect(due(days, `${key}/harvest/last`), key).toMatch(/^2027-10-/);
    expect(due(days, "parsnip/harvest/last")).toMatch(/^2027-1[01]-/);
    const parsnip = growingOf(withCrops("cold", ["parsnip: 1 row"]), "parsnip", {
      acts: { start: "2027-05-01" },
    });
    expect(winterEndOf(parsnip, isoDay("2027-09-20"))?.by).toBe("frozen soil");
  });

  test("goes on to spring without frost, for what was sown as the heat went", () => {
    const mild = withCrops("mediterranean", ["spinach: 2 rows, sow 20 Nov", "radish: 1 row"]);
    const spinach = growingOf(mild, "spinach", { acts: { start: "2027-11-20", up: "2027-11-28" } });
    const end = winterEndOf(spinach, isoDay("2028-01-20"));
    expect(end?.by).toBe("spring");
    expect(end && isoOf(end.day)).toMatch(/^2028-04-0/);
    const radish = growingOf(mild, "radish", { acts: { start: "2027-11-20", up: "2027-11-28" } });
    expect(winterEndOf(radish, isoDay("2027-12-28"))).toBeNull();
  });

  test("has no frozen soil by the sea", () => {
    const leek = growingOf(withCrops("maritime", ["leek: 1 row"]), "leek");
    const autumn = autumnAfter(leek, isoDay("2027-09-01"));
    expect(autumn && frozenFrom(leek, autumn)).toBeNull();
  });
});

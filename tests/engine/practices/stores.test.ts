import { describe, expect, test } from "vitest";
import { CHECK_THE_STORES } from "../../../src/engine/practices/stores.ts";
import { tellOf } from "../../gardens.ts";
import { due, dueDays, wholeGarden, withCrops } from "../../winters.ts";
import { ending, toldWith, wordsOf } from "./garden.ts";

const looks = (crops: readonly string[]) =>
  toldWith(crops).filter(({ task }) => task.practice === CHECK_THE_STORES.name);

test("what is planted in autumn is in no store before it is lifted", () => {
  const { scheduled } = tellOf(wholeGarden("maritime"), { on: "2027-01-02" });
  const look = scheduled.find(({ task }) => task.id === "2027/garden/check-the-stores/1");
  expect(JSON.stringify(look?.task.say)).toContain("garlic, potatoes and shallots");
  expect(JSON.stringify(look?.task.say)).not.toContain("onions");
});

describe("looking through the stores", () => {
  test("is twice a winter, and names what is stored", () => {
    const both = looks([
      "potato: 10 tubers",
      "garlic: 30 cloves, in since 14 Oct 2026",
      "carrot: 1 row",
    ]);
    expect(both.map(({ task }) => task.id)).toEqual([
      "2027/garden/check-the-stores/1",
      "2027/garden/check-the-stores/2",
    ]);
    const words = both.map(wordsOf).join();
    expect(words).toContain("Turn over carrots, garlic and potatoes.");
    expect(both.every(({ task }) => task.indoors)).toBe(true);
  });

  test("names the last of five, and counts what is more than that", () => {
    const five = [
      "potato: 10 tubers",
      "garlic: 30 cloves, in since 14 Oct 2026",
      "onion: 80 plants, from seed indoors",
      "shallot: 30 sets",
      "winter squash: 2 plants, from seed indoors",
    ];
    expect(looks(five).map(wordsOf).join()).not.toContain("1 more");
    expect(looks(five).map(wordsOf).join()).toContain("and winter squash");
  });

  test("is none where nothing keeps", () => {
    expect(looks(["lettuce: 2 rows"])).toEqual([]);
  });
});

describe("bringing in the last before hard frost", () => {
  test("is about the killing frost, and before the bed is closed", () => {
    const placed = toldWith(["carrot: 3 rows"]);
    const last = ending(placed, "/carrot/cure-and-store/winter");
    expect(last.day).toBeLessThan(ending(placed, "/close-the-bed/1").day);
    expect(wordsOf(last)).toContain("damp sand");
  });

  test("is none once something else grows in its place, nor of what was ripe long before", () => {
    const ids = (crops: readonly string[]) => toldWith(crops).map(({ task }) => task.id);
    expect(ids(["carrot: 3 rows", "spinach: 2 rows, after the carrots"])).not.toContain(
      "2027/carrot/cure-and-store/winter",
    );
    expect(ids(["beet: 2 rows, 40 days"])).not.toContain("2027/beet/cure-and-store/winter");
  });
});

test("stores that are full in summer are looked through two months later, and not in the winter after", () => {
  const days = dueDays(withCrops("southern", ["potato: 10 tubers"]));
  expect(due(days, "garden/check-the-stores/1")).toMatch(/^2028-0[2-3]-/);
});

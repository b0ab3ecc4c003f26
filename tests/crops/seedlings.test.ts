import { describe, expect, it } from "vitest";
import { celsius } from "../../src/base/quantities/quantity.ts";
import { CROPS, cropOf } from "../../src/crops/crops.ts";
import { COLUMNS_F, EMERGENCE_DAYS } from "../../src/crops/emergence.ts";
import { saySource } from "../../src/crops/figures.ts";
import {
  emergenceShare,
  SEEDLINGS_PERCENT,
  SEEDLINGS_SOURCE,
  seedlingsRow,
} from "../../src/crops/seedlings.ts";

const share = (row: string, atF: number) => emergenceShare(row, celsius(atF));

describe("normal seedlings out of a hundred seeds", () => {
  it("have a column for each soil temperature of the days table, 0 to 100 or untested", () => {
    for (const [row, percents] of Object.entries(SEEDLINGS_PERCENT)) {
      expect(percents.length, row).toBe(COLUMNS_F.length);
      for (const percent of percents)
        if (percent !== null) expect(percent >= 0 && percent <= 100, row).toBe(true);
    }
  });

  it("go by the names of the days table where both have a crop", () => {
    const both = Object.keys(SEEDLINGS_PERCENT).filter((row) => row in EMERGENCE_DAYS);
    expect(both).toContain("bean_snap");
    expect(both.length).toBeGreaterThanOrEqual(12);
  });

  it("are of Harrington and Minges", () => {
    expect(saySource(SEEDLINGS_SOURCE)).toContain("Harrington and Minges");
  });
});

describe("the share that comes up", () => {
  it("is between those of the two temperatures next to it, in proportion", () => {
    expect(share("turnip", 45.5)).toBeCloseTo((0.14 + 0.79) / 2, 9);
    expect(share("spinach", 70.25)).toBeCloseTo(0.52 - 0.24 / 4, 9);
  });

  it("spans a temperature that was not tested from the nearest ones that were", () => {
    expect(share("cabbage", 68)).toBeCloseTo(0.96, 9);
    expect(share("radish", 99.5)).toBeCloseTo(0.95 / 4, 9);
  });

  it("is not known outside what was tested", () => {
    expect(share("cabbage", 77)).toBeCloseTo(0.99, 9);
    expect(share("cabbage", 78)).toBeNull();
    expect(share("tomato", 31)).toBeNull();
    expect(share("tomato", 105)).toBeNull();
  });

  it("throws for a row that the table does not have", () => {
    expect(() => emergenceShare("moonflower", 10)).toThrow(RangeError);
  });
});

describe("a crop's row", () => {
  it("is its own, never that of a crop that lends it its days", () => {
    const rows = CROPS.map((crop) => [crop.key, seedlingsRow(crop)]);
    expect(Object.fromEntries(rows)).toEqual({
      apple: null,
      "autumn-raspberry": null,
      blackcurrant: null,
      blueberry: null,
      buckwheat: null,
      cherry: null,
      chives: null,
      clover: null,
      gooseberry: null,
      marigold: null,
      mint: null,
      oregano: null,
      pear: null,
      phacelia: null,
      plum: null,
      raspberry: null,
      redcurrant: null,
      rye: null,
      sage: null,
      "spring-cabbage": null,
      "sprouting-broccoli": null,
      "sweet-pea": null,
      thyme: null,
      tomatillo: null,
      "white-mustard": null,
      beet: null,
      spinach: "spinach",
      "sweet-potato": null,
      cabbage: "cabbage",
      radish: "radish",
      turnip: "turnip",
      carrot: "carrot",
      parsley: "parsley",
      parsnip: null,
      lettuce: null,
      cucumber: "cucumber",
      melon: "muskmelon",
      pumpkin: null,
      "summer-squash": null,
      "winter-squash": null,
      watermelon: null,
      corn: null,
      okra: "okra",
      eggplant: "eggplant",
      pepper: "pepper",
      potato: null,
      tomato: "tomato",
      garlic: null,
      bean: "bean_snap",
      edamame: null,
      "pole-bean": "bean_snap",
      "runner-bean": null,
      "broad-bean": null,
      pea: null,
      artichoke: null,
      arugula: null,
      basil: null,
      "bok-choy": null,
      broccoli: null,
      "brussels-sprouts": null,
      calendula: null,
      celeriac: null,
      chard: null,
      "chinese-cabbage": null,
      cilantro: null,
      collards: null,
      "corn-salad": null,
      dill: null,
      endive: null,
      fennel: null,
      "head-lettuce": null,
      "jerusalem-artichoke": null,
      kale: null,
      kohlrabi: null,
      leek: null,
      mustard: null,
      nasturtium: null,
      radicchio: null,
      rhubarb: null,
      blackberry: null,
      borage: null,
      chervil: null,
      cosmos: null,
      cowpea: null,
      cress: null,
      "dry-bean": null,
      grape: null,
      "hamburg-parsley": null,
      komatsuna: null,
      lavender: null,
      "lemon-balm": null,
      lovage: null,
      popcorn: null,
      rapini: null,
      salsify: null,
      scorzonera: null,
      sorrel: null,
      tarragon: null,
      "winter-radish": null,
      zinnia: null,
      rutabaga: null,
      savory: null,
      scallion: null,
      shallot: null,
      strawberry: null,
      sunflower: null,
      "lima-bean": "bean_lima",
      asparagus: "asparagus",
      cauliflower: "cauliflower",
      celery: "celery",
      onion: "onion",
    });
    expect(cropOf("kale")?.comesUp).toMatchObject({ row: "cabbage" });
  });
});

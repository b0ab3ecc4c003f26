import { describe, expect, it } from "vitest";
import { CROPS, isTender } from "../../src/crops/crops.ts";
import type { Crop } from "../../src/crops/facts.ts";
import { ALONE, tellOf } from "../gardens.ts";

/** The canonical garden with every other crop beside its own, each as it usually begins. */
const WHOLE = [
  ALONE,
  "crops:",
  ...CROPS.filter(({ key }) => !ALONE.includes(`- ${key}`)).map(
    ({ one }) => `  - ${one}: 10 plants`,
  ),
].join("\n");

const TASKS = tellOf(WHOLE, { on: "2027-01-01" }).scheduled.map(({ task }) => task);

/** Practices and steps told of a crop. */
const stepsOf = (crop: Crop) =>
  TASKS.filter((task) => task.crop === crop.key).map(({ practice, step }) => `${practice}/${step}`);

const keys = (crops: readonly Crop[]) => crops.map(({ key }) => key);

describe("every crop, built for a year", () => {
  it("begins in its usual way, once", () => {
    const BEGIN = /^(?:sow outdoors|sow indoors|plant|overwinter)\/(?:1|plant)$/;
    const SET_OUT = /^set out\/1$/;
    for (const crop of CROPS)
      expect(
        stepsOf(crop).filter((step) => (crop.starts[0] === "plants" ? SET_OUT : BEGIN).test(step)),
        crop.key,
      ).toHaveLength(1);
  });

  it("is harvested, except what this short cool summer does not ripen and perennials", () => {
    const never = CROPS.filter(
      (crop) => !stepsOf(crop).some((step) => step.startsWith("harvest/")),
    );
    expect(keys(never).toSorted()).toEqual([
      "apple",
      "asparagus",
      "autumn-raspberry",
      "blackberry",
      "blackcurrant",
      "blueberry",
      "cherry",
      "corn",
      "dry-bean",
      "edamame",
      "gooseberry",
      "grape",
      "pear",
      "plum",
      "popcorn",
      "pumpkin",
      "raspberry",
      "redcurrant",
      "rhubarb",
      "strawberry",
      "sunflower",
      "sweet-potato",
      "winter-squash",
    ]);
  });

  it("is thinned where it is sown closer than it grows in the end, or several to a place, and nowhere else", () => {
    const thinned = CROPS.filter((crop) => stepsOf(crop).includes("thin/1"));
    expect(keys(thinned).toSorted()).toEqual([
      "beet",
      "bok-choy",
      "carrot",
      "chard",
      "chervil",
      "chinese-cabbage",
      "cilantro",
      "dill",
      "fennel",
      "hamburg-parsley",
      "kohlrabi",
      "komatsuna",
      "lettuce",
      "mustard",
      "okra",
      "parsley",
      "parsnip",
      "pumpkin",
      "radish",
      "rapini",
      "rutabaga",
      "salsify",
      "savory",
      "scorzonera",
      "spinach",
      "summer-squash",
      "turnip",
      "winter-radish",
      "winter-squash",
    ]);
  });

  it("is covered where birds, flies or beetles find it, on and off", () => {
    const covered = CROPS.filter((crop) => stepsOf(crop).includes("cover/on"));
    expect(keys(covered).toSorted()).toEqual([
      "arugula",
      "beet",
      "bok-choy",
      "broccoli",
      "brussels-sprouts",
      "cabbage",
      "cauliflower",
      "chard",
      "chinese-cabbage",
      "collards",
      "cucumber",
      "eggplant",
      "head-lettuce",
      "kale",
      "kohlrabi",
      "komatsuna",
      "lettuce",
      "melon",
      "mustard",
      "onion",
      "pea",
      "pumpkin",
      "rapini",
      "rutabaga",
      "spring-cabbage",
      "sprouting-broccoli",
      "summer-squash",
      "sunflower",
      "watermelon",
      "winter-squash",
    ]);
    for (const crop of covered) expect(stepsOf(crop)).toContain("cover/off");
  });

  it("is set out and hardened off where it is raised, picked before frost where that kills it", () => {
    const raised = CROPS.filter(
      (crop) => crop.starts[0] === "seed indoors" && stepsOf(crop).includes("set out/1"),
    );
    expect(keys(raised).toSorted()).toEqual([
      "artichoke",
      "basil",
      "broccoli",
      "brussels-sprouts",
      "cabbage",
      "cauliflower",
      "celeriac",
      "celery",
      "collards",
      "cosmos",
      "eggplant",
      "endive",
      "head-lettuce",
      "kale",
      "leek",
      "marigold",
      "melon",
      "onion",
      "pepper",
      "radicchio",
      "spring-cabbage",
      "sprouting-broccoli",
      "sweet-pea",
      "tomatillo",
      "tomato",
      "watermelon",
      "zinnia",
    ]);
    for (const crop of raised)
      expect(stepsOf(crop).some((step) => step.startsWith("harden off/"))).toBe(true);
    const picked = CROPS.filter((crop) => stepsOf(crop).includes("first frost/pick"));
    expect(keys(picked)).toEqual(
      expect.arrayContaining(["cucumber", "tomato", "pole-bean", "pepper"]),
    );
    for (const crop of picked) expect(isTender(crop), crop.key).toBe(true);
  });

  it("is named in no title as a key is written", () => {
    const odd = TASKS.filter(({ title }) => /[_/]|undefined|null|NaN/.test(title.object));
    expect(odd.map(({ id }) => id)).toEqual([]);
  });
});

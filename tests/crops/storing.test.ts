import { expect, test } from "vitest";
import { CROPS } from "../../src/crops/crops.ts";
import { STORE_BEETS, STORE_CABBAGES, STORE_CARROTS } from "../../src/crops/storing.ts";

test("carrots, beets and cabbages are brought in before the ground freezes, if they still stand", () => {
  const stored = CROPS.filter(({ care }) => care.some(({ standsDays }) => standsDays));
  expect(stored.map(({ key }) => key).sort()).toEqual(["beet", "cabbage", "carrot"]);
  for (const care of [STORE_BEETS, STORE_CABBAGES, STORE_CARROTS]) {
    expect(care.only).toEqual(["frozen ground"]);
    expect(care.from).toBe("first frost");
    expect(care.days.value[0]).toBeGreaterThan(0);
  }
});

test("plants whose stems cutworms bite off are ringed with card as they go out", () => {
  const ringed = CROPS.filter(({ settingOut }) => settingOut?.how.includes("ring of card"));
  expect(ringed.map(({ key }) => key)).toEqual(
    expect.arrayContaining(["cabbage", "pepper", "tomato"]),
  );
});

import { expect, test } from "vitest";
import { bulbDoubts } from "../../../src/engine/doubts/bulbs.ts";
import { least, planOf } from "../../garden/plan/canonical.ts";

const at = (latitude: number, crop: string) =>
  bulbDoubts(
    planOf(
      least(
        `crops:\n  - ${crop}`,
        `latitude: ${latitude}\n  last frost: about 6 May\n  first frost: about 2 Oct`,
      ),
    ),
  ).map(({ code, is, shouldBe }) => `${code}: ${is}. ${shouldBe}`);

test("an onion of a kind that cannot make bulbs at that latitude is doubted, with the kind that can", () => {
  expect(at(25, "onion: long-day, 80 sets")).toEqual([
    "will-not-bulb: onion: days here never get long enough for a long-day kind to make bulbs. Choose a short-day kind",
  ]);
  expect(at(52, "onion: short-day, 80 sets")).toEqual([
    "will-not-bulb: onion: days here are long so early that a short-day kind makes small bulbs. Choose a long-day kind",
  ]);
  expect(at(46, "onion: long-day, 80 sets")).toEqual([]);
  expect(at(25, "onion: 80 sets")).toEqual([]);
  expect(at(25, "leek: 80 plants, called long-day leek")).toEqual([]);
});

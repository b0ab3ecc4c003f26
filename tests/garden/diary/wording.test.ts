import { expect, test } from "vitest";
import { otherOrders, plainWording, shorterWordings } from "../../../src/garden/diary/wording.ts";

test("one thing is written in one way, without what stands in brackets", () => {
  expect(plainWording("carrots & beets thinned (twice)")).toBe("carrots and beets thinned");
  expect(plainWording("garlic’s dug")).toBe("garlic is dug");
  expect(plainWording("half an inch of rain")).toBe("½ inch of rain");
  expect(plainWording("1st peas (not ripe)")).toBe("first peas (not ripe)");
});

test("a clause is read whole, then without what moves nothing, then without its last phrases", () => {
  expect(shorterWordings("finally sowed leeks in a tray on the sill today")).toEqual([
    "finally sowed leeks in a tray on the sill today",
    "sowed leeks in a tray on the sill",
    "sowed leeks in a tray",
    "sowed leeks",
  ]);
  expect(shorterWordings("carrots thinned to 4 cm")).toContain("carrots thinned");
  expect(shorterWordings("watered in the rain")).not.toContain("watered");
});

test("a line is put in another order where it heads a list or adds to one", () => {
  expect(otherOrders("peas sown, beets and corn too")).toEqual(["peas and beets and corn sown"]);
  expect(otherOrders("cabbage seed in: kale, broccoli")).toContain("sowed kale, broccoli");
  expect(otherOrders("sown: peas, beets")).toEqual(["sown peas, beets"]);
  expect(otherOrders("sowed peas")).toEqual([]);
});

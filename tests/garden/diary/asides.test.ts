import { expect, test } from "vitest";
import { withoutLead, withoutTail } from "../../../src/garden/diary/asides.ts";

test("interjections and the household as teller go", () => {
  expect(withoutLead("so i finally put the tomatoes out")).toBe("put the tomatoes out");
  expect(withoutLead("ok, we've thinned the beets")).toBe("thinned the beets");
  expect(withoutLead("i'm holding off on the beans")).toBe("holding off on the beans");
  expect(withoutLead("we pick basil")).toBe("picked basil");
  expect(withoutLead("weeds everywhere")).toBe("weeds everywhere");
});

test("what is only promised keeps its promise", () => {
  expect(withoutLead("i will sow peas")).toBe("will sow peas");
});

test("amounts and remarks behind go, and never all of a clause", () => {
  expect(withoutTail("lettuce in, about a dozen")).toBe("lettuce in");
  expect(withoutTail("kale in straight away")).toBe("kale in");
  expect(withoutTail("cut the cauliflowers, six")).toBe("cut the cauliflowers");
  expect(withoutTail("peas up")).toBe("peas up");
});

import { expect, test } from "vitest";
import { isShare, withoutShare } from "../../../src/garden/diary/share.ts";

test("a part is left out of a clause, so that the rest reads as of all", () => {
  expect(withoutShare("sowed half the carrots")).toBe("sowed the carrots");
  expect(withoutShare("lost about half of the peppers")).toBe("lost the peppers");
  expect(withoutShare("slugs had three of the eight lettuce")).toBe("slugs had the lettuce");
  expect(withoutShare("thinned the beets, some of them")).toBe("thinned the beets");
});

test("all of it has no part, and neither has an amount", () => {
  for (const text of ["sowed the carrots", "planted 24 kohlrabi", "dug the last of the parsnips"])
    expect(withoutShare(text), text).toBeNull();
});

test("a clause can be nothing but a part", () => {
  expect(["all but four", "half of them", "not all"].map(isShare)).toEqual([true, true, true]);
  expect(isShare("peas up")).toBe(false);
});

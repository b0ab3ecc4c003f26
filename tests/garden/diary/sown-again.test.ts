import { expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { sownAgainIn } from "../../../src/garden/diary/sown-again.ts";
import { on, PLAN } from "../plan/canonical.ts";

const line = { day: on(6, 4), text: "", at: { file: "f", line: 1, column: 1 } };
const again = (text: string) =>
  sownAgainIn({ line, by: null }, text, { plans: [PLAN], vocabulary: PRACTICES })?.map((each) =>
    "planting" in each ? `${each.kind} ${each.planting}` : each.kind,
  ) ?? null;

test("what was sown before came to nothing, and it is sown that day", () => {
  for (const text of [
    "sowed the beets again",
    "resowed the beets",
    "beets sown a second time",
    "re-sowed beets",
  ])
    expect(again(text), text).toEqual(["failed 2027/beet", "done 2027/beet"]);
});

test("what the plan sows several times is only sown once more", () => {
  expect(again("sowed the lettuce again")).toBeNull();
  expect(again("sowed the beets")).toBeNull();
  expect(again("resowed the moon")).toBeNull();
});

import { expect, test } from "vitest";
import type { Observation } from "../../../src/garden/diary/observation.ts";
import { standingFacts } from "../../../src/garden/diary/standing-facts.ts";
import { on } from "../plan/canonical.ts";

const seen = (planting: string, date: number): Observation => ({
  kind: "seen",
  day: on(5, date),
  planting,
  stage: "up",
  sowing: null,
});
const lost = (planting: string, date: number): Observation => ({
  kind: "lost",
  day: on(5, date),
  planting,
  sowing: null,
  text: "",
});
const note: Observation = { kind: "note", day: on(5, 1), text: "", why: null };

test("facts are found by what they are about and by kind, oldest first", () => {
  const facts = standingFacts();
  const [first, second, gone] = [seen("a", 3), lost("a", 2), seen("b", 1)];
  for (const each of [first, second, gone, note]) facts.add(each);
  expect(facts.about(seen("a", 9), ["seen", "lost"])).toEqual([second, first]);
  expect(facts.about(seen("b", 9), ["lost"])).toEqual([]);
  expect(facts.about(note, ["note"])).toEqual([]);
  facts.remove([gone]);
  expect(facts.about(seen("b", 9), ["seen"])).toEqual([]);
  expect(facts.all()).toEqual([first, second, note]);
});

import { describe, expect, test } from "vitest";
import type { Basis } from "../../../src/engine/growth/anchors.ts";
import { sayRough } from "../../../src/engine/practices/rough-dates.ts";
import { tellOf } from "../../gardens.ts";

const GUESS = "A rough guess from your frost dates.";
const PLACE = `garden: Least
year: 2027
measures: metric
place:
  clock: Europe/Oslo
  latitude: 60.1
  last frost: about 20 May
  first frost: about 20 Sep
`;
const CROPS = `crops:
  - carrot
  - beet
  - from: seed indoors
    crop: cabbage
`;
const NUMBERS = "  hottest afternoons: 22 °C\n  coldest nights: -7 °C\n";

const toldIn = (text: string) =>
  tellOf(text, { on: "2027-01-02" }).scheduled.map(({ task }) => ({
    ...{ id: task.id, basis: task.basis },
    text: task.say.flatMap(({ pieces }) => pieces).join(" "),
  }));

describe("a plan of frost dates alone", () => {
  const tasks = toldIn(`${PLACE}${CROPS}`);

  test("says of its harvests and sowings that they are a rough guess, once each", () => {
    for (const id of ["2027/carrot/harvest/1", "2027/beet/sow-outdoors/1"]) {
      const text = tasks.find((task) => task.id === id)?.text ?? "";
      expect(text.split(GUESS), id).toHaveLength(2);
    }
  });

  test("says it of every day that soil or warmth decide, and of no other", () => {
    const curve: readonly Basis[] = ["soil", "warmth", "heat", "cold"];
    for (const { id, basis, text } of tasks.filter(
      ({ id }) => !/things-to-have|\/(?:tools|pots)$/.test(id),
    ))
      expect(text.includes(GUESS), id).toBe(basis.some((each) => curve.includes(each)));
  });

  test("no longer says so with both temperatures", () => {
    for (const { text } of toldIn(`${PLACE}${NUMBERS}${CROPS}`)) expect(text).not.toContain(GUESS);
  });
});

test("what was seen is no guess", () => {
  const seen = [{ practice: "harvest", step: "1", basis: ["seen", "warmth"] as const, say: [] }];
  expect(sayRough(seen, { rough: true })).toEqual(seen);
});

test("what is brought in again hangs on the carrying out alone", () => {
  const rung = (step: string) => ({
    practice: "harden off",
    step,
    basis: ["soil"] as const,
    say: [],
  });
  const [out, back] = sayRough([rung("out-1"), rung("in-1")], { rough: true });
  expect([out?.say.length, back?.say.length]).toEqual([1, 0]);
});

test("tools and pots are cleaned on no guess", () => {
  const job = { practice: "ready the garden", basis: ["soil"] as const, say: [] };
  const told = sayRough(
    ["tools", "pots", "beds"].map((step) => ({ ...job, step })),
    { rough: true },
  );
  expect(told.map(({ say }) => say.length)).toEqual([0, 0, 1]);
});

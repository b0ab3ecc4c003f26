import { describe, expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import type { FirstAnswers } from "../../../src/garden/model/first-answers.ts";
import { answerProblems, problemsAtAnswers } from "../../../src/garden/plan/first-check.ts";
import { firstPlan } from "../../../src/garden/plan/first-plan.ts";
import { readPlan } from "../../../src/garden/plan/read.ts";
import { ANSWERS, bedRow, cropRow } from "./first-answers.ts";

const YEARS = { from: 2026, to: 2028 };
const fields = (over: Partial<FirstAnswers>) =>
  answerProblems({ ...ANSWERS, ...over }, YEARS).map(({ field }) => field);

describe("answers by themselves", () => {
  test("of a whole form have no problem", () => {
    expect(fields({})).toEqual([]);
  });

  test("say which of them is missing or can't be", () => {
    expect(fields({ garden: "", clock: "" })).toEqual(["garden", "clock"]);
    expect(fields({ where: "by the mill" })).toEqual(["where"]);
    expect(fields({ lastFrost: "", firstFrost: "" })).toEqual(["lastFrost", "firstFrost"]);
    expect(fields({ lastFrost: "", firstFrost: "", weather: "from Open-Meteo" })).toEqual([]);
  });

  test.each(["2019", "2029", "27", "next", ""])(
    "of the year %s are not taken in silence",
    (year) => {
      expect(fields({ year })).toEqual(["year"]);
    },
  );

  test("need a name where a row says anything else, and each its own", () => {
    const people = [
      { name: "", gardens: "Sat", home: "" },
      { name: "Ada", gardens: "", home: "" },
      { name: "", gardens: "", home: "" },
      { name: "Ada", gardens: "", home: "" },
    ];
    expect(fields({ people })).toEqual(["people.0.name", "people.3.name"]);
    const beds = [bedRow({ name: "A" }), bedRow({}), bedRow({ name: "A" }), bedRow({ width: "2" })];
    expect(fields({ beds, crops: [] })).toEqual(["beds.2.name", "beds.3.name", "beds.3.length"]);
  });

  test("count bags in whole numbers, and both sides of a bed or none", () => {
    const beds = [
      bedRow({ name: "A", kind: "bags", count: "some" }),
      bedRow({ name: "B", kind: "pots", count: "4" }),
      bedRow({ name: "C", length: "4" }),
    ];
    expect(fields({ beds, crops: [] })).toEqual(["beds.0.count", "beds.2.width"]);
  });

  test("count crops in whole numbers, and rows by any number", () => {
    const crops = [
      cropRow({ amount: "many" }),
      cropRow({ crop: "beet", amount: "0" }),
      cropRow({ crop: "leek", amount: "2½", unit: "length" }),
    ];
    expect(fields({ crops })).toEqual(["crops.0.amount", "crops.1.amount"]);
  });
});

/** Where the reader's problems are told. */
function placesOf(over: Partial<FirstAnswers>): readonly string[] {
  const answers = { ...ANSWERS, ...over };
  const text = firstPlan(answers);
  const { problems } = readPlan(text, { garden: "g", file: "plan" }, PRACTICES);
  expect(problems.length).toBeGreaterThan(0);
  return problemsAtAnswers(answers, text, problems).map(({ field }) => field);
}

describe("what the plan's reader reports is told at the answer it came from", () => {
  test.each([
    ["lastFrost", { lastFrost: "mid May" }],
    ["firstFrost", { firstFrost: "05-06" }],
    ["hottest", { hottest: "hot" }],
    ["coldest", { coldest: "900 °C" }],
    ["where", { where: "120" }],
    ["clock", { clock: "Middle-earth" }],
    ["forecast", { where: "60" }],
    [
      "people.1.gardens",
      {
        people: [
          { name: "Ada", gardens: "", home: "" },
          { name: "Bo", gardens: "soon", home: "" },
        ],
      },
    ],
    ["people.0.home", { people: [{ name: "Ada", gardens: "", home: "9-99" }] }],
    [
      "people.1.name",
      {
        people: [
          { name: "Ada", gardens: "", home: "" },
          { name: "ada!", gardens: "", home: "" },
        ],
      },
    ],
    ["beds.0.name", { beds: [bedRow({ name: "??" })], crops: [] }],
    [
      "beds.1.length",
      { beds: [bedRow({}), bedRow({ name: "A", length: "long", width: "2" })], crops: [] },
    ],
    [
      "beds.0.holds",
      { beds: [bedRow({ name: "A", kind: "bags", count: "6", holds: "much" })], crops: [] },
    ],
    [
      "crops.1.amount",
      { crops: [cropRow({}), cropRow({ crop: "leek", amount: "2 x 3", unit: "length" })] },
    ],
    ["crops.0.since", { crops: [cropRow({ crop: "garlic", amount: "6", since: "long ago" })] }],
  ] as const)("%s", (field, over) => {
    expect(placesOf(over)[0]).toBe(field);
  });

  test("in whichever bed the crop stands", () => {
    const crops = [
      cropRow({ amount: "3", unit: "rows", bed: 0 }),
      cropRow({ crop: "garlic", amount: "60", unit: "cloves", since: "whenever", bed: 0 }),
      cropRow({ crop: "leek", since: "once" }),
    ];
    expect(placesOf({ crops })).toEqual(["crops.1.since", "crops.2.since"]);
  });
});

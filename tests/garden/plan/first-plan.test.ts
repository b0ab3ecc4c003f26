import fc from "fast-check";
import { expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { type FirstAnswers, firstPlan } from "../../../src/garden/plan/first-plan.ts";
import { readPlan } from "../../../src/garden/plan/read.ts";

const ANSWERS: FirstAnswers = {
  garden: "Brook: the <b>",
  year: 2027,
  measures: "metric",
  clock: "Europe/Oslo",
  latitude: "60,1",
  lastFrost: "about 20 May",
  firstFrost: "about 20 Sep",
  hottest: "22 °C",
  coldest: "-7",
  people: ["Ada", "Bo"],
  beds: [
    { name: "South bed", size: "4 x 1.2 m" },
    { name: "Pots", size: "" },
  ],
  crops: [
    { name: "carrot", bed: "South bed" },
    { name: "leek", bed: null },
  ],
};

const read = (answers: FirstAnswers) =>
  readPlan(firstPlan(answers), { garden: "g", file: "plan" }, PRACTICES);

test("the answers are a whole plan: place, people, beds, and crops where they were put", () => {
  const { plan, problems } = read(ANSWERS);
  expect(problems).toEqual([]);
  expect(plan).toMatchObject({ name: "Brook: the <b>", year: 2027, measures: "metric" });
  expect(plan?.site.latitude).toBe(60.1);
  expect([plan?.site.hottestAfternoons?.si, plan?.site.coldestNights?.si]).toEqual([22, -7]);
  expect(plan?.people.map(({ name }) => name)).toEqual(["Ada", "Bo"]);
  expect(plan?.beds.map(({ name }) => name)).toEqual(["South bed", "Pots"]);
  expect(plan?.plantings.map(({ crop, bed }) => [crop, bed])).toEqual([
    ["carrot", "south-bed"],
    ["leek", null],
  ]);
});

test("what was left empty is left out, and what is wrong is for the reader to report", () => {
  const bare = {
    ...ANSWERS,
    latitude: "",
    people: [],
    beds: [],
    crops: [{ name: "leek", bed: null }],
  };
  expect(firstPlan(bare)).not.toMatch(/latitude|people|beds/);
  expect(read(bare).plan?.plantings).toHaveLength(1);
  const wrong = read({ ...ANSWERS, lastFrost: "in spring" });
  expect(wrong.plan).toBeNull();
  expect(wrong.problems[0]?.at.line).toBeGreaterThan(5);
});

test("no answer, whatever it holds, becomes another key of the plan", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (said) => {
      const { plan } = read({
        ...ANSWERS,
        garden: said,
        beds: [],
        crops: [{ name: "leek", bed: null }],
      });
      return plan === null || (plan.plantings.length === 1 && plan.diary.length === 0);
    }),
  );
});

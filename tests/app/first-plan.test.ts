import { describe, expect, test } from "vitest";
import { checkFirstPlan, guessedFrosts } from "../../src/app/first-plan.ts";
import { ANSWERS, bedRow, cropRow } from "../garden/plan/first-answers.ts";

const REQUEST = {
  garden: "g",
  years: { from: 2026, to: 2028 },
  beside: {},
  doubts: false,
};

describe("a form's answers", () => {
  test("are a plan, with its frosts in words", () => {
    const { plan, problems, frosts, text } = checkFirstPlan(ANSWERS, REQUEST);
    expect(problems).toEqual([]);
    expect(plan?.name).toBe("Brook: the <b>");
    expect(text).toContain("Brook: the <b>");
    expect(frosts).toEqual([
      "Last frost: early 5 May, usual 20 May, late 4 June",
      "First frost: early 5 Sep, usual 20 Sep, late 5 Oct",
    ]);
    const mild = { ...ANSWERS, lastFrost: "none", firstFrost: "none" };
    expect(checkFirstPlan(mild, REQUEST).frosts).toEqual(["No frost"]);
  });

  test("with a fault of their own are told of it alone, not of what follows from it as well", () => {
    const { plan, problems } = checkFirstPlan({ ...ANSWERS, lastFrost: "" }, REQUEST);
    expect(plan).toBeNull();
    expect(problems).toEqual([
      { field: "lastFrost", weight: "problem", says: "Write a day, such as about 6 May, or none." },
    ]);
  });

  test("have the doubts of check, where they are asked for", () => {
    const beds = [bedRow({ name: "Small", length: "1", width: "0.3" })];
    const crops = [cropRow({ crop: "pumpkin", amount: "40", bed: 0 })];
    const answers = { ...ANSWERS, beds, crops };
    const { problems } = checkFirstPlan(answers, { ...REQUEST, doubts: true });
    expect(problems.map(({ weight }) => weight)).toContain("doubt");
    expect(problems.every(({ weight }) => weight === "doubt")).toBe(true);
  });
});

describe("frost dates guessed by two temperatures", () => {
  const guess = (over: Partial<typeof ANSWERS>, south = false) =>
    guessedFrosts({ ...ANSWERS, hottest: "28 °C", coldest: "-13 °C", ...over }, south);

  test("are three dates of each side that a plan can read", () => {
    const found = guess({ where: "43.6", clock: "America/New_York" });
    expect(found?.lastFrost).toBe("12 Apr, 9 May, 5 June");
    const { plan } = checkFirstPlan({ ...ANSWERS, ...found, guessed: true }, REQUEST);
    expect(plan?.site.lastFrost?.given).toBe(3);
  });

  test("take bare numbers in the garden's own degrees", () => {
    const metric = guess({ hottest: "28", coldest: "-13" });
    const us = guess({ measures: "inches and °F", hottest: "82.4", coldest: "8.6" });
    expect(us).toEqual(metric);
  });

  test("lie half a year on, south of the equator, by the latitude or by what was said", () => {
    const clock = "Pacific/Auckland";
    expect(guess({ where: "-43.6", clock })).toEqual(guess({ where: "-43.6", clock }, true));
    expect(guess({ where: "", clock }, true)?.lastFrost).toMatch(/Oct|Nov/);
    expect(guess({ where: "", clock }, false)?.lastFrost).toMatch(/May/);
  });

  test("are none where nights stay mild, and nothing by what is no temperature", () => {
    const none = { lastFrost: "none", firstFrost: "none" };
    expect(guess({ where: "26", hottest: "33", coldest: "16" })).toEqual(none);
    expect(guess({ hottest: "" })).toBeNull();
    expect(guess({ coldest: "cold" })).toBeNull();
    expect(guess({ hottest: "-20" })).toBeNull();
  });
});

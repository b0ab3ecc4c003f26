import { describe, expect, it } from "vitest";
import { isoOf } from "../../src/days/day.ts";
import { least, PLAN, planOf, read, told } from "./canonical.ts";

const away = (line: string) => {
  const plan = planOf(least(`people:\n  Oda:\n  Imre:\naway:\n  - ${line}`));
  return plan.away.map(({ person, from, to }) => `${person} ${isoOf(from)} ${isoOf(to)}`)[0];
};

describe("people", () => {
  it("have gardening hours, hours at home and work they leave out", () => {
    expect(PLAN.people.map(({ key, name }) => [key, name])).toEqual([
      ["imre", "Imre"],
      ["oda", "Oda"],
    ]);
    expect(PLAN.people[0]?.gardens).toEqual([
      { weekday: 3, from: 1080, to: 1140 },
      { weekday: 6, from: 540, to: 720 },
    ]);
    expect(PLAN.people[1]?.home.map(({ weekday }) => weekday)).toEqual([1, 3, 4, 5, 6, 7]);
    expect(PLAN.people[0]?.leaveOut).toEqual(["lifting"]);
  });

  it("may have no hours at all, or days without hours, which are filled in", () => {
    const plan = planOf(least("people:\n  Oda:\n  Imre: {gardens: Sat}"));
    expect(plan.people[0]).toMatchObject({ gardens: [], home: [], leaveOut: [] });
    expect(plan.people[1]?.gardens).toEqual([{ weekday: 6, from: 540, to: 1020 }]);
    expect(plan.filled.map(({ what }) => what)).toContain("Imre's gardening hours");
  });

  it("keep the key of their first name", () => {
    expect(planOf(least("people:\n  Zoë: {was: Zoe}")).people[0]).toMatchObject({
      key: "zoe",
      name: "Zoë",
    });
    expect(told(least("people:\n  Oda:\n  ODA:"))).toEqual(["alike@9:3"]);
  });

  it("leave out practices by any name, and other work with a doubt", () => {
    const plan = planOf(least("people:\n  Oda: {leave out: [weeding, lifting]}"));
    expect(plan.people[0]?.leaveOut).toEqual(["weed", "lifting"]);
    expect(told(least("people:\n  Oda: {leave out: singing and weeding}"))).toEqual([
      "left-out-unknown@8:20",
    ]);
  });
});

describe("absences", () => {
  it("are of one person or of everybody, both days inclusive", () => {
    expect(away("Oda, 19 to 23 Jun")).toBe("oda 2027-06-19 2027-06-23");
    expect(away("everybody, 1 Aug to 14 Aug")).toBe("null 2027-08-01 2027-08-14");
    expect(away("imre, 3 May")).toBe("imre 2027-05-03 2027-05-03");
    expect(away("Oda, in July")).toBe("oda 2027-07-01 2027-07-31");
  });

  it("are refused for nobody known and without days", () => {
    const { problems } = read(least("people:\n  Oda:\naway:\n  - Odo, 3 May\n  - Oda"));
    expect(problems.map(({ code, at, shouldBe }) => [code, at.line, shouldBe])).toEqual([
      ["nobody-called", 10, "Did you mean Oda"],
      ["day-unclear", 11, "Write who and when: Oda, 19 to 23 Jun"],
    ]);
  });

  it("outside the season are a doubt", () => {
    expect(told(least("people:\n  Oda:\naway:\n  - Oda, 3 May 2029"))).toEqual([
      "outside-season@10:10",
    ]);
  });
});

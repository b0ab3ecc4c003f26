import { describe, expect, test } from "vitest";
import { householdOf } from "../../../src/engine/schedule/household.ts";
import { carryingOn } from "../../../src/engine/schedule/timed.ts";
import { hours, IMRE, inDays, ODA, personOf, SATURDAY } from "./given.ts";

const MONDAY = inDays(2);
const TUESDAY = inDays(3);
const lines = (household: ReturnType<typeof householdOf>, day = SATURDAY, lasts = 60) =>
  carryingOn(household, day, lasts);

describe("plants are carried", () => {
  test("out at ten and in after their hours by whoever is home", () => {
    const carrying = lines(householdOf([IMRE, ODA], []));
    expect(carrying).toEqual({
      out: { at: 600, people: ["imre", "oda"] },
      back: { at: 660, people: ["imre", "oda"] },
      shade: null,
    });
  });

  test("by the one who is home where the other is out", () => {
    expect(lines(householdOf([IMRE, ODA], []), MONDAY).out).toEqual({ at: 600, people: ["oda"] });
  });

  test("by the other where one is away", () => {
    const away = [{ person: "oda", from: SATURDAY, to: SATURDAY }];
    expect(lines(householdOf([IMRE, ODA], away)).out.people).toEqual(["imre"]);
  });

  test("at the first half hour that somebody is home, where nobody is at ten", () => {
    expect(lines(householdOf([IMRE], []), MONDAY).out).toEqual({
      at: 1050,
      people: ["imre"],
    });
  });

  test("at ten where the plan names nobody", () => {
    expect(lines(householdOf([], []), MONDAY, 120)).toEqual({
      out: { at: 600, people: [] },
      back: { at: 720, people: [] },
      shade: null,
    });
  });

  test("by eight in the evening at the latest", () => {
    const carrying = lines(householdOf([IMRE, ODA], []), SATURDAY, 600);
    expect(carrying.back.at).toBe(1200);
  });
});

describe("nobody home by day", () => {
  const carrying = lines(householdOf([IMRE], []), MONDAY, 240);

  test("puts plants in full shade from breakfast till the first who comes home", () => {
    expect(carrying.out.at).toBe(450);
    expect(carrying.back).toEqual({ at: 1050, people: ["imre"] });
  });

  test("is told to the household alone", () => {
    expect(carrying.shade?.for).toBe("household");
    expect(String(carrying.shade?.pieces)).toMatch(/full shade/);
  });

  test("and nobody in the evening asks for a neighbour", () => {
    const nobody = lines(householdOf([personOf("ada", { home: [hours(6, 0, 24)] })], []), TUESDAY);
    expect(nobody.out.people).toEqual([]);
    expect(String(nobody.shade?.pieces)).toMatch(/neighbour/);
  });
});

import { expect, test } from "vitest";
import { sheetPeople } from "../../../src/views/paper/people.ts";
import { ALONE, planOf, QUARRY } from "../../gardens.ts";

const named = (...names: readonly string[]) => {
  const people = names.map((name) => ({
    key: name.toLowerCase(),
    name,
    gardens: [],
    home: [],
    leaveOut: [],
  }));
  return sheetPeople([planOf(ALONE, { people })]).map(({ letters }) => letters);
};

test("one letter stands for somebody, more where others begin alike", () => {
  expect(sheetPeople([planOf(QUARRY)]).map(({ name, letters }) => [name, letters])).toEqual([
    ["Imre", "I"],
    ["Oda", "O"],
  ]);
  expect(named("Anna", "Anton", "Bo")).toEqual(["Ann", "Ant", "B"]);
  expect(named("Anna", "Annabel")).toEqual(["Anna", "Annabel"]);
});

test("somebody of two years' plans stands once, and nobody where nobody is named", () => {
  expect(sheetPeople([planOf(QUARRY), planOf(QUARRY)]).length).toBe(2);
  expect(sheetPeople([planOf(ALONE)])).toEqual([]);
});

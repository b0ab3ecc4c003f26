import { expect, test } from "vitest";
import { frostInShort, frostNight } from "../../src/app/frost.ts";
import { isoDay } from "../gardens.ts";
import { SPRING } from "./reports.ts";

test("a night is told as values and in the household's words", () => {
  const { report, text } = frostNight(SPRING.year, isoDay("2027-06-15"), -2);
  expect(report.beds.map(({ name }) => name)).toContain("Root bed");
  expect(text.head[0]).toContain("28 °F by the forecast");
});

test("a night in short names what it asks something for, bed by bed, and nothing on a mild one", () => {
  const line = frostInShort(SPRING.year, isoDay("2027-06-15"), -2);
  expect(line).toMatch(/^[A-Z][a-z]+: potatoes/);
  expect(line).toContain("South bed: tomatoes");
  expect(frostInShort(SPRING.year, isoDay("2027-06-15"), 12)).toBe("");
});

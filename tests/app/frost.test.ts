import { expect, test } from "vitest";
import { frostNight } from "../../src/app/frost.ts";
import { isoDay } from "../gardens.ts";
import { SPRING } from "./reports.ts";

test("a night is told as values and in the household's words", () => {
  const { report, text } = frostNight(SPRING.year, isoDay("2027-06-15"), -2);
  expect(report.beds.map(({ name }) => name)).toContain("Root bed");
  expect(text.head[0]).toContain("28 °F by the forecast");
});

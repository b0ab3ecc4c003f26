import { expect, test } from "vitest";
import { JOB_STYLE } from "../../../../src/host/web/style/job.ts";

const rule = (selector: string) =>
  JOB_STYLE.split("\n").find((line) => line.startsWith(`${selector} {`)) ?? "";

test("the wanted answer is large, at the side of the thumb, and its undoing at the other, safe from a double tap", () => {
  expect(rule(".at-side")).toContain("grid-column: 2; grid-row: 1");
  expect(rule(".answered .at-side")).toContain("grid-column: 1;");
  expect(Number(/min-height: ([\d.]+)rem/.exec(rule(".at-side button"))?.[1])).toBeGreaterThan(3);
});

test("what an answer leads back to comes into the middle of the screen and not under its edge", () => {
  expect(JOB_STYLE).toMatch(/\.job \{[^}]*scroll-margin-top: \d+vh/);
  expect(JOB_STYLE).toMatch(/\.ticks li \{[^}]*scroll-margin-top: \d+vh/);
});

test("days are rows, and columns where a desk has room for them", () => {
  const desk = JOB_STYLE.slice(JOB_STYLE.indexOf("@media (min-width"));
  expect(desk).toContain("grid-template-columns: repeat(7,");
  expect(rule(".week > li")).toContain("display: grid");
});

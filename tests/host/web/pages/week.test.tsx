import { expect, test } from "vitest";
import { weekPage } from "../../../../src/host/web/pages/week.tsx";

const FRAME = { garden: "Quarry Lane", base: "/g/l/m/", ways: [] };
const JOB = {
  title: "Thin beets",
  when: "Saturday 8 May",
  text: "Two fingers apart.\nGreens are for the kitchen.",
  href: "/g/l/m/on/2027/beet/thin/1",
};
const NONE = { week: [], weekAfter: [], later: [] };

const of = (coming: Partial<typeof NONE> | Record<string, readonly unknown[]>) =>
  weekPage(FRAME, { coming: { ...NONE, ...coming } as never, calendar: "calendar", told: [] });

test("a job's lines stay lines, and its title leads to its page where it has one", () => {
  const html = of({ week: [JOB] });
  expect(html).toContain(`<a href="${JOB.href}">Thin beets</a>`);
  expect(html).toContain("apart.\nGreens");
  expect(of({ week: [{ ...JOB, href: null }] })).toContain("<h3>Thin beets</h3>");
});

test("an empty week says so, and what comes after it", () => {
  const html = of({ later: [JOB] });
  expect(html).toContain("Nothing is due.");
  expect(html).toContain("<h2>Then</h2>");
  expect(of({})).not.toContain("<h2>Then</h2>");
  expect(of({ weekAfter: [JOB] })).toContain("<h2>The week after</h2>");
});

test("the way into a calendar stands first", () => {
  const html = of({ week: [JOB] });
  expect(html.indexOf('href="/g/l/m/calendar"')).toBeLessThan(html.indexOf("Thin beets"));
});

test("needs no script but the one every page may do without, and no form, and sixty jobs of the longest text are under 50 KB", () => {
  const long = { ...JOB, text: "x".repeat(450) };
  const html = of({ week: Array.from({ length: 60 }, () => long) });
  expect(html).not.toMatch(/<script(?! src="\/page\.js")|<form|<button/);
  expect(html.length).toBeLessThan(50_000);
});

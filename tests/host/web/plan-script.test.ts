import { Script } from "node:vm";
import { expect, test } from "vitest";
import { PLAN_JS } from "../../../src/host/web/plan-script.ts";

test("the script can be read, builds no markup from text and reaches nothing but its own address", () => {
  expect(() => new Script(PLAN_JS)).not.toThrow();
  expect(PLAN_JS).not.toMatch(
    /innerHTML|insertAdjacentHTML|document\.write|eval\(|https?:|localStorage|cookie/,
  );
});

test("typed text is kept in the tab alone, and only on a page that asks for it", () => {
  expect(PLAN_JS).toContain("sessionStorage");
  expect(PLAN_JS).toContain("form.dataset.draft &&");
});

test("lines that the page itself tells of are marked before anything is typed", () => {
  expect(PLAN_JS).toContain('if (document.querySelector(".beside")) check(number);');
});

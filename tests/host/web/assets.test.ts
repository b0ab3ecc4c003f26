import { expect, test } from "vitest";
import { STYLESHEET } from "../../../src/host/web/assets.ts";

test("nothing is fetched from elsewhere", () => {
  expect(STYLESHEET).not.toMatch(/url\(|@import|https?:/);
});

test("the stylesheet has colours, type, forms and the bar, and is no load for a phone", () => {
  for (const part of ["--paper:", "main {", "button, .do {", ".bar {"])
    expect(STYLESHEET).toContain(part);
  expect(STYLESHEET.length).toBeLessThan(24_000);
});

test("every colour that a rule uses is one of the pages' own", () => {
  const known = new Set([...STYLESHEET.matchAll(/--(\w+):/g)].map(([, name]) => name));
  const used = [...STYLESHEET.matchAll(/var\(--(\w+)\)/g)].map(([, name]) => name);
  expect(used.filter((name) => !known.has(name))).toEqual([]);
});

import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { isAnswered, licencesOf, packages } from "./licences.ts";

const ALL = packages();

test("every package's licence is one that is free, or is answered", () => {
  expect(ALL.length).toBeGreaterThan(100);
  expect(ALL.filter((each) => !isAnswered(each))).toEqual([]);
});

test("what a host needs is what package.json asks for, and what that needs itself", () => {
  const { dependencies } = JSON.parse(
    readFileSync(new URL("../../package.json", import.meta.url), "utf8"),
  ) as { readonly dependencies: Readonly<Record<string, string>> };
  const needed = ALL.filter(({ isNeeded }) => isNeeded).map(({ name }) => name);
  expect(needed).toEqual(expect.arrayContaining(Object.keys(dependencies)));
  expect(needed.length).toBeLessThanOrEqual(Object.keys(dependencies).length + 5);
});

test("of several licences any may be chosen, and all that hold together must be free", () => {
  expect(licencesOf({ licence: "(MIT OR GPL-3.0)" })).toEqual(["MIT", "GPL-3.0"]);
  expect(isAnswered({ licence: "(MIT OR GPL-3.0)" })).toBe(true);
  expect(isAnswered({ licence: "MIT AND GPL-3.0" })).toBe(false);
  for (const licence of ["GPL-3.0", "AGPL-3.0-only", "SEE LICENSE IN x", ""])
    expect(isAnswered({ licence }), licence).toBe(false);
});

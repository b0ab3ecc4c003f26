import { expect, test } from "vitest";
import { PICTURES_STYLE } from "../../../../src/host/web/style/pictures.ts";

test("a picture's own words for its colours reach nothing else in a page", () => {
  const rules = [...PICTURES_STYLE.matchAll(/([^{}]+)\{[^{}]*\}/g)].map(([, rule = ""]) =>
    rule.trim(),
  );
  expect(rules.length).toBeGreaterThan(30);
  expect(rules.filter((rule) => !/^(?:\.sowbell-picture|\.beds)\b/.test(rule))).toEqual([]);
});

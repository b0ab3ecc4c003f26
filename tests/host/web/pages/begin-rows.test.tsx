import { expect, test } from "vitest";
import { bedsPage, peoplePage } from "../../../../src/host/web/pages/begin-rows.tsx";
import { formWith } from "../forms.ts";

const labelled = (html: string) => {
  const ids = [...html.matchAll(/<(?:input|select) id="([^"]+)"/g)].map(([, id]) => id ?? "");
  for (const id of ids) expect(html, id).toContain(`<label for="${id}">`);
  return ids;
};

test("everybody has a row with every field labelled, and there are empty ones", () => {
  const html = peoplePage({ form: formWith(), errors: [], spare: 2 });
  expect(labelled(html)).toHaveLength(4 * 3);
  expect(html).toMatch(/id="people\.0\.gardens" name="people\.0\.gardens" value="Sat 9-12"/);
  expect(html).toContain("<legend>Ada</legend>");
  expect(html).toContain("<legend>Person 3</legend>");
});

test("beds have their sides and their number in the garden's measures", () => {
  const html = bedsPage({ form: formWith(), errors: [], spare: 1 });
  expect(labelled(html)).toHaveLength(3 * 6);
  expect(html).toMatch(/Length in metres[\s\S]*Litres in each/);
  const us = bedsPage({ form: formWith({ measures: "inches and °F" }), errors: [], spare: 0 });
  expect(us).toMatch(/Length in feet[\s\S]*Gallons in each/);
});

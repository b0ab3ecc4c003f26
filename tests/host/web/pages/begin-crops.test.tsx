import { expect, test } from "vitest";
import { cropNames } from "../../../../src/app/plan-text.ts";
import { amountsPage, cropsPage } from "../../../../src/host/web/pages/begin-crops.tsx";
import { formWith } from "../forms.ts";

const PAGE = { form: formWith(), errors: [], offers: cropNames() };

test("the crops of most gardens come first, every crop once, and the ticked ones are ticked", () => {
  const html = cropsPage(PAGE);
  const keys = [...html.matchAll(/name="crop" value="([^"]+)"/g)].map(([, key]) => key);
  expect(keys).toHaveLength(cropNames().length);
  expect(new Set(keys).size).toBe(keys.length);
  expect(keys.slice(0, 24)).toContain("tomato");
  expect(html).toMatch(/value="tomato" checked/);
  expect(html).not.toMatch(/value="leek" checked/);
  // What is ticked is in sight.
  expect(html).not.toContain("<details open");
  expect(cropsPage({ ...PAGE, form: formWith({ "crops.2.crop": "rhubarb" }) })).toContain(
    "<details open",
  );
});

test("a crop is asked how much of what, where, how it begins where it may begin in several ways, and since when where it may stand", () => {
  const html = amountsPage({
    ...PAGE,
    form: formWith({ "crops.2.crop": "garlic", "crops.2.unit": "cloves" }),
  });
  expect(html).toContain('<option value="rows" selected="">rows</option>');
  expect(html).toMatch(
    /id="crops\.0\.bed"[\s\S]*<option value="0" selected="">South bed<\/option>/,
  );
  expect(html).not.toContain('id="crops.0.start"');
  expect(html).toMatch(
    /id="crops\.1\.start"[\s\S]*<option value="plants" selected="">bought as plants/,
  );
  expect(html).not.toContain('id="crops.1.since"');
  expect(html).toContain('id="crops.2.since"');
  expect(html).toContain('<option value="cloves" selected="">cloves</option>');
});

test("nobody is asked for a bed where there is none", () => {
  const none = formWith({ "beds.0.name": "", "beds.1.name": "" });
  expect(amountsPage({ ...PAGE, form: none })).not.toMatch(/id="crops\.\d\.bed"/);
});

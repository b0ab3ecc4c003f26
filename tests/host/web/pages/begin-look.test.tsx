import { expect, test } from "vitest";
import { lookPage } from "../../../../src/host/web/pages/begin-look.tsx";
import { formWith } from "../forms.ts";

const LOOK = {
  ...{
    form: formWith(),
    errors: [],
    frosts: ["Last frost: usual 20 May"],
    doubts: [],
    sample: null,
  },
  ...{ text: "garden: <x>\n", said: null },
};

test("all that was said is looked over, each with a way to change it", () => {
  const html = lookPage(LOOK);
  for (const words of [
    "Brook &lt;End&gt;, 2027",
    "Last frost: usual 20 May",
    "Ada",
    "South bed",
    "carrot: 3 rows, South bed",
    "tomato: 6 plants, Pots",
  ])
    expect(html).toContain(`<li>${words}</li>`);
  const ways = [...html.matchAll(/name="step" value="(\w+)"/g)].map(([, step]) => step);
  expect(ways).toEqual([
    "garden",
    "frost",
    "people",
    "beds",
    "amounts",
    "crops",
    "text",
    "next",
    "back",
  ]);
  expect(html).toContain("garden: &lt;x&gt;");
  expect(html).toContain("Save, and make the garden");
});

test("doubts and a month of it are shown before anything is saved", () => {
  const sample = {
    name: "May 2027",
    jobs: [{ day: "Sat 8 May", title: "Sow <carrots>" }],
    more: 3,
  };
  const doubts = [{ field: "", says: "That is much." }];
  const html = lookPage({ ...LOOK, doubts, sample, said: "By hand." });
  expect(html).toMatch(/Worth a second look[\s\S]*That is much\./);
  expect(html).toMatch(
    /A month of it: May 2027[\s\S]*Sat 8 May[\s\S]*Sow &lt;carrots&gt;[\s\S]*and 3 more/,
  );
  expect(html).toMatch(/role="status"[^>]*>By hand\./);
});

test("guessed frosts are said to be guessed", () => {
  expect(lookPage(LOOK)).not.toContain("Guessed");
  expect(lookPage({ ...LOOK, form: formWith({ way: "numbers" }) })).toContain(
    "Guessed by the two temperatures",
  );
});

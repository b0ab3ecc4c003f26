import { expect, test } from "vitest";
import { frostPage, picturesPage, roomPage } from "../../../../src/host/web/pages/reports.tsx";

const FRAME = { garden: "Quarry Lane", base: "/g/l/m/", ways: [] };

test("frost tonight asks for a low, says what is none, and tells the night section by section", () => {
  const asked = frostPage(FRAME, {
    unit: "°F",
    said: "",
    wrong: false,
    report: null,
    forecast: null,
  });
  expect(asked).toContain('<label for="low">');
  const wrong = frostPage(FRAME, {
    unit: "°F",
    said: '"><b>',
    wrong: true,
    report: null,
    forecast: null,
  });
  expect(wrong).toContain("That is no temperature.");
  expect(wrong).toContain('aria-describedby="wrong"');
  expect(wrong).not.toContain("<b>");
  const told = { head: ["29 °F"], sections: [{ name: "Bags", lines: ["Cover."] }], foot: [] };
  expect(
    frostPage(FRAME, { unit: "°F", said: "29", wrong: false, report: told, forecast: null }),
  ).toContain("<h2>Bags</h2>");
});

test("the room in the beds is asked by bed, the one that was asked about stays chosen", () => {
  const beds = [
    { key: "root-bed", name: "Root <bed>" },
    { key: "bags", name: "Bags" },
  ];
  const told = { head: ["Bags on 8 May"], sections: [{ name: "Safe:", lines: ["Beet"] }] };
  const html = roomPage(FRAME, { beds, bed: "bags", report: told });
  expect(html).toMatch(/<option value="bags" selected[^>]*>Bags/);
  expect(html).toContain("Root &lt;bed&gt;");
  expect(html).toContain("<h2>Safe</h2>");
  expect(roomPage(FRAME, { beds: [], bed: null, report: null })).toContain("names no beds");
});

test("the season's pictures stand one under another, each with its words", () => {
  const html = picturesPage(FRAME, ["season.svg", "soil.svg"]);
  expect(html.match(/<img src="[a-z]+\.svg" alt="[^"]{10,}"/g)).toHaveLength(2);
});

import { expect, test } from "vitest";
import { frostPage, picturesPage, roomPage } from "../../../../src/host/web/pages/reports.tsx";

const FRAME = { garden: "Quarry Lane", base: "/g/l/m/", ways: [] };

test("frost tonight asks for a low, says what is none, and tells the night section by section", () => {
  const asked = frostPage(FRAME, {
    unit: "°F",
    said: "",
    wrong: false,
    report: null,
    beds: null,
    forecast: null,
  });
  expect(asked).toContain('<label for="low">');
  const wrong = frostPage(FRAME, {
    unit: "°F",
    said: '"><b>',
    wrong: true,
    report: null,
    beds: null,
    forecast: null,
  });
  expect(wrong).toContain("That is no temperature.");
  expect(wrong).toContain('aria-describedby="wrong"');
  expect(wrong).not.toContain("<b>");
  const told = { head: ["29 °F"], sections: [{ name: "Bags", lines: ["Cover."] }], foot: [] };
  expect(
    frostPage(FRAME, {
      unit: "°F",
      said: "29",
      wrong: false,
      report: told,
      beds: null,
      forecast: null,
    }),
  ).toContain("<dt>Bags</dt>");
});

test("the room in the beds is asked by bed, the one that was asked about stays chosen", () => {
  const beds = [
    { key: "root-bed", name: "Root <bed>" },
    { key: "bags", name: "Bags" },
  ];
  const told = { head: ["Bags on 8 May"], sections: [{ name: "Safe:", lines: ["Beet"] }] };
  const html = roomPage(FRAME, { beds, bed: "bags", report: told, drawing: null });
  expect(html).toMatch(/<option value="bags" selected[^>]*>Bags/);
  expect(html).toContain("Root &lt;bed&gt;");
  expect(html).toContain("<dt>Safe</dt>");
  expect(roomPage(FRAME, { beds: [], bed: null, report: null, drawing: null })).toContain(
    "names no beds",
  );
});

const FILES = ["beds.svg", "season.svg", "frost.svg", "soil.svg", "weather.svg"];

test("the season's pictures stand one under another, each with what is seen in it and its size", () => {
  const html = picturesPage(FRAME, FILES);
  const images = [
    ...html.matchAll(/<img src="([a-z]+\.svg)" alt="([^"]+)" width="390" height="\d+"/g),
  ];
  expect(images.map(([, file]) => file)).toEqual(FILES);
  const headings = [...html.matchAll(/<h2>([^<]+)</g)].map(([, heading]) => heading);
  expect(headings).toHaveLength(FILES.length);
  for (const [, , alt = ""] of images) {
    expect(alt.length).toBeGreaterThan(60);
    expect(headings).not.toContain(alt);
  }
});

const BEDS = {
  svg: '<svg viewBox="0 0 358 90"></svg>',
  ...{ widthPx: 358, heightPx: 90 },
  words: [{ name: "Root <bed>, 12 × 4 ft", text: "Beets." }],
};

test("the beds stand in the pages of frost and room, and the same in words once in each", () => {
  const night = { head: ["29 °F"], sections: [], foot: [] };
  const asked = { unit: "°F", said: "29", wrong: false, report: night, forecast: null };
  const beds = [{ key: "root-bed", name: "Root bed" }];
  const room = roomPage(FRAME, { beds, bed: null, report: null, drawing: BEDS });
  expect(room).toContain(BEDS.svg);
  expect(room).toContain("<dt>Root &lt;bed&gt;, 12 × 4 ft</dt><dd>Beets.</dd>");
  const frost = frostPage(FRAME, { ...asked, beds: BEDS });
  expect(frost).toContain(BEDS.svg);
  expect(frost).not.toContain("The same in words");
});

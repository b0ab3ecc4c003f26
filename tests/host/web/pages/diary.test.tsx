import { expect, test } from "vitest";
import { diaryPage } from "../../../../src/host/web/pages/diary.tsx";

const FRAME = { garden: "Quarry Lane", base: "/g/l/m/", ways: [] };

test("a line is said in words for a day not after today, and what was said stands below", () => {
  const lines = [
    {
      day: "24 May 2027",
      by: "Oda",
      text: "carrots <up>",
      understood: ["seen: carrots up"],
      isNewest: true,
    },
    { day: "24 May 2027", by: null, text: "sun", understood: [], isNewest: false },
    { day: "23 May 2027", by: null, text: "rain", understood: [], isNewest: false },
  ];
  const many = [
    {
      person: "imre",
      name: "Imre",
      lines: "3-43",
      count: 40,
      day: "9 May 2027",
      isTakenBack: false,
    },
  ];
  const shown = { today: "2027-05-24", said: "", wrong: null, lines, many };
  const html = diaryPage(FRAME, { ...shown, measures: "us" });
  expect(html).toContain("Imre, 9 May 2027: 40 lines");
  expect(html).toContain('action="diary/back"');
  expect(html).toContain('type="date" value="2027-05-24" max="2027-05-24"');
  expect(html).toContain("carrots &lt;up&gt;");
  expect([...html.matchAll(/<dt>([^<]*)/g)].map(([, day]) => day)).toEqual([
    ...["24 May 2027", "23 May 2027"],
  ]);
  expect(html).toContain("seen: carrots up");
  expect(html.match(/<dd id="newest">/g)).toHaveLength(1);
  expect(html).toContain('<p>carrots &lt;up&gt;<span class="faint"> (Oda)</span></p>');
  expect(html).toContain("South bed 58 °F");
});

test("what could not be written down stays in its field with the reason", () => {
  const shown = {
    measures: "metric" as const,
    today: "2027-05-24",
    said: 'x"',
    wrong: "That day is still to come.",
    lines: [],
    many: [],
  };
  const html = diaryPage(FRAME, shown);
  expect(html).toContain('value="x&quot;"');
  expect(html).toContain("That day is still to come.");
  expect(html).toContain("South bed 14 °C");
});

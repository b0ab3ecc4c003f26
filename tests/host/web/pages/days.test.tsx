import { expect, test } from "vitest";
import { Days } from "../../../../src/host/web/pages/days.tsx";

const JOB = { title: "Thin <beets>", href: "/g/on/a", facts: ["09:00 to 10:00", "Oda"] };

test("a day has its jobs a line each, with hours and whose they are; an empty one says so", () => {
  const html = String(
    <Days
      days={[
        { weekday: "Sat", date: "8 May", jobs: [JOB, { ...JOB, href: null, facts: [] }] },
        { weekday: "Sun", date: "9 May", jobs: [] },
      ]}
    />,
  );
  expect(html).toMatch(/<p class="day">Sat <span>8 May<\/span><\/p>/);
  expect(html).toContain('<a href="/g/on/a">Thin &lt;beets&gt;</a>');
  expect(html).toContain('<span class="facts">09:00 to 10:00 · Oda</span>');
  expect(html).toContain("<li>Thin &lt;beets&gt;</li>");
  expect(html).toContain('<span class="unseen">nothing</span>');
  expect(html.match(/<li><p class="day">/g)).toHaveLength(2);
});

import { expect, test } from "vitest";
import { eventPage, gonePage } from "../../../../src/host/web/pages/event.tsx";
import type { OpenJob } from "../../../../src/host/web/pages/job-row.tsx";

const FRAME = { garden: "Quarry Lane", base: "/g/l/m/", ways: [] };
const JOB: OpenJob = {
  ...{ kind: "open", at: "job-a", title: "Thin <beets>", facts: [], keeps: null },
  ...{
    text: "Two fingers apart.",
    why: ["Right from 1 May to 9 May."],
    href: null,
    takenBack: "",
    moved: null,
  },
  ...{ taps: null, each: [] },
};
const SHOWN = { title: "Thin <beets>", when: "Saturday 8 May", jobs: [JOB], text: "", to: "/g/on" };

test("a job alone is unfolded, with why it is on this day", () => {
  const html = eventPage(FRAME, SHOWN);
  expect(html).toContain("<h1>Thin &lt;beets&gt;</h1><p>Saturday 8 May</p>");
  expect(html).toContain('<details open="">');
  expect(html).toContain("Right from 1 May to 9 May.");
});

test("several jobs are folded, and what the calendar says of all stands behind them", () => {
  const html = eventPage(FRAME, { ...SHOWN, jobs: [JOB, JOB], text: "Take: <seed>." });
  expect(html).not.toContain("<details open");
  expect(html).toMatch(
    /<details><summary>All of it, as the calendar says it<\/summary>.*Take: &lt;seed&gt;\./s,
  );
});

test("an event without jobs shows its text, and one that is no more has no day", () => {
  const html = eventPage(FRAME, { ...SHOWN, jobs: [], text: "Water the pots.", when: "" });
  expect(html).toContain('<p class="text">Water the pots.</p>');
  expect(html).toContain("</h1></header>");
});

test("what is off the list says so, and leads to today and what comes next", () => {
  const html = gonePage(FRAME, [[{ weekday: "Sun", date: "9 May", jobs: [] }], []]);
  expect(html).toContain("off the list");
  expect(html).toContain('<a class="do" href="/g/l/m/">');
  expect(html).toContain("The next seven days");
});

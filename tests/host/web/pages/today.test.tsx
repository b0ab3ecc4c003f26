import { expect, test } from "vitest";
import type { OpenJob } from "../../../../src/host/web/pages/job-row.tsx";
import { type TodayPageProps, todayPage } from "../../../../src/host/web/pages/today.tsx";

const FRAME = { garden: "Quarry Lane", base: "/g/l/m/", ways: [{ name: "Today", path: "" }] };
const JOB: OpenJob = {
  ...{ kind: "open", at: "job-a", title: "Sow beets", facts: [], keeps: null, text: "" },
  ...{ why: [], href: null, takenBack: "", moved: null, taps: null, each: [] },
};
const EMPTY: TodayPageProps = {
  ...{ day: "Saturday 8 May", notices: [], lead: ["Nothing to do today."], sections: [] },
  ...{ answered: [], beds: null, tonight: "", weeks: [], quiet: null, to: "/g/l/m/said" },
  calendar: { words: "Put it in my calendar", href: "/g/l/m/calendar" },
};

const page = (over: Partial<TodayPageProps>) => todayPage(FRAME, { ...EMPTY, ...over });

test("the garden's name and the day stand on top, and the bar marks today", () => {
  const html = page({});
  expect(html).toContain("<h1>Quarry Lane</h1><p>Saturday 8 May</p>");
  expect(html).toContain('<a href="/g/l/m/" aria-current="true">Today</a>');
});

test("what must be known comes before the jobs, a frost as a warning with the way to what to cover", () => {
  const notice = { title: "29 °F tonight", text: "Cover <beds>." };
  const more = { words: "Frost tonight, bed by bed", href: "/g/l/m/frost" };
  const html = page({
    notices: [
      { ...notice, look: "warning", more },
      { ...notice, title: "Not yet: beans", look: "note", more: null },
    ],
    sections: [{ name: "Yours today", folded: false, jobs: [JOB], rest: "" }],
  });
  expect(html).toContain('<section class="warning" aria-label="29 °F tonight">');
  expect(html).toContain('<section class="note" aria-label="Not yet: beans">');
  expect(html).toContain("Cover &lt;beds&gt;.");
  expect(html.indexOf("Not yet")).toBeLessThan(html.indexOf("Sow beets"));
  expect(html).toContain('<a href="/g/l/m/frost">Frost tonight, bed by bed</a>');
});

test("one's own jobs lie open and another's are folded; what is left out is said", () => {
  const html = page({
    sections: [
      { name: "Yours today", folded: false, jobs: [JOB], rest: "" },
      { name: "For Oda", folded: true, jobs: [JOB, JOB], rest: "" },
      { name: "Still waiting", folded: false, jobs: [JOB], rest: "3 more jobs can wait." },
    ],
  });
  expect(html).toContain("<h2>Yours today</h2>");
  expect(html).toContain('<details class="others"><summary>For Oda: 2</summary>');
  expect(html).toContain("3 more jobs can wait.");
});

test("done jobs stand below those that are open, tonight's low beside them, the days to come last", () => {
  const weeks = [[{ weekday: "Sun", date: "9 May", jobs: [] }]];
  const answered = [{ ...JOB, title: "Thin beets" }];
  const sections = [{ name: "", folded: false, jobs: [JOB], rest: "" }];
  const html = page({ sections, answered, tonight: "34 °F by the forecast.", weeks });
  const order = ["Sow beets", "Done today", "Thin beets", "34 °F", "The next seven days"];
  const places = order.map((each) => html.indexOf(each));
  expect(places).toEqual(places.toSorted((a, b) => a - b));
  expect(places).not.toContain(-1);
});

test("today's jobs are shown on the beds below what is said of them", () => {
  const beds = { src: "/g/l/m/beds.svg?for=jobs", names: ["Root <bed>", "Bags"], heightPx: 380 };
  const html = page({ beds, sections: [{ name: "", folded: false, jobs: [JOB], rest: "" }] });
  expect(html.indexOf("beds.svg")).toBeGreaterThan(html.indexOf("Sow beets"));
  expect(page({})).not.toContain("beds.svg");
});

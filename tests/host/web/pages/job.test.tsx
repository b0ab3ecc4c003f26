import { expect, test } from "vitest";
import { gonePage, jobPage } from "../../../../src/host/web/pages/job.tsx";

const FRAME = { garden: "Quarry Lane", base: "/g/l/m/", ways: [] };
const JOB = { title: "Thin beets", when: "Saturday 8 May", text: "Two fingers apart.", href: null };
const PART = {
  title: "<u>",
  now: "",
  window: "Any day from <u> to <i>.",
  why: ["<u>"],
  taps: null,
};
const TAPS = {
  task: "2027/beet/thin/1",
  said: "Done <u>.",
  taps: [{ words: "Undo <b>", says: "undo: done" }],
};
const NONE = { week: [], weekAfter: [], later: [] };

test("a task's title stands over its part only where there is another", () => {
  const one = jobPage(FRAME, { job: JOB, parts: [PART], moved: null, left: null, takenBack: [] });
  expect(one).not.toContain("<h2>");
  expect(one).toContain("Why then:\n&lt;u&gt;");
  const two = jobPage(FRAME, {
    job: JOB,
    parts: [PART, { ...PART, why: [] }],
    moved: null,
    left: null,
    takenBack: [],
  });
  expect(two.match(/<h2>/g)).toHaveLength(2);
});

test("each task has its own answers, as buttons that need no script", () => {
  const html = jobPage(FRAME, {
    job: JOB,
    parts: [{ ...PART, taps: TAPS }],
    moved: null,
    left: null,
    takenBack: [],
  });
  expect(html).toContain('<form method="post">');
  expect(html).toContain('<input type="hidden" name="task" value="2027/beet/thin/1"/>');
  expect(html).toContain(
    '<button type="submit" name="say" value="undo: done">Undo &lt;b&gt;</button>',
  );
  expect(html).toContain("Done &lt;u&gt;.");
  expect(
    jobPage(FRAME, { job: JOB, parts: [PART], moved: null, left: null, takenBack: [] }),
  ).not.toContain("<form");
});

test("what was said of a job alone stands once, where its own text begins with it", () => {
  const job = { ...JOB, text: "Done <u>.\nTwo fingers apart." };
  const shown = { job, parts: [{ ...PART, taps: TAPS }], moved: null, left: null, takenBack: [] };
  expect(jobPage(FRAME, shown).match(/Done &lt;u&gt;\./g)).toHaveLength(1);
  const two = { ...shown, job: JOB };
  expect(jobPage(FRAME, two).match(/Done &lt;u&gt;\./g)).toHaveLength(1);
});

test("what moved stands above the job; that nothing did is said too, and nothing where nobody answered", () => {
  const moved = ["Hill <potatoes>: 9 June, was 5 June (4 days later)"];
  const html = jobPage(FRAME, { job: JOB, parts: [PART], moved, left: null, takenBack: [] });
  expect(html).toContain("<li>Hill &lt;potatoes&gt;: 9 June");
  expect(html.indexOf("<li>")).toBeLessThan(html.indexOf("Two fingers"));
  expect(
    jobPage(FRAME, { job: JOB, parts: [PART], moved: [], left: null, takenBack: [] }),
  ).toContain("Nothing else moves.");
  expect(
    jobPage(FRAME, { job: JOB, parts: [PART], moved: null, left: null, takenBack: [] }),
  ).not.toContain("Written down");
});

test("jobs whose event is no more have their page still, each with its day", () => {
  const part = { ...PART, title: "Thin beets", now: "Now on Sunday 9 May." };
  const parts = [part, { ...PART, title: "Weed carrots" }];
  const html = jobPage(FRAME, { job: null, parts, moved: null, left: null, takenBack: [] });
  expect(html).toContain("<h1>These jobs have moved or are done</h1>");
  expect(html).toContain("<h2>Thin beets</h2>");
  expect(html).toContain("Now on Sunday 9 May.");
});

test("a single job keeps its own heading when its event is no more, as it is once it was answered", () => {
  const part = { ...PART, title: "Thin beets" };
  const html = jobPage(FRAME, { job: null, parts: [part], moved: [], left: null, takenBack: [] });
  expect(html).toContain("<h1>Thin beets</h1>");
  expect(html).not.toMatch(/<h2>|have moved/);
});

test("one that is off the list says so, and can be had back where it was left", () => {
  const html = gonePage(FRAME, { coming: NONE, left: TAPS, moved: null });
  expect(html).toContain("off the list");
  expect(html).toContain('value="undo: done"');
  expect(gonePage(FRAME, { coming: NONE, left: null, moved: null })).not.toContain("<form");
});

test("markup in a name is text", () => {
  const html = jobPage(
    { ...FRAME, garden: "<i>" },
    { job: { ...JOB, title: "<script>" }, parts: [PART], moved: null, left: null, takenBack: [] },
  );
  expect(html).toContain("<h1>&lt;script&gt;</h1>");
  expect(html).not.toMatch(/<script>|<i>|<u>/);
});

test("who took back what another had said is told", () => {
  const takenBack = ["On 8 May Oda <x> took back what Imre had said: done."];
  const html = jobPage(FRAME, { job: JOB, parts: [PART], moved: null, left: null, takenBack });
  expect(html).toContain("<p>On 8 May Oda &lt;x&gt; took back what Imre had said: done.</p>");
});

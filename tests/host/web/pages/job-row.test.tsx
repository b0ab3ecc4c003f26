import { expect, test } from "vitest";
import {
  type AnsweredJob,
  JobRows,
  type JobShown,
  type OpenJob,
} from "../../../../src/host/web/pages/job-row.tsx";

const DONE = { words: "Sown <today>", says: "done" };
const LEAVE = { words: "Leave it", says: "left this year" };
const OPEN: OpenJob = {
  ...{ kind: "open", at: "job-a", title: "Sow <beets>", facts: ["Root bed", "20 min"] },
  ...{
    keeps: { words: "till Sunday", days: 5 },
    text: "Deep.\nWater.",
    why: [],
    takenBack: "",
    moved: null,
    href: "/g/on/a",
  },
  ...{ taps: { tasks: ["a"], done: DONE, others: [LEAVE] }, each: [] },
};
const ANSWERED: AnsweredJob = {
  ...{ kind: "answered", at: "job-b", title: "Thin beets", said: "Done 8 May, Oda.", done: true },
  undo: { tasks: ["b", "c"], done: { words: "Undo", says: "undo: done" }, others: [] },
  moved: null,
};

const rows = (jobs: readonly JobShown[], open = false) =>
  String(<JobRows jobs={jobs} to="/g/said" open={open} />);

test("a job is a line that unfolds, and its wanted answer stands outside of the fold, filled", () => {
  const html = rows([OPEN]);
  expect(html).toContain('<li id="job-a" class="job"><details><summary>');
  const outside = html.slice(html.indexOf("</details>"));
  expect(outside).toContain('name="task" value="a"');
  expect(outside).toMatch(/class="fill" name="say" value="done">Sown &lt;today&gt;<span/);
  expect(outside).not.toContain("left this year");
  expect(html.slice(0, html.indexOf("</details>"))).toContain('value="left this year"');
  expect(html).toContain("Deep.\nWater.");
});

test("each button says to which job it answers, for those who hear it", () => {
  expect(rows([OPEN]).match(/<span class="unseen">: Sow &lt;beets&gt;<\/span>/g)).toHaveLength(3);
});

test("a bar has a notch for each day that a job keeps, up to two weeks, and the words beside it", () => {
  const left = (days: number) =>
    /class="left" d="M0 5h(\d+)"/.exec(rows([{ ...OPEN, keeps: { words: "w", days } }]))?.[1];
  expect([1, 5, 14, 300].map(left)).toEqual(["6", "30", "84", "84"]);
  expect(rows([OPEN])).toContain("</svg> till Sunday");
  expect(rows([{ ...OPEN, keeps: null }])).not.toContain("<svg");
});

test("several alike are answered at once, or one by one in the fold", () => {
  const taps = { tasks: ["a", "b"], done: DONE, others: [] };
  const each = ["a", "b"].map((task) => ({
    title: task,
    text: `How ${task}.`,
    taps: { ...taps, tasks: [task] },
  }));
  const html = rows([{ ...OPEN, taps, each }]);
  const fold = html.slice(0, html.indexOf("</details>"));
  expect(fold.match(/<form /g)).toHaveLength(2);
  expect(fold).toContain('<p class="text">How b.</p>');
  expect(fold).not.toContain('class="fill"');
  expect(html.slice(html.indexOf("</details>")).match(/name="task"/g)).toHaveLength(2);
});

test("what was answered is struck where it is done, and taken back at the same place", () => {
  const html = rows([ANSWERED]);
  expect(html).toContain('<s class="what">Thin beets</s>');
  expect(html).toContain("Done 8 May, Oda.");
  expect(html).toMatch(/class="at-side".*value="b".*value="c".*value="undo: done">Undo</s);
  expect(html).not.toContain('class="fill"');
  expect(rows([{ ...ANSWERED, done: false }])).not.toContain("<s ");
});

test("what moved with an answer is counted and unfolds; what is still to come is said", () => {
  const html = rows([{ ...ANSWERED, moved: ["Hill <b>: 9 June", "Weed: 1 May"] }]);
  expect(html).toContain("<summary>2 jobs moved with it</summary>");
  expect(html).toContain("<li>Hill &lt;b&gt;: 9 June</li>");
  expect(rows([{ ...ANSWERED, moved: "soon" }])).toContain("in a moment");
  expect(rows([{ ...ANSWERED, moved: [] }])).not.toContain("moved");
});

test("a job that cannot be answered has no form, and one that is alone is unfolded", () => {
  expect(rows([{ ...OPEN, taps: null, href: null }])).not.toMatch(/<form|<a /);
  expect(rows([OPEN], true)).toContain('<details open="">');
});

test("needs no script, and forty jobs are under 50 KB", () => {
  const html = rows(Array.from({ length: 40 }, () => OPEN));
  expect(html).not.toMatch(/<script| on\w+="/);
  expect(html.length).toBeLessThan(50_000);
});

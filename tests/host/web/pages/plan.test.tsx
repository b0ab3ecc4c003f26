import { expect, test } from "vitest";
import type { Problem } from "../../../../src/base/problems/problem.ts";
import { type PlanPageProps, planPage, versionPage } from "../../../../src/host/web/pages/plan.tsx";

const FRAME = { garden: "Quarry Lane", base: "/g/l/m/", ways: [] };
const TEXT = "garden: Quarry Lane\nyear: 2027\ncrops:\n  - carot </textarea><b>\n";
const SHOWN: PlanPageProps = {
  year: 2027,
  years: [2027, 2028],
  base: 3,
  text: TEXT,
  word: { kind: "nothing" },
  problems: [],
  versions: [],
  beds: true,
};
const at = (line: number, over: Partial<Problem> = {}): Problem => ({
  code: "unknown-crop",
  weight: "problem",
  at: { file: "plan", line, column: 5 },
  is: "There is no crop carot",
  shouldBe: "Did you mean carrot",
  ...over,
});

test("the text can be changed from the version it is, and nothing in it is markup", () => {
  const html = planPage(FRAME, SHOWN);
  expect(html).toContain('<input type="hidden" name="base" value="3"/>');
  expect(html).toContain("carot &lt;/textarea&gt;&lt;b&gt;");
  expect(html.match(/<\/textarea>/g)).toHaveLength(1);
  expect(html).toContain('<a href="/g/l/m/plan/2028">2028</a>');
});

test("the first line's end is added, since readers leave one out", () => {
  expect(planPage(FRAME, { ...SHOWN, text: "\n\ngarden: x" })).toContain(
    ">\n\n\ngarden: x</textarea>",
  );
});

test("what is wrong stands beside its line, a line once, in the lines' order", () => {
  const doubt = at(2, { weight: "doubt", is: "That year is over", shouldBe: "Look again" });
  const html = planPage(FRAME, { ...SHOWN, problems: [at(4), doubt, at(4, { is: "Too wide" })] });
  expect(html.match(/<dt>/g)).toHaveLength(2);
  expect(html.indexOf("year: 2027")).toBeLessThan(html.indexOf("carot &lt;"));
  expect(html).toContain("There is no crop carot. Did you mean carrot?");
  expect(html).toContain("Doubtful: That year is over. Look again.");
  expect(html).toContain("What has to be put right");
  expect(planPage(FRAME, { ...SHOWN, problems: [doubt] })).toContain("Worth a second look");
});

test("the pictures of the year stand beside the text, that of the beds where there are any", () => {
  const pictures = (html: string) =>
    [...html.matchAll(/<img src="([^"]+)" data-src="([^"]+)" alt="[^"]+"/g)].map(
      ([, src, again]) => {
        expect(again).toBe(src);
        return src;
      },
    );
  const base = "/g/l/m/plan/2027/";
  expect(pictures(planPage(FRAME, SHOWN))).toEqual([`${base}season.svg`, `${base}beds.svg`]);
  expect(pictures(planPage(FRAME, { ...SHOWN, beds: false }))).toEqual([`${base}season.svg`]);
});

test("the page says whether its text is another than the saved one", () => {
  const html = (word: PlanPageProps["word"]) => planPage(FRAME, { ...SHOWN, word });
  expect(html({ kind: "nothing" })).not.toContain("data-unsaved");
  expect(html({ kind: "saved", version: 3 })).not.toContain("data-unsaved");
  expect(html({ kind: "not saved", why: "No." })).toContain('data-unsaved="yes"');
  expect(html({ kind: "not begun", from: 2026 })).toContain('data-unsaved="yes"');
});

test("what somebody else saved meanwhile is shown line by line, and whether both stand below", () => {
  const differences = [
    { side: "removed", line: "old" },
    { side: "added", line: "new" },
  ] as const;
  const word = { kind: "another", version: 4, both: true, differences } as const;
  const html = planPage(FRAME, { ...SHOWN, word });
  expect(html).toContain("somebody saved version 4");
  expect(html).toContain("was  old\nnow  new");
  expect(html).toContain("together");
  expect(planPage(FRAME, { ...SHOWN, word: { ...word, both: false } })).toContain("the same lines");
});

test("earlier versions lead to their pages, where each can be put in force again", () => {
  const versions = [
    { version: 3, when: "8 May 2027" },
    { version: 2, when: "1 May 2027" },
  ];
  const html = planPage(FRAME, { ...SHOWN, versions });
  expect(html).toContain('<a href="/g/l/m/plan/2027/2">');
  expect(html).not.toContain("plan/2027/3");
  const shown = { year: 2027, version: 2, base: 3, text: TEXT, differences: [] };
  const old = versionPage(FRAME, shown);
  expect(old).toContain('action="/g/l/m/plan/2027"');
  expect(old).toContain('name="base" value="3"');
  expect(old).toContain("Nothing.");
  // It is looked at, and nothing on the page can be written in.
  expect(old).not.toContain("<textarea");
  expect(old).toContain('type="hidden" name="text" value="garden: Quarry Lane\nyear: 2027');
});

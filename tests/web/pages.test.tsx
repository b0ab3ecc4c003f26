import { describe, expect, test } from "vitest";
import {
  frontPage,
  frostPage,
  gonePage,
  type Home,
  homePage,
  jobPage,
  picturesPage,
} from "../../src/web/pages.tsx";

const JOB = {
  title: "Thin beets",
  when: "Saturday 8 May",
  text: "Two fingers apart.\nGreens are for the kitchen.",
  href: "/g/l/m/on/2027/beet/thin/1",
};

const BACK = { name: "Quarry Lane", href: "/g/l/m/" };

const HOME: Home = {
  garden: "Quarry Lane",
  first: [{ name: "Imre", address: "https://garden.example/g/l/m/sessions.ics" }],
  more: [{ name: "All tasks", address: "http://127.0.0.1:8787/g/l/m/tasks.ics" }],
  links: [],
  coming: { soon: true, jobs: [JOB] },
  looks: true,
};

describe("every page", () => {
  const pages = [
    frontPage(),
    homePage(HOME),
    jobPage(BACK, JOB, []),
    gonePage(BACK, { soon: false, jobs: [] }),
  ];

  test.each(pages)("is a whole document in its language, without script or form", (html) => {
    expect(html).toMatch(/^<!doctype html><html lang="en">/);
    expect(html.match(/<h1>/g)).toHaveLength(1);
    expect(html).toContain('name="viewport"');
    expect(html).not.toMatch(/<script|<form|<button|<img|style="| on\w+=/);
  });
});

test("a subscription is one tap by webcal and an address to copy, secured or not", () => {
  const html = homePage(HOME);
  expect(html).toContain('href="webcal://garden.example/g/l/m/sessions.ics"');
  expect(html).toContain("<code>https://garden.example/g/l/m/sessions.ics</code>");
  expect(html).toContain('href="webcal://127.0.0.1:8787/g/l/m/tasks.ics"');
});

test("links to hand on are shown to whom they are given, and else not mentioned", () => {
  expect(homePage(HOME)).not.toContain("Links to hand on");
  const links = [{ name: "Oda's own page", href: "/g/helper-oda-1/m/" }];
  expect(homePage({ ...HOME, links })).toContain('<a href="/g/helper-oda-1/m/">');
});

test("a job's lines stay lines, and its title leads to its page where it has one", () => {
  expect(homePage(HOME)).toContain(`<a href="${JOB.href}">Thin beets</a>`);
  expect(homePage(HOME)).toContain("apart.\nGreens");
  expect(homePage({ ...HOME, coming: { soon: true, jobs: [{ ...JOB, href: null }] } })).toContain(
    "<h3>Thin beets</h3>",
  );
});

const PART = { title: "<u>", window: "Any day from <u> to <i>.", why: ["<u>"], taps: null };

test("a task's title stands over its part only where there is another", () => {
  const one = jobPage(BACK, JOB, [PART]);
  expect(one).not.toContain("<h2>");
  expect(one).toContain("Why then:\n&lt;u&gt;");
  expect(jobPage(BACK, JOB, [PART, { ...PART, why: [] }]).match(/<h2>/g)).toHaveLength(2);
});

test("each task has its own answers, as buttons that need no script", () => {
  const taps = {
    task: "2027/beet/thin/1",
    said: "Done <u>.",
    taps: [{ words: "Undo <b>", says: "undo: done" }],
  };
  const html = jobPage(BACK, JOB, [{ ...PART, taps }]);
  expect(html).toContain('<form method="post">');
  expect(html).toContain('<input type="hidden" name="task" value="2027/beet/thin/1"/>');
  expect(html).toContain(
    '<button type="submit" name="say" value="undo: done">Undo &lt;b&gt;</button>',
  );
  expect(html).toContain("Done &lt;u&gt;.");
  expect(jobPage(BACK, JOB, [PART])).not.toContain("<form");
});

test("frost tonight asks for a low, says what is none, and tells the night section by section", () => {
  const asked = frostPage(BACK, { unit: "°F", said: "", wrong: false, told: null });
  expect(asked).toContain('<label for="low">');
  const wrong = frostPage(BACK, { unit: "°F", said: '"><b>', wrong: true, told: null });
  expect(wrong).toContain("That is no temperature.");
  expect(wrong).not.toContain("<b>");
  const told = { head: ["29 °F"], sections: [{ name: "Bags", lines: ["Cover."] }], foot: [] };
  expect(frostPage(BACK, { unit: "°F", said: "29", wrong: false, told })).toContain(
    "<h2>Bags</h2>",
  );
});

test("the year's pictures stand one under another, each with its words", () => {
  const html = picturesPage(BACK, ["season.svg", "soil.svg"]);
  expect(html.match(/<img src="[a-z]+\.svg" alt="[^"]{10,}"/g)).toHaveLength(2);
});

test("what there is to look at is the household's", () => {
  expect(homePage(HOME)).toContain('<a href="frost">');
  expect(homePage({ ...HOME, looks: false })).not.toContain('<a href="frost">');
});

test("markup in a name is text", () => {
  const html = jobPage({ name: "<i>", href: "/" }, { ...JOB, title: "<script>" }, [PART]);
  expect(html).toContain("<h1>&lt;script&gt;</h1>");
  expect(html).not.toMatch(/<script|<i>|<u>/);
});

test("an empty fortnight says so, and what comes after it", () => {
  const html = homePage({ ...HOME, coming: { soon: false, jobs: [JOB] } });
  expect(html).toContain("Nothing is due in the next two weeks.");
  expect(html).toContain("After that:");
  expect(homePage({ ...HOME, coming: { soon: false, jobs: [] } })).not.toContain("After that:");
});

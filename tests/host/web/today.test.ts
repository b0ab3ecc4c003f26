import { beforeAll, describe, expect, test } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";
import { ask, linkTo, PLAN, publish, type Shell, shellWith } from "./garden.ts";

/** Saturday 8 May 2027, eight in the morning in the garden's zone: Imre gardens from nine. */
const SATURDAY = Date.UTC(2027, 4, 8, 14);
const MINUTE_MS = 60_000;

const HEAD = `garden: Quarry Lane
year: 2027
measures: inches and °F
place: { clock: America/Denver, latitude: 46.6, last frost: about 6 May, first frost: about 2 Oct }
`;
const PEOPLE = `people:
  Imre: { gardens: Sat 9-12, home: every day }
  Oda: { gardens: Sun 10-12, home: every day }
`;
/** Sowings whose day is the gardener's own, so that no other reckoning moves them. */
const BEDS = `beds:
  Root bed:
    is: 12 x 4 ft
    crops:
      - carrot: 3 rows, sow 8 May
      - parsnip: 1 row, sow 8 May
  Pea bed:
    is: 8 x 4 ft
    crops:
      - pea: 2 rows, sow 8 May
  Leaf bed:
    is: 8 x 4 ft
    cover: insect net
    crops:
      - chard: 2 rows, sow 8 May
`;
const ALONE = HEAD + BEDS;
const QUARRY = HEAD + PEOPLE + BEDS;

const at = (now: number): Shell => shellWith({ engine, now: () => now });

const imre = (garden: string) => linkTo(garden, "helper", "imre");
const oda = (garden: string) => linkTo(garden, "helper", "oda");

async function pageOf(path: string, now = SATURDAY): Promise<string> {
  const answer = await ask(at(now), path);
  expect([path, answer.status]).toEqual([path, 200]);
  return answer.text();
}

/** Answers one of the first jobs that offer the answer, as its form does; gives what its form holds. */
async function tap(link: string, words: string, now = SATURDAY): Promise<URLSearchParams> {
  const html = await pageOf(link, now);
  const forms = [...html.matchAll(/<form method="post" action="[^"]*said".*?<\/form>/gs)];
  const texts = forms.map(([text]) => text).filter((text) => text.includes(`>${words}<`));
  // What answers all of a job stands at its side, what answers one of several in its fold.
  const form = texts.find((text) => text.includes('class="at-side"')) ?? texts.at(-1) ?? "";
  const body = new URLSearchParams();
  for (const [, task = ""] of form.matchAll(/name="task" value="([^"]*)"/g))
    body.append("task", task);
  const says = new RegExp(`name="say" value="([^"]*)">${words}<`).exec(form)?.[1] ?? "";
  body.append("say", says);
  const headers = { "content-type": "application/x-www-form-urlencoded" };
  const answer = await ask(at(now), `${link}said`, { method: "POST", body: String(body), headers });
  expect(answer.status).toBe(303);
  return body;
}

/** A page's list items of jobs by their first words, each with whether it is answered. */
function jobsOn(html: string): readonly string[] {
  const jobs = [
    ...html.matchAll(
      /<li id="job-[^"]*" class="job( answered)?">.*?<(?:span|s) class="what">([^<]*)/gs,
    ),
  ];
  return jobs.map(([, answered = "", title = ""]) => `${title}${answered}`);
}

beforeAll(async () => {
  await publish(at(SATURDAY), "lane", QUARRY);
});

describe("today", () => {
  test("begins with the day, what it comes to and what to take, and one's own jobs", async () => {
    const html = await pageOf(await imre("lane"));
    expect(html).toContain("<p>Saturday 8 May</p>");
    expect(html).toMatch(/<p class="lead">\d+ jobs?, about [^<]*, from 09:00 to /);
    expect(html).toMatch(/<p class="faint">Take: /);
    expect(html.indexOf("Yours today")).toBeLessThan(html.indexOf("The next seven days"));
    expect(jobsOn(html).length).toBeGreaterThan(0);
  });

  test("folds the other's jobs behind their number, and shows everybody's under a name to the whole household", async () => {
    const html = await pageOf(await oda("lane"));
    expect(html).toMatch(/<details class="others"><summary>For Imre: \d+<\/summary>/);
    expect(html).toContain("Nothing to do today.");
    const household = await pageOf(await linkTo("lane", "helper"));
    expect(household).toContain("<h2>For Imre</h2>");
    expect(household).not.toContain('class="others"');
  });

  test("needs no names where nobody is named", async () => {
    await publish(at(SATURDAY), "alone", ALONE);
    const html = await pageOf(await linkTo("alone", "helper"));
    expect(html).not.toMatch(/<h2>For |Yours/);
  });

  test("says of each job where, how long and till when it keeps, and unfolds how", async () => {
    const html = await pageOf(await imre("lane"));
    const [job = ""] =
      /<li id="job-2027-pea-sow-outdoors-1" class="job">.*?<\/li>/s.exec(html) ?? [];
    expect(job).toMatch(/<details><summary>/);
    expect(job).toMatch(/\d+\u00a0min/);
    expect(job).toMatch(/<svg class="keeps"[^>]*aria-hidden="true">.*(?:till|today only)/s);
    expect(job).toContain('<p class="text">');
    expect(job.match(/class="fill"/g)).toHaveLength(1);
  });

  test("leads into a calendar: a helper to their own, an owner to the links to hand on", async () => {
    const helper = await imre("lane");
    expect(await pageOf(helper)).toContain(`href="${helper}calendar"`);
    const owner = await linkTo("lane", "owner");
    expect(await pageOf(owner)).toContain(`href="${owner}links"`);
  });

  test("is under 50 KB with its style, and needs no script", async () => {
    const html = await pageOf(await imre("lane"));
    const css = await pageOf("/paper.css");
    expect(html.length + css.length).toBeLessThan(50_000);
    expect(html).not.toMatch(/<script(?! src="\/page\.js")| on\w+="/);
  });
});

describe("a tap", () => {
  test("is answered in place: the job is struck, says by whom, and offers to take it back there", async () => {
    await publish(at(SATURDAY), "tapped", QUARRY);
    const link = await imre("tapped");
    const before = jobsOn(await pageOf(link));
    const body = await tap(link, "Sown today");
    const html = await pageOf(link, SATURDAY + MINUTE_MS);
    expect(jobsOn(html)).toEqual(
      before.map((title, i) =>
        i === before.findIndex((each) => /^Sow/.test(each)) ? `${title} answered` : title,
      ),
    );
    expect(html).toMatch(/<s class="what">Sow [^<]*<\/s><span class="facts">Done 8 May, Imre\./);
    const place = `job-${(body.get("task") ?? "").replaceAll("/", "-")}`;
    expect(html).toContain(`<li id="${place}" class="job answered">`);
    await tap(link, "Undo", SATURDAY + MINUTE_MS);
    expect(jobsOn(await pageOf(link, SATURDAY + MINUTE_MS))).toEqual(before);
  });

  test.each(["Leave it this year", "Too cold or wet yet", "Sown today"])(
    "of any kind can be taken back where it was tapped: %s",
    async (words) => {
      const garden = `back-${words.length}`;
      await publish(at(SATURDAY), garden, QUARRY);
      const link = await imre(garden);
      const before = jobsOn(await pageOf(link));
      await tap(link, words);
      const answered = jobsOn(await pageOf(link));
      expect(answered.filter((each) => each.endsWith(" answered"))).toHaveLength(1);
      const titles = answered.map((each) => each.replace(" answered", ""));
      expect(titles.toSorted()).toEqual(before.toSorted());
      await tap(link, "Undo");
      expect(jobsOn(await pageOf(link)).toSorted()).toEqual(before.toSorted());
    },
  );

  test("on a job of next month, once it is taken back, is none of today's", async () => {
    await publish(at(SATURDAY), "ahead", QUARRY);
    const link = await imre("ahead");
    const before = jobsOn(await pageOf(link));
    const say = async (answer: string) => {
      const headers = { "content-type": "application/x-www-form-urlencoded" };
      const body = String(new URLSearchParams({ task: "2027/carrot/harvest/1", say: answer }));
      const answered = await ask(at(SATURDAY), `${link}said`, { method: "POST", body, headers });
      expect(answered.status).toBe(303);
    };
    await say("done");
    expect(jobsOn(await pageOf(link))).toHaveLength(before.length + 1);
    await say("undo: done");
    expect(jobsOn(await pageOf(link, SATURDAY + MINUTE_MS))).toEqual(before);
  });

  test("some time later stands below, among what is done today, and no more tomorrow", async () => {
    await publish(at(SATURDAY), "later", QUARRY);
    const link = await imre("later");
    await tap(link, "Sown today");
    const later = await pageOf(link, SATURDAY + 20 * MINUTE_MS);
    expect(later.indexOf("<h2>Done today</h2>")).toBeLessThan(
      later.indexOf('class="job answered"'),
    );
    expect(later).toMatch(/Done today<\/h2>.*>Undo</s);
    expect(await pageOf(link, SATURDAY + 86_400_000)).not.toContain("Done today</h2>");
  });

  test("stands in the diary by its job's title and by whom, and so does its undoing", async () => {
    await publish(at(SATURDAY), "noted", QUARRY);
    const link = await imre("noted");
    await tap(link, "Sown today");
    await tap(link, "Undo");
    const diary = await pageOf(`${link}diary`);
    const noted = '<p>Sow carrots, Root bed<span class="faint"> (Imre)</span></p>';
    expect(diary.split(noted)).toHaveLength(3);
    expect(diary).toMatch(/small">taken back: done/);
  });

  test("on the last job says that all is done", async () => {
    await publish(at(SATURDAY), "all", QUARRY);
    const link = await imre("all");
    for (const _ of jobsOn(await pageOf(link))) {
      const [, words = ""] =
        /class="fill" name="say" value="done">([^<]*)</.exec(await pageOf(link)) ?? [];
      if (words !== "") await tap(link, words);
    }
    const html = await pageOf(link);
    expect(html).toContain('<p class="lead">All done for today.</p>');
    expect(jobsOn(html).every((each) => each.endsWith(" answered"))).toBe(true);
  });
});

describe("a household that is asked what was done", () => {
  test("sees what waits, apart from today's and no more than a page has room for", async () => {
    const open = QUARRY.replace("year: 2027", "year: 2027\nassume: open");
    await publish(at(SATURDAY), "open", open);
    const summer = Date.UTC(2027, 6, 3, 14);
    const link = await imre("open");
    // The year as it is in summer is built behind the first answer.
    await pageOf(link, summer);
    const html = await pageOf(link, summer);
    const waiting = html.slice(
      html.indexOf("<h2>Still waiting</h2>"),
      html.indexOf("The next seven days"),
    );
    expect(jobsOn(waiting).length).toBeGreaterThan(3);
    expect(jobsOn(waiting).length).toBeLessThanOrEqual(12);
    expect(waiting).toContain("still open");
    expect(html.length).toBeLessThan(50_000);
  });
});

describe("the garden's own page", () => {
  const shell = shellWith();
  const textOf = async (path: string) => (await ask(shell, path)).text();

  test("shows whatever a plan calls things as text", async () => {
    const hostile = PLAN.replace("name Quarry Lane", "name <script>alert(1)</script>")
      .replace("bed South bed", `bed "><img src=x onerror=alert(1)>`)
      .replace("Thin beets", "<b onclick='x'>Thin</b> & beets");
    await publish(shell, "hostile", hostile);
    const html = await textOf(await linkTo("hostile", "owner"));
    expect(html.match(/<script[^>]*>/g)).toEqual([
      expect.stringMatching(/^<script src="\/page\.js" data-base="[^"]+" defer/),
    ]);
    expect(html).not.toMatch(/<img|<b /);
    expect(html).toContain("&lt;script&gt;");
    expect(html).toContain("&lt;b onclick=");
  });

  test("shows a reader no people, no hours and no page to open, and nobody another link than theirs", async () => {
    await publish(shell, "read");
    const html = await textOf(await linkTo("read", "reader"));
    expect(html).toContain("Thin beets");
    expect(html).not.toMatch(/imre|\boda|household|09:00|\/on\/|<button/i);
    for (const [role, person] of [
      ["helper", "imre"],
      ["owner", null],
      ["reader", null],
    ] as const) {
      const link = await linkTo("read", role, person);
      const shown = (await textOf(link)).replaceAll(link, "");
      expect(shown).not.toMatch(/(?:owner|helper|reader|admin)-/);
    }
  });

  test("is kept by nobody on the way and runs no script but our own files", async () => {
    const { headers } = await ask(shell, await linkTo("read", "owner"));
    expect(headers.get("cache-control")).toBe("private, no-cache");
    expect(headers.get("referrer-policy")).toBe("no-referrer");
    expect(headers.get("x-robots-tag")).toBe("noindex");
    expect(headers.get("content-security-policy")).toMatch(
      /^default-src 'none'; style-src 'self'; img-src 'self'; script-src 'self';(?!.*unsafe)/,
    );
  });
});

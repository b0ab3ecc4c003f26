import { beforeAll, describe, expect, test } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";
import { savedPlan } from "../../../src/host/store/plans.ts";
import { typed } from "./forms.ts";
import { ask, inStore, linkTo, ORIGIN, type Shell, shellWith } from "./garden.ts";

let shell: Shell;

beforeAll(async () => {
  shell = shellWith({ engine });
});

const send = (link: string, form: URLSearchParams, rest = "") =>
  ask(shell, `${link}${rest}`, {
    method: "POST",
    body: form.toString(),
    headers: { "content-type": "application/x-www-form-urlencoded" },
  });

const decoded = (html: string) =>
  html
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&");

/** The text in a page's field, as a browser sends it. */
const textIn = (html: string) =>
  decoded(/<textarea id="text"[^>]*>\n([\s\S]*?)<\/textarea>/.exec(html)?.[1] ?? "").replaceAll(
    "\n",
    "\r\n",
  );

/** What a page would send if nothing on it were changed. */
function sentBy(html: string): URLSearchParams {
  const form = new URLSearchParams();
  for (const [tag] of html.matchAll(/<input[^>]*>/g)) {
    const at = (name: string) => decoded(new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1] ?? "");
    const ticks = ["checkbox", "radio"].includes(at("type"));
    if (!ticks || / checked/.test(tag)) form.append(at("name"), at("value"));
  }
  for (const [, name = "", options = ""] of html.matchAll(
    /<select id="([^"]*)"[^>]*>([\s\S]*?)<\/select>/g,
  )) {
    const chosen =
      /<option value="([^"]*)" selected/.exec(options) ?? /<option value="([^"]*)"/.exec(options);
    form.append(name, decoded(chosen?.[1] ?? ""));
  }
  if (html.includes('<textarea id="text"')) form.append("text", textIn(html));
  return form;
}

/** What a page sends with some fields filled in and a button pressed. */
function filledIn(html: string, step: string, over: Readonly<Record<string, string>> = {}) {
  const form = sentBy(html);
  for (const [name, said] of Object.entries(over)) form.set(name, said);
  form.set("step", step);
  return form;
}

const titleOf = (html: string) => /<h1>([^<]*)<\/h1>/.exec(html)?.[1] ?? "";

describe("an invitation", () => {
  test("leads page by page to a garden and its links", async () => {
    const link = await linkTo("k7dq2mxw", "invitation");
    let html = await (await ask(shell, link)).text();
    const next = async (over: Readonly<Record<string, string>> = {}) => {
      const answer = await send(link, filledIn(html, "next", over));
      html = await answer.text();
      expect(html.length).toBeLessThan(50_000);
      return titleOf(html);
    };
    expect(titleOf(html)).toBe("A new garden");
    expect(await next({ garden: "Brook <End>", clock: "Europe/Oslo" })).toBe(
      "When does it freeze?",
    );
    expect(await next({ lastFrost: "about 20 May", firstFrost: "about 20 Sep" })).toBe(
      "Who gardens?",
    );
    expect(await next({ "people.0.name": "Ada" })).toBe("The beds");
    expect(
      await next({ "beds.0.name": "South bed", "beds.0.length": "4", "beds.0.width": "1.2" }),
    ).toBe("What grows there");
    expect(await next({ crop: "carrot" })).toBe("How much of each");
    expect(await next({ "crops.0.amount": "3" })).toBe("Look it over");
    expect(html).toContain("carrot: 3 rows, South bed");
    expect(html).toMatch(/A month of it: \w+ 20\d\d/);
    expect(await next()).toBe("Brook &lt;End&gt; is ready");
    expect(html).toContain(`<code>${ORIGIN}${await linkTo("k7dq2mxw", "owner")}</code>`);
    expect((await ask(shell, await linkTo("k7dq2mxw", "owner"))).status).toBe(200);
  });

  test("that made its garden opens nothing more", async () => {
    const link = await linkTo("k7dq2mxw", "invitation");
    expect((await ask(shell, link)).status).toBe(404);
    expect((await send(link, typed({ at: "garden", step: "next" }))).status).toBe(404);
    expect(
      (await send(link, typed({ at: "text", step: "save-text", base: "0", text: "x" }))).status,
    ).toBe(404);
    expect((await send(link, typed({ base: "0", text: "x" }), "check")).status).toBe(404);
    expect((await inStore("k7dq2mxw", (sql) => savedPlan(sql, 2027)))?.summary.name).toBe(
      "Brook <End>",
    );
  });

  test("goes back page by page, and forth again, and nothing that was typed is lost", async () => {
    const link = await linkTo("another", "invitation");
    let html = await (await send(link, typed({ at: "amounts", step: "next" }))).text();
    const titles = [];
    for (let pages = 0; pages < 6; pages++) {
      html = await (await send(link, filledIn(html, "back"))).text();
      titles.push(titleOf(html));
    }
    expect(titles.at(-1)).toBe("A new garden");
    expect(new Set(titles).size).toBe(6);
    for (let pages = 0; pages < 6; pages++)
      html = await (await send(link, filledIn(html, "next"))).text();
    expect(titleOf(html)).toBe("Look it over");
    const sent = Object.fromEntries(sentBy(html));
    for (const [name, said] of typed()) expect(sent[name], name).toBe(said);
  });

  test("leads back to the overview from whatever is changed there", async () => {
    const link = await linkTo("another", "invitation");
    const look = await (await send(link, typed({ at: "amounts", step: "next" }))).text();
    const frost = await (await send(link, filledIn(look, "frost"))).text();
    expect(titleOf(frost)).toBe("When does it freeze?");
    const changed = await (
      await send(link, filledIn(frost, "look", { lastFrost: "about 1 June" }))
    ).text();
    expect(titleOf(changed)).toBe("Look it over");
    expect(changed).toContain("usual 1 June");
    expect(await (await send(link, typed({ at: "garden", step: "next" }))).text()).not.toContain(
      "Back to the overview",
    );
  });

  test("tells what is wrong at its field and above the page, keeps it as it was typed, and goes no further", async () => {
    const link = await linkTo("another", "invitation");
    const answer = await send(link, typed({ at: "frost", step: "next", lastFrost: "mid May" }));
    expect(answer.status).toBe(422);
    const html = await answer.text();
    expect(html).toContain('value="mid May"');
    expect(html).toMatch(/role="alert"[\s\S]*<a href="#lastFrost">mid May is not a day/);
    expect(html).toMatch(
      /<input id="lastFrost"[^>]*aria-describedby="lastFrost-hint lastFrost-wrong" aria-invalid="true"/,
    );
    const back = await send(link, typed({ at: "frost", step: "back", lastFrost: "mid May" }));
    expect([back.status, titleOf(await back.text())]).toEqual([200, "A new garden"]);
  });

  test("has more rows where they are wanted, and asks for no amounts where nothing grows", async () => {
    const link = await linkTo("another", "invitation");
    const rows = (html: string) => html.match(/id="beds\.\d+\.name"/g)?.length;
    const more = await (await send(link, typed({ at: "beds", step: "more" }))).text();
    expect(rows(more)).toBe(7);
    const beds = await (await send(link, typed({ at: "people", step: "next" }))).text();
    expect(rows(beds)).toBe(4);
    const bare = [...typed({ at: "crops", step: "next" })].filter(
      ([name]) => !name.startsWith("crops."),
    );
    const none = await send(link, new URLSearchParams(bare));
    expect([none.status, await none.text()]).toEqual([
      422,
      expect.stringContaining("Tick one crop at least."),
    ]);
  });

  test("supposes no clock on one's own machine, and knows the platform's by any name", async () => {
    const link = await linkTo("clocks", "invitation");
    const here = await ask(shell, `http://127.0.0.1${link}`, {
      cf: { timezone: "America/Chicago" },
    });
    expect(await here.text()).toMatch(/<option value="" selected="">Choose one/);
    const named = await ask(shell, link, { cf: { timezone: "Asia/Kolkata" } });
    expect(await named.text()).toMatch(/<option value="Asia\/Kolkata" selected/);
  });

  test("refuses what is longer than a form can be", async () => {
    const link = await linkTo("another", "invitation");
    expect((await send(link, typed({ "beds.200.name": "A" }))).status).toBe(413);
  });

  test("revoked by who keeps the deployment opens nothing", async () => {
    const close = { method: "DELETE" };
    const admin = await linkTo("third", "admin");
    expect((await ask(shell, `${admin}links/invitation-1`, close)).status).toBe(200);
    expect((await ask(shell, await linkTo("third", "invitation"))).status).toBe(404);
  });
});

describe("the plan as text", () => {
  const open = async (garden: string) => {
    const link = await linkTo(garden, "invitation");
    return { link, html: await (await send(link, typed({ at: "look", step: "text" }))).text() };
  };

  test("is checked while one writes, saved as it was written, and nothing of it is lost before", async () => {
    const { link, html } = await open("by-hand");
    const text = textIn(html).replaceAll("\r\n", "\n");
    expect(text).toContain("carrot: 3 rows");
    const check = await send(
      link,
      filledIn(html, "", { text: text.replace("year: 2027", "year: soon") }),
      "check",
    );
    expect(await check.json()).toContainEqual({
      line: 6,
      stops: true,
      says: expect.stringContaining("year"),
    });
    const wrong = text.replace("- carrot: 3 rows\n  ", "- carrot: 3 roes\n  ");
    const not = await send(link, filledIn(html, "save-text", { text: wrong }));
    expect(not.status).toBe(422);
    const again = await not.text();
    expect(textIn(again).replaceAll("\r\n", "\n")).toBe(wrong);
    const right = text.replace("- carrot: 3 rows\n  ", "- carrot: 4 rows\n  ");
    expect((await send(link, filledIn(again, "save-text", { text: right }))).status).toBe(200);
    expect((await inStore("by-hand", (sql) => savedPlan(sql, 2027)))?.text).toBe(right);
  });

  test("keeps what was changed in it when one goes back, changes an answer, and saves from there", async () => {
    const { link, html } = await open("both-ways");
    const text = textIn(html)
      .replaceAll("\r\n", "\n")
      .replace("- carrot: 3 rows\n  ", "- carrot: 3 rows, under a board\n  ");
    const look = await (await send(link, filledIn(html, "look", { text }))).text();
    expect(look).toContain("You have changed the plan's text".replaceAll("'", "&#39;"));
    const garden = await (await send(link, filledIn(look, "garden"))).text();
    const changed = await (await send(link, filledIn(garden, "look", { garden: "Brook" }))).text();
    expect((await send(link, filledIn(changed, "next"))).status).toBe(200);
    const saved = (await inStore("both-ways", (sql) => savedPlan(sql, 2027)))?.text;
    expect(saved).toContain("carrot: 3 rows, under a board");
    expect(saved).toContain("garden: Brook\n");
  });

  test("says so where both changed the same line", async () => {
    const { link, html } = await open("same-line");
    const text = textIn(html)
      .replaceAll("\r\n", "\n")
      .replace("garden: Brook <End>", "garden: Mill");
    const changed = filledIn(html, "text", { text, garden: "Lane" });
    changed.set("at", "look");
    const again = await (await send(link, changed)).text();
    expect(again).toContain("is not in it.");
    expect(textIn(again)).toContain("garden: Mill");
  });

  test("makes one garden even where two send their plans at once", async () => {
    const link = await linkTo("both", "invitation");
    const both = await Promise.all(
      ["2027", "2026"].map((year) => send(link, typed({ at: "look", step: "next", year }))),
    );
    expect(both.map(({ status }) => status).sort()).toEqual([200, 404]);
    const saved = await inStore("both", (sql) => [2026, 2027].map((year) => savedPlan(sql, year)));
    expect(saved.filter((one) => one !== null)).toHaveLength(1);
  });
});

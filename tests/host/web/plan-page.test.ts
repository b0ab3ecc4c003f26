import { beforeAll, describe, expect, test } from "vitest";
import { planVersions, savedPlan } from "../../../src/host/store/plans.ts";

import { problemsForScript } from "../../../src/host/web/plan-page.ts";
import { ask, inStore, linkTo, PLAN, publish, type Shell, shellWith } from "./garden.ts";

let shell: Shell;
let owner: string;

beforeAll(async () => {
  shell = shellWith();
  await publish(shell, "quarry-lane");
  owner = await linkTo("quarry-lane", "owner");
});

const save = (base: number, text: string, garden = owner, year = 2027) =>
  ask(shell, `${garden}plan/${year}`, {
    method: "POST",
    body: new URLSearchParams({ base: String(base), text }).toString(),
    headers: { "content-type": "application/x-www-form-urlencoded" },
  });

const inForce = () => inStore("quarry-lane", (sql) => savedPlan(sql, 2027));

describe("a plan changed on its page", () => {
  test("is saved over the version it started from, whatever its line ends, and that is said", async () => {
    const text = `${PLAN}doubt of mine\n`;
    const answer = await save(1, text.replaceAll("\n", "\r\n"));
    expect(answer.headers.get("location")).toBe(`${owner}plan/2027?saved=2`);
    expect(await inForce()).toMatchObject({ version: 2, text, published: null });
    const html = await (await ask(shell, `${owner}plan/2027?saved=2`)).text();
    expect(html).toContain("Saved as version 2.");
    expect(html).toContain("doubt of mine. something else.");
  });

  test("with something wrong in it is not saved, and nothing of it is lost", async () => {
    const answer = await save(2, `${PLAN}wrong <b>\n`);
    expect(answer.status).toBe(422);
    const html = await answer.text();
    expect(html).toContain('name="base" value="2"');
    expect(html).toContain("line 9</span> <code>wrong &lt;b&gt;</code>");
    expect((await inForce())?.version).toBe(2);
  });

  test("by two people at once to other lines stands together, to be saved by the second", async () => {
    const base = (await inForce())?.text ?? "";
    await save(2, base.replace("Thin beets", "Thin all beets"));
    const late = await save(2, base.replace("Cover squash", "Cover squashes"));
    expect(late.status).toBe(409);
    const html = await late.text();
    expect(html).toContain("somebody saved version 3");
    expect(html).toContain('name="base" value="3"');
    expect(html).toMatch(/Thin all beets[\s\S]*Cover squashes[\s\S]*<\/textarea>/);
    expect((await inForce())?.version).toBe(3);
  });

  test("by two people in the same line keeps what the second wrote, and shows what the first did", async () => {
    const base = (await inForce())?.text ?? "";
    await save(3, base.replace("Thin all beets", "Thin few beets"));
    const late = await save(3, base.replace("Thin all beets", "Thin no beets"));
    expect(late.status).toBe(409);
    const html = await late.text();
    expect(html).toContain("the same lines");
    expect(html).toMatch(/<pre>[\s\S]*Thin few beets[\s\S]*<\/pre>/);
    expect(html).toMatch(/<textarea[\s\S]*Thin no beets[\s\S]*<\/textarea>/);
  });

  test("keeps every version, and an old one is put in force again as a new one", async () => {
    const html = await (await ask(shell, `${owner}plan/2027/1`)).text();
    expect(html).toContain('name="base" value="4"');
    expect(html).toContain("Thin beets");
    await save(4, PLAN);
    expect(await inForce()).toMatchObject({ version: 5, text: PLAN });
    expect(await inStore("quarry-lane", (sql) => planVersions(sql, 2027))).toHaveLength(5);
    expect((await ask(shell, `${owner}plan/2027/9`)).status).toBe(404);
  });

  test("sent again after a lost answer is the version that it became", async () => {
    const again = await save(4, PLAN);
    expect(again.status).toBe(303);
    expect(await inForce()).toMatchObject({ version: 5 });
  });
});

describe("the next year's plan", () => {
  test("begins with this one's text, is not there till it is saved, and no year after it is", async () => {
    await publish(shell, "brook");
    const brook = await linkTo("brook", "owner");
    const html = await (await ask(shell, `${brook}plan/2028`)).text();
    expect(html).toContain('name="base" value="0"');
    expect(html).toContain("name Quarry Lane");
    expect(await inStore("brook", (sql) => savedPlan(sql, 2028))).toBeNull();
    expect((await ask(shell, `${brook}plan/2029`)).status).toBe(404);
    const text = PLAN.replace("year 2027", "year 2028");
    expect((await save(0, text, brook, 2028)).status).toBe(303);
    expect(await inStore("brook", (sql) => savedPlan(sql, 2028))).toMatchObject({
      version: 1,
      file: "plans/brook/2028.yaml",
    });
    expect((await ask(shell, `${brook}plan`)).headers.get("location")).toBe(`${brook}plan/2028`);
  });
});

test("a text is checked as it is written, and nothing of it is stored", async () => {
  const before = await inForce();
  const answer = await ask(shell, `${owner}plan/2027/check`, {
    method: "POST",
    body: new URLSearchParams({ base: "5", text: "wrong\ndoubt" }).toString(),
    headers: { "content-type": "application/x-www-form-urlencoded" },
  });
  expect(await answer.json()).toEqual([
    { line: 1, stops: true, says: "wrong. something else." },
    { line: 2, stops: false, says: "doubt. something else." },
  ]);
  expect(await inForce()).toEqual(before);
});

test("an offer of another word is a question", () => {
  const at = { file: "x", line: 1, column: 1 };
  const is = {
    code: "x",
    weight: "problem",
    at,
    is: "No carot",
    shouldBe: "Did you mean carrot",
  } as const;
  expect(problemsForScript([is])[0]?.says).toBe("No carot. Did you mean carrot?");
});

test.each([
  ["no text", "base=1"],
  ["no base", "text=x"],
  ["a base that is none", "base=x&text=y"],
])("a form with %s is refused", async (_, body) => {
  const headers = { "content-type": "application/x-www-form-urlencoded" };
  const answer = await ask(shell, `${owner}plan/2027`, { method: "POST", body, headers });
  expect(answer.status).toBe(413);
});

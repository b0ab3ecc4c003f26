import { beforeAll, describe, expect, test } from "vitest";
import { gardenRecord } from "../../../src/host/store/gardens.ts";
import { closeOtherOwners, showNextOwner } from "../../../src/host/store/owners.ts";
import { savedPlan } from "../../../src/host/store/plans.ts";

import { ask, inStore, linkTo, PLAN, publish, put, type Shell, shellWith } from "./garden.ts";

let shell: Shell;
let owner: string;
let admin: string;

beforeAll(async () => {
  shell = shellWith();
  owner = `${await linkTo("quarry-lane", "owner")}plans/2027`;
  admin = `${await linkTo("quarry-lane", "admin")}plans/2027`;
});

const sent = (text: string, more: Record<string, unknown> = {}) => ({
  text,
  file: "plans/quarry-lane/2027.yaml",
  ...more,
});

async function inForce() {
  return inStore("quarry-lane", (sql) => savedPlan(sql, 2027));
}

describe("publishing a garden's first plan", () => {
  test("is the deployment's to do: an owner's link makes no garden", async () => {
    expect((await ask(shell, owner, put(sent(PLAN), 0))).status).toBe(404);
    expect((await ask(shell, admin)).status).toBe(404);
    expect(await inForce()).toBeNull();
  });

  test("makes the garden and gives version 1", async () => {
    const answer = await ask(shell, admin, put(sent(PLAN, { published: "print" }), 0));
    expect(answer.status).toBe(201);
    expect(answer.headers.get("etag")).toBe('"1"');
    expect(await answer.json()).toEqual({ version: 1, doubts: [] });
    expect(await inForce()).toMatchObject({ published: "print", readBy: "code 1" });
  });

  test("a second time finds version 1 in force", async () => {
    const answer = await ask(shell, admin, put(sent("year 2027\n"), 0));
    expect(answer.status).toBe(412);
    expect(await answer.json()).toEqual({ version: 1, text: PLAN });
  });
});

test("a save that is refused makes no garden, so that its invitation still makes one", async () => {
  const path = `${await linkTo("unmade", "admin")}plans/2027`;
  expect((await ask(shell, path, put(sent(PLAN), 3))).status).toBe(412);
  expect(await inStore("unmade", gardenRecord)).toBeNull();
  expect((await ask(shell, await linkTo("unmade", "invitation"))).status).toBe(200);
});

describe("publishing over the owner's link", () => {
  test("gives the plan in force with its version as the tag", async () => {
    const answer = await ask(shell, owner);
    expect(answer.headers.get("etag")).toBe('"1"');
    expect(await answer.json()).toMatchObject({ version: 1, text: PLAN, published: "print" });
  });

  test("saves over the version it started from, with doubts told", async () => {
    const text = `${PLAN}doubt: two beds share a family\n`;
    const answer = await ask(shell, owner, put(sent(text), 1));
    expect(answer.status).toBe(200);
    expect(await answer.json()).toEqual({
      version: 2,
      doubts: ["plans/quarry-lane/2027.yaml:9:1: doubt: two beds share a family. something else."],
    });
    expect((await inForce())?.published).toBeNull();
  });

  test("from an older version changes nothing and gives the one in force", async () => {
    const answer = await ask(shell, owner, put(sent(PLAN), 1));
    expect(answer.status).toBe(412);
    expect(answer.headers.get("etag")).toBe('"2"');
    expect(await answer.json()).toMatchObject({ version: 2 });
  });

  test("with problems changes nothing and lists them all, each with its place", async () => {
    const answer = await ask(shell, owner, put(sent(`${PLAN}wrong bed\nwrong day\n`), 2));
    expect(answer.status).toBe(422);
    expect(await answer.json()).toEqual({
      problems: [
        "plans/quarry-lane/2027.yaml:9:1: wrong bed. something else.",
        "plans/quarry-lane/2027.yaml:10:1: wrong day. something else.",
      ],
    });
    expect((await inForce())?.version).toBe(2);
  });

  test("of another year's plan is a problem", async () => {
    const answer = await ask(shell, owner, put(sent("year 2026\n"), 2));
    expect(answer.status).toBe(422);
    expect(JSON.stringify(await answer.json())).toContain("this plan is for 2026");
  });

  test.each([
    ["a plan past 256 KiB", sent(`${PLAN}${"#".repeat(256 * 1024)}`)],
    ["files beside it past 256 KiB", sent(PLAN, { beside: { "w.yaml": "é".repeat(131_073) } })],
    ["a body past a mebibyte", sent(PLAN, { more: "#".repeat(1_100_000) })],
  ])("refuses %s", async (_, body) => {
    expect((await ask(shell, owner, put(body, 2))).status).toBe(413);
    expect((await inForce())?.version).toBe(2);
  });

  test.each([
    ["no JSON", "name: Quarry Lane"],
    ["no text", { file: "x" }],
    ["texts that are none", sent(PLAN, { beside: { "w.yaml": 1 } })],
    ["a print that is none", sent(PLAN, { published: 1 })],
    ["a list", []],
    ["nothing", "null"],
  ])("refuses %s", async (_, body) => {
    expect((await ask(shell, owner, put(body, 2))).status).toBe(400);
  });

  test("wants to know which version it started from", async () => {
    expect((await ask(shell, owner, put(sent(PLAN), null))).status).toBe(428);
    const init = { ...put(sent(PLAN), null), headers: { "if-match": "*" } };
    expect((await ask(shell, owner, init)).status).toBe(428);
  });

  test.each(["helper", "reader"] as const)("is not a %s's to do", async (role) => {
    const person = role === "helper" ? "imre" : null;
    const path = `${await linkTo("quarry-lane", role, person)}plans/2027`;
    expect((await ask(shell, path)).status).toBe(404);
    expect((await ask(shell, path, put(sent(PLAN), 2))).status).toBe(404);
  });

  test("ends when another owner's link has closed this one", async () => {
    const second = await linkTo("quarry-lane", "owner", null, 2);
    expect((await ask(shell, `${second}plans/2027`)).status).toBe(404);
    await inStore("quarry-lane", (sql) => showNextOwner(sql, 2, 0));
    expect((await ask(shell, `${second}plans/2027`)).status).toBe(200);
    await inStore("quarry-lane", (sql) => closeOtherOwners(sql, 1));
    expect((await ask(shell, `${second}plans/2027`)).status).toBe(404);
    expect((await ask(shell, `${second}plans/2027`, put(sent(PLAN), 2))).status).toBe(404);
  });
});

test("publishing writes the feeds behind its answer, so that the next poll has the change", async () => {
  await publish(shell, "brook");
  const feed = `${await linkTo("brook", "owner")}tasks.ics`;
  await ask(shell, feed);
  await publish(shell, "brook", PLAN.replace("Thin beets", "Thin carrots"), 1);
  expect(await (await ask(shell, feed)).text()).toContain("Thin carrots");
});

import { beforeAll, describe, expect, test } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";

import { ask, inStore, linkTo, publish, type Shell, shellWith } from "./garden.ts";

const PLAN = `garden: Said
year: 2027
place: { clock: UTC, last frost: about 6 May, first frost: about 2 Oct }
people: { Imre: {} }
crops: [carrot]
`;

let shell: Shell;
let page: string;

beforeAll(async () => {
  shell = shellWith({ engine });
  await publish(shell, "said", PLAN);
  page = `${await linkTo("said", "helper", "imre")}diary`;
});

const say = (words: string, day: string): RequestInit => ({
  method: "POST",
  body: new URLSearchParams({ say: words, day }).toString(),
  headers: { "content-type": "application/x-www-form-urlencoded" },
});

async function rows() {
  const query = "SELECT day, text, task, person FROM diary ORDER BY id";
  return inStore("said", (sql) => sql.rows(query));
}

describe("a line said on the diary's page", () => {
  test("is written down once with its day and who said it, and leads back", async () => {
    const answer = await ask(shell, page, say("  a fox\r\n came by ", "2027-05-05"));
    expect([answer.status, answer.headers.get("location")]).toEqual([303, `${page}#newest`]);
    await ask(shell, page, say("a fox came by", "2027-05-05"));
    const row = { day: "2027-05-05", text: "a fox came by", task: null, person: "imre" };
    expect(await rows()).toEqual([row]);
  });

  test("with no day said is of today", async () => {
    await ask(shell, page, say("soil 12 °C", ""));
    expect((await rows()).at(-1)).toMatchObject({ day: "2027-05-07", text: "soil 12 °C" });
  });

  test("is written with as many as three hundred letters, and of today named as a day", async () => {
    const whole = "x".repeat(300);
    const answer = await ask(shell, page, say(whole, "2027-05-07"));
    expect(answer.status).toBe(303);
    expect((await rows()).at(-1)).toMatchObject({ day: "2027-05-07", text: whole });
  });

  test.each([
    ["nothing", "  ", "2027-05-05", "Nothing was said."],
    ["too much", "x".repeat(301), "2027-05-05", "fewer words"],
    ["a day that is none", "frost", "2027-02-31", "no such day"],
    ["a day before there was a garden", "frost", "1900-01-01", "first plan"],
    ["what is to come", "frost", "2027-05-08", "still to come"],
  ])("%s is not written, and the page says why", async (_, words, day, why) => {
    const before = await rows();
    const answer = await ask(shell, page, say(words, day));
    expect(answer.status).toBe(400);
    expect(await answer.text()).toContain(why);
    expect(await rows()).toEqual(before);
  });
});

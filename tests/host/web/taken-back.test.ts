import { expect, test } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";
import { addLine, diaryLines } from "../../../src/host/store/diary.ts";
import { ask, inStore, linkTo, MORNING, publish, shellWith } from "./garden.ts";

const PLAN = `garden: Flooded
year: 2027
place: { clock: UTC, last frost: about 6 May, first frost: about 2 Oct }
people: { Imre: {} }
crops: [carrot]
`;

test("the owner takes back all that a helper wrote in a day with one tap, and nobody else can", async () => {
  const shell = shellWith({ engine });
  await publish(shell, "flooded", PLAN);
  const line = { day: 20_945 as never, text: "weeded the carrots", task: null, saidAt: MORNING };
  await inStore("flooded", (sql) => {
    for (let count = 0; count < 40; count += 1) addLine(sql, { ...line, person: "imre" });
  });
  const owner = await linkTo("flooded", "owner");
  const helper = await linkTo("flooded", "helper", "imre");
  const html = await (await ask(shell, `${owner}diary`)).text();
  expect(html).toMatch(/Imre, [^:]+: 40 lines/);
  expect(await (await ask(shell, `${helper}diary`)).text()).not.toContain("Many lines");
  const lines = /name="lines" value="([^"]+)"/.exec(html)?.[1] ?? "";
  const tap = (link: string, form: Record<string, string>) =>
    ask(shell, `${link}diary/back`, {
      method: "POST",
      body: new URLSearchParams(form).toString(),
      headers: { "content-type": "application/x-www-form-urlencoded" },
    });
  const form = { person: "imre", lines, do: "take back" };
  expect((await tap(helper, form)).status).toBe(404);
  for (const wrong of [
    {},
    { ...form, lines: "9-1" },
    { ...form, do: "x" },
    { ...form, lines: "x" },
  ])
    expect((await tap(owner, wrong)).status).toBe(400);
  expect((await tap(owner, form)).headers.get("location")).toBe(`${owner}diary`);
  expect(await inStore("flooded", (sql) => diaryLines(sql))).toEqual([]);
  expect(await (await ask(shell, `${owner}diary`)).text()).toContain("Count them again");
  await tap(owner, { ...form, do: "have back" });
  expect(await inStore("flooded", (sql) => diaryLines(sql))).toHaveLength(40);
});

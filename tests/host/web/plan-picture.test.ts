import { beforeAll, expect, test } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";
import { savedPlan } from "../../../src/host/store/plans.ts";
import { ask, inStore, linkTo, publish, type Shell, shellWith } from "./garden.ts";

const PLAN = `garden: Lane
year: 2027
measures: metric
place: { clock: Europe/Oslo, latitude: 60, last frost: about 20 May, first frost: about 20 Sep }
crops:
  - carrot: 3 m
`;

let shell: Shell;
let owner: string;

beforeAll(async () => {
  shell = shellWith({ engine });
  await publish(shell, "drawn", PLAN);
  owner = await linkTo("drawn", "owner");
});

const send = (text: string, subject = "season") =>
  ask(shell, `${owner}plan/2027/${subject}.svg`, {
    method: "POST",
    body: new URLSearchParams({ base: "1", text }).toString(),
    headers: { "content-type": "application/x-www-form-urlencoded" },
  });

test("a plan is drawn as it is saved", async () => {
  const answer = await ask(shell, `${owner}plan/2027/season.svg`);
  expect(answer.headers.get("content-type")).toContain("image/svg+xml");
  const svg = await answer.text();
  expect(svg).toContain("Carrots");
  expect(svg).not.toContain("Leeks");
});

test("a text is drawn as it is sent, and nothing of it is stored", async () => {
  const before = await inStore("drawn", (sql) => savedPlan(sql, 2027));
  const answer = await send(PLAN.replace("carrot", "leek"));
  expect(answer.status).toBe(200);
  const svg = await answer.text();
  expect(svg).toContain("Leeks");
  expect(svg).not.toContain("Carrots");
  expect(await inStore("drawn", (sql) => savedPlan(sql, 2027))).toEqual(before);
});

test("a year that is not begun is drawn as it would begin", async () => {
  const svg = await (await ask(shell, `${owner}plan/2028/season.svg`)).text();
  expect(svg).toContain("2028");
  expect((await ask(shell, `${owner}plan/2029/season.svg`)).status).toBe(404);
});

test("a text with something wrong in it, or of another year, is not", async () => {
  expect((await send("garden: [")).status).toBe(422);
  expect((await send(PLAN.replace("2027", "2026"))).status).toBe(422);
});

test("nobody but the owner has it", async () => {
  const helper = await linkTo("drawn", "helper");
  expect((await ask(shell, `${helper}plan/2027/season.svg`)).status).toBe(404);
});

test("beds are drawn from above where a plan has any", async () => {
  expect((await ask(shell, `${owner}plan/2027/beds.svg`)).status).toBe(404);
  const beds = PLAN.replace(
    /crops:[\s\S]*/,
    "beds:\n  South bed: { is: 4 x 1.2 m, crops: [carrot: 2 rows] }\n",
  );
  const answer = await send(beds, "beds");
  expect(answer.status).toBe(200);
  expect(await answer.text()).toContain("South bed");
});

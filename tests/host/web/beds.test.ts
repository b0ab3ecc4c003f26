import { beforeAll, expect, test } from "vitest";
import { engine } from "../../../src/host/edge/core.ts";
import { BEDS_PICTURE } from "../../../src/host/web/beds.ts";
import { QUARRY } from "../../gardens.ts";
import { ask, linkTo, publish, type Shell, shellWith } from "./garden.ts";

const PLAN = `garden: Lane
year: 2027
measures: metric
place: { clock: UTC, latitude: 51, last frost: about 6 May, first frost: about 2 Oct }
beds:
  Root bed:
    is: 4 x 1.2 m
    crops:
      - carrot: 3 rows, sow 12 May
  South bed:
    is: 3 x 1.2 m
    crops:
      - chard: 1 row, in since 20 Apr 2027
`;

let shell: Shell;
let helper: string;

beforeAll(async () => {
  shell = shellWith({ engine, now: () => Date.UTC(2027, 4, 12, 9) });
  await publish(shell, "beds-drawn", PLAN);
  helper = await linkTo("beds-drawn", "helper");
});

const svgAt = async (rest: string) => (await ask(shell, `${helper}${rest}`)).text();

test("the beds are drawn as they stand today", async () => {
  const svg = await svgAt(BEDS_PICTURE);
  expect(svg).toContain("The beds of Lane, 12 May 2027");
  expect(svg).toContain("South bed");
});

test("for today's jobs, those beds alone that have one, with what is to be done", async () => {
  const svg = await svgAt(`${BEDS_PICTURE}?for=jobs`);
  expect(svg).toContain("Sow carrots.");
  expect(svg).not.toContain("South bed");
});

test("today's page shows them, with the names of the beds, and not on a day without jobs in any", async () => {
  expect(await svgAt("")).toMatch(/<img src="[^"]+beds\.svg\?for=jobs" alt="[^"]*Root bed[^"]*"/);
  const idle = shellWith({ engine, now: () => Date.UTC(2027, 4, 13, 9) });
  expect(await (await ask(idle, helper)).text()).not.toContain("beds.svg");
});

test("a garden without beds, and a day without jobs in any, have no drawing", async () => {
  const idle = shellWith({ engine, now: () => Date.UTC(2027, 4, 13, 9) });
  const bare = "bare-of-beds";
  await publish(shell, bare, PLAN.replace(/beds:[\s\S]*/, "crops:\n  - carrot\n"));
  expect((await ask(shell, `${await linkTo(bare, "helper")}${BEDS_PICTURE}`)).status).toBe(404);
  expect((await ask(idle, `${helper}${BEDS_PICTURE}?for=jobs`)).status).toBe(404);
});

test("what a warning speaks of is no job of today", async () => {
  const garden = "warned-lane";
  await publish(shell, garden, QUARRY);
  const may = shellWith({ engine, now: () => Date.UTC(2027, 4, 8, 15) });
  const link = await linkTo(garden, "helper");
  const events = await (await ask(may, `${link}warnings.ics`)).text();
  expect(events).toContain("DTSTART;VALUE=DATE:20270508");
  const answer = await ask(may, `${link}${BEDS_PICTURE}?for=jobs`);
  expect(await answer.text()).not.toContain("South bed");
});

import { expect, test } from "vitest";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

const TWO = PLAN.replace(
  "beds:",
  "  Ben: { gardens: Sun 10-12 }\naway:\n  - Ada, 3 to 9 Jul\n  - everybody, 1 to 7 Aug\nbeds:",
);
const garden = (plan = TWO) => folderOf({ "2027.yaml": plan });

test("each absence from today on is told, first who and when", async () => {
  const { exit, out, err } = await sowbell(["away", garden()]);
  expect([exit, err]).toEqual([0, ""]);
  expect(out).toMatch(/^Ada away, 3 to 9 July\n\nBefore you go on 3 July\n/);
  expect(out).toContain("\nBen has:\n");
  expect(out).toMatch(/\n\nEverybody away, 1 to 7 Aug\n\n(?:.|\n)*For the neighbour, 1 to 7 Aug\n/);
});

test("one that is over is left out, and so are another's", async () => {
  const later = await sowbell(["away", garden(), "--on", "2027-07-10"]);
  expect(later.out).toMatch(/^Everybody away/);
  const bens = await sowbell(["away", garden(), "--for", "ben"]);
  expect(bens.out).toMatch(/^Everybody away/);
});

test("no absence says so", async () => {
  const none = await sowbell(["away", garden(PLAN)]);
  expect(none).toMatchObject({ exit: 0, out: "Nobody is away from today on, by the plan.\n" });
  const ben = await sowbell(["away", garden(), "--for", "Ben", "--on", "2027-09-01"]);
  expect(ben).toMatchObject({ exit: 0, out: "Ben is not away from today on, by the plan.\n" });
});

test("nobody of that name is wrong usage", async () => {
  const { exit, err } = await sowbell(["away", garden(), "--for", "Cleo"]);
  expect(exit).toBe(2);
  expect(err).toMatch(/--for Cleo: the plan names no such person/);
});

test("the same plan gives the same text", async () => {
  const folder = garden();
  expect(await sowbell(["away", folder])).toEqual(await sowbell(["away", folder]));
});

import { expect, test } from "vitest";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

const KEYS = [
  "id",
  "subject",
  "planting",
  "crop",
  "bed",
  "practice",
  "step",
  "title",
  "text",
  "why",
  "harm",
  "rhythm",
  "certainty",
  "earliest",
  "due",
  "latest",
  "usual",
  "day",
  "people",
  "minutes",
  "starts",
  "ends",
];

type Row = Record<string, string | number | null | readonly string[]>;

async function rows(plan: string): Promise<readonly Row[]> {
  const { exit, out } = await sowbell(["tasks", folderOf({ "2027.yaml": plan }), "--json"]);
  expect(exit).toBe(0);
  return JSON.parse(out) as readonly Row[];
}

test("as JSON each task has the same keys in the same order, sorted by day", async () => {
  const tasks = await rows(PLAN);
  expect(tasks.length).toBeGreaterThan(20);
  for (const task of tasks) expect(Object.keys(task)).toEqual(KEYS);
  const days = tasks.map((task) => String(task.day));
  expect(days).toEqual([...days].sort());
});

test("ids are readable, days ISO, people by name, and only timed work has hours", async () => {
  const tasks = await rows(PLAN);
  const thin = tasks.find((task) => task.id === "2027/beet/thin/1");
  expect(thin).toMatchObject({
    subject: "planting",
    planting: "2027/beet",
    crop: "beet",
    bed: "long-bed",
    people: ["Ada"],
    starts: null,
    certainty: "expected",
  });
  expect(thin?.due).toMatch(/^2027-0[56]-\d\d$/);
  const rung = tasks.find((task) => task.id === "2027/tomato/harden-off/out-1");
  expect(rung?.starts).toMatch(/^2027-05-\d\dT10:00:00\+02:00$/);
  expect(rung?.ends).toMatch(/T10:15:00\+02:00$/);
});

test("a day the gardener gave is fixed, and one the diary tells is done", async () => {
  const fixed = await rows(PLAN.replace("beet: 2 rows", "beet: 2 rows, sow 8 May"));
  expect(fixed.find((task) => task.id === "2027/beet/sow-outdoors/1")).toMatchObject({
    certainty: "fixed",
    day: "2027-05-08",
  });
  const done = await rows(`${PLAN}diary:\n  - 9 May: beets sown\n`);
  expect(done.find((task) => task.id === "2027/beet/sow-outdoors/1")).toMatchObject({
    certainty: "done",
    day: "2027-05-09",
  });
});

test("as lines it is the morning's list", async () => {
  const folder = folderOf({ "2027.yaml": `assume: open\n${PLAN}` });
  const { out } = await sowbell(["tasks", folder, "--on", "2027-05-08"]);
  const heads = out.split("\n").filter((line) => /^[A-Z][^0-9]*$|^Today/.test(line));
  expect(heads).toEqual(["Today, Saturday 8 May", "Still open", "The week ahead", "Later"]);
  expect(out).toMatch(/\n {4}About \d+ min\.\n/);
  const quiet = await sowbell(["tasks", folderOf({ "2027.yaml": PLAN }), "--on", "2027-03-02"]);
  expect(quiet.out).toMatch(/^Today, Tuesday 2 Mar\nNothing is due\.\n\n/);
  expect(quiet.out).not.toContain("Still open");
});

test("as lines it begins with today", async () => {
  const folder = folderOf({ "2027.yaml": PLAN });
  const march = await sowbell(["tasks", folder]);
  const july = await sowbell(["tasks", folder, "--on", "2027-07-01"]);
  expect(march.out).toMatch(/Sow tomatoes indoors \(Ada\) {2}2027\/tomato\/sow-indoors\/1/);
  expect(july.out).not.toContain("sow-indoors");
  expect(july.out.split("\n").length).toBeLessThan(march.out.split("\n").length);
});

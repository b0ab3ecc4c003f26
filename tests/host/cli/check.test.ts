import { join } from "node:path";
import { expect, test } from "vitest";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

test("a sound plan is counted and what was filled in is listed, on standard output", async () => {
  const folder = folderOf({ "2027.yaml": PLAN });
  const { exit, out, err } = await sowbell(["check", join(folder, "2027.yaml")]);
  expect({ exit, err }).toEqual({ exit: 0, err: "" });
  expect(out).toContain("2 plantings in 1 bed, no problem.");
  expect(out).toContain("beet: from: seed outdoors");
});

test("diary lines that move nothing are listed, with the reason where they nearly did", async () => {
  const diary = "diary:\n  - 3 May: beet sown\n  - 4 May: beans up\n  - 5 May: a warm evening\n";
  const folder = folderOf({ "2027.yaml": `${PLAN}${diary}` });
  const { exit, out } = await sowbell(["check", folder]);
  expect(exit).toBe(0);
  expect(out).toMatch(/notes, which move nothing:\n {2}4 May: beans up \(.+\)\n/);
  expect(out).toContain("  5 May: a warm evening\n");
  expect(out).not.toContain("beet sown");
});

test("every problem is told with its file, line and column on standard error, and the exit is 1", async () => {
  const broken = PLAN.replace("Europe/Berlin", "Europe/Berlni").replace("Sat 9-12", "Sat 12-9");
  const folder = folderOf({ "2027.yaml": broken });
  const { exit, out, err } = await sowbell(["check", folder]);
  expect({ exit, out }).toEqual({ exit: 1, out: "" });
  const places = err
    .trim()
    .split("\n")
    .map((line) => /2027\.yaml:(\d+):\d+: /.exec(line)?.[1]);
  expect(places).toEqual(["4", "11"]);
});

test("a doubt is told and the exit is 0", async () => {
  const folder = folderOf({ "2027.yaml": PLAN.replace("beet: 2 rows", "oca: 2 rows") });
  const { exit, err } = await sowbell(["check", folder]);
  expect(exit).toBe(0);
  expect(err).toMatch(/2027\.yaml:16:\d+: .*oca/);
});

test("a folder without a year's file, and a file that is not there, are problems", async () => {
  const folder = folderOf({ "notes.txt": "" });
  expect((await sowbell(["check", folder])).err).toContain("no year's file");
  const missing = await sowbell(["check", join(folder, "2027.yaml")]);
  expect(missing.exit).toBe(1);
  expect(missing.err).toContain("no such file");
});

test("check tells where a bed is shared by more than it holds, exit 0", async () => {
  const crowded = PLAN.replace("beet: 2 rows", "beet: 6 rows\n      - carrot: 7 rows");
  const { exit, err } = await sowbell(["check", folderOf({ "2027.yaml": crowded })]);
  expect(exit).toBe(0);
  expect(err).toMatch(/2027\.yaml:\d+:\d+: \w+ and .* share Long bed about .* across\. Give one/);
});

test("a diary line that another puts right, or that cannot be so, is told", async () => {
  const diary =
    "diary:\n  - 20 May: beets up\n  - 22 May: beets not up\n  - 1 Jun: beets lost\n  - 3 Jun: beets thinned\n";
  const { out } = await sowbell(["check", folderOf({ "2027.yaml": `${PLAN}${diary}` })]);
  expect(out).toContain(
    "Diary lines that another puts right, or that cannot be so:\n  20 May: beets up (no longer holds: 22 May says otherwise)\n",
  );
  expect(out).toContain("  3 June: beets thinned (was lost on 1 June, so it moves nothing)\n");
  const plain = await sowbell(["check", folderOf({ "2027.yaml": PLAN })]);
  expect(plain.out).not.toContain("Diary lines");
});

import { expect, test } from "vitest";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

test("why tells a task's reasons, then those of what it hangs on, back to frost and soil", async () => {
  const folder = folderOf({ "2027.yaml": PLAN });
  const { exit, out } = await sowbell(["why", folder, "beet/thin/1"]);
  expect(exit).toBe(0);
  const lines = out.split("\n");
  expect(lines[0]).toMatch(/^Thin beets, Long bed: \d+ (May|June) 2027 {2}2027\/beet\/thin\/1$/);
  expect(lines[1]).toMatch(/^ {2}Between .* and .*, best .*\.$/);
  expect(out).toMatch(/Sow beets, Long bed: .*2027\/beet\/sow-outdoors\/1/);
  expect(out).toMatch(/The soil is at 7 °C from about \d+ (March|Apr)\./);
});

test("a task that is not there is said so, exit 1; no task named is wrong usage", async () => {
  const folder = folderOf({ "2027.yaml": PLAN });
  expect(await sowbell(["why", folder, "beet/dance/1"])).toMatchObject({ exit: 1, out: "" });
  expect(await sowbell(["why", folder])).toMatchObject({ exit: 2, out: "" });
});

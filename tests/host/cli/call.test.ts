import { expect, test } from "vitest";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

test("neighbouring years are read too, and one year's file lists its own year alone", async () => {
  const next = PLAN.replace("year: 2027", "year: 2028").replace("4 plants", "5 plants");
  const folder = folderOf({ "2027.yaml": PLAN, "2028.yaml": next });
  const both = await sowbell(["tasks", folder]);
  const one = await sowbell(["tasks", `${folder}/2028.yaml`]);
  expect(both.out).toContain("2027/beet/thin/1");
  expect(both.out).toContain("2028/beet/thin/1");
  expect(one.out).not.toContain("2027/beet/thin/1");
});

test("too many words are wrong usage", async () => {
  const folder = folderOf({ "2027.yaml": PLAN });
  expect(await sowbell(["check", folder, "again"])).toMatchObject({ exit: 2, out: "" });
  expect(await sowbell(["tasks"])).toMatchObject({ exit: 2, out: "" });
});

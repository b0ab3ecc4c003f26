import { expect, test } from "vitest";
import { wordingsOf } from "../../../src/garden/diary/wordings.ts";
import { PLAN } from "../plan/canonical.ts";

const wordings = (text: string) => wordingsOf(text, [PLAN]);

test("a clause is read as it stands first, and by its bare names at last", () => {
  const all = wordings("so i put the tomato babies out today, 6 plants");
  expect(all[0]).toBe("so i put the tomato babies out today, 6 plants");
  expect(all).toContain("put tomato out");
});

test("in a bed is in, whatever the bed is called", () => {
  expect(wordings("got the potatoes in the south bed")).toContain("got potatoes in");
  expect(wordings("carrots in the soup")).not.toContain("carrots in");
});

import { expect, test } from "vitest";
import { attributeLine } from "../../../src/garden/diary/attribute.ts";
import { on, PLAN } from "../plan/canonical.ts";

const read = (text: string) => {
  const line = { day: on(6, 1), text, at: { file: "f", line: 1, column: 1 } };
  const { text: plain, by } = attributeLine(line, [PLAN]);
  return `${plain} | ${by}`;
};

test("a line is by whom it names, in plain small letters", () => {
  expect(read("Oda: Thinned the  beets!")).toBe("thinned the beets | oda");
  expect(read("Beets thinned (Oda).")).toBe("beets thinned | oda");
  expect(read("Beets thinned (twice), Imre")).toBe("beets thinned | imre");
});

test("and by nobody where it names none", () => {
  expect(read("We thinned the beets & carrots")).toBe("thinned the beets and carrots | null");
  expect(read("Odament watered")).toBe("odament watered | null");
});
